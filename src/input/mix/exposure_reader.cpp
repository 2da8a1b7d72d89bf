#include "exposure_reader.hpp"

#include <boardmark/text/letter_case.hpp>

#include <algorithm>
#include <map>
#include <optional>

namespace boardmark::input {
namespace {

/// The class that a word names in small letters. Other codes have other classes: no nearer guess.
std::optional<std::string> written_otherwise(const std::string& word,
                                             const core::ClassNames& code) {
    for (const core::NamedClass& known : code.classes) {
        if (text::equal_but_for_case(known.name, word)) {
            return known.name;
        }
    }
    return std::nullopt;
}

std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) {
        text += (text.empty() ? "" : ", ") + word;
    }
    return text;
}

} // namespace

std::vector<std::string> read_classes(const MixContext& context, const Reading& exposure,
                                      const std::string& key, const core::ClassNames& code) {
    std::vector<std::string> classes;
    std::map<std::size_t, std::string> stated; // by category
    for (const Parsed& item : exposure.items) {
        const core::NamedClass* known = code.find(item.text);
        if (!known) {
            const auto near = written_otherwise(item.text, code);
            context.refuse(*item.node,
                           key + ": '" + item.text + "' is not an exposure class of " + code.code,
                           near ? "did you mean '" + *near + "'?"
                                : "'boardmark help exposure' explains each class");
            continue;
        }
        if (std::ranges::count(classes, item.text) > 0) {
            context.refuse(*item.node, key + ": " + item.text + " is given a second time",
                           "keep one");
            continue;
        }
        const auto [earlier, added] = stated.emplace(known->category, item.text);
        if (!added && !code.several_of_category) {
            context.refuse(*item.node,
                           key + ": " + item.text + " and " + earlier->second +
                               " are of one category",
                           "keep the more severe of the two");
            continue;
        }
        classes.push_back(item.text);
    }
    return classes;
}

std::string read_chloride_class(const MixContext& context, const core::CodeTables& code,
                                bool reinforced) {
    const Parsed* stated = context.document.value({"requirements", "chloride_class"});
    if (!stated) {
        return "";
    }
    std::vector<std::string> names;
    for (const core::ChlorideClass& known : code.chloride.classes_for(reinforced)) {
        if (!known.name.empty()) {
            names.push_back(known.name);
        }
    }
    if (std::ranges::count(names, stated->text) == 0) {
        context.refuse(*stated->node,
                       "requirements.chloride_class: '" + stated->text +
                           "' is not a class of chloride content of " + code.name +
                           (reinforced ? " for concrete with bars" : " for concrete without bars"),
                       names.empty() ? "the code has none: delete the key"
                                     : "known here: " + listed(names));
    }
    return stated->text;
}

void refuse_code(const MixContext& context, const Node& node, const Path& key,
                 const std::string& name) {
    context.refuse(node, dotted(key) + ": '" + name + "' is not a code known here",
                   "known here: " + listed(context.options.vocabulary.codes));
}

} // namespace boardmark::input

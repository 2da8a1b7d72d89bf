#include "exposure_limits.hpp"

#include "../basis/phrases.hpp"

namespace boardmark::core {

void append_other_editions(const ExposureClass& exposure, Phrase& message) {
    if (!exposure.other_editions.empty()) {
        const std::string name = numbered("editions", message);
        message.text += ". {" + name + "}";
        message.arguments.push_back(word(name, exposure.other_editions));
    }
}

namespace {

const char* words_of_addition(std::size_t index) {
    static constexpr const char* words[countable_additions] = {"fly ash", "slag cement",
                                                               "silica fume"};
    return words[index];
}

/// What stands behind the k of an addition.
std::string basis_of(const CountedMass& mass) {
    std::string text;
    const auto add = [&](const std::string& part) { text += (text.empty() ? "" : ", ") + part; };
    if (!mass.by->doubt.empty()) {
        add(mass.by->doubt);
    } else if (mass.by->source.confidence == Confidence::from_memory) {
        add("from memory");
    }
    if (mass.other_standard) {
        add("for " + mass.by->standard + ", which its standard is not stated to be");
    }
    return text.empty() ? "" : " (" + text + ")";
}

} // namespace

void append_counting(const CountedBinder& binder, const BinderRules& rules, Phrase& message) {
    if (!rules.by_k) {
        if (binder.in_doubt) {
            message.text +=
                rules.all_counts->citation.empty()
                    ? "; whether additions count like cement is not said by the file of "
                      "the code: add 'additions' to its row of group code"
                    : "; that additions count like cement is from memory, check it "
                      "against the code";
        }
        return;
    }
    for (std::size_t i = 0; i < countable_additions; ++i) {
        const CountedMass& mass = binder.additions[i];
        if (mass.kg <= 0) {
            continue;
        }
        const std::string what = numbered("addition", message);
        message.arguments.push_back(word(what, words_of_addition(i)));
        if (!mass.by || mass.counted_kg <= 0) {
            message.text += "; {" + what + "} does not count";
            continue;
        }
        const std::string k = numbered("k", message);
        message.arguments.push_back(quantity(k, {mass.k, Measure::ratio}));
        const std::string counted = numbered("counted", message);
        message.arguments.push_back(quantity(counted, {mass.counted_kg, Measure::concentration}));
        const std::string basis = numbered("basis", message);
        message.arguments.push_back(word(basis, basis_of(mass)));
        message.text +=
            "; {" + what + "} counts by k {" + k + "}, {" + counted + "} of it{" + basis + "}";
    }
    if (binder.cement_is_assumed && binder.counted_kg > binder.cement_kg) {
        const std::string standard = numbered("standard", message);
        message.arguments.push_back(word(standard, rules.cement_standard));
        message.text += "; the cement's type by {" + standard +
                        "} is not stated: it is taken by "
                        "its kind";
    }
}

std::string numbered(const std::string& name, const Phrase& message) {
    return name + "_" + std::to_string(message.arguments.size());
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) {
        text += (text.empty() ? "" : ", ") + word;
    }
    return text;
}

} // namespace boardmark::core

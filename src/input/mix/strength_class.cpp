#include "strength_class.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::input {
namespace {

const Path strength_path{"requirements", "strength"};

Node* value_below(Node& section, std::string_view key) {
    const auto found = std::ranges::find_if(
        section.entries, [&](const Entry& entry) { return entry.key.scalar == key; });
    return found == section.entries.end() ? nullptr : &found->value;
}

bool looks_like_a_class(const std::string& text) {
    return text.size() > 1 && text.find('/') != std::string::npos &&
           (text.starts_with("C") || text.starts_with("LC"));
}

/// The fault of a class that is not known is told in its own words instead of as a number without
/// digits.
void explain_unknown_class(const MixContext& context) {
    const Reading* strength = context.document.find(strength_path);
    if (!strength || strength->value || !looks_like_a_class(strength->node->scalar)) {
        return;
    }
    const bool light = strength->node->scalar.starts_with("LC");
    for (Diagnostic& diagnostic : context.diagnostics) {
        if (diagnostic.message.starts_with("requirements.strength:")) {
            diagnostic.message = "requirements.strength: '" + strength->node->scalar +
                                 (light ? "' is a class of lightweight concrete, which is not "
                                          "proportioned here: its net w/cm is not known"
                                        : "' is not a strength class known here");
            diagnostic.advice = light ? "use a method for lightweight concrete, which begins with the cement content"
                                      : "write for example 'C30/37', or the strength with its "
                                        "unit, '30 MPa'";
        }
    }
}

/// A method of cubes takes of a class that names both strengths the one of cubes, and so are the
/// trials that it is given.
bool designs_for_cubes(const MixContext& context) {
    return read_method(context) != core::Method::aci_211_1 &&
           context.document.find({"proportions"}) == nullptr;
}

/// The tables of ACI 211.1 and the rules of a wall are of cylinders.
void refuse_cubes_alone(const MixContext& context, const core::Requirements& requirements) {
    const bool submitted = context.document.find({"proportions"}) != nullptr;
    const Purpose purpose = context.options.purpose;
    const bool only_checked = submitted && (purpose == Purpose::check || purpose == Purpose::batch);
    const bool cubes_do =
        (only_checked || designs_for_cubes(context)) && !context.options.needs_cylinders;
    if (requirements.specimen == core::Specimen::cylinder || requirements.twin_strength_mpa ||
        cubes_do) {
        return;
    }
    context.refuse(*context.document.find(strength_path)->node,
                   "requirements.strength is of cubes; the method, its margins and a wall's rules "
                   "are of cylinders, and nothing pairs the two",
                   "write a class that names both, for example 'C30/37', or the strength of "
                   "cylinders");
}

} // namespace

std::optional<core::StrengthName> take_strength_class(Node& root, const Vocabulary& words) {
    Node* asked = value_below(root, "requirements");
    Node* strength = asked ? value_below(*asked, "strength") : nullptr;
    if (!strength || strength->kind != Node::Kind::scalar) {
        return std::nullopt;
    }
    const auto found =
        std::ranges::find(words.strength_names, strength->scalar, &core::StrengthName::name);
    if (found == words.strength_names.end()) {
        return std::nullopt;
    }
    strength->scalar = fmt::format("{} MPa", found->cylinder_mpa ? *found->cylinder_mpa
                                                                 : found->cube_mpa.value_or(0));
    return *found;
}

void read_strength(const MixContext& context, core::Requirements& requirements) {
    explain_unknown_class(context);
    requirements.strength_mpa = context.document.number(strength_path).value_or(0);
    const Parsed* specimen = context.document.value({"requirements", "specimen"});
    if (specimen && specimen->text == "cube") {
        requirements.specimen = core::Specimen::cube;
    }
    if (const auto& stated = context.strength_class) {
        if (specimen) {
            context.refuse(*specimen->node,
                           "requirements.specimen is given beside the class " + stated->name +
                               ", which says it",
                           "delete one of the two");
        }
        requirements.strength_class = stated->name;
        requirements.specimen =
            stated->cylinder_mpa ? core::Specimen::cylinder : core::Specimen::cube;
        requirements.twin_strength_mpa = stated->cylinder_mpa ? stated->cube_mpa : std::nullopt;
        if (requirements.twin_strength_mpa && designs_for_cubes(context)) {
            std::swap(requirements.strength_mpa, *requirements.twin_strength_mpa);
            requirements.specimen = core::Specimen::cube;
        }
    }
    if (context.document.value(strength_path)) {
        refuse_cubes_alone(context, requirements);
    }
}

} // namespace boardmark::input

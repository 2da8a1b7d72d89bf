#include "counted_binder.hpp"

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <optional>
#include <string_view>

namespace boardmark::core {
namespace {

constexpr std::array<Addition, countable_additions> countable{
    Addition::fly_ash, Addition::slag_cement, Addition::silica_fume};

/// Natural pozzolans are capped with fly ash, but no code here gives them a k.
std::optional<std::size_t> countable_index(Kind kind) {
    switch (kind) {
    case Kind::fly_ash:
        return 0;
    case Kind::slag_cement:
        return 1;
    case Kind::silica_fume:
        return 2;
    default:
        return std::nullopt;
    }
}

bool mentions(std::string_view designation, std::string_view words) {
    return designation.find(words) != std::string_view::npos;
}

/// Whether a designation names a type of cement, "CEM I" or "CEM II/A", and not one that begins
/// with the same letters, "CEM II", "CEM II/A-M".
bool is_type(std::string_view designation, std::string_view type, std::string_view not_before) {
    const std::size_t at = designation.find(type);
    if (at == std::string_view::npos) {
        return false;
    }
    const std::size_t behind = at + type.size();
    return behind == designation.size() ||
           not_before.find(designation[behind]) == std::string_view::npos;
}

enum class CementGroup { plain, composite, other, assumed };

/// "CEM II/A or CEM III": any of them may come, one too beside which nothing counts.
bool names_two_cements(std::string_view designation) {
    const std::size_t first = designation.find("CEM");
    return first != std::string_view::npos &&
           designation.find("CEM", first + 1) != std::string_view::npos;
}

/// EN 197-1: beside CEM I and CEM II/A an addition counts. A standard that names no such type is
/// taken for one by the kind of the cement, and that is told.
CementGroup group_of(const Material& cement) {
    if (names_two_cements(cement.standard)) {
        return CementGroup::other;
    }
    if (is_type(cement.standard, "CEM I", "IV")) {
        return CementGroup::plain;
    }
    if (is_type(cement.standard, "CEM II/A", "")) {
        return CementGroup::composite;
    }
    if (mentions(cement.standard, "CEM") || cement.kind == Kind::blended_cement) {
        return CementGroup::other;
    }
    return cement.kind == Kind::portland_limestone_cement ? CementGroup::composite
                                                          : CementGroup::assumed;
}

bool is_among(const std::vector<std::size_t>& places, std::size_t sought) {
    return std::find(places.begin(), places.end(), sought) != places.end();
}

} // namespace

BinderCount::BinderCount(const CodeTables& code, const StatedClasses& classes)
    : code_{code}
    , classes_{classes} {}

void BinderCount::add(const Material& material, double kg) {
    if (!code_.binder.by_k) { // nothing hangs on which cement or addition it is
        (is_cement(material.kind) ? plain_kg_ : rest_kg_) += kg;
        return;
    }
    if (const auto index = countable_index(material.kind)) {
        addition_kg_[*index] += kg;
        const auto& rules = code_.binder.additions;
        const auto rule = std::ranges::find(rules, countable[*index], &CountedAddition::addition);
        other_standard_[*index] =
            other_standard_[*index] || (kg > 0 && rule != rules.end() && !rule->standard.empty() &&
                                        !mentions(material.standard, rule->standard));
        return;
    }
    if (!is_cement(material.kind)) {
        rest_kg_ += kg;
        return;
    }
    const CementGroup group = group_of(material);
    (group == CementGroup::composite ? composite_kg_
     : group == CementGroup::other   ? other_kg_
                                     : plain_kg_) += kg;
    const bool told = mentions(material.standard, "CEM");
    cement_is_assumed_ = cement_is_assumed_ || (kg > 0 && !told);
}

double BinderCount::k_of(const CountedAddition& rule) const {
    if (!rule.low_k) {
        return rule.k;
    }
    std::optional<double> lowest;
    bool by_low_k = false;
    for (const StatedClass& stated : classes_) {
        if (stated.limits->max_w_cm) {
            lowest = std::min(lowest.value_or(*stated.limits->max_w_cm), *stated.limits->max_w_cm);
        }
        by_low_k = by_low_k || is_among(rule.low_k_categories, stated.exposure->category);
    }
    const bool above_ratio =
        !lowest || !rule.low_k_above_w_c || above(*lowest, *rule.low_k_above_w_c);
    return by_low_k && above_ratio ? *rule.low_k : rule.k;
}

CountedMass BinderCount::counted_of(std::size_t index) const {
    CountedMass mass{.kg = addition_kg_[index], .other_standard = other_standard_[index]};
    const auto& rules = code_.binder.additions;
    const auto rule = std::ranges::find(rules, countable[index], &CountedAddition::addition);
    if (rule == rules.end() || mass.kg <= 0) {
        return mass;
    }
    const bool barred = classes_.first([&](const ExposureClass& exposure) {
        return is_among(rule->barred_classes,
                        static_cast<std::size_t>(&exposure - code_.classes.data()));
    });
    if (barred) {
        return mass;
    }
    const double most_kg =
        rule->most_of_cement * plain_kg_ + rule->most_of_composite.value_or(0) * composite_kg_;
    mass.by = &*rule;
    mass.k = k_of(*rule);
    mass.counted_kg = std::min(mass.kg, most_kg);
    return mass;
}

CountedBinder BinderCount::counted() const {
    CountedBinder found{.cement_kg = plain_kg_ + composite_kg_ + other_kg_};
    double additions_kg = rest_kg_;
    for (const double kg : addition_kg_) {
        additions_kg += kg;
    }
    found.all_kg = found.cement_kg + additions_kg;
    if (!code_.binder.by_k) {
        found.counted_kg = found.all_kg;
        found.in_doubt = code_.binder.all_counts && additions_kg > 0;
        return found;
    }
    found.counted_kg = found.cement_kg;
    found.cement_is_assumed = cement_is_assumed_;
    for (std::size_t i = 0; i < countable_additions; ++i) {
        const CountedMass mass = counted_of(i);
        found.additions[i] = mass;
        found.counted_kg += mass.k * mass.counted_kg;
        if (mass.by && mass.counted_kg > 0) {
            found.in_doubt = found.in_doubt || mass.other_standard || !mass.by->doubt.empty() ||
                             mass.by->source.confidence == Confidence::from_memory ||
                             cement_is_assumed_;
        }
    }
    return found;
}

CountedBinder count_binder(const Proportions& proportions, const CodeTables& code,
                           const StatedClasses& classes) {
    BinderCount count{code, classes};
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        count.add(*binder->material, binder->kg_m3);
    }
    return count.counted();
}

CountedBinder count_binder(const std::vector<Share>& binder, const CodeTables& code,
                           const StatedClasses& classes) {
    BinderCount count{code, classes};
    for (const Share& share : binder) {
        count.add(*share.material, share.percent);
    }
    return count.counted();
}

} // namespace boardmark::core

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../mix/unlisted_aggregate.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"
#include "remembered_limit.hpp"
#include "supplementary.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Cementitious mass that the limit counts: supplementary materials, those inside of cements too,
/// up to the mass of portland cement.
double up_to_cement_kg(const Proportions& proportions, double uncounted_kg) {
    double cement_kg = 0;
    double other_kg = -uncounted_kg;
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        if (!is_cement(binder->material->kind)) {
            other_kg += binder->kg_m3;
            continue;
        }
        const double inside_kg = binder->kg_m3 * contained_percent(*binder->material) / 100;
        other_kg += inside_kg;
        cement_kg += binder->kg_m3 - inside_kg;
    }
    return cement_kg + std::min(cement_kg, other_kg);
}

/// A blended cement of which nobody says how much is portland cement, where that is what counts.
const Material* unknown_portland(const CheckContext& context) {
    return context.code.chloride.of == ChlorideOf::cementitious_to_cement
               ? unknown_blend(context.proportions)
               : nullptr;
}

/// Cement, and the additions that count in the water/cement ratio by their whole mass.
double with_whole_additions_kg(const CountedBinder& binder) {
    double kg = binder.cement_kg;
    for (const CountedMass& mass : binder.additions) {
        kg += mass.by ? mass.counted_kg : 0;
    }
    return kg;
}

/// The mass of 1 m3 by which the code counts chloride.
///
/// @param uncounted_kg of cementitious material, that the code may not count
double counted_mass_kg(const CheckContext& context, double uncounted_kg) {
    switch (context.code.chloride.of) {
    case ChlorideOf::cementitious_to_cement:
        return up_to_cement_kg(context.proportions, uncounted_kg);
    case ChlorideOf::cement:
        return context.binder.cement_kg;
    case ChlorideOf::cement_and_counted:
        return with_whole_additions_kg(context.binder);
    case ChlorideOf::concrete:
        break;
    }
    return 0;
}

const char* words_of_mass(ChlorideOf of) {
    switch (of) {
    case ChlorideOf::cementitious_to_cement:
        return "cementitious material";
    case ChlorideOf::cement:
        return "cement";
    case ChlorideOf::cement_and_counted:
        return "cement and counted additions";
    case ChlorideOf::concrete:
        break;
    }
    return "concrete";
}

/// Whether an ingredient may bring chloride that nobody stated.
bool is_unknown(const Ingredient& ingredient) {
    if (!ingredient.goes_in()) {
        return false;
    }
    const auto& percent = ingredient.material->chloride_percent;
    return !percent || (ingredient.by_trial && *percent > 0);
}

/// Chloride as far as it is known.
struct ChlorideSum {
    double kg = 0;
    bool any_unknown = false;
};

ChlorideSum chloride_of(const CheckContext& context) {
    const double water_percent = context.tables.practice.drinking_water_chloride_percent.value;
    ChlorideSum sum;
    for (const Ingredient& ingredient : context.proportions.ingredients) {
        if (ingredient.role == Role::water) {
            sum.kg += ingredient.kg_m3 * water_percent / 100;
        }
        if (!ingredient.material) {
            continue;
        }
        if (is_unknown(ingredient)) {
            sum.any_unknown = true;
            continue;
        }
        sum.kg += ingredient.dry_kg_m3.value_or(ingredient.kg_m3) *
                  ingredient.material->chloride_percent.value_or(0) / 100; // none of none
    }
    return sum;
}

std::string unknown_of(const Proportions& proportions) {
    std::vector<std::string> names;
    for (const Ingredient& ingredient : proportions.ingredients) {
        if (ingredient.material && is_unknown(ingredient)) {
            names.push_back(std::string{ingredient.name} +
                            (ingredient.material->chloride_percent ? " (dosed by trial)" : ""));
        }
    }
    return joined(names);
}

/// What limits chloride: an exposure class, or a class of chloride content of the code.
struct ChlorideLimit {
    double most;
    std::string_view asked_by; ///< "C2", "Cl 0.40"; empty where the code names its limit by nothing
    const Source* source;
    bool class_is_open = false; ///< the code has several, and the file states none
};

/// By the classes of exposure, which print it for bars.
std::optional<ChlorideLimit> limit_by_exposure(const CheckContext& context) {
    const Demand* demand = context.demands.strictest(Demanded::chloride);
    return demand && context.requirements.reinforced
               ? std::optional{ChlorideLimit{demand->high, demand->by->name, demand->source}}
               : std::nullopt;
}

/// By the classes of chloride content.
std::optional<ChlorideLimit> limit_by_content(const CheckContext& context) {
    const auto& classes = context.code.chloride.classes_for(context.requirements.reinforced);
    if (classes.empty() || context.stated.empty()) {
        return std::nullopt;
    }
    const std::string& stated = context.requirements.chloride_class;
    const auto found = std::ranges::find(classes, stated, &ChlorideClass::name);
    if (found != classes.end()) {
        return ChlorideLimit{found->most, found->name, &found->source};
    }
    // Not stated: beyond the mildest fails whatever the class; less decides nothing.
    const ChlorideClass& mildest = classes.back();
    return ChlorideLimit{mildest.most, mildest.name, &mildest.source, classes.size() > 1};
}

/// Where a code limits it in both ways, by the stricter. A class of content that nobody states
/// leaves it open, unless the exposure asks as much as any of them.
std::optional<ChlorideLimit> limit_of(const CheckContext& context) {
    const auto by_exposure = limit_by_exposure(context);
    const auto by_content = limit_by_content(context);
    if (!by_exposure || !by_content) {
        return by_exposure ? by_exposure : by_content;
    }
    const auto& classes = context.code.chloride.classes_for(context.requirements.reinforced);
    const bool asks_most = std::ranges::all_of(
        classes, [&](const ChlorideClass& one) { return by_exposure->most <= one.most; });
    if (asks_most) {
        return by_exposure;
    }
    ChlorideLimit stricter = by_content->most < by_exposure->most ? *by_content : *by_exposure;
    stricter.class_is_open = by_content->class_is_open;
    return stricter;
}

/// Chloride against its limit.
struct ChlorideFinding {
    bool by_concrete; ///< kg/m3 of concrete, else percent
    bool counts;      ///< there is a mass to count it against
    bool known;
    bool incomplete;            ///< the submittal lists no fine, or no coarse, aggregate
    const Material* open_blend; ///< a cement that may count for less than it weighs, or nullptr
    double value;
    Verdict verdict;
    std::optional<double> without_limestone = {}; ///< where it breaks the limit that `value` keeps
};

ChlorideFinding hold_chloride(const CheckContext& context, const ChlorideLimit& limit) {
    const ChlorideRules& rules = context.code.chloride;
    const ChlorideSum sum = chloride_of(context);
    const double counted_kg = counted_mass_kg(context, 0);
    ChlorideFinding found{.by_concrete = rules.of == ChlorideOf::concrete,
                          .counts = true,
                          .known = false,
                          .incomplete = !lists_aggregates(context.proportions),
                          .open_blend = unknown_portland(context),
                          .value = sum.kg,
                          .verdict = Verdict::not_checked};
    if (!found.by_concrete) {
        found.counts = counted_kg != 0;
        found.value = found.counts ? 100 * sum.kg / counted_kg : 0;
    }
    const double precision =
        found.by_concrete ? chloride_precision_kg_m3 : chloride_precision_percent;
    const Verdict verdict = at_most({found.value, limit.most, precision});
    const bool whole = !sum.any_unknown && !found.incomplete;
    found.known = found.counts && (whole || verdict == Verdict::fails);
    const bool is_open = limit.class_is_open || found.open_blend;
    if (found.known && (!is_open || verdict == Verdict::fails)) {
        // Reports rarely say which of the two they measured: acid frees more.
        const bool doubtful =
            rules.acid_soluble || limit.source->confidence == Confidence::from_memory;
        found.verdict = doubtful ? worse(verdict, Verdict::watch) : verdict;
    }
    const double limestone_kg = ground_limestone_kg_m3(context.proportions);
    if (found.verdict != Verdict::fails && limestone_kg > 0 && found.counts && !found.by_concrete) {
        const double bare = 100 * sum.kg / counted_mass_kg(context, limestone_kg);
        if (at_most({bare, limit.most, precision}) == Verdict::fails) {
            found.without_limestone = bare;
            found.verdict = worse(found.verdict, Verdict::watch);
        }
    }
    return found;
}

Argument amount(std::string name, double value, bool by_concrete) {
    return quantity(std::move(name), {value, by_concrete ? Measure::alkali : Measure::chloride});
}

std::string class_names(const std::vector<ChlorideClass>& classes) {
    std::vector<std::string> names;
    for (const ChlorideClass& one : classes) {
        names.push_back(one.name);
    }
    return joined(names);
}

Phrase told_chloride(const CheckContext& context, const ChlorideLimit& limit,
                     const ChlorideFinding& found) {
    const ChlorideRules& rules = context.code.chloride;
    // The mass stands in the text itself: the words of the trade differ by system.
    std::string text = std::string{"chloride {value} of "} + words_of_mass(rules.of);
    text += rules.acid_soluble
                ? ", the mixing water at the drinking-water maximum and all of it counted as "
                  "acid-soluble, which the reports must state (a water-soluble figure is lower); "
                : ", all of it counted as water-soluble and the mixing water at the drinking-water "
                  "maximum; ";
    if (found.verdict == Verdict::not_checked) {
        text += "the code has {classes}: the designer states one as 'chloride_class'";
    } else {
        text += limit.asked_by.empty() ? "at most {limit}" : "at most {limit} in {class}";
        text +=
            context.requirements.reinforced ? ", reinforced and not prestressed" : ", without bars";
    }
    Phrase message{
        std::move(text),
        {amount("value", found.value, found.by_concrete),
         amount("limit", limit.most, found.by_concrete), word("class", limit.asked_by),
         word("classes", class_names(rules.classes_for(context.requirements.reinforced)))}};
    if (found.without_limestone) {
        message.text += "; without the ground limestone, which the code may not count, {bare}";
        message.arguments.push_back(amount("bare", *found.without_limestone, false));
    }
    append_memory(*limit.source, message);
    return message;
}

/// Whether no class, of exposure or of chloride, has a limit: a file of one's own may lack them.
bool has_no_limits(const CodeTables& code) {
    return code.chloride.classes.empty() &&
           std::ranges::none_of(code.classes, [](const ExposureClass& one) {
               return one.chloride_percent.has_value();
           });
}

void tell_no_limits(const CodeTables& code, Findings& findings) {
    findings.add({.id = check_ids::chloride_exposure, .verdict = Verdict::not_checked},
                 [&](Check& told) {
                     told.requirement = code.name;
                     told.message = {"no limit of chloride is known here of {code}, and chloride "
                                     "rusts bars: add its table 'chloride' to the file of the code",
                                     {word("code", code.name)}};
                 });
}

} // namespace

void check_chloride(const CheckContext& context, Findings& findings) {
    const auto limit = limit_of(context);
    if (!limit) {
        const bool asked = context.requirements.reinforced && !context.stated.empty();
        if (asked && has_no_limits(context.code)) {
            tell_no_limits(context.code, findings);
        }
        return;
    }
    const ChlorideFinding held = hold_chloride(context, *limit);
    Finding found{
        .id = check_ids::chloride_exposure, .verdict = held.verdict, .measure = Measure::percent};
    if (held.verdict != Verdict::not_checked) {
        found.value = held.value;
        found.limit = Limit{.low = std::nullopt, .high = limit->most};
        found.measure = held.by_concrete ? Measure::alkali : Measure::chloride;
    }
    findings.add(found, [&](Check& told) {
        told.requirement =
            limit->asked_by.empty() ? context.code.name : std::string{limit->asked_by};
        told.source = *limit->source;
        if (!held.counts) {
            told.message = {
                "the binder holds no cement: there is nothing to count chloride against", {}};
        } else if (!held.known && held.incomplete) {
            told.message = {"the amounts list no {missing}, which may bring chloride: the "
                            "submittal has them; add them under 'proportions'",
                            {word("missing", unlisted_aggregate(context.proportions))}};
        } else if (!held.known) {
            told.message = {
                "chloride is not known for {missing}: test reports and data sheets have it; "
                "add 'chloride'",
                {word("missing", unknown_of(context.proportions))}};
        } else if (held.open_blend && held.verdict == Verdict::not_checked) {
            told.message = {
                "of {name} no more counts beside its portland cement than that weighs; the mill "
                "certificate tells the parts: add 'contains'",
                {word("name", held.open_blend->name)}};
        } else {
            told.message = told_chloride(context, *limit, held);
        }
    });
}

} // namespace boardmark::core

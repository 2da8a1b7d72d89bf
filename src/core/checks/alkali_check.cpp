#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "cement_words.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"
#include "supplementary.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Alkali from cements. Supplementary materials of their own are not counted; what a blended cement
/// holds is, because its certificate states one figure for all of it: the safe side.
struct Loading {
    double kg_m3 = 0;
    double highest_percent = 0;
    bool any_unknown = false;
};

bool states_alkali(const Ingredient& ingredient) {
    return ingredient.material && ingredient.material->alkali_percent;
}

Loading loading_of(const Proportions& proportions) {
    Loading loading;
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        const auto& alkali_percent = binder->material->alkali_percent;
        if (!is_cement(binder->material->kind)) {
            continue;
        }
        if (!alkali_percent) {
            loading.any_unknown = true;
            continue;
        }
        loading.kg_m3 += binder->kg_m3 * *alkali_percent / 100;
        loading.highest_percent = std::max(loading.highest_percent, *alkali_percent);
    }
    return loading;
}

std::vector<std::string> cements_of_unknown_alkali(const Proportions& proportions) {
    std::vector<std::string> names;
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        if (is_cement(binder->material->kind) && !binder->material->alkali_percent) {
            names.emplace_back(binder->name);
        }
    }
    return names;
}

const AlkaliLevel& level_named(const std::string& name, const AlkaliRules& rules) {
    return *std::ranges::find(rules.levels, name, &AlkaliLevel::name);
}

/// Fly ash of class F, the only one whose share is published here.
double class_f_ash_percent(const Proportions& proportions) {
    double kg = 0;
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        const Material& material = *binder->material;
        const bool is_f = material.kind == Kind::fly_ash && is_class_f_ash(material.standard);
        kg += is_f ? binder->kg_m3 : 0;
    }
    return 100 * kg / proportions.totals.binder_kg_m3;
}

/// Silica fume as a part of what a level asks of it: more, the more alkali the cement brings.
double fume_reached(const AlkaliLevel& level, double fume_percent, double alkali_kg_m3,
                    const AlkaliRules& rules) {
    const double least_percent =
        std::max(rules.least_fume_percent, level.fume_factor.value_or(0) * alkali_kg_m3);
    const bool counts = level.fume_factor && !below(fume_percent, rules.least_fume_percent);
    return counts ? fume_percent / least_percent : 0;
}

/// How far slag, class F ash and silica fume reach what a level asks: 1 is enough, parts add up.
double reached(const AlkaliLevel& level, double alkali_kg_m3, const CheckContext& context) {
    const Supplementary found = supplementary_of(context.proportions);
    return found.slag / *level.least_slag_percent +
           class_f_ash_percent(context.proportions) / *level.least_ash_percent +
           fume_reached(level, found.fume, alkali_kg_m3, context.tables.alkali);
}

/// The level that follows from the aggregate's reactivity and the class of the structure.
struct DerivedLevel {
    std::string_view name; ///< empty where none follows
    bool salted;           ///< alkali is taken to come in service
};

/// Whether alkali comes in service: no, only where a class says that no salt does.
bool alkali_in_service(const CheckContext& context) {
    const bool none = context.stated.first(
        [](const ExposureClass& exposure) { return exposure.salt == Salt::none; });
    const bool some = context.stated.first([](const ExposureClass& exposure) {
        return exposure.salt == Salt::any || exposure.salt == Salt::deicers;
    });
    return some || !none;
}

std::size_t place_of(const std::string& name, const std::vector<std::string>& names) {
    return static_cast<std::size_t>(std::ranges::find(names, name) - names.begin());
}

DerivedLevel derived_level(const CheckContext& context) {
    const AlkaliRules& rules = context.tables.alkali;
    const Requirements& asked = context.requirements;
    const bool salted = alkali_in_service(context);
    const std::size_t aggregate = place_of(asked.aggregate_reactivity, rules.reactivities);
    const std::size_t structure = place_of(asked.structure_class, rules.structures);
    const auto risk = std::ranges::find(rules.risks, salted, &AlkaliRisk::salted);
    if (aggregate == rules.reactivities.size() || structure == rules.structures.size() ||
        risk == rules.risks.end()) {
        return {{}, salted};
    }
    const auto row = std::ranges::find(rules.prevention, risk->by_reactivity[aggregate],
                                       &AlkaliPrevention::risk);
    return row == rules.prevention.end() ? DerivedLevel{{}, salted}
                                         : DerivedLevel{row->by_structure[structure], salted};
}

/// The level that is asked: the stated one or the derived one, the more severe of the two.
const AlkaliLevel* level_asked(std::string_view stated, std::string_view derived,
                               const AlkaliRules& rules) {
    const AlkaliLevel* asked = nullptr;
    for (const AlkaliLevel& level : rules.levels) { // rising severity
        asked = level.name == stated || level.name == derived ? &level : asked;
    }
    return asked;
}

/// Which key would give the level, where one of two is there.
std::string missing_for_level(const Requirements& asked) {
    return !asked.aggregate_reactivity.empty() ? "'requirements.structure_class'"
           : !asked.structure_class.empty()    ? "'requirements.aggregate_reactivity'"
                                               : "'requirements.alkali_level'";
}

std::string salt_note(const CheckContext& context) {
    const ExposureClass* salted = context.stated.first(
        [](const ExposureClass& exposure) { return exposure.salt == Salt::any; });
    return salted ? " The loading does not cover the alkali that salt from the sea or from deicers "
                    "brings in (" +
                        salted->name + ")."
                  : "";
}

/// What brings alkali by its papers and is no cement: the limits are of cement alone.
std::string uncounted_names(const Proportions& proportions) {
    std::vector<std::string> names;
    for (const Ingredient& ingredient : proportions.ingredients) {
        if (states_alkali(ingredient) && !is_cement(ingredient.material->kind)) {
            names.emplace_back(ingredient.name);
        }
    }
    return joined(names);
}

/// With the names as `uncounted` among the arguments.
std::string uncounted_note(const Proportions& proportions) {
    return uncounted_names(proportions).empty() ? "" : " The alkali of {uncounted} is not counted.";
}

std::string asked_besides(const AlkaliLevel& level) {
    return level.beside_level.empty()
               ? ""
               : ", and besides the supplementary materials of level " + level.beside_level;
}

Phrase held_message(const Loading& loading, const AlkaliLevel& level, const CheckContext& context) {
    const double limit = level.most_kg_m3.value_or(0);
    return {
        (level.most_kg_m3
             ? "alkali from cement {value} of Na2O equivalent, at most {limit} at level {level}" +
                   asked_besides(level)
             : std::string{"alkali from cement {value} of Na2O equivalent; level {level} has no "
                           "limit"}) +
            ": from memory, check it against the standard." + salt_note(context) +
            uncounted_note(context.proportions),
        {quantity("value", {loading.kg_m3, Measure::alkali}),
         quantity("limit", {limit, Measure::alkali}), word("level", level.name),
         word("uncounted", uncounted_names(context.proportions))}};
}

/// Levels that ask shares besides or instead of a limit.
Verdict by_shares(const AlkaliLevel& level, double alkali_kg_m3, bool within,
                  const CheckContext& context) {
    const AlkaliRules& rules = context.tables.alkali;
    const bool own = level.least_slag_percent && !below(reached(level, alkali_kg_m3, context), 1);
    const bool beside =
        !below(reached(level_named(level.beside_level, rules), alkali_kg_m3, context), 1) && within;
    return own || beside ? Verdict::watch : Verdict::fails;
}

/// What a loading leads to before its level is asked.
enum class Standing { level_not_stated, alkali_unknown, beyond_guidance, held };

Standing standing_of(const Loading& loading, const AlkaliLevel* level, bool above_limit,
                     const AlkaliRules& rules) {
    if (!level) {
        return Standing::level_not_stated;
    }
    const bool asks_shares = !level->beside_level.empty();
    if (loading.any_unknown && (asks_shares || !above_limit)) {
        return Standing::alkali_unknown;
    }
    return asks_shares && above(loading.highest_percent, rules.guided_to_percent.value)
               ? Standing::beyond_guidance
               : Standing::held;
}

Phrase message_of(Standing standing, const Loading& loading, const AlkaliLevel* level,
                  const CheckContext& context) {
    switch (standing) {
    case Standing::level_not_stated:
        if (loading.any_unknown) { // a sum of the others would be less than the cements bring
            return {
                "neither the level of prevention nor the alkali of {missing} is stated: the "
                "engineer has the one, the mill certificate the other; add {key} and 'alkali'." +
                    salt_note(context),
                {word("missing", joined(cements_of_unknown_alkali(context.proportions))),
                 word("key", missing_for_level(context.requirements))}};
        }
        return {"alkali from cement {value} of Na2O equivalent: the level of prevention is "
                "not stated; the engineer has it; add {key}." +
                    uncounted_note(context.proportions) + salt_note(context),
                {quantity("value", {loading.kg_m3, Measure::alkali}),
                 word("key", missing_for_level(context.requirements)),
                 word("uncounted", uncounted_names(context.proportions))}};
    case Standing::alkali_unknown:
        return {"the alkali of {missing} is not known: the mill certificate has it; add "
                "'alkali'." +
                    salt_note(context),
                {word("missing", joined(cements_of_unknown_alkali(context.proportions)))}};
    case Standing::beyond_guidance:
        return {"a cement of more than {guided} of alkali needs more supplementary materials than "
                "level {level} requires: the engineer decides." +
                    salt_note(context),
                {word("level", level->name),
                 percent_of("guided", context.tables.alkali->guided_to_percent.value)}};
    case Standing::held:
        break;
    }
    return held_message(loading, *level, context);
}

} // namespace

namespace {

/// How the level follows, where it is not the stated one alone.
std::string derivation(const DerivedLevel& derived, const CheckContext& context) {
    const Requirements& asked = context.requirements;
    return " Level " + std::string{derived.name} + " follows from aggregate of " +
           asked.aggregate_reactivity + " and a structure of " + asked.structure_class +
           (derived.salted ? ", alkali in service" : ", no salt in service") +
           (asked.alkali_level.empty() || asked.alkali_level == derived.name
                ? "."
                : "; " + asked.alkali_level + " is stated, the more severe of the two is held.");
}

void refuse_reactive(const DerivedLevel& derived, const CheckContext& context, Findings& findings) {
    findings.add({.id = check_ids::alkali_loading, .verdict = Verdict::fails}, [&](Check& told) {
        told.requirement = "structure_class";
        told.source = context.tables.alkali->prevention_source;
        told.message = {"such a structure is not built with aggregate of {reactivity}{where}: from "
                        "memory, check it against the standard",
                        {word("reactivity", context.requirements.aggregate_reactivity),
                         word("where", derived.salted ? " where alkali comes in service" : "")}};
    });
}

} // namespace

void check_alkali(const CheckContext& context, Findings& findings) {
    const Loading loading = loading_of(context.proportions);
    const Requirements& asked = context.requirements;
    const bool asks = !asked.alkali_level.empty() || !asked.aggregate_reactivity.empty() ||
                      !asked.structure_class.empty();
    if (!asks && std::ranges::none_of(context.proportions.ingredients, states_alkali)) {
        return; // of a class that asks for evidence, `aggregate.reactivity` says what is missing
    }
    const AlkaliRules& rules = context.tables.alkali;
    const DerivedLevel derived = derived_level(context);
    if (derived.name == "none") {
        refuse_reactive(derived, context, findings);
        return;
    }
    const AlkaliLevel* level = level_asked(asked.alkali_level, derived.name, rules);
    const double tenth =
        amount_precision_kg_m3(context.tables.system) / 10; // as limits are printed
    const bool above_limit = level && level->most_kg_m3 &&
                             at_most({loading.kg_m3, *level->most_kg_m3, tenth}) == Verdict::fails;
    const Standing standing = standing_of(loading, level, above_limit, rules);
    Finding found{.id = check_ids::alkali_loading,
                  .verdict = Verdict::not_checked,
                  .measure = Measure::alkali};
    if (standing == Standing::held) {
        found.verdict = !level->beside_level.empty()
                            ? by_shares(*level, loading.kg_m3, !above_limit, context)
                        : above_limit ? Verdict::fails
                                      : Verdict::watch; // the limits stand from memory
        found.value = loading.kg_m3;
        if (level->most_kg_m3) {
            found.limit = Limit{.low = std::nullopt, .high = *level->most_kg_m3};
        }
    }
    findings.add(found, [&](Check& told) {
        told.requirement = level ? "level " + level->name : "requirements.alkali_level";
        told.source = rules.source;
        told.message = message_of(standing, loading, level, context);
        if (!derived.name.empty()) {
            told.message.text += "{derivation}";
            told.message.arguments.push_back(word("derivation", derivation(derived, context)));
        }
    });
}

} // namespace boardmark::core

#include "young_concrete.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/wall/concrete_temperatures.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

std::optional<double> colder(std::optional<double> left, std::optional<double> right) {
    return left && right ? std::min(*left, *right) : left ? left : right;
}

/// The temperatures of air or concrete after placing; empty where nothing tells how it goes on.
TemperatureHistory history_of(const WallPlacing& placing, bool is_protected,
                              std::optional<double> later_c) {
    constexpr double long_enough_h = 365.0 * 24;
    TemperatureHistory history;
    if (is_protected) {
        history.push_back({*placing.protected_until_h, *placing.held_at_c});
    }
    if (later_c) {
        history.push_back({long_enough_h, *later_c});
    }
    return history;
}

TemperatureHistory not_above(TemperatureHistory history, double most_c) {
    for (TemperatureStretch& stretch : history) {
        stretch.temperature_c = std::min(stretch.temperature_c, most_c);
    }
    return history;
}

/// The curve of the slowest cement: no paper of the mix says how fast its own is.
const EnStrengthGain& slowest_gain(const CuringRules& rules) {
    return std::ranges::max_element(rules.en_strength_gain, {},
                                    [](const auto& gain) { return gain.second.s; })
        ->second;
}

/// Why the curve of strength by age does not hold for this concrete; nothing where it does.
std::optional<Phrase> why_no_curve(const Wall& wall, const FormCase& pour) {
    constexpr double age_of_curve_d = 28;
    if (pour.cement != FormCement::portland) {
        return Phrase{"by strength: its curve holds for portland cement Type I to III alone", {}};
    }
    if (pour.retards != false) {
        return Phrase{"by strength: an admixture may delay setting ('retards' is not 'no')", {}};
    }
    if (requirements_of(wall.mix).strength_age_d > age_of_curve_d) {
        return Phrase{"by strength: its curve begins from the strength at 28 d", {}};
    }
    return std::nullopt;
}

/// Slag and ash delay together: each takes its part of what time alone allows.
bool comes_slowly(const FormCase& pour, const CuringRules& rules) {
    const double slag = pour.slag_percent.value_or(0) / rules.strip_slag_most_percent.value;
    const double ash = pour.fly_ash_percent.value_or(0) / rules.strip_ash_most_percent.value;
    return above(slag + ash, 1);
}

/// Frost may come before a face is protected again: also where nobody has asked the forecast in
/// weather that counts as cold.
bool frost_may_come(const YoungConcrete& young, const Tables& tables) {
    constexpr double freezing_c = 0;
    return young.coldest_air_c &&
           (!above(*young.coldest_air_c, freezing_c) ||
            (!young.forecast && below(*young.coldest_air_c, tables.weather->cold_air_c.value)));
}

} // namespace

YoungConcrete young_concrete(const Wall& wall, const Proportions& proportions,
                             const Tables& tables) {
    const CuringRules& rules = tables.placing->curing;
    const WallPlacing& placing = wall.placing;
    YoungConcrete young{.pour = form_case(wall, proportions, 1, 1, tables),
                        .concrete_c = {},
                        .placing_air_c = {},
                        .coldest_air_c = {},
                        .lift = {}};
    const ConcreteTemperatures temperatures = concrete_temperatures(wall, proportions);
    if (temperatures.concrete_stated) {
        young.concrete_c = temperatures.concrete->colder.value_c;
    }
    if (temperatures.air) {
        young.placing_air_c = temperatures.air->colder.value_c;
    }
    young.coldest_air_c = colder(young.placing_air_c, placing.lowest_air_c);
    young.forecast = placing.lowest_air_c.has_value();
    young.is_protected = placing.held_at_c && placing.protected_until_h;
    young.no_curve = why_no_curve(wall, young.pour);
    young.binder_known = young.pour.slag_percent && young.pour.fly_ash_percent;
    young.strength_comes_slowly = comes_slowly(young.pour, rules);
    StrippedLift& lift = young.lift;
    lift.air = history_of(placing, young.is_protected, young.coldest_air_c);
    lift.frost = frost_may_come(young, tables);
    lift.strength_28d_mpa = strength_by(Specimen::cylinder, requirements_of(wall.mix));
    lift.gain = slowest_gain(rules);
    lift.gain_is_its_own = !young.no_curve;
    lift.set_h = placing.end_of_set_h ? placing.end_of_set_h : placing.setting_h;
    if (young.concrete_c) {
        lift.concrete = not_above(lift.air, *young.concrete_c);
    }
    if (!young.no_curve && lift.concrete.empty()) {
        young.no_curve =
            Phrase{"by strength: the temperatures of air and concrete are not both stated", {}};
    }
    return young;
}

std::vector<Phrase> doubts_of_time(const YoungConcrete& young, const CuringRules& rules) {
    std::vector<Phrase> doubts;
    const auto doubt = [&](bool open, Phrase phrase) {
        if (open) {
            doubts.push_back(std::move(phrase));
        }
    };
    const auto& concrete_c = young.concrete_c;
    doubt(!young.binder_known,
          {"it is not stated what the cement contains ('standard', 'contains')", {}});
    doubt(young.strength_comes_slowly,
          {"more than {slag} slag cement or {ash} fly ash gains strength too slowly for it",
           {percent_of("slag", rules.strip_slag_most_percent.value),
            percent_of("ash", rules.strip_ash_most_percent.value)}});
    doubt(young.pour.retards == true, {"an admixture delays setting", {}});
    doubt(!young.pour.retards,
          {"whether an admixture delays setting is not stated ('retards')", {}});
    doubt(!concrete_c, {"'concrete_temperature' is not stated", {}});
    doubt(concrete_c && below(*concrete_c, rules.least_c.value),
          {"the concrete is placed below {least}",
           {quantity("least", {rules.least_c.value, Measure::temperature})}});
    doubt(!young.forecast,
          {"'lowest_air' is not stated, so the air is taken to stay as it is", {}});
    doubt(!young.placing_air_c,
          {"'air_temperature' is not stated: the air at placing is not known", {}});
    doubt(!young.lift.set_h, {"it is not stated when it has set ('setting' or 'end_of_set')", {}});
    return doubts;
}

} // namespace boardmark::core

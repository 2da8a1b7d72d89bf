#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/paper/job_papers.hpp>

#include "../../code/stated_classes.hpp"
#include "faults.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <string>

namespace boardmark::core {
namespace {

constexpr Bounds possible_strength_mpa{.low = 2, .high = 200};
constexpr Bounds possible_slump_mm{.low = 0, .high = 305}; // the cone is 305 mm high

/// Classes of a code: known ones, each once, and one of each category where the code has it so.
void find_class_faults(const std::vector<std::string>& exposure, const ClassNames& code,
                       Field field, const FaultList& list) {
    if (exposure.size() > most_classes) {
        list.impossible(field, "has more classes than a code has");
        return;
    }
    std::map<std::size_t, std::string> stated; // by category
    for (std::size_t i = 0; i < exposure.size(); ++i) {
        const std::string& name = exposure[i];
        const NamedClass* known = code.find(name);
        if (!known) {
            list.unknown(field, name);
        } else if (std::find(exposure.begin(), exposure.begin() + static_cast<std::ptrdiff_t>(i),
                             name) != exposure.begin() + static_cast<std::ptrdiff_t>(i)) {
            list.impossible(field, "has " + name + " and " + name + " of one category");
        } else if (const auto [other, added] = stated.emplace(known->category, name);
                   !added && !code.several_of_category) {
            list.impossible(field, "has " + other->second + " and " + name + " of one category");
        }
    }
}

void find_word_faults(const Requirements& asked, UnitSystem system, const Vocabulary& words,
                      const FaultList& list) {
    const bool known =
        asked.code.empty() || asked.code_file || std::ranges::count(words.codes, asked.code) > 0;
    if (!known) {
        list.unknown(Field::code, asked.code);
    }
    const CodeTables& code = words.code_of(asked, system);
    if (asked.code_file) {
        find_code_faults(code, Field::code, list);
        if (!asked.code.empty() && asked.code != code.name) {
            list.impossible(Field::code,
                            "is '" + asked.code + "', and its file is of '" + code.name + "'");
        }
    }
    find_class_faults(asked.exposure, class_names(code), Field::exposure, list);
    for (const ClassesByCode& other : asked.exposure_by_code) {
        if (!other.code_file && std::ranges::count(words.codes, other.code) == 0) {
            list.unknown(Field::exposure_by_code, other.code);
            continue;
        }
        if (other.code_file) {
            find_code_faults(*other.code_file, Field::exposure_by_code, list);
        }
        find_class_faults(other.exposure,
                          other.code_file ? class_names(*other.code_file)
                                          : words.class_names(other.code),
                          Field::exposure_by_code, list);
    }
    if (!asked.chloride_class.empty() &&
        std::ranges::count(code.chloride.classes_for(asked.reinforced), asked.chloride_class,
                           &ChlorideClass::name) == 0) {
        list.unknown(Field::chloride_class, asked.chloride_class);
    }
    if (!asked.alkali_level.empty() &&
        std::ranges::count(words.tables(system).alkali->levels, asked.alkali_level,
                           &AlkaliLevel::name) == 0) {
        list.unknown(Field::alkali_level, asked.alkali_level);
    }
}

void find_record_faults(const StrengthRecords& records, const FaultList& list) {
    list.hold(Field::records_tests, records.tests, {.low = 1, .high = 100000});
    list.hold(Field::records_deviation, records.standard_deviation_mpa, {.low = 0, .high = 30});
    list.hold(Field::records_strength, records.strength_mpa, possible_strength_mpa);
    list.hold(Field::records_age, records.age_d, {.low = 0, .high = 36525});
}

void find_trial_curve_faults(const std::vector<CurvePoint>& curve, const FaultList& list) {
    if (curve.size() == 1) {
        list.impossible(Field::strength_curve, "has a single point");
    }
    for (std::size_t i = 0; i < curve.size(); ++i) {
        list.hold(Field::strength_curve, curve[i].w_cm, {.low = 0.1, .high = 2});
        list.hold(Field::strength_curve, curve[i].strength_mpa, {.low = 0.5, .high = 300});
        if (i > 0 && !(curve[i].w_cm > curve[i - 1].w_cm)) {
            list.impossible(Field::strength_curve, "has ratios that do not increase");
        } else if (i > 0 && !(curve[i].strength_mpa < curve[i - 1].strength_mpa)) {
            list.impossible(Field::strength_curve, "has a strength that does not fall");
        }
    }
}

/// A line that `fit_line` made has all of this.
void find_line_faults(const StrengthLine& line, const FaultList& list) {
    const bool finite = std::isfinite(line.intercept) && std::isfinite(line.slope) &&
                        std::isfinite(line.mean_w_cm) && std::isfinite(line.deviation) &&
                        std::isfinite(line.spread) && line.spread > 0 && line.deviation >= 0;
    if (!finite || line.points.size() < least_ratios ||
        line.residuals.size() != line.points.size() || !(line.lowest_w_cm < line.highest_w_cm)) {
        list.impossible(Field::strength_line, "is no line through three ratios: see fit_line");
    }
}

void find_slump_faults(const Requirements& asked, const FaultList& list) {
    list.hold(Field::slump, asked.slump_mm, possible_slump_mm);
    list.hold(Field::slump_before_reducer, asked.slump_before_reducer_mm, possible_slump_mm);
    if (asked.slump_before_reducer_mm && *asked.slump_before_reducer_mm > asked.slump_mm) {
        list.impossible(Field::slump_before_reducer, "is above slump_mm: a reducer adds slump");
    }
    if (const auto& window = asked.slump_window) {
        list.hold(Field::slump_window, window->low_mm, possible_slump_mm);
        list.hold(Field::slump_window, window->high_mm, possible_slump_mm);
        if (asked.slump_mm < window->low_mm || asked.slump_mm > window->high_mm) {
            list.impossible(Field::slump_window, "does not hold slump_mm");
        }
    }
    list.hold(Field::time_to_place, asked.time_to_place_min, {.low = 0, .high = 180});
}

void find_air_faults(const Requirements& asked, const FaultList& list) {
    if (asked.air.basis == AirBasis::stated) {
        list.hold(Field::air, asked.air.percent, {.low = 0, .high = 20});
    }
    if (list.hold(Field::air_loss, asked.air_loss_percent, {.low = 0, .high = 5}) &&
        asked.air.basis == AirBasis::none && asked.air_loss_percent > 0) {
        list.impossible(Field::air_loss, "stands where no air is entrained: there is none to lose");
    }
}

void find_placing_faults(const Requirements& asked, const FaultList& list) {
    list.hold(Field::thickness, asked.section.thickness_mm, {.low = 20, .high = 20000});
    list.hold(Field::clear_bar_spacing, asked.section.clear_bar_spacing_mm,
              {.low = 5, .high = 2000});
    list.hold(Field::clear_cover, asked.section.clear_cover_mm, {.low = 5, .high = 500});
    list.hold(Field::air_temperature, asked.placing.air_c, {.low = -40, .high = 60});
    list.hold(Field::wind, asked.placing.wind_km_h, {.low = 0, .high = 150});
    list.hold(Field::humidity, asked.placing.humidity_percent, whole_share);
    list.hold(Field::haul, asked.placing.haul_h, {.low = 0, .high = 3});
    if (asked.site) {
        list.hold(Field::soil_sulfate, asked.site->soil_sulfate_percent, whole_share);
    }
}

} // namespace

void find_requirement_faults(const Requirements& asked, UnitSystem system, const Vocabulary& words,
                             const FaultList& list) {
    find_word_faults(asked, system, words, list);
    const bool strong = list.hold(Field::strength, asked.strength_mpa, possible_strength_mpa);
    list.hold(Field::twin_strength, asked.twin_strength_mpa, possible_strength_mpa);
    list.hold(Field::strength_age, asked.strength_age_d, {.low = 1, .high = 365});
    if (asked.records) {
        find_record_faults(*asked.records, list);
    }
    find_trial_curve_faults(asked.strength_curve, list);
    if (asked.strength_line) {
        find_line_faults(asked.strength_line->line, list);
    }
    if (asked.average &&
        list.hold(Field::average, asked.average->strength_mpa, {.low = 2, .high = 300}) && strong &&
        asked.average->strength_mpa < asked.strength_mpa * (1 - 1e-9)) {
        list.impossible(Field::average, "is below strength_mpa: half of all tests would fail");
    }
    find_slump_faults(asked, list);
    find_air_faults(asked, list);
    list.hold(Field::minimum_binder, asked.minimum_binder_kg_m3, {.low = 0, .high = 1200});
    list.hold(Field::defective, asked.defective_percent, {.low = 0, .high = 50});
    if (asked.site_control && *asked.site_control != SiteControl::good &&
        *asked.site_control != SiteControl::fair) {
        list.unknown(Field::site_control, std::to_string(static_cast<int>(*asked.site_control)));
    }
    find_placing_faults(asked, list);
    if (asked.papers) {
        find_paper_faults(*asked.papers, list);
    }
}

} // namespace boardmark::core

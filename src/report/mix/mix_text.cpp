#include <boardmark/report/mix/mix_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include "../figure/aggregate_figures.hpp"
#include "../figure/grading_figure.hpp"
#include "../figure/strength_figure.hpp"
#include "../figure/volumes_figure.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/wrap.hpp"
#include "aggregate_flow.hpp"
#include "code_matrix.hpp"
#include "ingredients_text.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

Flow heading(const MixResult& result, const TextStyle& style) {
    const bool us = style.system == UnitSystem::us;
    const std::string unit = us ? "1 yd3" : "1 m3";
    const std::string& code = result.requirements.code;
    const std::string limits = code.empty() ? "" : ", limits of " + code;
    Flow flow;
    if (result.proportions.estimate) {
        flow += paragraph("ESTIMATE with usual aggregate figures: it must not be batched.", {});
        flow += "\n";
    }
    flow += paragraph(text::printable(result.title), {}) + file_line(result.inputs);
    flow += paragraph(result.proportions.submitted
                          ? "Submitted amounts for " + unit + limits
                          : "Proportions for " + unit + " by " + result.proportions.method + ", " +
                                result.proportions.procedure + limits,
                      {});
    return flow + "\n" + verdict_line(result.checks, style.system);
}

std::string exposure_text(const core::Requirements& requirements) {
    if (requirements.exposure.empty()) {
        return "not stated";
    }
    std::string text = fmt::format("{}", fmt::join(requirements.exposure, ", "));
    if (!requirements.exposure_by_site.empty()) {
        text += fmt::format(" (by the site: {})", fmt::join(requirements.exposure_by_site, ", "));
    }
    return text;
}

std::string site_text(const core::Site& site, UnitSystem system) {
    std::vector<std::string> parts;
    const auto add = [&](std::optional<bool> answer, const char* yes, const char* no) {
        if (answer) {
            parts.push_back(*answer ? yes : no);
        }
    };
    add(site.freezing, "freezing", "no freezing");
    add(site.wet_when_freezing, "wet when it freezes", "seldom wet when it freezes");
    add(site.deicer, "deicing salt", "no deicing salt");
    if (site.sea) {
        parts.push_back(*site.sea == core::Sea::none    ? "no sea water"
                        : *site.sea == core::Sea::spray ? "sea spray"
                                                        : "tidal sea water");
    }
    add(site.salty_air, "salty air", "no salty air");
    if (site.wetting) {
        constexpr const char* words[] = {"dry", "sheltered from rain", "rained on", "long wet",
                                         "under water"};
        parts.push_back(words[static_cast<std::size_t>(*site.wetting)]);
    }
    if (site.facing) {
        parts.push_back(*site.facing == core::Facing::vertical ? "vertical faces"
                                                               : "horizontal faces");
    }
    add(site.aggressive_ground, "aggressive ground", "no aggressive ground");
    if (site.soil_sulfate_percent) {
        parts.push_back("soil sulfate " +
                        shown({*site.soil_sulfate_percent, Measure::sulfate}, system));
    }
    return fmt::format("{}", fmt::join(parts, ", "));
}

std::string curve_text(const std::vector<core::CurvePoint>& curve, UnitSystem system) {
    std::vector<std::string> points;
    for (const core::CurvePoint& point : curve) {
        points.push_back(shown({point.strength_mpa, Measure::strength}, system) + " at w/cm " +
                         shown({point.w_cm, Measure::w_cm}, system));
    }
    return fmt::format("{}", fmt::join(points, ", "));
}

std::string section_text(const core::Section& section, UnitSystem system) {
    std::vector<std::string> parts;
    const auto add = [&](const char* what, std::optional<double> mm) {
        if (mm) {
            parts.push_back(what + shown({*mm, Measure::length}, system));
        }
    };
    add("between the forms ", section.thickness_mm);
    add("between bars ", section.clear_bar_spacing_mm);
    add("cover ", section.clear_cover_mm);
    return fmt::format("{}", fmt::join(parts, ", "));
}

std::string placing_text(const core::PlacingConditions& placing, UnitSystem system) {
    std::vector<std::string> parts;
    const auto add = [&](const char* what, std::optional<double> value, Measure measure) {
        if (value) {
            parts.push_back(what + shown({*value, measure}, system));
        }
    };
    add("air ", placing.air_c, Measure::temperature);
    add("wind ", placing.wind_km_h, Measure::wind);
    add("humidity ", placing.humidity_percent, Measure::percent);
    add("haul ", placing.haul_h, Measure::duration);
    return fmt::format("{}", fmt::join(parts, ", "));
}

std::string strength_text_of(const core::Requirements& requirements, UnitSystem system) {
    std::string text = shown({requirements.strength_mpa, Measure::strength}, system);
    if (requirements.specimen == core::Specimen::cube) {
        text += " of cubes";
    }
    return requirements.strength_class.empty() ? text : requirements.strength_class + ", " + text;
}

Flow text_of_requirements(const core::Requirements& requirements, UnitSystem system) {
    Grid grid{{Align::left, Align::left}};
    grid.add({"strength", strength_text_of(requirements, system) + ", specified at " +
                              shown({requirements.strength_age_d, Measure::age}, system)});
    grid.add({"exposure", exposure_text(requirements) +
                              (requirements.reinforced ? ", reinforced" : ", plain concrete")});
    if (requirements.site) {
        grid.add({"site", site_text(*requirements.site, system)});
    }
    grid.add({"slump", slump_text(requirements, system)});
    grid.add({"air", air_text(requirements, system)});
    if (requirements.minimum_binder_kg_m3) {
        const std::string least = "minimum cementitious material";
        grid.add({system == UnitSystem::us ? in_us_trade_words(least) : least,
                  shown({*requirements.minimum_binder_kg_m3, Measure::concentration}, system)});
    }
    if (requirements.board_marked) {
        grid.add({"finish", "board-marked"});
    }
    if (requirements.records) {
        grid.add(
            {"test record",
             fmt::format("{} tests, standard deviation {}", requirements.records->tests,
                         shown({requirements.records->standard_deviation_mpa, Measure::strength},
                               system))});
    }
    if (!requirements.strength_curve.empty()) {
        grid.add({"own trials", curve_text(requirements.strength_curve, system)});
    }
    if (const std::string section = section_text(requirements.section, system); !section.empty()) {
        grid.add({"section", section});
    }
    if (const std::string placing = placing_text(requirements.placing, system); !placing.empty()) {
        grid.add({"placing", placing});
    }
    return grid;
}

Flow text_of_totals(const core::Proportions& proportions, UnitSystem system) {
    const core::Totals& totals = proportions.totals;
    const auto in_units = [&](double value, Measure measure) {
        return shown({value, measure}, system);
    };
    Grid grid{{Align::left, Align::left}};
    const core::Governor governor = proportions.selection.w_cm_governed_by;
    grid.add({"w/cm",
              in_units(totals.w_cm, Measure::w_cm) + (proportions.submitted ? ", as submitted"
                                                      : governor == core::Governor::given
                                                          ? ", as given"
                                                          : ", governed by " + name_of(governor))});
    grid.add({"mixing water", in_units(totals.water_kg_m3, Measure::concentration) +
                                  ", the admixtures' liquid counted"});
    const std::string binder = "cementitious material";
    grid.add({system == UnitSystem::us ? in_us_trade_words(binder) : binder,
              in_units(totals.binder_kg_m3, Measure::concentration)});
    if (totals.volume_m3) {
        grid.add({"fresh density", in_units(*totals.fresh_density_kg_m3 / *totals.volume_m3,
                                            Measure::fresh_density)});
        grid.add({"paste, mortar", in_units(*totals.paste_percent, Measure::percent) + ", " +
                                       in_units(*totals.mortar_percent, Measure::percent) +
                                       " of the volume"});
    }
    return grid;
}

} // namespace

Flow flow_of(const MixResult& result, const TextStyle& style) {
    const core::Proportions& proportions = result.proportions;
    const std::vector<core::Step>& steps = proportions.worksheet.steps;
    Flow page = heading(result, style);
    page += section(style.system == UnitSystem::us
                        ? "INGREDIENTS of 1 yd3, aggregates saturated surface-dry"
                        : "INGREDIENTS of 1 m3, aggregates saturated surface-dry") +
            ingredients_text(proportions, style.system);
    page += section("TOTALS") + text_of_totals(proportions, style.system);
    page += section("CHECKS") + text_of_checks(result.checks, style.system);
    if (!result.codes.empty()) {
        page += code_matrix(result.codes, style.system);
    }
    page += aggregate_flow(result, style.system);
    page += section("ASKED") + text_of_requirements(result.requirements, style.system) +
            Block{Figures{[&result, system = style.system] {
                return strength_figure(result, system) +
                       volumes_figure(result.proportions, system) + grading_figures(result) +
                       aggregate_figures(result, system);
            }}};
    page +=
        folded_section(proportions.submitted ? "FOUND, step by step" : "SELECTED, step by step") +
        text_of_steps(steps, style.system);
    if (style.explain) {
        page += folded_section("REASONS") + text_of_reasons(steps, style);
        page += folded_section("LIMITS, where they come from") + text_of_limits(result.checks);
        page +=
            folded_section("MATERIALS, where their figures come from") + sources_text(proportions);
    }
    page += section("CAUTIONS") + text_of_cautions(proportions.worksheet.cautions, style);
    return page;
}

std::string text(const MixResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const MixResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = result.command, .inputs = result.inputs});
}

} // namespace boardmark::report

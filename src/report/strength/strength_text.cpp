#include <boardmark/report/strength/strength_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/date.hpp>
#include <boardmark/units/unit.hpp>

#include "../figure/strength_figure.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/wrap.hpp"

#include <fmt/format.h>

#include <cmath>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;
using core::Verdict;

std::string strength_text(double mpa, UnitSystem system) {
    return shown({mpa, Measure::strength}, system);
}

std::string specimen_text(const core::SpecimenSize& specimen, UnitSystem system) {
    const std::string width = shown({specimen.width_mm, Measure::length}, system);
    return specimen.shape == core::SpecimenShape::cube
               ? "cubes " + width
               : "cylinders " + width + " x " +
                     shown({specimen.height_mm, Measure::length}, system);
}

Flow heading(const StrengthResult& result, const TextStyle& style) {
    const core::StrengthRecord& record = result.record;
    const bool aci = record.code == core::AcceptanceCode::aci_318;
    std::string asked = strength_text(record.specified_mpa, style.system);
    if (!aci) {
        asked = record.strength_class + ", " + asked + " by these specimens,";
    }
    std::string line =
        fmt::format("Strength results, {}; specified {} at {} ({})",
                    specimen_text(record.specimen, style.system), asked,
                    shown({record.strength_age_d, Measure::age}, style.system), record.code_name);
    return paragraph(text::printable(record.title), {}) + file_line(result.inputs) +
           paragraph(line, {}) + "\n" +
           verdict_line(result.findings.checks, style.system, "NOT ACCEPTED");
}

/// What is wrong with a test or with the average that ends at it, and by how much.
std::string judgement(const core::JudgedTest& judged, UnitSystem system) {
    std::string text;
    const auto add = [&](Verdict verdict, double short_mpa, const std::string& what) {
        if (verdict == Verdict::holds || verdict == Verdict::not_checked) {
            return;
        }
        text += (text.empty() ? "" : "; ") + what +
                (verdict == Verdict::fails ? " FAILS by " : " short by ") +
                words({"{short}",
                       {{"short", core::Quantity{short_mpa, Measure::strength}},
                        {"short_limit", core::Quantity{0, Measure::strength}}}},
                      system);
    };
    add(judged.verdict, judged.short_mpa, "test");
    add(judged.mean_verdict, judged.mean_short_mpa, "average");
    if (judged.late) {
        return "tested at " + shown({judged.test.age_d, Measure::age}, system) +
               (text.empty() ? "" : "; " + text);
    }
    if (judged.running_mean_mpa && judged.mean_verdict == Verdict::not_checked) {
        return text.empty() ? "average open" : text;
    }
    return text.empty() ? "holds" : text;
}

std::string or_dash(std::optional<double> value, Measure measure, UnitSystem system) {
    return value ? shown({*value, measure}, system) : "-";
}

Flow text_of_tests(const StrengthResult& result, UnitSystem system) {
    const int averaged = result.findings.acceptance.averaged;
    Grid rows{{Align::left, Align::left, Align::right, Align::right, Align::right, Align::right,
               Align::right, Align::right, Align::left}};
    rows.head({"batch", "cast", "w/cm", "air", "of", "range", "strength",
               averaged > 0 ? fmt::format("mean of {}", averaged) : "mean", ""});
    for (const core::JudgedTest& judged : result.findings.tests) {
        const core::StrengthTest& test = judged.test;
        rows.add({column_name(test.batch.name),
                  test.batch.cast ? units::written_date(*test.batch.cast) : "-",
                  or_dash(test.batch.w_cm, Measure::w_cm, system),
                  or_dash(test.batch.air_percent, Measure::percent, system),
                  std::to_string(test.specimens.size()), strength_text(test.range_mpa, system),
                  strength_text(test.mean_mpa, system),
                  or_dash(judged.running_mean_mpa, Measure::strength, system),
                  judgement(judged, system)});
    }
    constexpr std::size_t ratios = 2;
    rows.even_out(ratios);
    return rows;
}

/// To the step in which a strength is written, up: what is pasted asks no less than the record.
std::string deviation_rounded_up(double mpa, UnitSystem system) {
    const double step_mpa = system == UnitSystem::us ? units::unit("psi").to_inside(10) : 0.1;
    constexpr double conversion = 1e-9;
    return strength_text(std::ceil(mpa / step_mpa - conversion) * step_mpa, system);
}

Flow text_of_statistics(const StrengthResult& result, UnitSystem system) {
    const core::StrengthStatistics& found = *result.findings.statistics;
    Grid grid{{Align::left, Align::left}};
    grid.add({"tests",
              fmt::format("{}, from {} to {}", found.tests, strength_text(found.lowest_mpa, system),
                          strength_text(found.highest_mpa, system))});
    grid.add({"average", strength_text(found.mean_mpa, system)});
    if (found.deviation_mpa) {
        grid.add({"standard deviation",
                  fmt::format("{}, {} of the average", strength_text(*found.deviation_mpa, system),
                              shown({*found.percent, Measure::percent}, system))});
    }
    if (const auto& within = found.within_test) {
        grid.add(
            {"within a test",
             fmt::format("{}, {}: {} (from memory)", strength_text(within->deviation_mpa, system),
                         shown({within->percent, Measure::percent}, system), within->rating)});
    }
    if (found.required_average_mpa) {
        grid.add({"required average",
                  strength_text(*found.required_average_mpa, system) +
                      (found.deviation_factor ? fmt::format(", deviation times {:.4g} for {} tests",
                                                            *found.deviation_factor, found.counted)
                                              : ", as without a record")});
    }
    if (found.deviation_factor) {
        grid.add(
            {"for the mix file",
             fmt::format("strength_records: {{tests: {}, standard_deviation: {}, strength: {}}}",
                         found.counted,
                         deviation_rounded_up(*found.counted_deviation_mpa, result.record.system),
                         strength_text(result.record.specified_mpa, result.record.system))});
        grid.add({"", "with its age, as in 'age: 6 months': without it the record stays open"});
    }
    return grid;
}

Flow text_of_projections(const StrengthResult& result, UnitSystem system) {
    Flow text;
    for (const core::Projection& projection : result.findings.projections) {
        const std::string early = shown({projection.early_age_d, Measure::age}, system);
        const std::string age = shown({result.record.strength_age_d, Measure::age}, system);
        if (!projection.sufficient) {
            text +=
                paragraph(fmt::format("{}: {} batches were tested at {} too, too few to project.",
                                      early, projection.pairs, age),
                          {"  ", "  "});
            continue;
        }
        text += paragraph(fmt::format("{}: strength at {} is {:.3f} times that at {}, by {} "
                                      "batches tested at both; one further batch lies between "
                                      "{:.3f} and {:.3f} times (95 %). Valid from {} to {} at {}.",
                                      early, age, projection.ratio, early, projection.pairs,
                                      projection.low_ratio, projection.high_ratio,
                                      strength_text(projection.lowest_early_mpa, system),
                                      strength_text(projection.highest_early_mpa, system), early),
                          {"  ", "  "});
    }
    return text;
}

Flow text_of_line(const core::StrengthLine& line, UnitSystem system) {
    Flow text = paragraph(
        fmt::format("ln(strength, MPa) = {:.4f} {} {:.4f} w/cm; {} tests at {} ratios, r2 {:.3f}, "
                    "scatter {:.1f} %",
                    line.intercept, line.slope < 0 ? "-" : "+", std::abs(line.slope),
                    line.points.size(), line.ratio_count, line.r_squared, 100 * line.deviation),
        {"  ", "  "});
    Grid grid{{Align::right, Align::right, Align::right, Align::left}};
    grid.head({"w/cm", "line", "lower side", "one further test"});
    constexpr int steps = 6;
    for (int i = 0; i <= steps; ++i) {
        const double w_cm =
            line.lowest_w_cm + (line.highest_w_cm - line.lowest_w_cm) * double(i) / steps;
        const core::Band next = core::prediction_at(line, w_cm);
        grid.add(
            {fixed(w_cm, 3), strength_text(core::strength_at(line, w_cm), system),
             strength_text(core::lower_mean_at(line, w_cm), system),
             strength_text(next.low_mpa, system) + " to " + strength_text(next.high_mpa, system)});
    }
    return text + grid +
           paragraph(std::string{"Lower side: what the mean lies above with 95 % confidence; "} +
                         (core::use_of(line) == core::LineUse::none
                              ? "no mix file reads a ratio from this line."
                              : "'requirements.strength_curve: from' this file reads the ratio "
                                "there."),
                     {"  ", "  "});
}

/// What is done about a low test, in its order.
Flow text_of_way_on(const StrengthResult& result, UnitSystem system) {
    std::vector<core::Phrase> steps;
    for (const core::WayStep& step : result.findings.way_on) {
        core::Phrase told = step.text;
        told.text =
            step.name + ": " + told.text + " [" + step.source.citation +
            (step.source.confidence == core::Confidence::from_memory ? ", from memory]" : "]");
        steps.push_back(std::move(told));
    }
    return text_of_order(steps, {.system = system});
}

Flow text_of_cores(const StrengthResult& result, UnitSystem system) {
    Grid grid{{Align::left, Align::left, Align::right, Align::right, Align::right, Align::right,
               Align::right, Align::right}};
    grid.head({"test", "core", "diameter", "length", "ratio", "crushed", "factor", "judged"});
    for (const core::CoredTest& test : result.findings.cores) {
        for (const core::JudgedCore& core : test.cores) {
            grid.add({column_name(test.batch), column_name(core.core.name),
                      shown({core.core.diameter_mm, Measure::length}, system),
                      shown({core.core.length_mm, Measure::length}, system), fixed(core.ratio, 2),
                      strength_text(core.core.strength_mpa, system), fixed(core.factor, 3),
                      strength_text(core.strength_mpa, system)});
        }
        grid.add({column_name(test.batch), "average", "", "", "", "", "",
                  strength_text(test.average_mpa, system)});
    }
    return grid;
}

} // namespace

Flow flow_of(const StrengthResult& result, const TextStyle& style) {
    const core::StrengthFindings& findings = result.findings;
    Flow page = heading(result, style);
    if (findings.statistics) {
        page += section("TOGETHER") + text_of_statistics(result, style.system);
    }
    page += section("CHECKS") + text_of_checks(findings.checks, style.system);
    if (!findings.way_on.empty()) {
        page += section("THE WAY ON from what is low") + text_of_way_on(result, style.system);
    }
    if (!findings.cores.empty()) {
        page += section("CORES") + text_of_cores(result, style.system);
    }
    if (!findings.tests.empty()) {
        page += section("TESTS of production, in order of casting") +
                text_of_tests(result, style.system) + tests_figure(result, style.system);
    }
    if (!findings.projections.empty()) {
        page += section("EARLY AGES") + text_of_projections(result, style.system);
    }
    if (findings.line) {
        page += section("STRENGTH OVER W/CM") + text_of_line(*findings.line, style.system) +
                line_figure(findings, style.system);
    }
    if (style.explain) {
        page += folded_section("REASONS") + text_of_reasons(findings.worksheet.steps, style);
        page += folded_section("LIMITS, where they come from") + text_of_limits(findings.checks);
    }
    return page + section("CAUTIONS") + text_of_cautions(findings.worksheet.cautions, style);
}

std::string text(const StrengthResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const StrengthResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.record.title, .command = "strength", .inputs = result.inputs});
}

} // namespace boardmark::report

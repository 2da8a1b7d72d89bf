#include <boardmark/report/paper/testing_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/csv_cells.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "paper_flow.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

using core::Measure;

std::string quantity_text(double value, Measure measure, core::UnitSystem system) {
    return shown({value, measure}, system);
}

/// "3.4 %", "0.02 %": two digits of a part.
std::string probability_text(double probability) {
    const double percent = 100 * probability;
    return percent > 99.9   ? "above 99.9 %"
           : percent >= 99  ? fmt::format("{:.1f} %", percent)
           : percent >= 10  ? fmt::format("{:.0f} %", percent)
           : percent >= 1   ? fmt::format("{:.1f} %", percent)
           : percent >= 0.1 ? fmt::format("{:.2f} %", percent)
           : percent > 0.01 ? fmt::format("{:.3f} %", percent)
                            : "below 0.01 %";
}

std::string window_text(const core::TestWindow& window, Measure measure, core::UnitSystem system) {
    const auto end = [&](const std::optional<double>& value) {
        return quantity_text(*value, measure, system);
    };
    if (window.low && window.high) {
        return end(window.low) + " to " + end(window.high);
    }
    return window.asked  ? "expected " + end(window.asked)
           : window.low  ? "at least " + end(window.low)
           : window.high ? "at most " + end(window.high)
                         : "written down";
}

std::string tests_text(const core::SamplingPlan& plan) {
    if (!plan.tests) {
        return "Strength tests: as many as the rates below give; one test is all specimens of one "
               "sample at one age.";
    }
    return plan.each_batch ? fmt::format("Strength tests: {} at least, which is every load; one "
                                         "test is all specimens of one sample at one age.",
                                         *plan.tests)
                           : fmt::format("Strength tests: {} at least; one test is all specimens "
                                         "of one sample at one age.",
                                         *plan.tests);
}

Flow rates_table(const core::SamplingPlan& plan, core::UnitSystem system) {
    Grid grid{{Align::right, Align::left}};
    grid.head({"tests", "by the rate"});
    for (const core::SamplingRate& rate : plan.rates) {
        grid.add({rate.tests ? std::to_string(*rate.tests) : "-", words(rate.rule, system)});
    }
    return grid;
}

Flow amounts(const core::SamplingPlan& plan, core::UnitSystem system) {
    if (!plan.volume_m3) {
        return {};
    }
    std::string text =
        fmt::format("Counted from {} ordered, {} of one side, {} {}",
                    quantity_text(*plan.volume_m3, Measure::volume, system),
                    quantity_text(*plan.area_m2, Measure::area, system), *plan.pour_days,
                    *plan.pour_days == 1 ? "day of placing" : "days of placing");
    text += plan.batches ? fmt::format(", {} loads", *plan.batches) : "";
    text += fmt::format("; {} tests where one for each {} and day is asked, as public works do.",
                        *plan.stricter_tests,
                        quantity_text(plan.stricter_each_m3, Measure::volume, system));
    return paragraph(text, {.first = "  ", .other = "  "});
}

Flow specimens_table(const core::SpecimenPlan& plan) {
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::right}};
    grid.head({"specimens of one test", fmt::format("at {:.0f} d", plan.early_age_d),
               fmt::format("at {:.0f} d", plan.age_d), "held", "in all"});
    const auto add = [&](const char* name, int early, int of_age) {
        grid.add({name, std::to_string(early), std::to_string(of_age), std::to_string(plan.held),
                  std::to_string(early + of_age + plan.held)});
    };
    if (plan.specimen == core::Specimen::cube) {
        add("cubes", plan.large_early, plan.large);
    } else {
        add("large cylinders", plan.large_early, plan.large);
        add("small cylinders", plan.small_early, plan.small);
    }
    return grid;
}

Flow fresh_table(const core::TestingPlan& plan, core::UnitSystem system) {
    Grid grid{{Align::left, Align::left, Align::left}};
    grid.head({"fresh test", "held to", "when"});
    for (const core::PourTest& test : plan.fresh) {
        const std::string note = words(test.note, system);
        grid.add({test.name, window_text(test.asked, test.measure, system),
                  words(test.when, system) + (note.empty() ? "" : "; " + note)});
    }
    return grid;
}

Flow luck_table(const core::TestingPlan& plan, core::UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::right, Align::right}};
    grid.head({"concrete", "mean", "a test low", "three low", "job fails", "job passes"});
    for (const core::LuckOfTests& luck : plan.luck) {
        grid.add({luck.concrete, quantity_text(luck.mean_mpa, Measure::strength, system),
                  probability_text(luck.low_test), probability_text(luck.low_average),
                  probability_text(luck.job_fails), probability_text(1 - luck.job_fails)});
    }
    return grid;
}

Flow luck_flow(const core::TestingPlan& plan, core::UnitSystem system) {
    Flow flow = section("WHAT LUCK DOES, an estimate");
    if (plan.luck.empty()) {
        return flow + paragraph("Not known: no record says how the tests scatter.",
                                {.first = "  ", .other = "  "});
    }
    flow += luck_table(plan, system);
    return flow +
           paragraph("Tests are taken as normal and independent. A sound concrete that fails "
                     "is bad luck, a weak one that passes is worse: more tests find more of "
                     "both.",
                     {.first = "  ", .other = "  "});
}

Flow testing_flow(const TestingPlanResult& result, const TextStyle& style) {
    const core::TestingPlan& plan = result.plan;
    Flow page = heading_of(result.heading, "Testing plan", style) +
                paragraph(tests_text(plan.sampling), {});
    page += section("HOW OFTEN") + rates_table(plan.sampling, style.system) +
            amounts(plan.sampling, style.system);
    if (style.explain) {
        page += paragraph("[" + source_words(plan.sampling.source) + "]",
                          {.first = "  ", .other = "  "});
    }
    page += listed(plan.notes, style.system);
    page += section("SPECIMENS") + specimens_table(plan.specimens);
    page += section("FRESH CONCRETE") + fresh_table(plan, style.system);
    page += section("SAMPLES AND SPECIMENS") + listed(plan.handling, style.system);
    page += luck_flow(plan, style.system);
    page += section("WHAT IS KEPT") + listed(plan.kept, style.system);
    return page + checks_of(result.heading, style.system);
}

} // namespace

std::string text(const TestingPlanResult& result, const TextStyle& style) {
    return written(testing_flow(result, style) + "\n" + trace_line(result.heading.inputs), style);
}

std::string html(const TestingPlanResult& result, const TextStyle& style) {
    return html_of(
        testing_flow(result, style),
        {.title = result.heading.title, .command = "specify", .inputs = result.heading.inputs});
}

std::string csv(const TestingPlanResult& result, core::UnitSystem system) {
    std::string text = csv_row({"section", "item", "value", "note"});
    const core::SamplingPlan& plan = result.plan.sampling;
    for (const core::SamplingRate& rate : plan.rates) {
        text += csv_row({"rate", csv_cell(words(rate.rule, system)),
                         rate.tests ? std::to_string(*rate.tests) : "", ""});
    }
    if (plan.tests) {
        text += csv_row({"strength tests", "at least", std::to_string(*plan.tests),
                         plan.each_batch ? "every load" : ""});
    }
    for (const core::PourTest& test : result.plan.fresh) {
        text += csv_row({"fresh", csv_cell(test.name),
                         csv_cell(window_text(test.asked, test.measure, system)),
                         csv_cell(words(test.when, system))});
    }
    for (const core::LuckOfTests& luck : result.plan.luck) {
        text += csv_row({"job fails", csv_cell(luck.concrete), fmt::format("{}", luck.job_fails),
                         csv_cell(quantity_text(luck.mean_mpa, Measure::strength, system))});
    }
    return text;
}

} // namespace boardmark::report

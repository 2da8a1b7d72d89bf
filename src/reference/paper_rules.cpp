#include <boardmark/reference/paper_rules.hpp>

#include "lookup.hpp"

#include <utility>

namespace boardmark::reference {
namespace {

using core::Paper;

constexpr std::pair<const char*, Paper> aged[] = {
    {"mill_certificate", Paper::mill_certificate},
    {"supplementary_report", Paper::supplementary_report},
    {"aggregate_report", Paper::aggregate_report},
    {"reactivity_report", Paper::reactivity_report},
    {"trial_batches", Paper::trial_batches},
    {"records", Paper::records},
};

} // namespace

core::PaperRules paper_rules(core::UnitSystem system) {
    core::PaperRules rules;
    const EmbeddedTable& ages = table("paper-ages");
    for (const auto& [name, paper] : aged) {
        const EmbeddedRow& line = row(ages, name);
        rules.ages[paper] = {.age = {.months = static_cast<int>(cell(ages, line, "months")),
                                     .days = static_cast<int>(cell(ages, line, "days"))},
                             .source = source_of(line.source)};
    }
    for (const char* name : {"paper-times", "testing-plan", "testing-plan-en", "aftercare"}) {
        const EmbeddedTable& printed = table(name);
        for (const EmbeddedRow& line : printed.rows) {
            rules.figures[std::string{line.name}] = figure(printed, line.name, system);
        }
    }
    return rules;
}

} // namespace boardmark::reference

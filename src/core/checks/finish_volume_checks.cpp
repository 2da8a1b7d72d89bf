#include <boardmark/core/basis/tables.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "assumed_density.hpp"
#include "compare.hpp"
#include "finish_checks.hpp"

namespace boardmark::core {
namespace {

/// A part of the volume that fills the print of the boards.
struct FillingPart {
    CheckId id;
    const char* what;
    std::optional<double> percent;
    const TypicalFigure& least;
    const char* why;
};

void volume_check(const FillingPart& part, const Proportions& proportions, bool is_assumed,
                  Findings& findings) {
    Finding found{.id = part.id, .verdict = Verdict::not_checked, .measure = Measure::percent};
    const bool enough = part.percent && at_least({*part.percent, part.least.value,
                                                  percent_precision}) == Verdict::holds;
    if (part.percent) {
        found.value = *part.percent;
        found.limit = Limit{.low = part.least.value, .high = std::nullopt};
        found.verdict = enough && !is_assumed ? Verdict::holds : Verdict::watch;
    }
    findings.add(found, [&](Check& told) {
        told.requirement = board_marked;
        told.source = part.least.source;
        if (!part.percent) {
            told.message = {
                "{what}: the amounts and relative densities of all materials are needed",
                {word("what", part.what)}};
            return;
        }
        told.message = {std::string{"{what} {value} of the volume, at least {limit} is advised"} +
                            (enough ? "" : part.why),
                        {word("what", part.what), percent_of("value", *part.percent),
                         percent_of("limit", part.least.value)}};
        if (is_assumed) {
            append_assumed_densities(proportions, told.message);
        }
    });
}

void size_check(const CheckContext& context, Findings& findings) {
    const TypicalFigure& largest = context.tables.finish->largest_size_mm;
    const double size_mm = context.proportions.selection.nominal_max_size_mm;
    const bool small = !above(size_mm, largest.value * (1 + size_tolerance));
    findings.add({.id = check_ids::finish_size,
                  .verdict = small ? Verdict::holds : Verdict::watch,
                  .value = size_mm,
                  .limit = Limit{.low = std::nullopt, .high = largest.value},
                  .measure = Measure::aggregate_size},
                 [&](Check& told) {
                     told.requirement = board_marked;
                     told.source = largest.source;
                     told.message = {
                         small ? "stone of {value}; up to about {limit} flows round bars and into "
                                 "the print of the boards"
                               : "stone of {value} keeps mortar out of the print of the boards: at "
                                 "most about {limit} is advised for the face",
                         {quantity("value", {size_mm, Measure::aggregate_size}),
                          quantity("limit", {largest.value, Measure::aggregate_size})}};
                 });
}

} // namespace

void check_finish_volumes(const CheckContext& context, Findings& findings) {
    const Totals& totals = context.proportions.totals;
    const FinishTables& finish = context.tables.finish;
    const bool is_assumed = density_is_assumed(context.proportions);
    volume_check({check_ids::finish_paste, "paste without air", totals.paste_percent,
                  finish.least_paste_percent,
                  ": lean paste leaves voids and sand streaks at the boards"},
                 context.proportions, is_assumed, findings);
    volume_check({check_ids::finish_mortar, "mortar", totals.mortar_percent,
                  finish.least_mortar_percent,
                  ": too little mortar to fill the print; stone nests show"},
                 context.proportions, is_assumed, findings);
    size_check(context, findings);
}

} // namespace boardmark::core

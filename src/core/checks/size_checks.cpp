#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "passage.hpp"
#include "remembered_limit.hpp"

namespace boardmark::core {
namespace {

constexpr double size_precision_mm = 0.1;

/// A third has no short decimal.
Argument fraction_argument(double fraction) {
    constexpr double third = 1.0 / 3;
    return same(fraction, third) ? word("fraction", "a third")
                                 : quantity("fraction", {fraction, Measure::ratio});
}

} // namespace

void check_passage(const Passage& passage, double size_mm, Findings& findings) {
    Finding found{
        .id = passage.id, .verdict = Verdict::not_checked, .measure = Measure::aggregate_size};
    double limit_mm = 0;
    if (passage.dimension_mm) {
        limit_mm = passage.fraction * *passage.dimension_mm;
        found.value = size_mm;
        found.limit = Limit{.low = std::nullopt, .high = limit_mm};
        found.verdict = at_most({size_mm, limit_mm, size_precision_mm});
        if (passage.only_advises && found.verdict == Verdict::fails) {
            found.verdict = Verdict::watch;
        }
        const bool remembered = passage.source->confidence == Confidence::from_memory;
        found.verdict = passage.borrowed_for || remembered ? worse(found.verdict, Verdict::watch)
                                                           : found.verdict;
    }
    findings.add(found, [&](Check& told) {
        told.requirement = passage.what;
        told.source = *passage.source;
        if (!passage.dimension_mm) {
            told.message = {"'requirements.section.{key}' is not stated; the drawings have it",
                            {word("key", passage.key)}};
            return;
        }
        told.message = {
            passage.only_advises
                ? "stone of {value}; for exposed faces at most {limit} is advised, {fraction} "
                  "of the {what}, {dimension} (not a code limit)"
                : "stone of {value}, at most {limit}: {fraction} of the {what}, {dimension}",
            {quantity("value", {size_mm, Measure::aggregate_size}),
             quantity("limit", {limit_mm, Measure::aggregate_size}),
             fraction_argument(passage.fraction), word("what", passage.what),
             quantity("dimension", {*passage.dimension_mm, Measure::length})}};
        append_memory(told.source, told.message);
        if (passage.borrowed_for) {
            told.message.text += "; that goes by the rule of another code, as the one of {code} is "
                                 "not known here: add its table 'aggregate-size'";
            told.message.arguments.push_back(word("code", *passage.borrowed_for));
        }
    });
}

void check_aggregate_size(const CheckContext& context, Findings& findings) {
    const Section& section = context.requirements.section;
    const SizeRules& rules = context.code.size;
    const std::string* borrowed_for = rules.borrowed ? &context.code.name : nullptr;
    const double size_mm = context.proportions.selection.nominal_max_size_mm;
    check_passage({check_ids::size_form, "narrowest dimension between the forms", "thickness",
                   section.thickness_mm, rules.of_form, &rules.source, false, borrowed_for},
                  size_mm, findings);
    if (context.requirements.reinforced) {
        check_passage({check_ids::size_bars, "clear spacing of the bars", "clear_bar_spacing",
                       section.clear_bar_spacing_mm, rules.of_bar_spacing, &rules.source, false,
                       borrowed_for},
                      size_mm, findings);
        check_passage({check_ids::size_cover, "clear cover", "clear_cover", section.clear_cover_mm,
                       rules.of_cover, &rules.cover_source, true},
                      size_mm, findings);
    }
}

} // namespace boardmark::core

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/strength/expected_strength.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../code/required_strength.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// What a mix is expected to reach, and what that is held against.
struct Outlook {
    Verdict verdict;
    std::optional<double> expected_mpa; ///< or the strength that the mix stays below
    std::string text;
    std::vector<Argument> arguments = {};
};

double required_mpa(const CheckContext& context) {
    return context.proportions.selection.required_average_strength_mpa;
}

/// Whether what the supplier has shown is missing: a table knows nothing of his materials.
bool lacks_evidence(const CheckContext& context) {
    const Requirements& asked = context.requirements;
    return context.proportions.submitted && !asked.average && !asked.strength_line &&
           asked.strength_curve.empty();
}

std::string who_shows(const Proportions& proportions) {
    return proportions.is_load ? "its cylinders decide"
                               : "what it reaches, by its own records or trial batches, is for "
                                 "the supplier to show";
}

/// A strength against the required average and the specified strength.
Verdict verdict_on(double expected_mpa, const CheckContext& context) {
    const double precision = strength_precision_mpa(context.tables.system);
    const double specified_mpa = context.requirements.strength_mpa;
    if (at_least({expected_mpa, required_mpa(context), precision}) == Verdict::holds) {
        return lacks_evidence(context) ? Verdict::not_checked : Verdict::holds;
    }
    const bool below_specified =
        at_least({expected_mpa, specified_mpa, precision}) == Verdict::fails;
    return below_specified && !context.proportions.submitted ? Verdict::fails : Verdict::watch;
}

/// How well a strength is known.
enum class Known { expected, stays_below, not_below };

/// A strength that no trial at this ratio stands behind: never more than a watch.
Verdict unproven(double mpa, const CheckContext& context) {
    const Verdict verdict = verdict_on(mpa, context);
    return verdict == Verdict::holds ? Verdict::watch : verdict;
}

/// The clause behind an expected strength.
std::string compared_text(double expected_mpa, Known known, const CheckContext& context) {
    const Proportions& mix = context.proportions;
    if (!below(expected_mpa, required_mpa(context))) {
        return lacks_evidence(context)
                   ? ", at least the required average of {limit}; " + who_shows(mix)
                   : ", at least the required average of {limit}; an estimate "
                     "until trial batches prove it";
    }
    const std::string cure = mix.is_load     ? ": " + who_shows(mix)
                             : mix.submitted ? ": prove by trial"
                                             : ": lower w/cm, or prove it by trials of your own "
                                               "('requirements.strength_curve')";
    if (known == Known::not_below) {
        return "; whether it reaches the required average of {limit} is not known" + cure;
    }
    if (below(expected_mpa, context.requirements.strength_mpa)) {
        return ", below the specified {specified} and the required average of {limit}" + cure;
    }
    return (known == Known::expected
                ? ", not below the specified {specified}, but below the "
                  "required average of {limit}"
                : ", below the required average of {limit}; whether it reaches "
                  "the specified {specified} is not known") +
           cure;
}

Outlook by_expected(const ExpectedStrength& expected, const CheckContext& context) {
    const Proportions& mix = context.proportions;
    const bool designed = mix.selection.w_cm_governed_by == Governor::strength && !mix.submitted &&
                          !below(expected.mpa, required_mpa(context));
    return {.verdict = verdict_on(expected.mpa, context),
            .expected_mpa = expected.mpa,
            .text = designed ? "designed for the average of {limit}: {value} is expected at w/cm "
                               "{w_cm} by {by}; an estimate until trial batches prove it"
                             : "{value} is expected at w/cm {w_cm} by {by}" +
                                   compared_text(expected.mpa, Known::expected, context),
            .arguments = {word("by", expected.source.citation)}};
}

/// Where the own curve or line gives no strength at the ratio: the table stands in, which knows
/// nothing of the materials.
Outlook by_stand_in(const ExpectedStrength& expected, const CheckContext& context) {
    const bool shown = !context.proportions.submitted || context.requirements.average;
    const Verdict verdict = unproven(expected.mpa, context);
    const bool enough = !below(expected.mpa, required_mpa(context));
    return {.verdict =
                verdict == Verdict::watch && enough && !shown ? Verdict::not_checked : verdict,
            .expected_mpa = expected.mpa,
            .text = "the own results give no strength at w/cm {w_cm}; {value} is expected there "
                    "by {by}" +
                    (enough ? ", at least the required average of {limit}: prove it by trials at "
                              "this ratio"
                            : compared_text(expected.mpa, Known::expected, context)),
            .arguments = {word("by", expected.source.citation)}};
}

/// Where the ratio is higher than any that has a strength.
Outlook by_bound(const ExpectedStrength& weakest, const CheckContext& context) {
    const Verdict verdict = verdict_on(weakest.mpa, context);
    const std::vector<Argument> by{word("by", weakest.source.citation)};
    if (verdict == Verdict::holds || verdict == Verdict::not_checked) {
        return {.verdict = Verdict::not_checked,
                .expected_mpa = std::nullopt,
                .text = "no strength is known at w/cm {w_cm}, only that it stays below the weakest "
                        "of {by}: prove the required average of {limit} by trial",
                .arguments = by};
    }
    return {.verdict = verdict,
            .expected_mpa = weakest.mpa,
            .text = "less than {value}, the weakest of {by}, is expected at w/cm {w_cm}" +
                    compared_text(weakest.mpa, Known::stays_below, context),
            .arguments = by};
}

/// Where the ratio is lower than any that has a strength. With little water strength need not go on
/// rising: it takes full compaction.
Outlook by_floor(const ExpectedStrength& strongest, const CheckContext& context) {
    const bool enough = !below(strongest.mpa, required_mpa(context));
    const bool open = !enough || lacks_evidence(context);
    return {.verdict = open ? Verdict::not_checked : Verdict::watch,
            .expected_mpa = strongest.mpa,
            .text = "w/cm {w_cm} is lower than any in {by}, whose strongest is {value}" +
                    (enough ? ", at least the required average of {limit}; " +
                                  (lacks_evidence(context)
                                       ? who_shows(context.proportions)
                                       : std::string{"prove by trial that strength does not fall "
                                                     "again with so little water"})
                            : compared_text(strongest.mpa, Known::not_below, context)),
            .arguments = {word("by", strongest.source.citation)}};
}

Outlook unknown(const CheckContext& context) {
    return {.verdict = Verdict::not_checked,
            .expected_mpa = std::nullopt,
            .text = context.proportions.submitted
                        ? "the code asks an average of {limit}; " + who_shows(context.proportions)
                        : "no curve and no table gives a strength at w/cm {w_cm}: prove the "
                          "required average of {limit} by trial "
                          "('requirements.strength_curve')"};
}

Outlook outlook_of(const CheckContext& context) {
    const Proportions& mix = context.proportions;
    if (const auto expected = expected_strength(context.requirements, mix, context.tables)) {
        return expected->in_place_of_own ? by_stand_in(*expected, context)
                                         : by_expected(*expected, context);
    }
    if (const auto weakest = strength_bound(context.requirements, mix, context.tables)) {
        return by_bound(*weakest, context);
    }
    if (const auto strongest = strength_floor(context.requirements, mix, context.tables)) {
        return by_floor(*strongest, context);
    }
    return unknown(context);
}

/// An average that the file states is held against the code's.
void hold_stated(const StatedAverage& stated, double code_mpa, UnitSystem system, Check& check) {
    Verdict verdict = at_least({stated.strength_mpa, code_mpa, strength_precision_mpa(system)});
    const bool short_of_it = verdict != Verdict::holds;
    const bool has_basis = !stated.basis.empty();
    if (verdict == Verdict::fails && has_basis) {
        verdict = Verdict::watch;
    }
    check.verdict = worse(verdict, check.verdict);
    check.message.text +=
        !short_of_it ? ". That average is stated; the code's is {code}"
        : has_basis  ? ". That average is stated, below the code's {code}, on this basis: "
                       "{basis}"
                     : ". That average is stated, below the code's {code}, and no basis is "
                       "given";
    check.message.arguments.push_back(quantity("code", {code_mpa, Measure::strength}));
    check.message.arguments.push_back(word("basis", stated.basis));
}

} // namespace

Checks check_average_strength(const CheckContext& context) {
    const auto by_code = code_average(context.requirements, context.tables.code.average_strength);
    Outlook outlook = outlook_of(context);
    const auto strength = [](std::string name, double mpa) {
        return quantity(std::move(name), {mpa, Measure::strength});
    };
    Check check{.id = "strength.average",
                .verdict = outlook.verdict,
                .value = outlook.expected_mpa,
                .limit = Limit{.low = std::max(required_mpa(context), by_code.strength_mpa),
                               .high = std::nullopt},
                .measure = Measure::strength,
                .requirement = "required average strength",
                .source = by_code.source,
                .message = {std::move(outlook.text), std::move(outlook.arguments)}};
    for (Argument& argument :
         std::vector{strength("value", outlook.expected_mpa.value_or(0)),
                     strength("limit", required_mpa(context)),
                     strength("specified", context.requirements.strength_mpa),
                     quantity("w_cm", {context.proportions.totals.w_cm, Measure::w_cm})}) {
        if (argument.name != "value" || outlook.expected_mpa) {
            check.message.arguments.push_back(std::move(argument));
        }
    }
    if (context.requirements.average) {
        hold_stated(*context.requirements.average, by_code.strength_mpa, context.tables.system,
                    check);
    } else if (check.verdict == Verdict::holds && !by_code.record_lacks.empty()) {
        check.verdict = Verdict::watch;
        check.message.text += "; that average counts on a strength record of which {lacks} is not "
                              "stated";
        check.message.arguments.push_back(word("lacks", joined(by_code.record_lacks)));
    }
    if (check.verdict == Verdict::not_checked) {
        check.value = std::nullopt;
        check.limit = std::nullopt;
    }
    return {std::move(check)};
}

} // namespace boardmark::core

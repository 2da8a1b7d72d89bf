#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/strength/expected_strength.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../code/required_strength.hpp"
#include "../method/method_steps.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"
#include "strength_doubt.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

double required_mpa(const CheckContext& context) {
    return context.proportions.selection.required_average_strength_mpa;
}

/// Whether what the supplier has shown is missing: a table knows nothing of his materials.
bool lacks_evidence(const CheckContext& context) {
    const Requirements& asked = context.requirements;
    return context.proportions.submitted && !asked.average && !has_own_strengths(asked);
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

/// By what a mix is expected to reach its average.
enum class OutlookBasis { expected, stand_in, bound, floor, unknown };

/// What a mix is expected to reach, and what that is held against.
struct Outlook {
    OutlookBasis basis;
    Verdict verdict;
    std::optional<double> expected_mpa = {}; ///< or the strength that the mix stays below
    const Source* by = nullptr;              ///< of that strength
};

Outlook by_expected(const ExpectedStrength& expected, const CheckContext& context) {
    return {OutlookBasis::expected, verdict_on(expected.mpa, context), expected.mpa,
            expected.source};
}

std::string expected_text(double expected_mpa, const CheckContext& context) {
    const Proportions& mix = context.proportions;
    const bool designed = mix.selection.w_cm_governed_by == Governor::strength && !mix.submitted &&
                          !below(expected_mpa, required_mpa(context));
    return designed ? "designed for the average of {limit}: {value} is expected at w/cm "
                      "{w_cm} by {by}; an estimate until trial batches prove it"
                    : "{value} is expected at w/cm {w_cm} by {by}" +
                          compared_text(expected_mpa, Known::expected, context);
}

/// Where the own curve or line gives no strength at the ratio: the table stands in, which knows
/// nothing of the materials.
Outlook by_stand_in(const ExpectedStrength& expected, const CheckContext& context) {
    const bool shown = !context.proportions.submitted || context.requirements.average;
    const Verdict verdict = unproven(expected.mpa, context);
    const bool enough = !below(expected.mpa, required_mpa(context));
    return {OutlookBasis::stand_in,
            verdict == Verdict::watch && enough && !shown ? Verdict::not_checked : verdict,
            expected.mpa, expected.source};
}

std::string stand_in_text(double expected_mpa, const CheckContext& context) {
    return "the own results give no strength at w/cm {w_cm}; {value} is expected there by {by}" +
           (!below(expected_mpa, required_mpa(context))
                ? ", at least the required average of {limit}: prove it by trials at this ratio"
                : compared_text(expected_mpa, Known::expected, context));
}

/// Where the ratio is higher than any that has a strength.
Outlook by_bound(const ExpectedStrength& weakest, const CheckContext& context) {
    const Verdict verdict = verdict_on(weakest.mpa, context);
    if (verdict == Verdict::holds || verdict == Verdict::not_checked) {
        return {OutlookBasis::bound, Verdict::not_checked, std::nullopt, weakest.source};
    }
    return {OutlookBasis::bound, verdict, weakest.mpa, weakest.source};
}

std::string bound_text(const std::optional<double>& weakest_mpa, const CheckContext& context) {
    return weakest_mpa
               ? "less than {value}, the weakest of {by}, is expected at w/cm {w_cm}" +
                     compared_text(*weakest_mpa, Known::stays_below, context)
               : "no strength is known at w/cm {w_cm}, only that it stays below the weakest "
                 "of {by}: prove the required average of {limit} by trial";
}

/// Where the ratio is lower than any that has a strength. With little water strength need not go on
/// rising: it takes full compaction.
Outlook by_floor(const ExpectedStrength& strongest, const CheckContext& context) {
    const bool enough = !below(strongest.mpa, required_mpa(context));
    const bool open = !enough || lacks_evidence(context);
    return {OutlookBasis::floor, open ? Verdict::not_checked : Verdict::watch, strongest.mpa,
            strongest.source};
}

std::string floor_text(double strongest_mpa, const CheckContext& context) {
    const std::string text = "w/cm {w_cm} is lower than any in {by}, whose strongest is {value}";
    if (below(strongest_mpa, required_mpa(context))) {
        return text + compared_text(strongest_mpa, Known::not_below, context);
    }
    return text + ", at least the required average of {limit}; " +
           (lacks_evidence(context) ? who_shows(context.proportions)
                                    : "prove by trial that strength does not fall again with so "
                                      "little water");
}

std::string unknown_text(const Proportions& proportions) {
    return proportions.submitted
               ? "the code requires an average of {limit}; " + who_shows(proportions)
               : "no curve and no table gives a strength at w/cm {w_cm}: prove the "
                 "required average of {limit} by trial "
                 "('requirements.strength_curve')";
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
    return {OutlookBasis::unknown, Verdict::not_checked};
}

std::string outlook_text(const Outlook& outlook, const CheckContext& context) {
    switch (outlook.basis) {
    case OutlookBasis::expected:
        return expected_text(*outlook.expected_mpa, context);
    case OutlookBasis::stand_in:
        return stand_in_text(*outlook.expected_mpa, context);
    case OutlookBasis::bound:
        return bound_text(outlook.expected_mpa, context);
    case OutlookBasis::floor:
        return floor_text(*outlook.expected_mpa, context);
    case OutlookBasis::unknown:
        break;
    }
    return unknown_text(context.proportions);
}

Phrase outlook_message(const Outlook& outlook, const CheckContext& context) {
    const auto strength = [](std::string name, double mpa) {
        return quantity(std::move(name), {mpa, Measure::strength});
    };
    Phrase message{outlook_text(outlook, context), {}};
    if (outlook.by) {
        message.arguments.push_back(word("by", outlook.by->citation));
    }
    if (outlook.expected_mpa) {
        message.arguments.push_back(strength("value", *outlook.expected_mpa));
    }
    message.arguments.push_back(strength("limit", required_mpa(context)));
    message.arguments.push_back(strength("specified", context.requirements.strength_mpa));
    message.arguments.push_back(quantity("w_cm", {context.proportions.totals.w_cm, Measure::w_cm}));
    return message;
}

/// An average that the file states, held against the code's.
struct StatedFinding {
    Verdict verdict;
    bool falls_short;
};

StatedFinding hold_stated(const StatedAverage& stated, double code_mpa, UnitSystem system) {
    const Verdict verdict =
        at_least({stated.strength_mpa, code_mpa, strength_precision_mpa(system)});
    const bool has_basis = !stated.basis.empty();
    return {verdict == Verdict::fails && has_basis ? Verdict::watch : verdict,
            verdict != Verdict::holds};
}

void append_stated(const StatedAverage& stated, bool falls_short, double code_mpa,
                   Phrase& message) {
    message.text += !falls_short ? ". That average is stated; the code's is {code}"
                    : !stated.basis.empty()
                        ? ". That average is stated, below the code's {code}, on this basis: "
                          "{basis}"
                        : ". That average is stated, below the code's {code}, and no basis is "
                          "given";
    message.arguments.push_back(quantity("code", {code_mpa, Measure::strength}));
    message.arguments.push_back(word("basis", stated.basis));
}

} // namespace

void check_average_strength(const CheckContext& context, Findings& findings) {
    const auto by_code = code_average(context.requirements, context.code.average_strength);
    const auto& average = context.requirements.average;
    const Outlook outlook = outlook_of(context);
    const StatedFinding stated =
        average ? hold_stated(*average, by_code.strength_mpa, context.tables.system)
                : StatedFinding{Verdict::holds, false};
    const bool doubtful_record =
        !average && outlook.verdict == Verdict::holds && by_code.record_is_silent();
    Finding found{.id = check_ids::strength_average,
                  .verdict =
                      doubtful_record ? Verdict::watch : worse(stated.verdict, outlook.verdict),
                  .measure = Measure::strength};
    const MethodTables& method = context.tables.method;
    const bool margin_of_cubes =
        !context.proportions.submitted && steps_of(method).has_margin_of_cubes;
    const bool of_another = !margin_of_cubes && !average && by_code.borrowed;
    const bool remembered = !margin_of_cubes && !average && !by_code.is_sure() && !of_another;
    const bool by_cubes = context.requirements.specimen == Specimen::cube && !margin_of_cubes &&
                          !context.code.average_strength.by_deviations;
    const double share_percent = context.requirements.defective_percent;
    const double permitted_percent = context.tables.practice.characteristic_defective_percent.value;
    const bool more_defective = margin_of_cubes && above(share_percent, permitted_percent);
    if (by_cubes || of_another || remembered || more_defective) {
        found.verdict = worse(found.verdict, Verdict::watch);
    }
    const bool may_doubt =
        !context.proportions.submitted || context.requirements.strength_line.has_value();
    if (may_doubt) {
        found.verdict = worse(found.verdict, strength_doubt(context));
    }
    if (found.verdict != Verdict::not_checked) {
        found.value = outlook.expected_mpa;
        found.limit =
            Limit{.low = margin_of_cubes ? required_mpa(context)
                                         : std::max(required_mpa(context), by_code.strength_mpa),
                  .high = std::nullopt};
    }
    findings.add(found, [&](Check& told) {
        told.requirement = "required average strength";
        told.source = margin_of_cubes ? Source{method.name, method.absolute_volume.confidence}
                                      : by_code.source;
        told.message = outlook_message(outlook, context);
        if (average) {
            append_stated(*average, stated.falls_short, by_code.strength_mpa, told.message);
        } else if (doubtful_record) {
            told.message.text +=
                "; that average relies on a strength record for which {lacks} is not stated";
            told.message.arguments.push_back(word("lacks", joined(by_code.record_lacks())));
        }
        if (may_doubt) {
            append_strength_doubt(context, told.message);
        }
        if (by_cubes) {
            told.message.text += "; the strength is of cubes, the margin one for cylinders";
        }
        if (more_defective) {
            told.message.text +=
                "; {share} of its results may fall below the strength, of a code's "
                "strength {permitted} may: state 'requirements.defective'";
            told.message.arguments.push_back(percent_of("share", share_percent));
            told.message.arguments.push_back(percent_of("permitted", permitted_percent));
        }
        if (of_another) {
            told.message.text += "; that average goes by ACI 301, as the rule of {code} is not "
                                 "known here";
            told.message.arguments.push_back(word("code", context.code.name));
        } else if (remembered) {
            told.message.text += "; that average goes by a rule that is remembered, not read";
        }
    });
}

} // namespace boardmark::core

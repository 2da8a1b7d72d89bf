#include <boardmark/core/basis/tables.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../method/air_content.hpp"
#include "../mix/fines.hpp"
#include "compare.hpp"
#include "finish_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

Argument amount(std::string name, double kg_m3) {
    return quantity(std::move(name), {kg_m3, Measure::concentration});
}

/// The sieve in millimetres: in inches it would read as nothing.
Argument opening(double mm) {
    return quantity("opening", {mm, Measure::ratio});
}

/// The least that is advised, and how its table was entered.
struct LeastFines {
    double kg_m3;
    std::string how;
};

LeastFines least_fines(const SizeRow& row, double size_mm) {
    const double inside_mm = std::clamp(size_mm, row.sizes_mm.front(), row.sizes_mm.back());
    const TableValue found = *value_at_size(row, inside_mm);
    return {found.value, !same(inside_mm, size_mm) ? " (the nearest size of the table)"
                         : found.interpolated      ? " (between two sizes of the table)"
                                                   : ""};
}

Check least_check(const CheckContext& context) {
    const FinishTables& finish = context.tables.finish;
    const double size_mm = context.proportions.selection.nominal_max_size_mm;
    const LeastFines least = least_fines(finish.least_fines_kg_m3, size_mm);
    const double powder_kg_m3 = core::powder_kg_m3(context.proportions);
    const auto sand_kg_m3 = sand_passing_kg_m3(context.proportions, finish.least_fines_below_mm);
    const double fines_kg_m3 = powder_kg_m3 + sand_kg_m3.value_or(0);
    const bool enough = at_least({fines_kg_m3, least.kg_m3,
                                  amount_precision_kg_m3(context.tables.system)}) == Verdict::holds;

    Check check{.id = "finish.fines_low",
                .verdict = Verdict::not_checked,
                .measure = Measure::concentration,
                .requirement = {},
                .source = finish.least_fines_kg_m3.source};
    check.message.arguments = {opening(finish.least_fines_below_mm), amount("value", fines_kg_m3),
                               amount("limit", least.kg_m3),
                               quantity("size", {size_mm, Measure::aggregate_size})};
    const std::string advised = "at least {limit} is advised at {size} stone" + least.how;
    if (!sand_kg_m3 && !enough) {
        check.message.text = "powder {value}, " + advised +
                             ", the sand's part below {opening} mm "
                             "counted: its sieve analysis tells it; add 'sieves'";
        return check;
    }
    check.value = fines_kg_m3;
    check.limit = Limit{.low = least.kg_m3, .high = std::nullopt};
    check.verdict = enough ? Verdict::holds : Verdict::watch;
    check.message.text =
        "fines below {opening} mm {value}" +
        std::string{sand_kg_m3 ? ", {sand} of it sand, " : " without the sand's own, "} + advised +
        (enough ? "" : ": bleeding and sand streaks threaten; finer sand, stone dust or binder");
    check.message.arguments.push_back(amount("sand", sand_kg_m3.value_or(0)));
    return check;
}

double most_fines_kg_m3(const MostFines& row, const Proportions& proportions) {
    double cement_kg_m3 = 0;
    double pozzolan_kg_m3 = 0;
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        const Kind kind = binder->material->kind;
        if (is_cement(kind) || kind == Kind::slag_cement) {
            cement_kg_m3 += binder->kg_m3;
        } else if (kind != Kind::ground_limestone) {
            pozzolan_kg_m3 += binder->kg_m3;
        }
    }
    const double span_kg_m3 = row.cement_high_kg_m3 - row.cement_low_kg_m3;
    const double fraction = std::clamp((cement_kg_m3 - row.cement_low_kg_m3) / span_kg_m3, 0., 1.);
    const double raised_kg_m3 =
        std::max(cement_kg_m3 - row.cement_high_kg_m3, 0.0) + pozzolan_kg_m3;
    return row.at_low_kg_m3 + fraction * (row.at_high_kg_m3 - row.at_low_kg_m3) +
           std::min(raised_kg_m3, row.raised_by_kg_m3);
}

/// The published row for the stated exposure and the stone; nullptr where none applies.
const MostFines* most_fines_row(const CheckContext& context) {
    const FinishTables& finish = context.tables.finish;
    const ExposureClass* freezing = freezing_class(context.requirements, context.tables);
    if (!freezing || above(context.requirements.strength_mpa, finish.most_fines_strength_mpa)) {
        return nullptr;
    }
    const auto& rows = demanded_air(freezing, context.tables) ? finish.most_fines_freezing
                                                              : finish.most_fines_other;
    const double size_mm = context.proportions.selection.nominal_max_size_mm;
    const auto found = std::ranges::find_if(
        rows, [&](const MostFines& row) { return !above(size_mm, row.up_to_mm); });
    return found == rows.end() ? nullptr : &*found;
}

/// Left out where no published maximum applies and where the sand's part is unknown but matters.
Checks most_check(const CheckContext& context) {
    const MostFines* row = most_fines_row(context);
    if (!row) {
        return {};
    }
    const double opening_mm = context.tables.finish.most_fines_below_mm;
    const Proportions& proportions = context.proportions;
    const double limit_kg_m3 = most_fines_kg_m3(*row, proportions);
    const double powder_kg_m3 = core::powder_kg_m3(proportions);
    const auto sand_kg_m3 = sand_passing_kg_m3(proportions, opening_mm);
    const auto at_most_kg_m3 = sand_passing_at_most_kg_m3(proportions, opening_mm);
    const auto too_many = [&](double fines_kg_m3) {
        return at_most({fines_kg_m3, limit_kg_m3, amount_precision_kg_m3(context.tables.system)}) !=
               Verdict::holds;
    };

    Check check{.id = "finish.fines_high",
                .verdict = Verdict::not_checked,
                .limit = Limit{.low = std::nullopt, .high = limit_kg_m3},
                .measure = Measure::concentration,
                .requirement = {},
                .source = row->source};
    std::string how;
    if (sand_kg_m3) {
        check.value = powder_kg_m3 + *sand_kg_m3;
    } else if (too_many(powder_kg_m3)) {
        check.value = powder_kg_m3;
        how = " without the sand's own";
    } else if (!at_most_kg_m3) {
        return {};
    } else if (!too_many(powder_kg_m3 + *at_most_kg_m3)) {
        check.value = powder_kg_m3 + *at_most_kg_m3;
        how = " at most";
    } else {
        check.limit = std::nullopt;
        check.message = {
            "powder {value}, at most {limit} with the sand's part below {opening} mm: "
            "its sieves end above that; add '0.075 mm' to 'sieves'",
            {amount("value", powder_kg_m3), amount("limit", limit_kg_m3), opening(opening_mm)}};
        return {std::move(check)};
    }
    const bool many = too_many(*check.value);
    check.verdict = many ? Verdict::watch : Verdict::holds;
    check.message = {
        "fines below {opening} mm {value}" + how +
            ", at most {limit} for this cement "
            "content where DIN 1045-2 applies" +
            (many ? ": sticky, and its skin scales and crazes more easily" : ""),
        {opening(opening_mm), amount("value", *check.value), amount("limit", limit_kg_m3)}};
    return {std::move(check)};
}

/// Signs that water will rise along the boards: two are a risk.
Check bleeding_check(const CheckContext& context, Verdict fines) {
    const FinishTables& finish = context.tables.finish;
    const double w_cm = context.proportions.totals.w_cm;
    std::string signs;
    int count = 0;
    const auto sign = [&](bool seen, const char* what) {
        if (seen) {
            signs += (signs.empty() ? "" : ", ") + std::string{what};
            ++count;
        }
    };
    const bool wet = at_most({w_cm, finish.bleeding_w_cm.value, w_cm_precision}) != Verdict::holds;
    sign(wet, "w/cm {value} above {limit}");
    sign(fines == Verdict::watch, "few fines");
    sign(!context.proportions.selection.air_entrained, "no entrained air");
    const int most = static_cast<int>(finish.bleeding_signs.value);
    const bool open = fines == Verdict::not_checked && count < most;

    Check check{.id = "finish.bleeding",
                .verdict = count >= most ? Verdict::watch
                           : open        ? Verdict::not_checked
                                         : Verdict::holds,
                .measure = Measure::w_cm,
                .requirement = {},
                .source = finish.bleeding_signs.source};
    if (!open) {
        check.value = w_cm;
        check.limit = Limit{.low = std::nullopt, .high = finish.bleeding_w_cm.value};
    }
    check.message.text =
        count >= most ? "bleeding is likely (" + signs +
                            "): it draws sand streaks and runs at the board joints; see it on the "
                            "trial batch"
        : open && count == 0
            ? std::string{"w/cm and air show no sign of bleeding, and the fines are not known: the "
                          "sieve analysis of the sand has them; add 'sieves' to 0.3 mm (No. 50)"}
        : open ? "signs of bleeding (" + signs +
                     "), and the fines are not known: the sieve analysis "
                     "of the sand has them; add 'sieves' to 0.3 mm (No. 50)"
        : count == 0 ? "no sign of bleeding: w/cm {value} up to {limit}, air entrained"
                     : "one sign of bleeding only (" + signs + ")";
    check.message.arguments = {quantity("value", {w_cm, Measure::w_cm}),
                               quantity("limit", {finish.bleeding_w_cm.value, Measure::w_cm})};
    return check;
}

} // namespace

Checks check_finish_fines(const CheckContext& context) {
    Checks checks{least_check(context)};
    const Verdict fines = checks.front().verdict;
    std::ranges::move(most_check(context), std::back_inserter(checks));
    checks.push_back(bleeding_check(context, fines));
    return checks;
}

} // namespace boardmark::core

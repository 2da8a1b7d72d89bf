#include <boardmark/core/basis/tables.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../method/air_content.hpp"
#include "../mix/air_entraining.hpp"
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
    const char* how;
};

LeastFines least_fines(const SizeRow& row, double size_mm) {
    const double inside_mm = std::clamp(size_mm, row.sizes_mm.front(), row.sizes_mm.back());
    const TableValue found = *value_at_size(row, inside_mm);
    return {found.value, !same(inside_mm, size_mm) ? " (the nearest size of the table)"
                         : found.interpolated      ? " (between two sizes of the table)"
                                                   : ""};
}

Verdict least_check(const CheckContext& context, Findings& findings) {
    const FinishTables& finish = context.tables.finish;
    const double size_mm = context.proportions.selection.nominal_max_size_mm;
    const LeastFines least = least_fines(finish.least_fines_kg_m3, size_mm);
    const double powder_kg_m3 = core::powder_kg_m3(context.proportions);
    const auto sand_kg_m3 = sand_passing_kg_m3(context.proportions, finish.least_fines_below_mm);
    const double fines_kg_m3 = powder_kg_m3 + sand_kg_m3.value_or(0);
    const bool enough = at_least({fines_kg_m3, least.kg_m3,
                                  amount_precision_kg_m3(context.tables.system)}) == Verdict::holds;

    Finding found{.id = check_ids::finish_fines_low,
                  .verdict = Verdict::not_checked,
                  .measure = Measure::concentration};
    if (sand_kg_m3 || enough) {
        found.value = fines_kg_m3;
        found.limit = Limit{.low = least.kg_m3, .high = std::nullopt};
        found.verdict = enough ? Verdict::holds : Verdict::watch;
    }
    findings.add(found, [&](Check& told) {
        told.requirement = board_marked;
        told.source = finish.least_fines_kg_m3.source;
        told.message.arguments = {opening(finish.least_fines_below_mm),
                                  amount("value", fines_kg_m3), amount("limit", least.kg_m3),
                                  quantity("size", {size_mm, Measure::aggregate_size})};
        const std::string advised =
            std::string{"at least {limit} is advised at {size} stone"} + least.how;
        if (found.verdict == Verdict::not_checked) {
            told.message.text = "powder {value}, " + advised +
                                ", counting the sand below {opening} mm: the sieve analysis of the "
                                "sand shows it; add 'sieves'";
            return;
        }
        told.message.text =
            "fines below {opening} mm {value}" +
            std::string{sand_kg_m3 ? ", {sand} of it sand, " : " without the sand's own, "} +
            advised +
            (enough ? ""
                    : ": risk of bleeding and sand streaks; use finer sand, stone dust or more "
                      "binder");
        told.message.arguments.push_back(amount("sand", sand_kg_m3.value_or(0)));
    });
    return found.verdict;
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
    const ExposureClass* freezing = freezing_class(context.stated, context.code);
    if (!freezing || above(strength_by(Specimen::cylinder, context.requirements).value_or(0),
                           finish.most_fines_strength_mpa)) {
        return nullptr;
    }
    const auto& rows =
        demanded_air(freezing) ? finish.most_fines_freezing : finish.most_fines_other;
    const double size_mm = context.proportions.selection.nominal_max_size_mm;
    const auto found = std::ranges::find_if(
        rows, [&](const MostFines& row) { return !above(size_mm, row.up_to_mm); });
    return found == rows.end() ? nullptr : &*found;
}

bool is_too_many(double fines_kg_m3, double limit_kg_m3, const CheckContext& context) {
    return at_most({fines_kg_m3, limit_kg_m3, amount_precision_kg_m3(context.tables.system)}) !=
           Verdict::holds;
}

/// What is not known of the fines, where that matters: how much of the sand counts, how much
/// pigment there is.
enum class FinesLack { nothing, sieves, finest_sieve, pigment };

bool has_pigment_by_trial(const Proportions& proportions) {
    return std::ranges::any_of(proportions.ingredients, [](const Ingredient& one) {
        return one.by_trial && one.material && one.material->kind == Kind::pigment;
    });
}

/// Fines held against the published most.
struct MostFound {
    double kg_m3;
    const char* how; ///< what is counted
    FinesLack lacks;
};

MostFound fines_against_most(const CheckContext& context, double limit_kg_m3) {
    const double opening_mm = context.tables.finish->most_fines_below_mm;
    const Proportions& proportions = context.proportions;
    const double powder_kg_m3 = core::powder_kg_m3(proportions);
    const auto too_many = [&](double fines_kg_m3) {
        return is_too_many(fines_kg_m3, limit_kg_m3, context);
    };
    if (const auto sand_kg_m3 = sand_passing_kg_m3(proportions, opening_mm)) {
        const double fines_kg_m3 = powder_kg_m3 + *sand_kg_m3;
        const bool open = has_pigment_by_trial(proportions) && !too_many(fines_kg_m3);
        return {fines_kg_m3, "", open ? FinesLack::pigment : FinesLack::nothing};
    }
    if (too_many(powder_kg_m3)) {
        return {powder_kg_m3, " without the sand's own", FinesLack::nothing};
    }
    if (has_pigment_by_trial(proportions)) {
        return {powder_kg_m3, "", FinesLack::pigment};
    }
    const auto at_most_kg_m3 = sand_passing_at_most_kg_m3(proportions, opening_mm);
    if (!at_most_kg_m3) {
        return {powder_kg_m3, "", FinesLack::sieves};
    }
    return too_many(powder_kg_m3 + *at_most_kg_m3)
               ? MostFound{powder_kg_m3, "", FinesLack::finest_sieve}
               : MostFound{powder_kg_m3 + *at_most_kg_m3, " at most", FinesLack::nothing};
}

/// Left out where no published maximum applies.
void most_check(const CheckContext& context, Findings& findings) {
    const MostFines* row = most_fines_row(context);
    if (!row) {
        return;
    }
    const double limit_kg_m3 = most_fines_kg_m3(*row, context.proportions);
    const MostFound fines = fines_against_most(context, limit_kg_m3);
    const bool many = is_too_many(fines.kg_m3, limit_kg_m3, context);
    Finding found{.id = check_ids::finish_fines_high,
                  .verdict = Verdict::not_checked,
                  .measure = Measure::concentration};
    if (fines.lacks == FinesLack::nothing) {
        found.verdict = many ? Verdict::watch : Verdict::holds;
        found.value = fines.kg_m3;
        found.limit = Limit{.low = std::nullopt, .high = limit_kg_m3};
    }
    findings.add(found, [&](Check& told) {
        const Argument below = opening(context.tables.finish->most_fines_below_mm);
        const Argument value = amount("value", fines.kg_m3);
        const Argument limit = amount("limit", limit_kg_m3);
        told.requirement = board_marked;
        told.source = row->source;
        if (fines.lacks == FinesLack::pigment) {
            told.message = {"fines {value} without the pigment, which is dosed as needed, at most "
                            "{limit}: known with its dose",
                            {value, limit}};
            return;
        }
        if (fines.lacks != FinesLack::nothing) {
            told.message = {std::string{"powder {value}, at most {limit} with the sand below "
                                        "{opening} mm: "} +
                                (fines.lacks == FinesLack::sieves
                                     ? "add its 'sieves'"
                                     : "its sieves end above that; add '0.075 mm' to 'sieves'"),
                            {value, limit, below}};
            return;
        }
        told.message = {
            std::string{"fines below {opening} mm {value}"} + fines.how +
                ", at most {limit} for this cement "
                "content where DIN 1045-2 applies" +
                (many ? ": a sticky mix, whose surface scales and crazes more easily" : ""),
            {below, value, limit}};
    });
}

/// Signs that water will rise along the boards: two are a risk.
struct BleedingSigns {
    bool wet;
    bool few_fines;
    bool no_air;
    bool no_agent; ///< air is counted with that nothing entrains

    int count() const { return int{wet} + int{few_fines} + int{no_air || no_agent}; }
};

std::string signs_text(const BleedingSigns& seen) {
    std::string signs;
    const auto sign = [&](bool is_seen, const char* what) {
        if (is_seen) {
            signs += (signs.empty() ? "" : ", ") + std::string{what};
        }
    };
    sign(seen.wet, "w/cm {value} above {limit}");
    sign(seen.few_fines, "few fines");
    sign(seen.no_air, "no entrained air");
    sign(seen.no_agent, "nothing that entrains the air");
    return signs;
}

std::string bleeding_text(const BleedingSigns& seen, Verdict verdict) {
    const std::string signs = signs_text(seen);
    switch (verdict) {
    case Verdict::watch:
        return "bleeding is likely (" + signs +
               "): it causes sand streaks and leaks at the board joints; look for it on the trial "
               "batch";
    case Verdict::not_checked:
        return (seen.count() == 0
                    ? "w/cm and air show no sign of bleeding, and the fines are not "
                      "known: the "
                    : "signs of bleeding (" + signs + "), and the fines are not known: the ") +
               std::string{"sieve analysis of the sand has them; add 'sieves' to 0.3 mm (No. 50)"};
    case Verdict::holds:
    case Verdict::fails:
        break;
    }
    return seen.count() == 0 ? "no sign of bleeding: w/cm {value} up to {limit}, air entrained"
                             : "one sign of bleeding only (" + signs + ")";
}

void bleeding_check(const CheckContext& context, Verdict fines, Findings& findings) {
    const FinishTables& finish = context.tables.finish;
    const double w_cm = context.proportions.totals.w_cm;
    const double limit = finish.bleeding_w_cm.value;
    const bool entrained = context.proportions.selection.air_entrained;
    const BleedingSigns seen{.wet = at_most({w_cm, limit, w_cm_precision}) != Verdict::holds,
                             .few_fines = fines == Verdict::watch,
                             .no_air = !entrained,
                             .no_agent = entrained && !can_entrain_air(context.proportions)};
    const int most = static_cast<int>(finish.bleeding_signs.value);
    const bool open = fines == Verdict::not_checked && seen.count() < most;
    Finding found{.id = check_ids::finish_bleeding,
                  .verdict = seen.count() >= most ? Verdict::watch
                             : open               ? Verdict::not_checked
                                                  : Verdict::holds,
                  .measure = Measure::w_cm};
    if (!open) {
        found.value = w_cm;
        found.limit = Limit{.low = std::nullopt, .high = limit};
    }
    findings.add(found, [&](Check& told) {
        told.requirement = board_marked;
        told.source = finish.bleeding_signs.source;
        told.message = {
            bleeding_text(seen, found.verdict),
            {quantity("value", {w_cm, Measure::w_cm}), quantity("limit", {limit, Measure::w_cm})}};
    });
}

} // namespace

void check_finish_fines(const CheckContext& context, Findings& findings) {
    const Verdict fines = least_check(context, findings);
    most_check(context, findings);
    bleeding_check(context, fines, findings);
}

} // namespace boardmark::core

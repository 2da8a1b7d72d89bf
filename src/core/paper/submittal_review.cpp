#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/paper/submittal_review.hpp>

#include "../basis/phrases.hpp"
#include "review_case.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace boardmark::core {
namespace {

/// The demands of the designer with the submittal's own evidence of strength, where it is of the
/// specimen by which the designer asks it: cubes are stronger than cylinders of the same concrete.
/// Of two words on the aggregate the graver one.
Requirements demanded_of(const PaperCase& designer, const Requirements& own) {
    Requirements demanded = designer.asked;
    const bool same_specimen = own.specimen == designer.asked.specimen;
    demanded.records = same_specimen ? own.records : std::nullopt;
    demanded.strength_curve = same_specimen ? own.strength_curve : std::vector<CurvePoint>{};
    demanded.strength_line = same_specimen ? own.strength_line : std::nullopt;
    demanded.improbable = own.improbable;
    demanded.aggregate_reactivity = // "R0" to "R3"
        std::max(designer.asked.aggregate_reactivity, own.aggregate_reactivity);
    demanded.papers = nullptr;
    demanded.slump_before_reducer_mm = std::nullopt; // of the designer's own reducer
    return demanded;
}

/// What only advises the designer, and what the designer's own files leave open, is no matter of a
/// submittal.
bool is_of_the_supplier(const Check& check, const PaperCase& designer) {
    if (check.is(check_ids::aggregate_reactivity)) {
        return false; // its paper is looked at by itself
    }
    const bool has_level =
        !designer.asked.alkali_level.empty() || !designer.asked.structure_class.empty();
    if (check.is(check_ids::alkali_loading) && !has_level) {
        return false; // the designer has not stated a level, and none follows
    }
    if (check.is(check_ids::exposure_stated)) {
        return true; // of what nobody asked nothing was looked at
    }
    const bool designers_own = check.id.starts_with("exposure.") ||
                               check.id.starts_with("temperature.") || check.id == "evaporation";
    if (designers_own) {
        return check.verdict == Verdict::fails; // what cannot be placed is no advice
    }
    const bool advises = check.id.starts_with("finish.") || check.id.starts_with("size.");
    const auto same = std::ranges::find(designer.mix_checks, check.id, &Check::id);
    return !(advises && check.verdict == Verdict::not_checked &&
             same != designer.mix_checks.end() && same->verdict == Verdict::not_checked);
}

void sort_out(SubmittalReview& review) {
    for (const Check& check : review.checks) {
        if (check.verdict == Verdict::fails) {
            review.faults.push_back(check.message);
        } else if (check.verdict != Verdict::holds && !needs_a_figure(check)) {
            review.remarks.push_back(check.message);
        }
    }
    review.verdict = !review.faults.empty()    ? ReviewVerdict::returned
                     : !review.remarks.empty() ? ReviewVerdict::with_remarks
                                               : ReviewVerdict::accepted;
}

} // namespace

std::string_view name_of(ReviewVerdict verdict) {
    return verdict == ReviewVerdict::returned       ? "return"
           : verdict == ReviewVerdict::with_remarks ? "accept with remarks"
                                                    : "accept";
}

Outcome<SubmittalReview> reviewed(const PaperCase& designer, const HandedIn& handed_in,
                                  const Vocabulary& words) {
    const SubmittedMix& submitted = *handed_in.mix;
    SubmittedMix demanded = submitted;
    demanded.requirements = demanded_of(designer, submitted.requirements);
    demanded.system = designer.tables.system;
    auto entered = complete(std::move(demanded), words);
    if (const auto* faults = std::get_if<Faults>(&entered)) {
        return Unresolved{.what = {"the amounts do not go with what is asked: {fault}",
                                   {word("fault", faults->front().message)}},
                          .ways_out = {{"correct that figure of the submittal", {}}}};
    }
    const auto& held = std::get<CompleteSubmittedMix>(entered);
    auto proportions = proportions_of(AnyCompleteMix{held}, designer.tables);
    if (!proportions) {
        return proportions.why();
    }
    SubmittalReview review{.label = handed_in.label,
                           .file = handed_in.file,
                           .title = submitted.title,
                           .proportions = *std::move(proportions)};
    const JobPapers none;
    const JobPapers& papers = submitted.requirements.papers ? *submitted.requirements.papers : none;
    const ReviewCase one{designer, submitted, review.proportions, papers};
    for (Check& check : assess(held, review.proportions, designer.tables)) {
        if (is_of_the_supplier(check, designer)) {
            review.checks.push_back(std::move(check));
        }
    }
    std::vector<Check> own;
    review_figures(review.checks, own);
    review_purpose(one, own);
    review_materials(one, own);
    review_papers(one, review.checks, own);
    review.checks.insert(review.checks.end(), own.begin(), own.end());
    sort_out(review);
    review.delivered = delivered_price(one);
    review.letter = review_letter(review, designer);
    return review;
}

} // namespace boardmark::core

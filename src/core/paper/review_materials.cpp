#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/designation.hpp>
#include <boardmark/core/trial/batching_tolerance.hpp>

#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "../checks/exposure_limits.hpp"
#include "clause_words.hpp"
#include "review_case.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace boardmark::core {
namespace {

/// Mass of each kind in 1 m3; none of what is there in no amount, but for what is dosed as needed.
std::map<Kind, double> masses_of(const Proportions& mix) {
    std::map<Kind, double> masses;
    for (const Ingredient& ingredient : mix.ingredients) {
        if (ingredient.material && ingredient.goes_in()) {
            masses[ingredient.material->kind] += ingredient.kg_m3;
        }
    }
    return masses;
}

std::vector<std::string> kinds_without(const std::map<Kind, double>& all,
                                       const std::map<Kind, double>& others) {
    std::vector<std::string> names;
    for (const auto& [kind, mass] : all) {
        if (!others.contains(kind)) {
            names.emplace_back(name_of(kind));
        }
    }
    return names;
}

double binder_of(const std::map<Kind, double>& masses) {
    double kg = 0;
    for (const auto& [kind, mass] : masses) {
        kg += role_of(kind) == Role::binder ? mass : 0;
    }
    return kg;
}

/// A kind of binder whose share is farthest from the designer's.
struct OtherShare {
    Kind kind;
    double own_percent;
    double asked_percent;

    double off() const { return std::abs(own_percent - asked_percent); }
};

std::optional<OtherShare> other_share(const std::map<Kind, double>& own,
                                      const std::map<Kind, double>& asked, double within_percent) {
    constexpr double percent = 100;
    std::optional<OtherShare> farthest;
    for (const auto& [kind, mass] : asked) {
        const auto found = own.find(kind);
        if (role_of(kind) != Role::binder || found == own.end()) {
            continue;
        }
        const OtherShare share{kind, percent * found->second / binder_of(own),
                               percent * mass / binder_of(asked)};
        if (above(share.off(), within_percent) && (!farthest || share.off() > farthest->off())) {
            farthest = share;
        }
    }
    return farthest;
}

/// The same kinds in other shares are another concrete, which may have been meant.
void watch_shares(const ReviewCase& review, Check& kinds) {
    const TypicalFigure& within = review.designer.tables.practice.binder_share_off_percent;
    const auto share =
        other_share(masses_of(review.proportions), masses_of(review.designer.mix), within.value);
    if (!share) {
        return;
    }
    kinds.verdict = worse(kinds.verdict, Verdict::watch);
    kinds.message.text += "; {kind} is {own_share} of its binder, {asked_share} in the designer's "
                          "mix: another colour, another early strength: try it on the mock-up";
    kinds.message.arguments.push_back(word("kind", std::string{name_of(share->kind)}));
    kinds.message.arguments.push_back(as_percent("own_share", share->own_percent));
    kinds.message.arguments.push_back(as_percent("asked_share", share->asked_percent));
}

void review_kinds(const ReviewCase& review, std::vector<Check>& checks) {
    const auto asked = masses_of(review.designer.mix);
    const auto own = masses_of(review.proportions);
    const auto lacking = kinds_without(asked, own);
    const auto more = kinds_without(own, asked);
    const bool stated = review.designer.job.concrete_by == ConcreteBy::proportions;
    const bool same = lacking.empty() && more.empty();
    Phrase message{"the kinds of material are those of the designer's mix", {}};
    if (!same) {
        message.text = lacking.empty() ? "other than the designer's mix it has {more}"
                       : more.empty()  ? "other than the designer's mix it lacks {lacking}"
                                       : "other than the designer's mix it has {more} and lacks "
                                         "{lacking}";
        message.text += stated ? "; the designer states the materials"
                               : "; another colour: try it on the mock-up";
        message.arguments = {word("more", joined(more)), word("lacking", joined(lacking))};
    }
    checks.push_back({.id = check_ids::submittal_materials,
                      .verdict = same     ? Verdict::holds
                                 : stated ? Verdict::fails
                                          : Verdict::watch,
                      .requirement = "kinds of material",
                      .source = {"the designer's file"},
                      .message = std::move(message)});
    if (!stated) { // else each amount is held against the designer's
        watch_shares(review, checks.back());
    }
}

/// Whether words name a standard at all: each has a number.
bool names_a_standard(std::string_view words) {
    return words.find_first_of("0123456789") != std::string_view::npos;
}

/// Whether the designer's materials of a kind are of another standard, grade or type.
bool is_another_standard(const Material& own, const Proportions& designed) {
    bool any = false;
    for (const Ingredient& ingredient : designed.ingredients) {
        if (!ingredient.material || ingredient.material->kind != own.kind ||
            ingredient.material->standard.empty()) {
            continue;
        }
        if (words_of(ingredient.material->standard) == words_of(own.standard)) {
            return false;
        }
        any = true;
    }
    return any;
}

void review_standards(const ReviewCase& review, std::vector<Check>& checks) {
    std::vector<std::string> without;
    std::vector<std::string> other;
    for (const Ingredient& ingredient : review.proportions.ingredients) {
        if (!ingredient.material) {
            continue;
        }
        const Material& own = *ingredient.material;
        if (!names_a_standard(own.standard)) {
            without.push_back(own.name);
        } else if (is_another_standard(own, review.designer.mix)) {
            other.push_back(own.name + " (" + own.standard + ")");
        }
    }
    const bool stated = review.designer.job.concrete_by == ConcreteBy::proportions;
    Phrase message{"each material names its standard, that of the designer's mix where it has one",
                   {}};
    if (!without.empty()) {
        message = {"no standard is named for {names}: certificate, report or data sheet has it; "
                   "add 'standard'",
                   {word("names", joined(without))}};
    } else if (!other.empty()) {
        message = {stated ? "another standard, grade or type than the designer states: {names}"
                          : "another standard, grade or type than that of the designer's mix: "
                            "{names}; whether it does is for the designer to say",
                   {word("names", joined(other))}};
    }
    checks.push_back({.id = check_ids::submittal_standards,
                      .verdict = !without.empty() ? Verdict::fails
                                 : other.empty()  ? Verdict::holds
                                 : stated         ? Verdict::fails
                                                  : Verdict::watch,
                      .requirement = "standard of each material",
                      .source = {"the designer's file"},
                      .message = std::move(message)});
}

/// One amount against the designer's, within what weighing permits.
struct ComparedAmount {
    std::string name;
    Role role;
    double own_kg_m3;
    double asked_kg_m3;
};

void review_amount(const ReviewCase& review, const ComparedAmount& amount,
                   std::vector<Check>& checks) {
    const TypicalFigure& within =
        batching_tolerance(amount.role, review.designer.tables.trial->batching);
    constexpr double percent = 100;
    const double off_percent =
        percent * (amount.own_kg_m3 - amount.asked_kg_m3) / amount.asked_kg_m3;
    const bool fits = std::abs(off_percent) <= within.value * (1 + 1e-9);
    checks.push_back(
        {.id = check_ids::submittal_amounts,
         .verdict = fits ? Verdict::holds : Verdict::fails,
         .value = amount.own_kg_m3,
         .limit = Limit{amount.asked_kg_m3 * (1 - within.value / percent),
                        amount.asked_kg_m3 * (1 + within.value / percent)},
         .measure = Measure::concentration,
         .requirement = "amounts that the designer states",
         .source = within.source,
         .message = {fits ? "{name}: {own}, the designer's {asked}"
                          : "{name}: {own}, the designer states {asked}, {within} off at most",
                     {word("name", amount.name), concentration("own", amount.own_kg_m3),
                      concentration("asked", amount.asked_kg_m3),
                      as_percent("within", within.value)}},
         .part = amount.name});
}

void review_amounts(const ReviewCase& review, std::vector<Check>& checks) {
    if (review.designer.job.concrete_by != ConcreteBy::proportions) {
        return;
    }
    review_amount(review,
                  {"water", Role::water, review.proportions.totals.water_kg_m3,
                   review.designer.mix.totals.water_kg_m3},
                  checks);
    const auto own = masses_of(review.proportions);
    for (const auto& [kind, asked_kg] : masses_of(review.designer.mix)) {
        const auto found = own.find(kind);
        if (found != own.end() && asked_kg > 0) {
            review_amount(review,
                          {std::string{name_of(kind)}, role_of(kind), found->second, asked_kg},
                          checks);
        }
    }
}

} // namespace

void review_materials(const ReviewCase& review, std::vector<Check>& checks) {
    review_kinds(review, checks);
    review_standards(review, checks);
    review_amounts(review, checks);
}

} // namespace boardmark::core

#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "../code/required_strength.hpp"
#include "clause_words.hpp"
#include "paper_days.hpp"
#include "review_case.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// One paper of a submittal, there or not.
struct HeldPaper {
    CheckId id;
    Paper paper;
    std::string part; ///< the material; empty of the mix
    std::string name; ///< "mill certificate"
    std::string key;  ///< of the submitted file
    std::optional<Day> dated = {};
};

/// The day that ages count to.
std::optional<Day> judged_on(const PaperCase& designer) {
    return designer.today ? designer.today : designer.job.first_pour;
}

/// The last day on which a paper still counts.
Day good_until(Day dated, const PaperAge& age) {
    return age.months > 0 ? months_after(dated, age.months) : dated + std::chrono::days{age.days};
}

bool is_trusted(const PaperAgeRule& rule) {
    return rule.stated || rule.source.confidence == Confidence::read;
}

Check judged_paper(const ReviewCase& review, const HeldPaper& held) {
    const auto rule = age_rule(review.designer, held.paper);
    const auto day = judged_on(review.designer);
    const std::string of = held.part.empty() ? "" : "{part}: ";
    Check check{.id = held.id,
                .verdict = Verdict::fails,
                .requirement = held.name,
                .source = rule ? rule->source : Source{"the designer's file"},
                .part = held.part};
    check.message.arguments = {word("part", held.part), word("paper", held.name),
                               word("key", held.key)};
    auto& arguments = check.message.arguments;
    if (!held.dated) {
        check.message.text = of + "no {paper}: hand it in and date it, '{key}'";
        return check;
    }
    arguments.push_back(word("dated", date_text(*held.dated)));
    if (!day) {
        check.verdict = Verdict::not_checked;
        check.message.text = of + "{paper} of {dated}; its age is not known: state "
                                  "'schedule.first_pour', or the day with '--date'";
        return check;
    }
    arguments.push_back(word("day", date_text(*day)));
    if (*held.dated > *day) {
        check.message.text = of + "{paper} of {dated}: dated after {day}; correct the date";
        return check;
    }
    if (!rule) {
        check.verdict = Verdict::holds;
        check.message.text = of + "{paper} of {dated}; no age is asked";
        return check;
    }
    const Day last = good_until(*held.dated, rule->age);
    arguments.push_back(word("age", told_age(rule->age)));
    arguments.push_back(word("last", date_text(last)));
    if (last < *day) {
        check.message.text = of + "{paper} of {dated}: too old on {day}, {age} is asked; hand in a "
                                  "new one";
        return check;
    }
    check.verdict = is_trusted(*rule) ? Verdict::holds : Verdict::watch;
    check.message.text =
        of + (is_trusted(*rule)
                  ? "{paper} of {dated} counts until {last}"
                  : "{paper} of {dated} counts until {last} by {age}, an age from memory: state "
                    "'paper_ages' in the designer's file");
    const auto& pour = review.designer.job.first_pour;
    if (pour && last < *pour) {
        const bool trusted = check.verdict == Verdict::holds;
        check.verdict = Verdict::watch;
        check.message.text = (trusted ? of + "{paper} of {dated}" : check.message.text + "; it") +
                             " lapses on {last}, before the first pour on {pour}: have a new one "
                             "by then";
        arguments.push_back(word("pour", date_text(*pour)));
    }
    return check;
}

const MaterialPapers& papers_of(const ReviewCase& review, const std::string& name) {
    static const MaterialPapers none;
    const auto found = review.papers.materials.find(name);
    return found == review.papers.materials.end() ? none : found->second;
}

HeldPaper paper_of_material(const ReviewCase& review, const Material& material) {
    const MaterialPapers& papers = papers_of(review, material.name);
    const std::string at = "papers." + material.name + ".";
    switch (paper_of(material)) {
    case Paper::mill_certificate:
        return {check_ids::paper_mill_certificate,
                Paper::mill_certificate,
                material.name,
                "mill certificate",
                at + "mill_certificate",
                papers.mill_certificate};
    case Paper::supplementary_report:
        return {check_ids::paper_supplementary_report,
                Paper::supplementary_report,
                material.name,
                "test report",
                at + "report",
                papers.report};
    case Paper::aggregate_report:
        return {check_ids::paper_aggregate_report, Paper::aggregate_report, material.name,
                "aggregate test report",           at + "report",           papers.report};
    default:
        return {check_ids::paper_admixture_certificate,
                Paper::admixture_certificate,
                material.name,
                "certificate",
                at + "certificate",
                papers.certificate};
    }
}

bool reactivity_asked(const PaperCase& designer) {
    return std::ranges::any_of(designer.asked.exposure, [&](const std::string& name) {
        const ExposureClass* one = designer.tables.code->find_class(name);
        return one && one->reactivity_evidence;
    });
}

/// What the figures handed in show, where it is less than the required average: no proof of it.
const Check* disproof(const std::vector<Check>& demands) {
    const auto found = std::ranges::find_if(
        demands, [](const Check& check) { return check.is(check_ids::strength_average); });
    const bool is_short = found != demands.end() && found->value && found->limit &&
                          found->limit->low && found->verdict != Verdict::holds &&
                          below(*found->value, *found->limit->low);
    return is_short ? &*found : nullptr;
}

/// What is asked, by the record that is handed in.
Requirements with_record_of(const ReviewCase& review) {
    Requirements asked = review.designer.asked;
    asked.records = review.submitted.requirements.records;
    return asked;
}

/// What a paper proves is as old as the newest batch behind it, whatever date it bears.
std::optional<Day> day_of_trials(const ReviewCase& review) {
    const auto& dated = review.papers.trial_batches;
    const auto& line = review.submitted.requirements.strength_line;
    const auto cast = line ? line->evidence.newest_cast : std::nullopt;
    return dated && cast ? std::min(*dated, Day{std::chrono::days{*cast}}) : dated;
}

/// A paper over results that say of no batch when it was cast: they may be older than it.
void watch_undated(const ReviewCase& review, Check& paper) {
    const auto& line = review.submitted.requirements.strength_line;
    if (!line || line->evidence.newest_cast) {
        return;
    }
    paper.verdict = worse(paper.verdict, Verdict::watch);
    paper.message.text += "; its results give no 'cast' of a batch: they may be older than the "
                          "paper";
}

/// A strength of so many days that could not have been tested by the day that counts.
bool is_too_young(const ReviewCase& review) {
    const auto dated = day_of_trials(review);
    const auto day = judged_on(review.designer);
    const int age_d = static_cast<int>(review.designer.asked.strength_age_d);
    return dated && day && *dated <= *day && *dated + std::chrono::days{age_d} > *day;
}

/// A report that is there and says that the aggregate reacts: nobody has looked at what then holds
/// unless the designer states a level of prevention, or from what it follows.
void watch_reactive(const ReviewCase& review, Check& paper) {
    const std::string& reactivity = review.submitted.requirements.aggregate_reactivity;
    const Requirements& asked = review.designer.asked;
    const bool has_level = !asked.alkali_level.empty() || !asked.structure_class.empty();
    if (reactivity.empty() || reactivity == "R0" || has_level) {
        return;
    }
    paper.verdict = worse(paper.verdict, Verdict::watch);
    paper.message.text += "; the submittal calls its aggregate {reactivity}, and the designer "
                          "states neither 'alkali_level' nor 'structure_class': nothing says what "
                          "prevents it from reacting";
    paper.message.arguments.push_back(word("reactivity", reactivity));
}

void review_strength_papers(const ReviewCase& review, const std::vector<Check>& demands,
                            std::vector<Check>& checks) {
    const Requirements& own = review.submitted.requirements;
    const bool trials = !own.strength_curve.empty() || own.strength_line.has_value();
    std::vector<Check> dated;
    if (review.papers.trial_batches || trials) {
        dated.push_back(
            judged_paper(review, {check_ids::paper_trial_batches, Paper::trial_batches, "",
                                  "trial batches", "papers.trial_batches", day_of_trials(review)}));
        watch_undated(review, dated.back());
        if (is_too_young(review)) {
            dated.back().verdict = Verdict::fails;
            dated.back().message.text = "{paper} of {dated}: on {day} none of them is {age} old, "
                                        "at which the strength is asked";
            auto& arguments = dated.back().message.arguments;
            std::erase_if(arguments, [](const Argument& one) { return one.name == "age"; });
            arguments.push_back(as_days("age", review.designer.asked.strength_age_d));
        }
    }
    if (review.papers.records || own.records) {
        dated.push_back(
            judged_paper(review, {check_ids::paper_records, Paper::records, "", "strength record",
                                  "papers.records", review.papers.records}));
    }
    const bool same_specimen = own.specimen == review.designer.asked.specimen;
    const bool by_record = own.records && review.papers.records && same_specimen;
    const bool by_trials = trials && review.papers.trial_batches && same_specimen;
    const auto& rules = review.designer.tables.code->average_strength;
    const auto asked_by_record = code_average(with_record_of(review), rules);
    const auto set_aside = by_record ? asked_by_record.record_set_aside : std::nullopt;
    const bool silent = by_record && asked_by_record.record_is_silent();
    const Check* missed = by_trials ? disproof(demands) : nullptr;
    const bool proven = (by_trials || (by_record && !set_aside && !silent)) && !missed;
    Check check{.id = check_ids::paper_strength,
                .verdict = proven ? Verdict::holds : Verdict::fails,
                .requirement = "evidence of the average strength",
                .source = rules.with_records};
    if (proven) {
        check.message = {"figures and date of record or trial batches are there", {}};
    } else if (missed) {
        check.message = {
            "what is handed in shows {value} at the w/cm of the mix, below the "
            "required average of {limit}: it proves that the mix does not reach it",
            {as_strength("value", *missed->value), as_strength("limit", *missed->limit->low)}};
    } else if (set_aside) {
        check.message = why_set_aside(*set_aside, with_record_of(review), rules);
        check.message.text += "; hand in trial batches ('requirements.strength_curve', "
                              "'papers.trial_batches')";
    } else if (silent) {
        check.message = {"the strength record does not state all that it must, of which strength "
                         "it is and how old ('requirements.strength_records'): it proves no "
                         "average",
                         {}};
    } else {
        check.message = {"nothing proves the average strength: hand in a strength record "
                         "('requirements.strength_records', 'papers.records') or trial "
                         "batches ('requirements.strength_curve', 'papers.trial_batches')",
                         {}};
    }
    checks.push_back(std::move(check));
    checks.insert(checks.end(), dated.begin(), dated.end());
}

} // namespace

void review_papers(const ReviewCase& review, const std::vector<Check>& demands,
                   std::vector<Check>& checks) {
    for (const Ingredient& ingredient : review.proportions.ingredients) {
        if (ingredient.material) {
            checks.push_back(judged_paper(review, paper_of_material(review, *ingredient.material)));
        }
    }
    if (reactivity_asked(review.designer)) {
        for (const Ingredient& ingredient : review.proportions.ingredients) {
            if (ingredient.role == Role::coarse || ingredient.role == Role::fine) {
                const std::string& name = ingredient.material->name;
                checks.push_back(judged_paper(
                    review, {check_ids::paper_reactivity_report, Paper::reactivity_report, name,
                             "report on alkali reactivity", "papers." + name + ".reactivity",
                             papers_of(review, name).reactivity}));
                watch_reactive(review, checks.back());
            }
        }
    }
    review_strength_papers(review, demands, checks);
}

} // namespace boardmark::core

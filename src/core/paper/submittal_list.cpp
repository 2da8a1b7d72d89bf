#include <boardmark/core/paper/submittal_list.hpp>

#include "../checks/exposure_limits.hpp"
#include "clause_list.hpp"
#include "clause_words.hpp"
#include "paper_days.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

using Keys = std::vector<std::string>;

/// Gathers items whose day is counted back from a named one.
class Submittals {
public:
    explicit Submittals(const PaperCase& papers)
        : papers_{papers}
        , days_{paper_days(papers)} {}

    const PaperDays& days() const { return days_; }

    void add(SubmittalItem item, const std::optional<Day>& due) {
        item.due = due;
        item.past = due && papers_.today && *due < *papers_.today;
        items_.push_back(std::move(item));
    }

    /// With the mix, before the first concrete.
    void add_with_mix(std::string paper, Keys keys, std::string age = "", Source source = {}) {
        const TypicalFigure& ahead = papers_.rules("mix_ahead");
        add({.paper = std::move(paper),
             .by = "supplier",
             .when = {days_.mockup_is_first ? "{ahead} before the mock-up"
                                            : "{ahead} before the first pour",
                      {as_days("ahead", ahead.value)}},
             .age = std::move(age),
             .keys = std::move(keys),
             .source = source.citation.empty() ? ahead.source : std::move(source)},
            days_.mix);
    }

    /// Of the contractor, before the mock-up or the forms.
    void add_with_drawings(std::string paper, Keys keys) {
        const TypicalFigure& ahead = papers_.rules("drawings_ahead");
        add({.paper = std::move(paper),
             .by = "contractor",
             .when = {days_.mockup_is_first ? "{ahead} before the mock-up"
                                            : "{ahead} before the first pour",
                      {as_days("ahead", ahead.value)}},
             .keys = std::move(keys),
             .source = ahead.source},
            days_.drawings);
    }

    void add_before_pour(std::string paper, std::string by, const char* row,
                         const std::optional<Day>& due, Keys keys) {
        const TypicalFigure& ahead = papers_.rules(row);
        add({.paper = std::move(paper),
             .by = std::move(by),
             .when = {"{ahead} before the first pour", {as_days("ahead", ahead.value)}},
             .keys = std::move(keys),
             .source = ahead.source},
            due);
    }

    std::vector<SubmittalItem> items() && { return std::move(items_); }

private:
    const PaperCase& papers_;
    PaperDays days_;
    std::vector<SubmittalItem> items_;
};

Keys keys_of(const Material& material, const PaperCase& papers) {
    Keys keys{"standard", "relative_density", "chloride"};
    const bool sulfate = std::ranges::any_of(papers.asked.exposure, [&](const std::string& name) {
        const ExposureClass* found = papers.tables.code->find_class(name);
        return found && !found->sulfate_cements.empty();
    });
    switch (role_of(material.kind)) {
    case Role::binder:
        keys.emplace_back("alkali");
        if (is_cement(material.kind) && sulfate) {
            keys.emplace_back("c3a");
        }
        break;
    case Role::coarse:
        keys = {"nominal_max_size",   "relative_density", "absorption",
                "dry_rodded_density", "sieves",           "chloride"};
        break;
    case Role::fine:
        keys = {"relative_density", "absorption", "sieves", "chloride"};
        break;
    case Role::admixture:
        keys.emplace_back("solids");
        if (reduces_water(material.kind)) {
            keys.insert(keys.end(), {"water_reduction", "maximum_dose", "retards", "retains"});
        }
        break;
    default:
        break;
    }
    return keys;
}

void add_materials(const PaperCase& papers, Submittals& list) {
    for (const AskedAge& asked : paper_ages_asked(papers)) {
        const bool of_strength = asked.kind == Paper::trial_batches || asked.kind == Paper::records;
        if (!of_strength && asked.kind == Paper::reactivity_report) {
            list.add_with_mix(asked.paper, {"papers: reactivity"}, asked.told, asked.rule.source);
        }
    }
    for (const Ingredient& ingredient : papers.mix.ingredients) {
        if (!ingredient.material) {
            continue;
        }
        const Material& material = *ingredient.material;
        const Paper paper = paper_of(material);
        const auto rule = age_rule(papers, paper);
        const char* name = paper == Paper::mill_certificate ? "Mill certificate of "
                           : paper == Paper::admixture_certificate
                               ? "Certificate and data sheet of "
                               : "Test report of ";
        Keys keys = keys_of(material, papers);
        keys.insert(keys.begin(), paper == Paper::mill_certificate ? "papers: mill_certificate"
                                  : paper == Paper::admixture_certificate ? "papers: certificate"
                                                                          : "papers: report");
        list.add_with_mix(name + material.name, std::move(keys), rule ? told_age(rule->age) : "",
                          rule ? rule->source : Source{});
    }
}

void add_strength(const PaperCase& papers, Submittals& list) {
    const auto trial = age_rule(papers, Paper::trial_batches);
    const auto record = age_rule(papers, Paper::records);
    list.add_with_mix("Evidence of the average strength: record of tests, or trial batches",
                      {"papers: records or trial_batches",
                       "strength_records: tests, "
                       "standard_deviation, strength, age",
                       "or strength_curve"},
                      trial && record ? "trial batches " + told_age(trial->age) + ", record " +
                                            told_age(record->age)
                                      : "",
                      trial ? trial->source : Source{});
}

void add_contractor(const PaperCase& papers, Submittals& list) {
    const Wall& wall = *papers.wall;
    if (!papers.plan->forces.empty()) {
        list.add_with_drawings("Form drawings with pressure, ties, boards and joints, signed by "
                               "their designer",
                               {"placing: form_pressure", "ties: across, up, first, working_load"});
    }
    if (wall.boards) {
        list.add_with_drawings("Sample of the boards as treated, with the release agent on it",
                               {"boards: treatment", "decisions: release_agent"});
    }
    if (wall.ties) {
        list.add_with_drawings("Data sheet of the ties: working load, distance of the metal",
                               {"ties: kind, working_load, cone"});
    }
    if (wall.reinforcement) {
        list.add_with_drawings("Samples of supports and tying wire",
                               {"decisions: bar_supports, tying_wire"});
    }
    list.add_with_drawings(
        "Stripping, curing and protection: ages, means, who is there",
        {"placing: strip_after, soffit_strip_after, protected_until", "decisions: curing"});
    list.add_before_pour("Placing plan: output, loads, lifts, vibrators, stop lines, weather",
                         "contractor", "plan_ahead", list.days().plan,
                         {"placing: output, truck, round_trip, lift, vibrator"});
}

Check papers_in_time(const PaperCase& papers, const std::vector<SubmittalItem>& items) {
    Check check{.id = check_ids::schedule_papers,
                .verdict = Verdict::not_checked,
                .requirement = "days of the papers",
                .source = {"common practice, no source", Confidence::common_practice}};
    if (!papers.job.first_pour) {
        check.message = {"no day is known: state 'schedule.first_pour'", {}};
        return check;
    }
    if (!papers.today) {
        check.message = {"whether a day has passed is not known: '--date' says which day it is",
                         {}};
        return check;
    }
    std::vector<std::string> past;
    for (const SubmittalItem& item : items) {
        if (item.past) {
            past.push_back(item.paper);
        }
    }
    check.verdict = past.empty() ? Verdict::holds : Verdict::watch;
    check.message =
        past.empty()
            ? Phrase{"every day lies ahead of {today}", {word("today", date_text(*papers.today))}}
            : Phrase{"on {today} the day has passed of: {papers}; a later first pour "
                     "gives the time back",
                     {word("today", date_text(*papers.today)), word("papers", joined(past))}};
    return check;
}

std::optional<Check> mockup_in_time(const PaperCase& papers) {
    const PaperDays days = paper_days(papers);
    if (!days.mockup_is_first || !days.mockup || !days.first_pour) {
        return std::nullopt;
    }
    const TypicalFigure& ahead = papers.rules("mockup_ahead");
    const int left = days_between(*days.mockup, *days.first_pour);
    const bool enough = left + 1e-9 >= ahead.value;
    return Check{.id = check_ids::schedule_mockup,
                 .verdict = enough ? Verdict::holds : Verdict::watch,
                 .value = left,
                 .limit = Limit{ahead.value, std::nullopt},
                 .measure = Measure::age,
                 .requirement = "time for a second mock-up",
                 .source = ahead.source,
                 .message = {enough ? "the mock-up of {mockup} leaves {value} to the first pour: "
                                      "time to judge it, and for a second one"
                                    : "the mock-up of {mockup} leaves {value} to the first pour, "
                                      "{limit} are advised: no time for a second one",
                             {word("mockup", date_text(*days.mockup)), as_days("value", left),
                              as_days("limit", ahead.value)}}};
}

} // namespace

SubmittalList submittal_list_of(const PaperCase& papers) {
    Submittals list{papers};
    list.add_with_mix("Mix: amounts of 1 yd3 or 1 m3 of concrete, aggregates saturated surface-dry",
                      {"proportions: volume, water, each material, air",
                       "requirements: code, exposure, strength, slump"});
    add_materials(papers, list);
    add_strength(papers, list);
    list.add_with_mix("Price delivered: concrete, haul, short loads, charges of the season",
                      {"supply: concrete, haul, minimum_load, short_load_charge, surcharges"});
    if (papers.wall) {
        add_contractor(papers, list);
    }
    list.add_before_pour("Names and certificates of the technicians, plan of the tests",
                         "laboratory", "conference_ahead", list.days().conference, {});
    if (list.days().mockup_is_first) {
        const TypicalFigure& ahead = papers.rules("mockup_ahead");
        list.add({.paper = "Mock-up, cast",
                  .by = "contractor",
                  .when = {"{ahead} before the first pour", {as_days("ahead", ahead.value)}},
                  .keys = {"schedule: mockup"},
                  .source = ahead.source},
                 list.days().mockup);
    }
    SubmittalList result{.items = std::move(list).items(), .how = {}, .checks = {}};
    std::stable_sort(result.items.begin(), result.items.end(),
                     [](const SubmittalItem& first, const SubmittalItem& second) {
                         return first.due && second.due && *first.due < *second.due;
                     });
    result.how = {
        {"The mix comes as one file in the form of 'boardmark starter', its keys named beside each "
         "paper; what the papers say goes into it figure by figure",
         {}},
        {"The designer answers each: accept, accept with remarks, return. What is returned comes "
         "again whole",
         {}},
        {"A day that is missed moves the first pour, not the answer", {}}};
    result.checks.push_back(papers_in_time(papers, result.items));
    if (const auto check = mockup_in_time(papers)) {
        result.checks.push_back(*check);
    }
    return result;
}

} // namespace boardmark::core

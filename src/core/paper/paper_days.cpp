#include "paper_days.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

std::optional<Day> before(const std::optional<Day>& day, const TypicalFigure& ahead) {
    return day ? std::optional{*day - std::chrono::days{std::lround(ahead.value)}} : std::nullopt;
}

const char* name_of(Paper paper) {
    switch (paper) {
    case Paper::mill_certificate:
        return "Mill certificate";
    case Paper::supplementary_report:
    case Paper::aggregate_report:
        return "Test report";
    case Paper::reactivity_report:
        return "Report on alkali reactivity";
    case Paper::admixture_certificate:
        return "Certificate";
    case Paper::trial_batches:
        return "Trial batches";
    case Paper::records:
        return "Strength record";
    }
    return "Paper";
}

bool asks_reactivity(const PaperCase& papers) {
    for (const std::string& name : papers.asked.exposure) {
        const ExposureClass* found = papers.tables.code->find_class(name);
        if (found && found->reactivity_evidence) {
            return true;
        }
    }
    return false;
}

} // namespace

PaperDays paper_days(const PaperCase& papers) {
    PaperDays days;
    days.mockup_is_first =
        papers.wall && (papers.wall->mockup.has_value() || papers.asked.board_marked);
    days.first_pour = papers.job.first_pour;
    if (days.mockup_is_first) {
        days.mockup = papers.job.mockup ? papers.job.mockup
                                        : before(days.first_pour, papers.rules("mockup_ahead"));
    }
    const auto first = days.mockup_is_first ? days.mockup : days.first_pour;
    days.mix = before(first, papers.rules("mix_ahead"));
    days.drawings = before(first, papers.rules("drawings_ahead"));
    days.conference = before(days.first_pour, papers.rules("conference_ahead"));
    days.plan = before(days.first_pour, papers.rules("plan_ahead"));
    return days;
}

std::optional<PaperAgeRule> age_rule(const PaperCase& papers, Paper paper) {
    const auto stated = papers.job.ages.find(paper);
    if (stated != papers.job.ages.end()) {
        return PaperAgeRule{stated->second, {"'paper_ages' of the files"}, true};
    }
    const auto usual = papers.rules.ages.find(paper);
    return usual == papers.rules.ages.end() ? std::nullopt : std::optional{usual->second};
}

std::string told_age(const PaperAge& age) {
    return age.months > 0 ? "at most " + std::to_string(age.months) + " months"
                          : "at most " + std::to_string(age.days) + " days";
}

Paper paper_of(const Material& material) {
    if (is_cement(material.kind)) {
        return Paper::mill_certificate;
    }
    switch (role_of(material.kind)) {
    case Role::binder:
        return Paper::supplementary_report;
    case Role::coarse:
    case Role::fine:
        return Paper::aggregate_report;
    default:
        return Paper::admixture_certificate;
    }
}

std::vector<AskedAge> paper_ages_asked(const PaperCase& papers) {
    std::vector<AskedAge> asked;
    const auto add = [&](Paper paper, const std::string& of) {
        if (const auto rule = age_rule(papers, paper)) {
            asked.push_back({paper, name_of(paper) + (of.empty() ? "" : " of " + of),
                             told_age(rule->age), *rule});
        }
    };
    for (const Ingredient& ingredient : papers.mix.ingredients) {
        if (ingredient.material) {
            add(paper_of(*ingredient.material), ingredient.material->name);
        }
    }
    if (asks_reactivity(papers)) {
        for (const Ingredient& ingredient : papers.mix.ingredients) {
            if (ingredient.role == Role::coarse || ingredient.role == Role::fine) {
                add(Paper::reactivity_report, ingredient.material->name);
            }
        }
    }
    add(Paper::trial_batches, "");
    add(Paper::records, "");
    return asked;
}

} // namespace boardmark::core

#include <boardmark/core/forms/form_pressure.hpp>
#include <boardmark/core/paper/specification.hpp>

#include "clause_list.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {
namespace {

std::vector<Phrase> cautions_of_papers(const PaperCase& papers) {
    std::vector<Phrase> cautions;
    if (papers.wall) {
        cautions.push_back(form_caution());
    }
    cautions.push_back({"Wet concrete burns skin and eyes, often without pain at first: gloves, "
                        "boots, eye protection, clean water at hand.",
                        {}});
    cautions.push_back({"Dust of cement and of cut, ground or drilled concrete holds silica: keep "
                        "it wet or extracted, wear a respirator.",
                        {}});
    cautions.push_back({"These clauses are written from the files and no more. The licensed "
                        "engineer designs the structure; local codes and the engineer decide.",
                        {}});
    if (papers.mix.estimate) {
        cautions.push_back(
            {"The mix is an ESTIMATE with usual figures of the aggregates: it must not be placed.",
             {}});
    }
    return cautions;
}

} // namespace

bool weather_attacks(const PaperCase& papers) {
    return std::ranges::any_of(papers.asked.exposure, [&](const std::string& name) {
        const ExposureClass* found = papers.tables.code->find_class(name);
        return found &&
               (found->air_percent || found->salt == Salt::deicers || found->salt == Salt::any);
    });
}

bool deicers_come(const PaperCase& papers) {
    const auto& site = papers.asked.site;
    if (site && site->deicer) {
        return *site->deicer;
    }
    return std::ranges::any_of(papers.asked.exposure, [&](const std::string& name) {
        const ExposureClass* found = papers.tables.code->find_class(name);
        return found && found->air_percent;
    });
}

std::size_t Specification::open() const {
    std::size_t count = 0;
    for (const ClauseGroup& group : groups) {
        count += static_cast<std::size_t>(
            std::count_if(group.clauses.begin(), group.clauses.end(),
                          [](const Clause& clause) { return clause.is_open(); }));
    }
    return count;
}

Specification specification_of(const PaperCase& papers) {
    constexpr ClauseGroup (*subjects[])(const PaperCase&) = {
        clauses_of_references,    clauses_of_submittals,    clauses_of_quality,
        clauses_of_mockup,        clauses_of_concrete,      clauses_of_admixtures,
        clauses_of_reinforcement, clauses_of_formwork,      clauses_of_boards,
        clauses_of_ties,          clauses_of_release_agent, clauses_of_curing_materials,
        clauses_of_sealer,        clauses_of_patch_mortar,  clauses_of_forms,
        clauses_of_joints,        clauses_of_placing,       clauses_of_consolidation,
        clauses_of_stripping,     clauses_of_curing,        clauses_of_protection,
        clauses_of_repair,        clauses_of_acceptance};
    Specification specification;
    for (const auto subject : subjects) {
        ClauseGroup group = subject(papers);
        if (!group.clauses.empty()) {
            specification.groups.push_back(std::move(group));
        }
    }
    specification.cautions = cautions_of_papers(papers);
    return specification;
}

} // namespace boardmark::core

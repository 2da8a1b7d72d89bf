#include "job_reader.hpp"

#include "../values/section.hpp"
#include "delivery_reader.hpp"

#include <array>
#include <cmath>
#include <string_view>
#include <utility>

namespace boardmark::input {
namespace {

using core::JobPapers;
using core::Paper;

constexpr std::pair<const char*, Paper> aged_papers[] = {
    {"mill_certificate", Paper::mill_certificate},
    {"supplementary_report", Paper::supplementary_report},
    {"aggregate_report", Paper::aggregate_report},
    {"reactivity_report", Paper::reactivity_report},
    {"admixture_certificate", Paper::admixture_certificate},
    {"trial_batches", Paper::trial_batches},
    {"records", Paper::records},
};

std::optional<core::Day> day(const Section& section, std::string_view key) {
    const auto days = section.number(key);
    return days ? std::optional{core::Day{std::chrono::days{std::lround(*days)}}} : std::nullopt;
}

/// Which papers a material can have, and what is said of one that is not its own.
struct OwnPapers {
    bool mill_certificate;
    bool report;
    bool certificate;
    bool reactivity;
    const char* advice;
};

OwnPapers own_papers(core::Kind kind) {
    if (core::is_cement(kind)) {
        return {true, false, false, false, "a cement has a 'mill_certificate'"};
    }
    switch (core::role_of(kind)) {
    case core::Role::binder:
        return {false, true, false, false, "a supplementary material has a 'report'"};
    case core::Role::coarse:
    case core::Role::fine:
        return {false, true, false, true, "an aggregate has a 'report' and a 'reactivity'"};
    default:
        return {false, false, true, false, "an admixture has a 'certificate'"};
    }
}

core::MaterialPapers material_papers(const Section& section, core::Kind kind) {
    const OwnPapers own = own_papers(kind);
    for (const auto& [key, allowed] : {std::pair{"mill_certificate", own.mill_certificate},
                                       {"report", own.report},
                                       {"certificate", own.certificate},
                                       {"reactivity", own.reactivity}}) {
        if (!allowed && section.value(key)) {
            section.refuse(key, " is not a paper of " + std::string{name_of(kind)}, own.advice);
        }
    }
    return {.mill_certificate = day(section, "mill_certificate"),
            .report = day(section, "report"),
            .certificate = day(section, "certificate"),
            .reactivity = day(section, "reactivity")};
}

void read_dates(const FileContext& context, const std::map<std::string, core::Material>& materials,
                JobPapers& papers) {
    const Section section{context, {"papers"}};
    if (!section.stands()) {
        return;
    }
    papers.trial_batches = day(section, "trial_batches");
    papers.records = day(section, "records");
    for (const std::string_view name : section.names()) {
        const bool of_a_material = name != "trial_batches" && name != "records" &&
                                   section.find(name)->node->kind == Node::Kind::mapping;
        if (!of_a_material) {
            continue; // another date, or a value whose fault has been told
        }
        const auto material = materials.find(std::string{name});
        if (material == materials.end()) {
            context.refuse(*section.find(name)->key,
                           "papers: '" + std::string{name} + "' is not under 'materials'",
                           "use the names under 'materials'");
            continue;
        }
        papers.materials[std::string{name}] =
            material_papers(section.below(name), material->second.kind);
    }
}

void read_schedule(const FileContext& context, JobPapers& papers) {
    const Section section{context, {"schedule"}};
    papers.first_pour = day(section, "first_pour");
    papers.mockup = day(section, "mockup");
    if (const auto days = section.number("pour_days")) {
        papers.pour_days = static_cast<int>(std::lround(*days));
    }
    if (papers.first_pour && papers.mockup && *papers.mockup >= *papers.first_pour) {
        section.refuse("mockup", " is not before 'first_pour': it proves what is placed then",
                       "check the two dates");
    }
}

/// Whole months as they are written are the calendar's; other times are days.
core::PaperAge paper_age_of(const Parsed& written) {
    constexpr std::string_view by_months = " months";
    constexpr double days_in_month = 365.25 / 12;
    const double months = written.number / days_in_month;
    const bool calendar =
        written.text.ends_with(by_months) && std::abs(months - std::round(months)) < 1e-9 * months;
    return calendar ? core::PaperAge{.months = static_cast<int>(std::lround(months))}
                    : core::PaperAge{.days = static_cast<int>(std::floor(written.number))};
}

void read_ages(const FileContext& context, JobPapers& papers) {
    const Section section{context, {"paper_ages"}};
    for (const auto& [key, paper] : aged_papers) {
        if (const Parsed* written = section.value(key)) {
            papers.ages[paper] = paper_age_of(*written);
        }
    }
}

void read_decisions(const FileContext& context, JobPapers& papers) {
    const Section section{context, {"decisions"}};
    if (!section.stands()) {
        return;
    }
    for (const std::string_view name : section.names()) {
        if (const auto text = section.text(name)) {
            papers.decisions[std::string{name}] = *text;
        }
    }
}

JobPapers job_of_file(const FileContext& context) {
    JobPapers papers;
    read_schedule(context, papers);
    if (const auto by = context.document.text({"concrete_by"})) {
        papers.concrete_by =
            *by == "performance" ? core::ConcreteBy::performance : core::ConcreteBy::proportions;
    }
    read_ages(context, papers);
    read_decisions(context, papers);
    return papers;
}

} // namespace

std::shared_ptr<const JobPapers>
read_papers(const FileContext& context, const std::map<std::string, core::Material>& materials) {
    const bool stands = context.has({"papers"}) || context.has({"schedule"}) ||
                        context.has({"concrete_by"}) || context.has({"paper_ages"}) ||
                        context.has({"decisions"}) || context.has({"supply"});
    if (!stands) {
        return nullptr;
    }
    JobPapers papers = job_of_file(context);
    read_dates(context, materials, papers);
    papers.delivery = read_delivery(context);
    return std::make_shared<const JobPapers>(std::move(papers));
}

std::shared_ptr<const JobPapers> read_job(const FileContext& context) {
    const bool stands = context.has({"schedule"}) || context.has({"concrete_by"}) ||
                        context.has({"paper_ages"}) || context.has({"decisions"});
    return stands ? std::make_shared<const JobPapers>(job_of_file(context)) : nullptr;
}

} // namespace boardmark::input

#include <boardmark/core/brief/brief.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "sections.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

void add_source(const Source& source, std::vector<Source>& sources) {
    const bool told = std::ranges::count(sources, source.citation, &Source::citation) > 0;
    if (!source.citation.empty() && !told) {
        sources.push_back(source);
    }
}

std::vector<Source> sources_of(const WallPlan& plan) {
    std::vector<Source> sources;
    for (const Step& step : plan.proportions.worksheet.steps) {
        add_source(step.source, sources);
    }
    for (const auto* checks : {&plan.mix_checks, &plan.checks}) {
        for (const Check& check : *checks) {
            add_source(check.source, sources);
        }
    }
    for (const FormForces& forces : plan.forces) {
        for (const FormPressure& pressure : forces.pressures) {
            add_source(pressure.source, sources);
        }
    }
    add_source(plan.after.curing_d.source, sources);
    if (plan.after.cold) {
        add_source(plan.after.cold->days_source, sources);
        add_source(plan.after.cold->least_c.source, sources);
        add_source(plan.after.cold->most_fall_k.source, sources);
    }
    return sources;
}

} // namespace

Brief brief_of(const Wall& wall, const WallPlan& plan, const Tables& tables) {
    const BriefCase brief{wall, plan, requirements_of(wall.mix), tables};
    return {.sections = {brief_of_requirements(brief), brief_of_mix(brief), brief_of_mockup(brief),
                         brief_of_face(brief), brief_of_forms(brief), brief_of_placing(brief),
                         brief_of_soffits(brief), brief_of_cold(brief), brief_of_joints(brief),
                         brief_of_quantities(brief)},
            .questions = brief_questions(brief),
            .cautions = plan.cautions,
            .sources = sources_of(plan)};
}

} // namespace boardmark::core

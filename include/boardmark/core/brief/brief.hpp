#pragma once

#include <boardmark/core/wall/wall_plan.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// One subject of the brief and what is said of it.
struct BriefSection {
    std::string name;
    std::vector<Phrase> items;
};

/// What contractor and supplier are handed before the pour. Nothing is invented: what the files do
/// not say becomes a question.
struct Brief {
    std::vector<BriefSection> sections;
    std::vector<Phrase> questions; ///< for the meeting before the pour
    std::vector<Phrase> cautions;
    std::vector<Source> sources; ///< of the figures, each once
};

/// Puts a wall, its mix and what was found of both into a brief.
Brief brief_of(const Wall& wall, const WallPlan& plan, const Tables& tables);

} // namespace boardmark::core

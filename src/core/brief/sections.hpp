#pragma once

#include <boardmark/core/brief/brief.hpp>

namespace boardmark::core {

/// What a section of the brief is written from.
struct BriefCase {
    const Wall& wall;
    const WallPlan& plan;
    const Requirements& asked;
    const Tables& tables;
};

BriefSection brief_of_requirements(const BriefCase& brief);
BriefSection brief_of_mix(const BriefCase& brief);
BriefSection brief_of_mockup(const BriefCase& brief);
BriefSection brief_of_face(const BriefCase& brief);
BriefSection brief_of_forms(const BriefCase& brief);
BriefSection brief_of_placing(const BriefCase& brief);
BriefSection brief_of_soffits(const BriefCase& brief);
BriefSection brief_of_cold(const BriefCase& brief);
BriefSection brief_of_joints(const BriefCase& brief);
BriefSection brief_of_quantities(const BriefCase& brief);

/// Before which no face is stripped, and the strength that decides.
Phrase stripping_limit(const BriefCase& brief);

/// What the files leave open, as questions.
std::vector<Phrase> brief_questions(const BriefCase& brief);

} // namespace boardmark::core

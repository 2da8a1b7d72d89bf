#include "../phrases.hpp"
#include "exposure_limits.hpp"

namespace boardmark::core {
namespace {

struct Category {
    char letter;
    const char* subject;
};
constexpr Category categories[] = {
    {'F', "freezing and thawing"},
    {'S', "sulfate and sea water"},
    {'W', "contact with water"},
    {'C', "corrosion of reinforcement"},
};

} // namespace

Checks check_exposure_statement(const CheckContext& context) {
    Checks checks;
    for (const Category& category : categories) {
        if (!stated_class(context, category.letter)) {
            checks.push_back({.id = "exposure.stated",
                              .verdict = Verdict::not_checked,
                              .requirement = std::string{category.letter},
                              .message = {"no class of category {category} ({subject}) is stated; "
                                          "the designer states it",
                                          {word("category", std::string{category.letter}),
                                           word("subject", category.subject)}}});
        }
    }
    if (checks.empty()) {
        checks.push_back({.id = "exposure.stated",
                          .verdict = Verdict::holds,
                          .requirement = "F, S, W, C",
                          .message = {"a class of each category is stated", {}}});
    }
    const ExposureClass* freezing = stated_class(context, 'F');
    const ExposureClass* corrosion = stated_class(context, 'C');
    if (freezing && freezing->name == "F3" && context.requirements.reinforced) {
        const bool consistent = corrosion && corrosion->name == "C2";
        checks.push_back(
            {.id = "exposure.consistent",
             .verdict = consistent ? Verdict::holds : Verdict::watch,
             .requirement = "F3",
             .source = freezing->limits.source,
             .message = {consistent ? "F3 and C2 are stated together"
                                    : "F3 means deicers, and deicers reach the bars: state C2 as "
                                      "well, or say why not",
                         {}}});
    }
    const ExposureClass* water = stated_class(context, 'W');
    if (water && water->asks_reactivity_evidence) {
        checks.push_back({.id = "aggregate.reactivity",
                          .verdict = Verdict::not_checked,
                          .requirement = water->name,
                          .source = {"ACI 318-19 26.4.2.2(d)", Confidence::read},
                          .message = {"{class} asks evidence that the aggregates do not react with "
                                      "alkali, or are kept from it: the aggregate producer has it",
                                      {word("class", water->name)}}});
    }
    return checks;
}

} // namespace boardmark::core

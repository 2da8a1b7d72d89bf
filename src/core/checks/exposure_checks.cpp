#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "exposure_limits.hpp"

#include <algorithm>
#include <iterator>

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

/// Why a category has no class: nobody states one, and the site, where there is one, gives none.
Phrase not_stated(const Category& category, const CheckContext& context) {
    Phrase message{
        "no class of category {category} ({subject}) is stated",
        {word("category", std::string{category.letter}), word("subject", category.subject)}};
    if (context.requirements.site) {
        const auto classes = site_classes(
            *context.requirements.site, context.requirements.reinforced, context.tables.code.site);
        const auto found = std::ranges::find(classes, category.letter, &SiteClass::category);
        message.text += ", none follows from the site: " + found->reason.text;
        std::ranges::copy(found->reason.arguments, std::back_inserter(message.arguments));
    }
    message.text += "; the designer states it";
    return message;
}

} // namespace

Checks check_exposure_statement(const CheckContext& context) {
    Checks checks;
    for (const Category& category : categories) {
        if (!stated_class(context, category.letter)) {
            checks.push_back({.id = "exposure.stated",
                              .verdict = Verdict::not_checked,
                              .requirement = std::string{category.letter},
                              .message = not_stated(category, context)});
        }
    }
    if (checks.empty()) {
        checks.push_back({.id = "exposure.stated",
                          .verdict = Verdict::holds,
                          .requirement = "F, S, W, C",
                          .message = {context.requirements.exposure_by_site.empty()
                                          ? "a class of each category is stated"
                                          : "a class of each category is stated or follows from "
                                            "the site",
                                      {}}});
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

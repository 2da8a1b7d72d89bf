#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../code/site_exposure.hpp"
#include "../code/site_reading.hpp"
#include "checks.hpp"
#include "exposure_limits.hpp"

#include <algorithm>
#include <iterator>
#include <optional>

namespace boardmark::core {
namespace {

/// Why a category has no class: nobody states one, and the site, where there is one, gives none.
Phrase not_stated(std::size_t category, const CheckContext& context) {
    const ExposureCategory& named = context.code.categories[category];
    Phrase message{"no class of category {category} ({subject}) is stated",
                   {word("category", named.name), word("subject", named.subject)}};
    if (const auto& site = context.requirements.site) {
        const SiteReading reading{*site, context.requirements.reinforced, context.code.site};
        const Phrase reason = reading.reason_of(category);
        message.text += ", none follows from the site: " + reason.text;
        std::ranges::copy(reason.arguments, std::back_inserter(message.arguments));
    }
    message.text += "; the designer states it";
    return message;
}

/// The class that a site without some answer gives: who knows more may find a milder one.
Phrase taken_at_worst(const ExposureClass& taken, const SiteReading& reading,
                      const CheckContext& context) {
    Phrase message = reading.reason_of(taken.category);
    message.text = "{class} is taken, the most severe class of category {category} that is still "
                   "possible: " +
                   message.text;
    message.arguments.push_back(word("class", taken.name));
    message.arguments.push_back(word("category", context.code.categories[taken.category].name));
    return message;
}

void check_categories(const CheckContext& context, Findings& findings) {
    const auto& categories = context.code.categories;
    std::optional<SiteReading> reading;
    if (const auto& site = context.requirements.site) {
        reading.emplace(*site, context.requirements.reinforced, context.code.site);
    }
    bool complete = true;
    for (std::size_t i = 0; i < categories.size(); ++i) {
        const ExposureClass* stated = context.stated.of_category(i);
        const bool at_worst = stated && reading && reading->at_worst(i) &&
                              is_by_site(stated->name, context.requirements);
        if ((stated && !at_worst) || (reading && reading->asks_none(i))) {
            continue;
        }
        complete = false;
        findings.add({.id = check_ids::exposure_stated, .verdict = Verdict::not_checked},
                     [&](Check& told) {
                         told.requirement = categories[i].name;
                         told.message = at_worst ? taken_at_worst(*stated, *reading, context)
                                                 : not_stated(i, context);
                     });
    }
    if (!complete) {
        return;
    }
    findings.add({.id = check_ids::exposure_stated, .verdict = Verdict::holds}, [&](Check& told) {
        std::vector<std::string> names;
        std::ranges::transform(categories, std::back_inserter(names), &ExposureCategory::name);
        told.requirement = joined(names);
        bool ruled_out = false;
        for (std::size_t i = 0; i < categories.size(); ++i) {
            ruled_out = ruled_out || !context.stated.of_category(i);
        }
        told.message = {ruled_out ? "a class of each category is stated, or the site needs none"
                        : context.requirements.exposure_by_site.empty()
                            ? "a class of each category is stated"
                            : "a class of each category is stated or follows from the site",
                        {}};
    });
}

/// The class that is stated of a category where it is as severe as a class, else nullptr.
const ExposureClass* as_severe_as(const std::string& name, const CheckContext& context) {
    const ExposureClass* least = context.code.find_class(name);
    return !least ? nullptr : context.stated.first([&](const ExposureClass& other) {
        return other.category == least->category && &other >= least; // mildest stand first
    });
}

/// A class that asks another one beside it, most of them where there are bars.
void check_pairs(const CheckContext& context, Findings& findings) {
    for (const StatedClass& stated : context.stated) {
        const ExposureClass& asking = *stated.exposure;
        if (!asking.beside || !(context.requirements.reinforced || asking.beside->of_plain_too)) {
            continue;
        }
        const ExposureClass* consistent = as_severe_as(asking.beside->name, context);
        findings.add({.id = check_ids::exposure_consistent,
                      .verdict = consistent ? Verdict::holds : Verdict::watch},
                     [&](Check& told) {
                         told.requirement = asking.name;
                         told.source = asking.limits.source;
                         told.message = {
                             consistent ? "{class} and {beside} are stated together"
                                        : "{class} {reason}: state {beside} as well, "
                                          "or say why not",
                             {word("class", asking.name),
                              word("beside", consistent ? consistent->name : asking.beside->name),
                              word("reason", asking.beside->reason)}};
                     });
    }
}

void check_reactivity(const CheckContext& context, Findings& findings) {
    const ExposureClass* asking = context.stated.first(
        [](const ExposureClass& exposure) { return exposure.reactivity_evidence.has_value(); });
    if (!asking) {
        return;
    }
    findings.add(
        {.id = check_ids::aggregate_reactivity, .verdict = Verdict::not_checked}, [&](Check& told) {
            told.requirement = asking->name;
            told.source = *asking->reactivity_evidence;
            told.message = {"{class} requires evidence that the aggregates do not react with "
                            "alkali, or are kept from reacting: the aggregate producer has it",
                            {word("class", asking->name)}};
        });
}

} // namespace

void check_exposure_statement(const CheckContext& context, Findings& findings) {
    check_categories(context, findings);
    check_pairs(context, findings);
    check_reactivity(context, findings);
}

} // namespace boardmark::core

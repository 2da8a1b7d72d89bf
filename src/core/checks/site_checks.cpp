#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../code/site_exposure.hpp"
#include "exposure_limits.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool is_by_site(const Requirements& requirements, const std::string& name) {
    return std::ranges::count(requirements.exposure_by_site, name) > 0;
}

/// Classes of one category stand in the code's table from the mildest to the most severe.
bool is_more_severe(const std::string& left, const std::string& right, const Tables& tables) {
    return &tables.exposure_class(left) > &tables.exposure_class(right);
}

Check compare(const SiteClass& by_site, const std::string& stated, const Tables& tables) {
    const bool milder = is_more_severe(by_site.name, stated, tables);
    Check check{.id = "exposure.site",
                .verdict = milder ? Verdict::watch : Verdict::holds,
                .requirement = by_site.name,
                .source = by_site.source,
                .message = by_site.reason};
    check.message.text = (milder ? "{stated} is stated and stands, but the site asks {by_site}: "
                                 : "{stated} is stated, the site asks {by_site}: ") +
                         by_site.reason.text;
    if (milder) {
        check.message.text += "; state {by_site}, or say why not";
    }
    check.message.arguments.push_back(word("stated", stated));
    check.message.arguments.push_back(word("by_site", by_site.name));
    return check;
}

/// The sea gives a class of sulfate before anything is known of the soil.
bool is_open(const Site& site, const SiteClass& by_site) {
    return by_site.category == 'S' && !site.soil_sulfate_percent;
}

} // namespace

Checks check_site(const CheckContext& context) {
    const Requirements& requirements = context.requirements;
    Checks checks;
    if (!requirements.site) {
        return checks;
    }
    for (const SiteClass& by_site :
         site_classes(*requirements.site, requirements.reinforced, context.tables.code.site)) {
        if (by_site.name.empty()) {
            continue;
        }
        if (!is_by_site(requirements, by_site.name)) {
            checks.push_back(
                compare(by_site, class_in_force(requirements, by_site.category), context.tables));
        } else if (is_open(*requirements.site, by_site)) {
            checks.push_back({.id = "exposure.site",
                              .verdict = Verdict::not_checked,
                              .requirement = by_site.name,
                              .source = by_site.source,
                              .message = {"{by_site} by the sea alone: 'soil_sulfate' of the site "
                                          "is not stated, and soil at the wall may ask more",
                                          {word("by_site", by_site.name)}}});
        }
    }
    return checks;
}

} // namespace boardmark::core

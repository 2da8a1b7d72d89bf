#include "site_exposure.hpp"

#include "../basis/phrases.hpp"

#include <algorithm>

namespace boardmark::core {

const ExposureClass* class_in_force(const Requirements& requirements, std::size_t category,
                                    const CodeTables& code) {
    for (const std::string& name : requirements.exposure) {
        const ExposureClass* found = code.find_class(name);
        if (found && found->category == category) {
            return found;
        }
    }
    return nullptr;
}

bool is_by_site(const std::string& name, const Requirements& requirements) {
    return std::ranges::count(requirements.exposure_by_site, name) > 0;
}

void add_site_classes(Requirements& requirements, const CodeTables& code) {
    if (!requirements.site) {
        return;
    }
    for (const SiteClass& found :
         site_classes(*requirements.site, requirements.reinforced, code.site)) {
        if (!found.name.empty() && !class_in_force(requirements, found.category, code)) {
            requirements.exposure.push_back(found.name);
            requirements.exposure_by_site.push_back(found.name);
        }
    }
    std::ranges::stable_sort(requirements.exposure, {}, [&](const std::string& name) {
        const ExposureClass* found = code.find_class(name);
        return found ? found->category : code.categories.size();
    });
}

void record_site(const Requirements& requirements, const CodeTables& code, Worksheet& worksheet) {
    if (!requirements.site) {
        return;
    }
    for (const SiteClass& found :
         site_classes(*requirements.site, requirements.reinforced, code.site)) {
        if (found.name.empty()) {
            continue; // told by the check exposure.stated
        }
        Phrase reason = found.reason;
        reason.text = "{class} by the site: " + reason.text;
        reason.arguments.push_back(word("class", found.name));
        const ExposureClass* in_force = class_in_force(requirements, found.category, code);
        if (in_force && !is_by_site(found.name, requirements)) {
            reason.text += "; {stated} is stated and used";
            reason.arguments.push_back(word("stated", in_force->name));
        }
        worksheet.steps.push_back({.quantity = code.categories[found.category].step,
                                   .value = std::nullopt,
                                   .measure = Measure::ratio,
                                   .provenance = Provenance::code,
                                   .reason = std::move(reason),
                                   .source = found.source,
                                   .marks = with_confidence({}, found.source)});
    }
}

} // namespace boardmark::core

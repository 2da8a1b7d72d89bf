#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../code/site_exposure.hpp"
#include "../code/site_reading.hpp"
#include "checks.hpp"

namespace boardmark::core {
namespace {

/// A class of the site against the one that is stated.
struct SiteAgainstStated {
    const ExposureClass& by_site;
    const ExposureClass& stated;
};

/// Classes of one category stand in the code's table from the mildest to the most severe.
bool is_milder(const SiteAgainstStated& classes) {
    return &classes.by_site > &classes.stated;
}

void compare(const SiteAgainstStated& classes, const SiteReading& reading,
             const CheckContext& context, Findings& findings) {
    const bool milder = is_milder(classes);
    const bool open = !reading.row_of(classes.by_site.category)->open_point.empty();
    const bool at_worst = reading.at_worst(classes.by_site.category);
    findings.add({.id = check_ids::exposure_site,
                  .verdict = milder ? Verdict::watch
                             : open ? Verdict::not_checked
                                    : Verdict::holds},
                 [&](Check& told) {
                     told.requirement = classes.by_site.name;
                     told.source = context.code.site->source;
                     told.message = reading.reason_of(classes.by_site.category);
                     told.message.text =
                         (milder ? "{stated} is stated and used, but the site calls for {by_site}: "
                          : at_worst ? "{stated} is stated, the site calls for {by_site} at most: "
                                     : "{stated} is stated, the site calls for {by_site}: ") +
                         told.message.text;
                     if (milder) {
                         told.message.text += "; state {by_site}, or say why not";
                     }
                     told.message.arguments.push_back(word("stated", classes.stated.name));
                     told.message.arguments.push_back(word("by_site", classes.by_site.name));
                 });
}

/// The sea, say, gives a class before anything is known of the soil.
void tell_open_point(const std::string& by_site, const SiteRule& row, const CheckContext& context,
                     Findings& findings) {
    if (row.open_point.empty()) {
        return;
    }
    findings.add({.id = check_ids::exposure_site, .verdict = Verdict::not_checked},
                 [&](Check& told) {
                     told.requirement = by_site;
                     told.source = context.code.site->source;
                     told.message = {"{by_site} " + row.open_point, {word("by_site", by_site)}};
                 });
}

/// A class is stated; what is said of the site, or no table that leads from it to a class, leaves
/// open whether it is severe enough.
void tell_unknown(const ExposureClass& stated, const SiteReading& reading,
                  const CheckContext& context, Findings& findings) {
    findings.add({.id = check_ids::exposure_site, .verdict = Verdict::not_checked},
                 [&](Check& told) {
                     told.requirement = stated.name;
                     told.source = context.code.site->source;
                     told.message = reading.reason_of(stated.category);
                     told.message.text = "{stated} is stated; whether the site calls for more is "
                                         "not known: " +
                                         told.message.text;
                     told.message.arguments.push_back(word("stated", stated.name));
                 });
}

} // namespace

void check_site(const CheckContext& context, Findings& findings) {
    const Requirements& requirements = context.requirements;
    if (!requirements.site) {
        return;
    }
    const CodeTables& code = context.code;
    const SiteReading reading{*requirements.site, requirements.reinforced, code.site};
    for (std::size_t category = 0; category < code.categories.size(); ++category) {
        const std::string& by_site = reading.class_of(category);
        const ExposureClass* asked = code.find_class(by_site); // nothing where no class follows
        const ExposureClass* stated = context.stated.of_category(category);
        const SiteRule* row = reading.row_of(category);
        if (is_by_site(by_site, requirements)) {
            tell_open_point(by_site, *row, context, findings);
        } else if (stated && row && !row->missing.empty() &&
                   (!asked || is_milder({*asked, *stated}))) {
            tell_unknown(*stated, reading, context, findings);
        } else if (asked && stated) {
            compare({*asked, *stated}, reading, context, findings);
        } else if (stated && !reading.asks_none(category) && (row || !code.site->is_known())) {
            tell_unknown(*stated, reading, context, findings);
        }
    }
}

} // namespace boardmark::core

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "finish_checks.hpp"
#include "supplementary.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Deicers or salt spray on freezing concrete.
bool salt_and_frost(const CheckContext& context) {
    const auto salted = [](const ExposureClass& exposure) {
        return exposure.salt == Salt::deicers || exposure.salt == Salt::any;
    };
    return context.demands.first(Demanded::air) && context.stated.first(salted);
}

/// The class under deicers that caps additions, stated or not, or nullptr.
const ExposureClass* capping_class(const CodeTables& code) {
    const auto found = std::ranges::find_if(code.classes, [](const ExposureClass& exposure) {
        return exposure.salt == Salt::deicers && !exposure.caps.empty();
    });
    return found == code.classes.end() ? nullptr : &*found;
}

bool within_caps(const Supplementary& found, const std::vector<Cap>& caps) {
    return std::ranges::all_of(caps, [&](const Cap& cap) {
        return at_most({found.of(cap.addition), cap.percent, percent_precision}) == Verdict::holds;
    });
}

/// The cap on an addition, else the first: a code need not cap each of them.
const Cap& cap_of(Addition addition, const std::vector<Cap>& caps) {
    const auto found = std::ranges::find(caps, addition, &Cap::addition);
    return found == caps.end() ? caps.front() : *found;
}

/// The shares that are there, each with its name.
std::string shares_text(const Supplementary& found) {
    std::string what;
    const auto add = [&](double share, const char* text) {
        if (share > 0) {
            what += (what.empty() ? "" : ", ") + std::string{text};
        }
    };
    add(found.slag, "slag cement {slag}");
    add(found.ash, "ash or pozzolan {ash}");
    add(found.fume, "silica fume {fume}");
    return what;
}

} // namespace

void check_finish_deicer(const CheckContext& context, Findings& findings) {
    const ExposureClass* capping = capping_class(context.code);
    const Supplementary found = supplementary_of(context.proportions);
    if (!capping || (found.ash <= 0 && found.slag <= 0) || !salt_and_frost(context)) {
        return;
    }
    const std::vector<Cap>& caps = capping->caps;
    const bool held = within_caps(found, caps);
    findings.add(
        {.id = check_ids::finish_deicer,
         .verdict = held ? Verdict::holds : Verdict::watch,
         .value = found.total(),
         .limit = Limit{.low = std::nullopt, .high = cap_of(Addition::total, caps).percent},
         .measure = Measure::percent},
        [&](Check& told) {
            told.requirement = board_marked;
            told.source = cap_of(Addition::slag_cement, caps).source;
            told.message = {
                shares_text(found) +
                    (held ? ", within the caps of {class} for deicers. "
                          : ", above a cap of {class} for deicers: salted, it may scale. ") +
                    "The caps come from scaling tests of slabs; to spare formed faces has been "
                    "suggested (ACI 232.4T), the code does not",
                {percent_of("slag", found.slag), percent_of("ash", found.ash),
                 percent_of("fume", found.fume), word("class", capping->name)}};
        });
}

} // namespace boardmark::core

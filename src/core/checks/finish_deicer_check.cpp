#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../method/air_content.hpp"
#include "compare.hpp"
#include "finish_checks.hpp"
#include "supplementary.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Deicers or salt spray on freezing concrete.
bool salt_and_frost(const CheckContext& context) {
    const auto stated = [&](const std::string& name) {
        return std::ranges::count(context.requirements.exposure, name) > 0;
    };
    const ExposureClass* freezing = freezing_class(context.requirements, context.tables);
    return demanded_air(freezing, context.tables) &&
           (stated(context.tables.code.supplementary.class_name) || stated("C2"));
}

bool within_caps(const Supplementary& found, const SupplementaryCaps& caps) {
    const auto holds = [](double percent, const Cap& cap) {
        return at_most({percent, cap.percent, percent_precision}) == Verdict::holds;
    };
    return holds(found.ash, caps.fly_ash) && holds(found.slag, caps.slag_cement) &&
           holds(found.fume, caps.silica_fume) && holds(found.total(), caps.total) &&
           holds(found.ash + found.fume, caps.ash_and_fume);
}

} // namespace

Checks check_finish_deicer(const CheckContext& context) {
    const SupplementaryCaps& caps = context.tables.code.supplementary;
    const Supplementary found = supplementary_of(context.proportions);
    if (!salt_and_frost(context) || (found.ash <= 0 && found.slag <= 0)) {
        return {};
    }
    const bool held = within_caps(found, caps);
    const auto percent = [](std::string name, double value) {
        return quantity(std::move(name), {value, Measure::percent});
    };
    std::string what;
    const auto add = [&](double share, const char* text) {
        if (share > 0) {
            what += (what.empty() ? "" : ", ") + std::string{text};
        }
    };
    add(found.slag, "slag cement {slag}");
    add(found.ash, "ash or pozzolan {ash}");
    add(found.fume, "silica fume {fume}");
    return {
        {.id = "finish.deicer",
         .verdict = held ? Verdict::holds : Verdict::watch,
         .value = found.total(),
         .limit = Limit{.low = std::nullopt, .high = caps.total.percent},
         .measure = Measure::percent,
         .requirement = {},
         .source = caps.slag_cement.source,
         .message = {what +
                         (held ? ", within the caps of {class} for deicers. "
                               : ", above a cap of {class} for deicers: salted, it may scale. ") +
                         "The caps come from scaling tests of slabs; to spare formed faces "
                         "has been suggested (ACI 232.4T), the code does not",
                     {percent("slag", found.slag), percent("ash", found.ash),
                      percent("fume", found.fume), word("class", caps.class_name)}}}};
}

} // namespace boardmark::core

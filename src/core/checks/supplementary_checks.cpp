#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "supplementary.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

struct Capped {
    const char* id;
    const char* what;
    double percent;
    const Cap& cap;
};

} // namespace

Checks check_supplementary(const CheckContext& context) {
    const SupplementaryCaps& caps = context.tables.code.supplementary;
    if (!std::ranges::count(context.requirements.exposure, caps.class_name)) {
        return {};
    }
    const Supplementary found = supplementary_of(context.proportions);
    const Material* unknown = unknown_blend(context.proportions);
    const Capped rows[] = {
        {"scm.fly_ash", "fly ash and natural pozzolan", found.ash, caps.fly_ash},
        {"scm.slag_cement", "slag cement", found.slag, caps.slag_cement},
        {"scm.silica_fume", "silica fume", found.fume, caps.silica_fume},
        {"scm.total", "supplementary materials in all", found.total(), caps.total},
        {"scm.ash_and_fume", "fly ash, pozzolan and silica fume", found.ash + found.fume,
         caps.ash_and_fume},
    };
    Checks checks;
    for (const Capped& row : rows) {
        Check check{.id = row.id,
                    .verdict = Verdict::not_checked,
                    .measure = Measure::percent,
                    .requirement = caps.class_name,
                    .source = row.cap.source};
        const Verdict verdict = at_most({row.percent, row.cap.percent, percent_precision});
        if (unknown && verdict != Verdict::fails) {
            check.message = {"{name} is a blended cement: its mill certificate says what it "
                             "holds; add 'contains'",
                             {word("name", unknown->name)}};
        } else {
            check.verdict = verdict;
            check.value = row.percent;
            check.limit = Limit{.low = std::nullopt, .high = row.cap.percent};
            check.message = {"{what}: {value} of cementitious material, at most {limit} in {class}",
                             {word("what", row.what),
                              quantity("value", {row.percent, Measure::percent}),
                              quantity("limit", {row.cap.percent, Measure::percent}),
                              word("class", caps.class_name)}};
        }
        checks.push_back(std::move(check));
    }
    return checks;
}

} // namespace boardmark::core

#include "../basis/phrases.hpp"
#include "checks.hpp"
#include "exposure_limits.hpp"
#include "supplementary.hpp"

namespace boardmark::core {
namespace {

struct AdditionWords {
    CheckId id;
    const char* what;
};

AdditionWords words_of(Addition addition) {
    switch (addition) {
    case Addition::fly_ash:
        return {check_ids::scm_fly_ash, "fly ash and natural pozzolan"};
    case Addition::slag_cement:
        return {check_ids::scm_slag_cement, "slag cement"};
    case Addition::silica_fume:
        return {check_ids::scm_silica_fume, "silica fume"};
    case Addition::total:
        return {check_ids::scm_total, "supplementary materials in all"};
    case Addition::ash_and_fume:
        return {check_ids::scm_ash_and_fume, "fly ash, pozzolan and silica fume"};
    }
    return {check_ids::scm_total, ""};
}

void tell_share(const Demand& demand, double percent, const Material* unknown, Check& told) {
    told.requirement = demand.by->name;
    told.source = *demand.source;
    if (unknown) {
        told.message = {"{name} is a blended cement: its mill certificate says what it holds; add "
                        "'contains'",
                        {word("name", unknown->name)}};
        return;
    }
    told.message = {"{what}: {value} of cementitious material, at most {limit} in {class}",
                    {word("what", words_of(demand.addition).what), percent_of("value", percent),
                     percent_of("limit", demand.high), word("class", demand.by->name)}};
    append_memory(*demand.source, told.message);
}

} // namespace

void check_demanded_shares(const CheckContext& context, Findings& findings) {
    if (!context.demands.first(Demanded::addition)) {
        return;
    }
    const Supplementary found = supplementary_of(context.proportions);
    const Material* unknown = unknown_blend(context.proportions);
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity != Demanded::addition) {
            continue;
        }
        const double percent = found.of(demand.addition);
        const Verdict verdict = held(demand, percent);
        const bool open = unknown && verdict != Verdict::fails;
        findings.add(
            {.id = words_of(demand.addition).id,
             .verdict = open ? Verdict::not_checked : verdict,
             .value = open ? OptionalNumber{} : percent,
             .limit = open ? Limit{} : demand.limit(),
             .measure = Measure::percent},
            [&](Check& told) { tell_share(demand, percent, open ? unknown : nullptr, told); });
    }
}

} // namespace boardmark::core

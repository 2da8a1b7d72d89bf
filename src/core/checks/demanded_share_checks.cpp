#include "../basis/phrases.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "remembered_limit.hpp"
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

/// A share of the binder, and of what is left of it without ground limestone.
struct Shares {
    double percent;
    double without_limestone_percent;
};

/// Whether a share keeps its cap only by the limestone.
bool by_limestone(const Shares& shares, const Demand& demand) {
    return held(demand, shares.percent) != Verdict::fails &&
           held(demand, shares.without_limestone_percent) == Verdict::fails;
}

void tell_share(const Demand& demand, const Shares& shares, const Material* unknown, Check& told) {
    told.requirement = demand.by->name;
    told.source = *demand.source;
    if (unknown) {
        told.message = {"{name} is a blended cement: its mill certificate says what it holds; add "
                        "'contains'",
                        {word("name", unknown->name)}};
        return;
    }
    told.message = {"{what}: {value} of cementitious material, at most {limit} in {class}",
                    {word("what", words_of(demand.addition).what),
                     percent_of("value", shares.percent), percent_of("limit", demand.high),
                     word("class", demand.by->name)}};
    if (by_limestone(shares, demand)) {
        told.message.text += "; without the ground limestone, which the code may not count, {bare}";
        told.message.arguments.push_back(percent_of("bare", shares.without_limestone_percent));
    }
    append_memory(*demand.source, told.message);
}

/// Another edition of the code caps them there, and of this one nobody has read it.
void tell_open_caps(const CheckContext& context, Findings& findings) {
    const ExposureClass* open = context.stated.first([&](const ExposureClass& one) {
        return !one.caps_open_with.empty() && context.stated.first([&](const ExposureClass& other) {
            return other.name == one.caps_open_with;
        });
    });
    if (!open || !binder_holds_pozzolan_or_slag(context.proportions)) {
        return;
    }
    findings.add({.id = check_ids::scm_total, .verdict = Verdict::not_checked}, [&](Check& told) {
        told.requirement = open->name;
        told.source = open->limits.source;
        told.message = {"whether {code} caps fly ash, slag and silica fume in {class} with {other} "
                        "is not known here, and earlier editions do under deicing salt: look it up",
                        {word("code", context.code.name), word("class", open->name),
                         word("other", open->caps_open_with)}};
    });
}

} // namespace

void check_demanded_shares(const CheckContext& context, Findings& findings) {
    if (!context.demands.first(Demanded::addition)) {
        tell_open_caps(context, findings);
        return;
    }
    const Supplementary found = supplementary_of(context.proportions);
    const Material* unknown = unknown_blend(context.proportions);
    const double binder_kg_m3 = context.proportions.totals.binder_kg_m3;
    const double bare_kg_m3 = binder_kg_m3 - ground_limestone_kg_m3(context.proportions);
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity != Demanded::addition) {
            continue;
        }
        const double percent = found.of(demand.addition);
        const Shares shares{percent, percent > 0 ? percent * binder_kg_m3 / bare_kg_m3 : 0};
        const Verdict verdict = by_limestone(shares, demand)
                                    ? worse(held(demand, percent), Verdict::watch)
                                    : held(demand, percent);
        const bool open = unknown && verdict != Verdict::fails;
        findings.add(
            {.id = words_of(demand.addition).id,
             .verdict = open ? Verdict::not_checked : verdict,
             .value = open ? OptionalNumber{} : percent,
             .limit = open ? Limit{} : demand.limit(),
             .measure = Measure::percent},
            [&](Check& told) { tell_share(demand, shares, open ? unknown : nullptr, told); });
    }
}

} // namespace boardmark::core

#include "../phrases.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Percent of all cementitious material by mass, what is inside blended cements counted.
struct Supplementary {
    double ash = 0; ///< fly ash and natural pozzolans
    double slag = 0;
    double fume = 0;

    double total() const { return ash + slag + fume; }
};

void add(Supplementary& sum, Kind kind, double percent) {
    switch (kind) {
    case Kind::fly_ash:
    case Kind::natural_pozzolan:
    case Kind::metakaolin: // a calcined natural pozzolan
        sum.ash += percent;
        break;
    case Kind::slag_cement:
        sum.slag += percent;
        break;
    case Kind::silica_fume:
        sum.fume += percent;
        break;
    default:
        break;
    }
}

Supplementary supplementary_of(const Proportions& proportions) {
    Supplementary sum;
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        const double percent = 100 * binder->kg_m3 / proportions.totals.binder_kg_m3;
        add(sum, binder->material->kind, percent);
        for (const Constituent& part : binder->material->binder.contains) {
            add(sum, part.kind, percent * part.percent / 100);
        }
    }
    return sum;
}

/// A blended cement whose make-up the file does not state, or nullptr.
const Material* unknown_blend(const Proportions& proportions) {
    for (const Material* material : binder_materials(proportions)) {
        if (material->kind == Kind::blended_cement && material->binder.contains.empty()) {
            return material;
        }
    }
    return nullptr;
}

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

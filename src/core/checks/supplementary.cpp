#include "supplementary.hpp"

#include <boardmark/core/mix/designation.hpp>

#include <algorithm>

namespace boardmark::core {
namespace {

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

/// White cement may be of any type, and its designation tells a blended one.
bool is_blended(const Material& cement) {
    return cement.kind == Kind::blended_cement ||
           (cement.kind == Kind::white_cement &&
            cement_type(cement.standard) == CementType::blended);
}

} // namespace

double Supplementary::of(Addition addition) const {
    switch (addition) {
    case Addition::fly_ash:
        return ash;
    case Addition::slag_cement:
        return slag;
    case Addition::silica_fume:
        return fume;
    case Addition::total:
        return total();
    case Addition::ash_and_fume:
        return ash + fume;
    }
    return 0;
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

double contained_percent(const Material& cement) {
    double percent = 0;
    for (const Constituent& part : cement.binder.contains) {
        percent += part.percent;
    }
    return percent;
}

double cement_percent(const Proportions& proportions) {
    double kg_m3 = 0;
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        if (!is_cement(binder->material->kind)) {
            continue;
        }
        kg_m3 += binder->kg_m3 * (1 - contained_percent(*binder->material) / 100);
    }
    return proportions.totals.binder_kg_m3 > 0 ? 100 * kg_m3 / proportions.totals.binder_kg_m3 : 0;
}

double ground_limestone_kg_m3(const Proportions& proportions) {
    double kg_m3 = 0;
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        kg_m3 += binder->material->kind == Kind::ground_limestone ? binder->kg_m3 : 0;
    }
    return kg_m3;
}

bool holds_silica_fume(const Proportions& proportions) {
    return std::ranges::any_of(proportions.ingredients, [](const Ingredient& one) {
        return one.role == Role::binder &&
               (one.material->kind == Kind::silica_fume ||
                std::ranges::any_of(one.material->binder.contains, [](const Constituent& part) {
                    return part.kind == Kind::silica_fume;
                }));
    });
}

const Material* unknown_blend(const Proportions& proportions) {
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        const Material& material = *binder->material;
        if (is_blended(material) && material.binder.contains.empty()) {
            return &material;
        }
    }
    return nullptr;
}

} // namespace boardmark::core

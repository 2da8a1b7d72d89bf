// Laws of cost and carbon: they add up what is known and invent nothing.

#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/footprint.hpp>

#include "laws/mixes.hpp"

using namespace boardmark;
using namespace boardmark::test;

namespace {

std::vector<core::Material*> materials_of(core::Mix& mix) {
    std::vector<core::Material*> materials;
    for (auto* shares : {&mix.binder, &mix.coarse, &mix.fine}) {
        for (core::Share& share : *shares) {
            materials.push_back(&share.material.edit());
        }
    }
    for (core::Dosage& dosage : mix.admixtures) {
        if (dosage.dose) {
            materials.push_back(&dosage.material.edit());
        }
    }
    return materials;
}

/// A mix whose materials all state a price by mass and a carbon figure, nothing dosed by trial.
core::Mix priced_mix() {
    core::Mix mix = any_mix();
    std::erase_if(mix.admixtures, [](const core::Dosage& dosage) { return !dosage.dose; });
    for (core::Material* material : materials_of(mix)) {
        material->price = core::Price{"USD", between(0.01, 3, "price"), core::PriceBasis::mass};
        material->carbon_kg_kg = between(0.001, 1, "carbon");
    }
    return mix;
}

} // namespace

TEST_CASE("a figure that is taken away leaves a sum that is only at least") {
    holds([] {
        core::Mix mix = priced_mix();
        const auto before = solved(mix);
        const auto cost = core::cost_of(before);
        const auto carbon = core::carbon_of(before);
        RC_ASSERT((cost && cost->sum.is_whole() && carbon && carbon->is_whole()));
        core::Material& material = *one_of(materials_of(mix), "material");
        material.price = std::nullopt;
        material.carbon_kg_kg = std::nullopt;
        const auto after = solved(mix);
        const auto less = core::cost_of(after);
        const auto cleaner = core::carbon_of(after);
        const std::vector<std::string> missing{material.name};
        RC_ASSERT((less && less->sum.missing == missing));
        RC_ASSERT((cleaner && cleaner->missing == missing));
        RC_ASSERT(less->sum.per_m3 < cost->sum.per_m3);
        RC_ASSERT(cleaner->per_m3 < carbon->per_m3);
    });
}

TEST_CASE("waste buys its share more of everything") {
    holds([] {
        core::Mix mix = priced_mix();
        const auto before = solved(mix);
        const double percent = between(0, 50, "waste, %");
        for (core::Material* material : materials_of(mix)) {
            material->waste_percent = percent;
        }
        const auto after = solved(mix);
        demand_same_amounts(before, after, 1e-12);
        demand_same(core::cost_of(after)->sum.per_m3,
                    core::cost_of(before)->sum.per_m3 * (1 + percent / 100), 1e-9, "cost");
        demand_same(core::carbon_of(after)->per_m3,
                    core::carbon_of(before)->per_m3 * (1 + percent / 100), 1e-9, "carbon");
    });
}

TEST_CASE("a second currency leaves no cost") {
    holds([] {
        core::Mix mix = priced_mix();
        one_of(materials_of(mix), "material")->price->currency = "EUR";
        const auto proportions = solved(mix);
        RC_ASSERT(!core::cost_of(proportions));
        RC_ASSERT(core::why_no_cost(proportions).has_value());
        RC_ASSERT(core::currencies_of(proportions).size() == 2U);
    });
}

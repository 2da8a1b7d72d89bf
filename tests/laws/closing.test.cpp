// Laws of the sums: what one cubic metre holds.

#include "laws/mixes.hpp"
#include "made.hpp"

using namespace boardmark;
using namespace boardmark::test;
using core::Role;

TEST_CASE("the absolute volumes add up to one") {
    holds([] {
        const core::Proportions proportions = solved(any_mix());
        double sum_m3 = 0;
        for (const core::Ingredient& ingredient : proportions.ingredients) {
            RC_ASSERT(ingredient.volume_m3.has_value());
            RC_ASSERT(*ingredient.volume_m3 >= 0);
            sum_m3 += *ingredient.volume_m3;
        }
        demand_same(sum_m3, 1, 1e-9, "sum of the volumes");
        demand_same(*proportions.totals.volume_m3, sum_m3, 1e-12, "total of the volumes");
    });
}

TEST_CASE("the masses of the rows add up to the fresh density") {
    holds([] {
        const core::Proportions proportions = solved(any_mix());
        double sum_kg_m3 = 0;
        for (const core::Ingredient& ingredient : proportions.ingredients) {
            RC_ASSERT(ingredient.kg_m3 >= 0);
            sum_kg_m3 += ingredient.kg_m3;
        }
        demand_same(*proportions.totals.fresh_density_kg_m3, sum_kg_m3, 1e-12, "fresh density");
    });
}

TEST_CASE("the mixing water is the ratio times the binder in the selection and in the totals") {
    holds([] {
        const core::Proportions proportions = solved(any_mix());
        const core::Selection& selection = proportions.selection;
        const core::Totals& totals = proportions.totals;
        demand_same(selection.water_kg_m3, selection.w_cm * selection.binder_kg_m3, 1e-12, "water");
        demand_same(totals.water_kg_m3, selection.water_kg_m3, 1e-12, "water of the totals");
        demand_same(totals.binder_kg_m3, selection.binder_kg_m3, 1e-12, "binder of the totals");
        demand_same(totals.w_cm, selection.w_cm, 1e-12, "w/cm of the totals");
    });
}

TEST_CASE("the water batched and the liquid of the admixtures are the mixing water") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        double water_kg_m3 = kg_m3_of(proportions, Role::water);
        for (const core::Ingredient* admixture : core::of_role(proportions, Role::admixture)) {
            // Rule 7: the liquid is mass × (1 - solids); without solids it is the whole.
            const double solids = admixture->material->admixture.solids_percent.value_or(0) / 100;
            water_kg_m3 += admixture->kg_m3 * (1 - solids);
        }
        demand_same(water_kg_m3, proportions.totals.water_kg_m3, 1e-12, "water");
    });
}

TEST_CASE("the ingredients stand in the order of their roles") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const std::vector<Role> order{Role::water, Role::binder,    Role::coarse,
                                      Role::fine,  Role::admixture, Role::air};
        std::size_t at = 0;
        for (const core::Ingredient& ingredient : proportions.ingredients) {
            while (at < order.size() && order[at] != ingredient.role) {
                ++at;
            }
            RC_ASSERT(at < order.size());
        }
        RC_ASSERT(proportions.ingredients.front().role == Role::water);
        RC_ASSERT(proportions.ingredients.back().role == Role::air);
        RC_ASSERT(proportions.ingredients.size() == mix.binder.size() + mix.coarse.size() +
                                                        mix.fine.size() + mix.admixtures.size() +
                                                        2);
    });
}

TEST_CASE("each binder and each aggregate has its share of the blend by mass") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const auto by_name = amounts(proportions);
        const auto demand_shares = [&](const std::vector<core::Share>& blend, Role role) {
            for (const core::Share& share : blend) {
                demand_same(by_name.at(share.material->name),
                            kg_m3_of(proportions, role) * share.percent / 100, 1e-11,
                            share.material->name);
            }
        };
        demand_shares(mix.binder, Role::binder);
        demand_shares(mix.coarse, Role::coarse);
        demand_shares(mix.fine, Role::fine);
    });
}

TEST_CASE("the dry coarse aggregate is its bulk volume times the dry-rodded density") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        RC_PRE(proportions.selection.coarse_volume.has_value());
        double dry_kg_m3 = 0;
        for (const core::Ingredient* stone : core::of_role(proportions, Role::coarse)) {
            dry_kg_m3 += *stone->dry_kg_m3;
            const double absorption = *stone->material->aggregate.absorption_percent / 100;
            demand_same(stone->kg_m3, *stone->dry_kg_m3 * (1 + absorption), 1e-12,
                        std::string{stone->name});
        }
        double rodded_kg_m3 = 0;
        for (const core::Share& share : mix.coarse) {
            rodded_kg_m3 +=
                share.percent / 100 * *share.material->aggregate.dry_rodded_density_kg_m3;
        }
        demand_same(dry_kg_m3,
                    *proportions.selection.coarse_volume *
                        mix.blend_dry_rodded_density_kg_m3.value_or(rodded_kg_m3),
                    1e-11, "dry coarse aggregate");
    });
}

TEST_CASE("a given share of fine aggregate is met by absolute volume") {
    holds([] {
        core::Mix mix = any_mix();
        mix.selections.coarse_volume = std::nullopt;
        mix.selections.coarse_adjustment_percent = std::nullopt;
        mix.selections.fine_share_percent = between(30, 55, "fine share");
        const core::Proportions proportions = solved(mix);
        double fine_m3 = 0;
        double all_m3 = 0;
        for (const core::Ingredient& row : proportions.ingredients) {
            fine_m3 += row.role == Role::fine ? *row.volume_m3 : 0;
            all_m3 += row.role == Role::fine || row.role == Role::coarse ? *row.volume_m3 : 0;
        }
        demand_same(100 * fine_m3 / all_m3, *mix.selections.fine_share_percent, 1e-9, "share");
    });
}

TEST_CASE("paste is water and binder and admixtures and mortar is all but the stone") {
    holds([] {
        const core::Proportions proportions = solved(any_mix());
        double paste_m3 = 0;
        double stone_m3 = 0;
        for (const core::Ingredient& row : proportions.ingredients) {
            const bool in_paste =
                row.role == Role::water || row.role == Role::binder || row.role == Role::admixture;
            paste_m3 += in_paste ? *row.volume_m3 : 0;
            stone_m3 += row.role == Role::coarse ? *row.volume_m3 : 0;
        }
        demand_same(*proportions.totals.paste_percent, 100 * paste_m3, 1e-9, "paste");
        demand_same(*proportions.totals.mortar_percent, 100 * (1 - stone_m3), 1e-9, "mortar");
    });
}

bool any_density_is_usual(const core::Proportions& proportions) {
    return std::ranges::any_of(proportions.ingredients, [](const core::Ingredient& row) {
        return row.material && row.kg_m3 > 0 &&
               core::role_of(row.material->kind) != Role::admixture &&
               !row.material->relative_density;
    });
}

TEST_CASE("proportions handed in as a submitted mix have the same totals and close") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        core::SubmittedMix submitted{.title = mix.title,
                                     .system = mix.system,
                                     .requirements = mix.requirements,
                                     .air_percent = proportions.selection.air_percent,
                                     .amounts = {},
                                     .nominal_max_size_mm =
                                         proportions.selection.nominal_max_size_mm};
        submitted.water_kg_m3 = kg_m3_of(proportions, Role::water);
        for (const core::Ingredient& row : proportions.ingredients) {
            if (row.material) {
                submitted.amounts.push_back(amount_of(*row.material, row.kg_m3));
            }
        }
        const core::Tables& tables = tables_of(mix.system);
        const core::Proportions accepted =
            boardmark::test::made(core::accept(entered(submitted), tables));
        demand_same_amounts(accepted, proportions, 1e-12);
        demand_same(accepted.totals.w_cm, proportions.totals.w_cm, 1e-12, "w/cm");
        demand_same(*accepted.totals.volume_m3, 1, 1e-9, "volume");
        demand_same(*accepted.totals.fresh_density_kg_m3, *proportions.totals.fresh_density_kg_m3,
                    1e-12, "fresh density");
        for (const core::Check& check : core::assess(entered(mix), accepted, tables)) {
            // A usual density stands in where none is stated: then nobody has shown that it closes.
            RC_ASSERT((check.id != "volume.closes" ||
                       check.verdict == (any_density_is_usual(accepted) ? core::Verdict::watch
                                                                        : core::Verdict::holds)));
        }
    });
}

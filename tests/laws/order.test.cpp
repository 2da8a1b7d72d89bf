// Laws of the writing: the order and the form in which a mix is written change nothing.

#include "laws/mixes.hpp"

#include <fmt/format.h>

#include <algorithm>

using namespace boardmark;
using namespace boardmark::test;

namespace {

template <class T>
void shuffle(std::vector<T>& list, const std::string& name) {
    for (std::size_t i = list.size(); i > 1; --i) {
        const auto other =
            static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(i)).as(name));
        std::swap(list[i - 1], list[other]);
    }
}

/// A share written as two of the same material under two names.
void split(std::vector<core::Share>& blend) {
    core::Share twin = blend.front();
    twin.material.edit().name = "twin";
    const double part = between(0.05, 0.95, "part of the twin");
    twin.percent *= part;
    blend.front().percent *= 1 - part;
    blend.push_back(twin);
}

} // namespace

TEST_CASE("the order of shares and admixtures does not matter") {
    holds([] {
        core::Mix mix = any_mix();
        const core::Proportions before = solved(mix);
        shuffle(mix.binder, "order of the binders");
        shuffle(mix.coarse, "order of the stones");
        shuffle(mix.fine, "order of the sands");
        shuffle(mix.admixtures, "order of the admixtures");
        shuffle(mix.requirements.exposure, "order of the classes");
        const core::Proportions after = solved(mix);
        demand_same_amounts(before, after, 1e-11);
        RC_ASSERT(before.selection.w_cm_governed_by == after.selection.w_cm_governed_by);
    });
}

TEST_CASE("the order of shares does not change a verdict") {
    holds([] {
        core::Mix mix = any_mix();
        const core::Tables& tables = tables_of(mix.system);
        const core::Proportions first = solved(mix);
        auto before = core::assess(entered(mix), first, tables);
        shuffle(mix.binder, "order of the binders");
        shuffle(mix.admixtures, "order of the admixtures");
        shuffle(mix.requirements.exposure, "order of the classes");
        auto after = core::assess(entered(mix), solved(mix), tables);
        RC_ASSERT(before.size() == after.size());
        std::ranges::stable_sort(before, {}, &core::Check::id);
        std::ranges::stable_sort(after, {}, &core::Check::id);
        for (std::size_t i = 0; i < before.size(); ++i) {
            RC_ASSERT(before[i].id == after[i].id);
            RC_ASSERT(before[i].verdict == after[i].verdict);
        }
    });
}

TEST_CASE("a material written as two of the same figures changes nothing else") {
    holds([] {
        core::Mix mix = any_mix();
        const core::Proportions whole = solved(mix);
        const int which = *rc::gen::inRange(0, 3).as("split");
        auto& blend = which == 0 ? mix.binder : which == 1 ? mix.coarse : mix.fine;
        const std::string name = blend.front().material->name;
        split(blend);
        const core::Proportions parts = solved(mix);
        auto ours = amounts(whole);
        auto theirs = amounts(parts);
        theirs[name] += theirs["twin"];
        theirs.erase("twin");
        RC_ASSERT(ours.size() == theirs.size());
        for (const auto& [ingredient, kg_m3] : ours) {
            demand_same(kg_m3, theirs.at(ingredient), 1e-11, ingredient);
        }
    });
}

TEST_CASE("a relative density on either basis gives the same mix") {
    holds([] {
        core::Mix mix = any_mix();
        const core::Proportions before = solved(mix);
        for (auto* blend : {&mix.coarse, &mix.fine}) {
            for (core::Share& share : *blend) {
                core::Material& material = share.material.edit();
                auto& figures = material.aggregate;
                const double ssd_over_dry = 1 + *figures.absorption_percent / 100;
                auto& density = *material.relative_density;
                density = figures.relative_density_is_oven_dry ? density * ssd_over_dry
                                                               : density / ssd_over_dry;
                figures.relative_density_is_oven_dry = !figures.relative_density_is_oven_dry;
            }
        }
        demand_same_amounts(before, solved(mix), 1e-11);
    });
}

TEST_CASE("a dose by volume and the same dose by mass give the same mix") {
    holds([] {
        core::Mix mix = any_mix();
        RC_PRE(!mix.admixtures.empty());
        RC_PRE(mix.admixtures.front().dose.has_value());
        const core::Proportions before = solved(mix);
        const double water_kg_m3 = tables_of(mix.system).water_density_kg_m3;
        for (core::Dosage& dosage : mix.admixtures) {
            if (dosage.dose) {
                const double density_kg_m3 = *dosage.material->relative_density * water_kg_m3;
                *dosage.dose = {dosage.dose->amount / 100 / density_kg_m3, core::DoseBasis::volume};
            }
        }
        demand_same_amounts(before, solved(mix), 1e-11);
    });
}

namespace {

/// An inside value written in a unit, with every digit it has.
std::string written(double inside_value, const std::string& unit) {
    return fmt::format("{:.17g} {}", in_unit(inside_value, unit), unit);
}

/// Which unit each quantity of the text below is written in.
struct Writing {
    std::string stress = "psi";
    std::string length = "in";
    std::string concentration = "lb/yd3";
    std::string density = "lb/ft3";
    std::string dose = "fl oz/cwt";
};
const Writing in_us_units{};
const Writing in_si_units{"MPa", "mm", "kg/m3", "kg/m3", "mL/100 kg"};

/// Figures of a mix in the inside units.
struct Figures {
    double strength_mpa;
    double slump_mm;
    double size_mm;
    double rodded_kg_m3;
    double dose_m3_kg;
    double least_binder_kg_m3;
    std::optional<double> water_kg_m3;
};

Figures any_figures() {
    Figures figures{.strength_mpa = between(20, 28, "strength, MPa"),
                    .slump_mm = between(50.001, 100.001, "slump, mm"), // never on an edge
                    .size_mm = between(10, 40, "size, mm"),
                    .rodded_kg_m3 = between(1500, 1700, "dry-rodded density"),
                    .dose_m3_kg = between(1e-6, 4e-6, "dose, m3/kg"),
                    .least_binder_kg_m3 = between(250, 420, "least binder"),
                    .water_kg_m3 = std::nullopt};
    if (perhaps("water given")) {
        figures.water_kg_m3 = between(140, 190, "water");
    }
    return figures;
}

std::string mix_text(const Figures& figures, const std::string& reporting, const Writing& in) {
    return "boardmark: 1\ntitle: Same\nreporting: " + reporting +
           "\nrequirements:\n  strength: " + written(figures.strength_mpa, in.stress) +
           "\n  slump: " + written(figures.slump_mm, in.length) +
           "\n  minimum_binder: " + written(figures.least_binder_kg_m3, in.concentration) +
           "\nmaterials:\n  cement: {kind: portland cement, relative_density: 3.15}\n"
           "  stone: {kind: coarse aggregate, relative_density: 2.68, absorption: 0.5 %, "
           "nominal_max_size: " +
           written(figures.size_mm, in.length) +
           ", dry_rodded_density: " + written(figures.rodded_kg_m3, in.density) +
           "}\n  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, "
           "fineness_modulus: 2.7}\n"
           "  reducer: {kind: high-range water reducer, relative_density: 1.07, solids: 35 %, "
           "water_reduction: {" +
           written(1e-6, in.dose) + ": 4 %, " + written(4e-6, in.dose) +
           ": 12 %}}\n"
           "mixture:\n  binder: {cement: 100 %}\n  coarse: {stone: 100 %}\n  fine: {sand: 100 %}\n"
           "  admixtures: {reducer: " +
           written(figures.dose_m3_kg, in.dose) + "}\n" +
           (figures.water_kg_m3
                ? "selections: {water: " + written(*figures.water_kg_m3, in.concentration) + "}\n"
                : "");
}

core::Proportions solved_text(const std::string& yaml) {
    const core::AnyCompleteMix mix = read(yaml, input::Purpose::proportion);
    return solved(*std::get<core::CompleteMix>(mix));
}

} // namespace

TEST_CASE("the same quantities in other units give the same mix") {
    holds([] {
        const Figures figures = any_figures();
        const std::string reporting = perhaps("us") ? "us" : "si";
        demand_same_amounts(solved_text(mix_text(figures, reporting, in_us_units)),
                            solved_text(mix_text(figures, reporting, in_si_units)), 1e-9);
    });
}

TEST_CASE("a slump on the edge of a band is the same slump in either unit") {
    // Bands reach 3 mm beyond their print: 25 to 50, 75 to 100 and 150 to 175 mm; 1 to 2, 3 to 4
    // and 6 to 7 in.
    const auto [reporting, slump_mm] = GENERATE(table<std::string, double>({
        {"si", 22},
        {"si", 53},
        {"si", 72},
        {"si", 103},
        {"si", 147},
        {"si", 178},
        {"us", 22.4},
        {"us", 53.8},
        {"us", 73.2},
        {"us", 104.6},
        {"us", 149.4},
        {"us", 180.8},
    }));
    const Figures figures{.strength_mpa = 20,
                          .slump_mm = slump_mm,
                          .size_mm = 19,
                          .rodded_kg_m3 = 1600,
                          .dose_m3_kg = 1e-6,
                          .least_binder_kg_m3 = 250,
                          .water_kg_m3 = std::nullopt};
    INFO(slump_mm << " mm, tables of " << reporting);
    const auto binder_kg_m3 = [&, system = reporting](const Writing& in) {
        const core::AnyCompleteMix mix =
            read(mix_text(figures, system, in), input::Purpose::proportion);
        const auto proportions = attempt(*std::get<core::CompleteMix>(mix));
        return proportions ? proportions->selection.binder_kg_m3 : -1;
    };
    CHECK_THAT(binder_kg_m3(in_us_units),
               Catch::Matchers::WithinAbs(binder_kg_m3(in_si_units), 1e-6));
}

TEST_CASE("the order of the keys of a mix file does not matter") {
    holds([] {
        std::vector<std::string> materials{
            "  cement: {kind: portland cement}\n", "  slag: {kind: slag cement}\n",
            "  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in, relative_density: 2.68, "
            "absorption: 0.5 %, dry_rodded_density: 100 lb/ft3}\n",
            "  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, "
            "fineness_modulus: 2.8}\n"};
        std::vector<std::string> sections{
            "boardmark: 1\n",
            "title: Any order\n",
            "reporting: us\n",
            "requirements: {strength: 3000 psi, slump: 3 in}\n",
            "",
            "mixture: {fine: {sand: 100 %}, binder: {slag: 30 %, cement: 70 %}, "
            "coarse: {stone: 100 %}}\n",
            "selections: {w_cm: 0.45}\n"};
        const auto whole = [&] {
            std::string list = "materials:\n";
            for (const std::string& material : materials) {
                list += material;
            }
            std::string text;
            for (const std::string& section : sections) {
                text += section.empty() ? list : section;
            }
            return text;
        };
        const core::Proportions before = solved_text(whole());
        shuffle(materials, "order of the materials");
        shuffle(sections, "order of the sections");
        demand_same_amounts(before, solved_text(whole()), 1e-12);
    });
}

TEST_CASE("us and si differ by their density of water alone where the tables are not asked") {
    holds([] {
        core::Mix mix = any_mix();
        mix.selections.w_cm = between(0.35, 0.6, "w/cm");
        mix.selections.water_kg_m3 = between(130, 190, "water");
        mix.selections.binder_kg_m3 = std::nullopt;
        mix.selections.air_percent = between(1, 8, "air");
        mix.selections.fine_share_percent = std::nullopt;
        mix.selections.coarse_adjustment_percent = std::nullopt;
        mix.selections.coarse_volume = between(0.5, 0.7, "coarse volume");
        mix.requirements.exposure.clear();
        mix.system = core::UnitSystem::us;
        const core::Proportions us = solved(mix);
        mix.system = core::UnitSystem::si;
        const core::Proportions si = solved(mix);

        const double us_water = 62.4 * 16.0184633739601; // lb/ft3 in kg/m3
        const double si_water = 1000;
        demand_same(tables_of(core::UnitSystem::us).water_density_kg_m3, us_water, 1e-13, "water");

        // What fills the rest follows: volume = 1 - air - sum of mass / (relative density × water).
        double rest_us_m3 = 1 - *mix.selections.air_percent / 100;
        double rest_si_m3 = rest_us_m3;
        double relative_volume = 0; // of 1 kg of the fine blend, times the density of water
        for (const core::Ingredient& row : us.ingredients) {
            if (row.role == core::Role::air) {
                continue;
            }
            if (row.role == core::Role::fine) {
                relative_volume += *row.volume_m3 * us_water / kg_m3_of(us, core::Role::fine);
                continue;
            }
            rest_us_m3 -= *row.volume_m3;
            rest_si_m3 -= *row.volume_m3 * us_water / si_water;
        }
        demand_same(kg_m3_of(us, core::Role::fine), rest_us_m3 * us_water / relative_volume, 1e-9,
                    "fine aggregate, us");
        demand_same(kg_m3_of(si, core::Role::fine), rest_si_m3 * si_water / relative_volume, 1e-9,
                    "fine aggregate, si");
        for (const core::Role role :
             {core::Role::water, core::Role::binder, core::Role::coarse, core::Role::admixture}) {
            demand_same(kg_m3_of(us, role), kg_m3_of(si, role), 1e-12,
                        std::string{core::name_of(role)});
        }
        demand_same(*us.totals.fresh_density_kg_m3, *si.totals.fresh_density_kg_m3, 1e-3,
                    "fresh density");
    });
}

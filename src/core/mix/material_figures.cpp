#include "material_figures.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool is_aggregate(const Material& material) {
    return role_of(material.kind) == Role::coarse || role_of(material.kind) == Role::fine;
}

Figure usual(const TypicalFigure& figure) {
    return {figure.value, &figure.source};
}

void record(const Material& material, const char* quantity_name, Measure measure,
            const Figure& figure, Worksheet& worksheet) {
    worksheet.record([&] {
        return Step{.quantity = quantity_name,
                    .value = figure.value,
                    .measure = measure,
                    .provenance = Provenance::table,
                    .reason = {"usual figure for {kind}; {name} states none",
                               {word("kind", std::string{name_of(material.kind)}),
                                word("name", material.name)}},
                    .source = *figure.typical_source,
                    .marks = with_confidence({Mark::typical}, *figure.typical_source)};
    });
}

} // namespace

std::optional<Figure> relative_density(const Material& material, const Tables& tables) {
    if (material.relative_density) {
        if (!is_aggregate(material) || !material.aggregate.relative_density_is_oven_dry) {
            return Figure{*material.relative_density};
        }
        const auto taken_up = absorption(material, tables);
        return taken_up
                   ? std::optional{Figure{*material.relative_density * (1 + taken_up->value / 100)}}
                   : std::nullopt;
    }
    if (is_aggregate(material)) {
        return material.aggregate.typical
                   ? std::optional{usual(tables.practice.aggregate.relative_density)}
                   : std::nullopt;
    }
    return usual(tables.practice.relative_density.at(material.kind));
}

Figure product_density(const Material& admixture, const Tables& tables) {
    Figure figure = *relative_density(admixture, tables);
    figure.value *= tables.water_density_kg_m3;
    return figure;
}

double liquid_fraction(const Material& admixture) {
    if (admixture.kind == Kind::pigment) {
        return 0;
    }
    return 1 - admixture.admixture.solids_percent.value_or(0) / 100;
}

double dose_percent(const Dose& dose, double product_density_kg_m3) {
    return dose.basis == DoseBasis::percent ? dose.amount
                                            : 100 * dose.amount * product_density_kg_m3;
}

double ml_100kg(double percent, double product_density_kg_m3) {
    constexpr double ml_in_m3 = 1e6;
    return percent / product_density_kg_m3 * ml_in_m3; // percent of 100 kg is kg
}

std::optional<Figure> absorption(const Material& aggregate, const Tables& tables) {
    if (aggregate.aggregate.absorption_percent) {
        return Figure{*aggregate.aggregate.absorption_percent};
    }
    if (aggregate.aggregate.typical) {
        return usual(tables.practice.aggregate.absorption_percent);
    }
    return std::nullopt;
}

bool is_or_holds_pozzolan_or_slag(const Material& binder) {
    const auto is_one = [](Kind kind) {
        return kind == Kind::slag_cement || kind == Kind::fly_ash || kind == Kind::silica_fume ||
               kind == Kind::natural_pozzolan || kind == Kind::metakaolin;
    };
    return is_one(binder.kind) ||
           std::ranges::any_of(binder.binder.contains, [&](const Constituent& part) {
               return is_one(part.kind) && part.percent > 0;
           });
}

void record_typical_figures(const std::vector<const Material*>& materials, const Tables& tables,
                            Worksheet& worksheet) {
    for (const Material* material : materials) {
        const auto density = relative_density(*material, tables);
        if (density && density->is_typical()) {
            record(*material, "relative_density", Measure::relative_density, *density, worksheet);
        }
        if (is_aggregate(*material)) {
            const auto taken_up = absorption(*material, tables);
            if (taken_up && taken_up->is_typical()) {
                record(*material, "absorption", Measure::percent, *taken_up, worksheet);
            }
        }
        if (role_of(material->kind) == Role::admixture && material->kind != Kind::pigment &&
            !material->admixture.solids_percent) {
            worksheet.record([&] {
                return Step{.quantity = "solids",
                            .value = 0,
                            .measure = Measure::percent,
                            .provenance = Provenance::computed,
                            .reason = {"{name} states none: its whole liquid counts as water",
                                       {word("name", material->name)}},
                            .marks = {Mark::typical}};
            });
        }
    }
}

} // namespace boardmark::core

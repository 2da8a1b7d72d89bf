#include "other_methods.hpp"

#include "lookup.hpp"

#include <cstdlib>

namespace boardmark::reference {
namespace {

using core::UnitSystem;

core::TypicalFigure value_of(const EmbeddedTable& printed, std::string_view name,
                             std::string_view group = "") {
    const EmbeddedRow& found = row(printed, name, group);
    return {cell(printed, found, "value"), source_of(found.source)};
}

std::vector<core::GradeRow> grade_rows(std::string_view column) {
    const EmbeddedTable& printed = table("is10262-strength");
    std::vector<core::GradeRow> rows;
    for (const EmbeddedRow& line : printed.rows) {
        rows.push_back(
            {cell(printed, line, "highest"), cell(printed, line, column), source_of(line.source)});
    }
    return rows;
}

std::vector<core::CoarseShareRow> coarse_shares(std::string_view edition, UnitSystem system) {
    const EmbeddedTable& printed = table("is10262-coarse-share");
    std::vector<core::CoarseShareRow> rows;
    for (const EmbeddedRow& line : printed.rows) {
        if (line.group == edition) {
            rows.push_back({static_cast<int>(rows.size()) + 1, size_row(printed, line, system)});
        }
    }
    return rows;
}

core::IndianTables indian_tables(std::string_view edition, UnitSystem system) {
    const EmbeddedTable& figures = table("is10262-figures");
    const EmbeddedTable& water = table("is10262-water");
    const EmbeddedTable& air = table("is10262-air");
    const bool newest = edition == "2019";
    core::IndianTables tables{.edition = std::string{edition},
                              .deviation_mpa = grade_rows("deviation"),
                              .fair_control_mpa = value_of(figures, "fair_control"),
                              .least_margin_mpa =
                                  newest ? grade_rows("margin") : std::vector<core::GradeRow>{},
                              .deviations = value_of(figures, "deviations"),
                              .least_tests = value_of(figures, "least_tests"),
                              .entrapped_air_percent = {},
                              .water_kg_m3 = size_row(water, water.rows.front(), system),
                              .water_slump_mm = value_of(figures, "water_slump"),
                              .water_step_percent = value_of(figures, "water_step"),
                              .slump_step_mm = value_of(figures, "slump_step"),
                              .less_water_kg_m3 = {},
                              .coarse_share = coarse_shares(edition, system),
                              .share_ratio = value_of(figures, "share_ratio"),
                              .share_ratio_step = value_of(figures, "share_ratio_step"),
                              .share_step = value_of(figures, "share_step"),
                              .pumped_share = value_of(figures, "pumped_share")};
    for (const char* shape : {"angular", "sub-angular", "gravel", "rounded"}) {
        tables.less_water_kg_m3.push_back(value_of(figures, shape, edition));
    }
    if (newest) {
        tables.entrapped_air_percent = size_row(air, air.rows.front(), system);
    }
    return tables;
}

core::Surface surface_of(std::string_view word) {
    return word == "crushed" ? core::Surface::crushed : core::Surface::uncrushed;
}

std::vector<core::StartStrength> start_strengths() {
    const EmbeddedTable& printed = table("bre-start-strength");
    std::vector<core::StartStrength> rows;
    for (const EmbeddedRow& line : printed.rows) {
        for (std::size_t i = 0; i < line.cells.size(); ++i) {
            rows.push_back({std::strtod(std::string{line.name}.c_str(), nullptr),
                            surface_of(line.group), printed.columns[i].at_si, line.cells[i],
                            source_of(line.source)});
        }
    }
    return rows;
}

core::BritishTables british_tables(UnitSystem system) {
    const EmbeddedTable& figures = table("bre-figures");
    const EmbeddedTable& water = table("bre-free-water");
    const EmbeddedTable& defective = table("bre-defective");
    core::BritishTables tables{.start = start_strengths(),
                               .water = {},
                               .defective = {},
                               .deviation_mpa = value_of(figures, "deviation"),
                               .deviation_from_mpa = value_of(figures, "deviation_from"),
                               .least_deviation_mpa = value_of(figures, "least_deviation"),
                               .least_tests = value_of(figures, "least_tests"),
                               .air_strength_share = value_of(figures, "air_strength_share"),
                               .air_density_step = value_of(figures, "air_density_step"),
                               .fine_water_share = value_of(figures, "fine_water_share")};
    for (const EmbeddedRow& line : water.rows) {
        tables.water.push_back(
            {line.from_si, surface_of(line.group), size_row(water, line, system)});
    }
    for (const EmbeddedRow& line : defective.rows) {
        tables.defective.push_back({cell(defective, line, "share"), cell(defective, line, "factor"),
                                    source_of(line.source)});
    }
    return tables;
}

} // namespace

namespace {

void describe(const EmbeddedRow& first, core::MethodTables& tables) {
    tables.finds = note(first, "finds");
    tables.strength_of = note(first, "strength_of");
}

} // namespace

void choose_method(core::Method method, UnitSystem system, core::MethodTables& tables) {
    switch (method) {
    case core::Method::aci_211_1:
        return;
    case core::Method::is_10262:
    case core::Method::is_10262_2009: {
        const std::string edition = method == core::Method::is_10262 ? "2019" : "2009";
        tables.name = "IS 10262:" + edition;
        tables.procedure = "share of coarse aggregate";
        tables.indian = indian_tables(edition, system);
        describe(table("is10262-figures").rows.front(), tables);
        return;
    }
    case core::Method::bre:
        tables.name = std::string{table("bre-figures").source.work};
        tables.procedure = "free water and fresh density";
        tables.british = british_tables(system);
        describe(table("bre-figures").rows.front(), tables);
        return;
    }
}

} // namespace boardmark::reference

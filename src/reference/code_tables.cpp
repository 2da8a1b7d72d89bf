#include "code_tables.hpp"

#include "average_strength_tables.hpp"
#include "binder_tables.hpp"
#include "exposure_classes.hpp"
#include "lookup.hpp"

#include <limits>
#include <string>
#include <utility>

namespace boardmark::reference {
namespace {

using core::UnitSystem;

/// A code without rules of its own holds its air to the table itself.
core::AirRules air_rules(const CodeData& data, UnitSystem system) {
    constexpr double never = std::numeric_limits<double>::infinity();
    core::AirRules air{.tolerance_percent = 0,
                       .tolerance_source = {},
                       .scatter_percent = 0,
                       .below_percent = 0,
                       .above_percent = 0,
                       .above_source = {},
                       .reduction_percent = 0,
                       .reduction_above_strength_mpa = never,
                       .reduction_above_strength_twin_mpa = never,
                       .reduction_in_other_editions = {}};
    const EmbeddedTable* printed = data.find("air-rules");
    if (!printed) {
        return air;
    }
    const EmbeddedTable& rules = *printed;
    const auto value_or = [&](std::string_view name, double otherwise) {
        return find_row(rules, name) ? constant(rules, name, system) : otherwise;
    };
    const EmbeddedRow& tolerance = row(rules, "tolerance");
    air.tolerance_percent = constant(rules, "tolerance", system);
    air.tolerance_source = {std::string{note(tolerance, "cited")}, tolerance.source.confidence};
    air.scatter_percent = value_or("delivery", air.tolerance_percent);
    air.below_percent = value_or("below", air.tolerance_percent);
    air.above_percent = value_or("above", air.tolerance_percent);
    if (const EmbeddedRow* above = find_row(rules, "above")) {
        air.above_source = source_of(above->source);
    }
    if (find_row(rules, "none_from_cube")) {
        air.none_from_cube_mpa = constant(rules, "none_from_cube", system);
    }
    if (const EmbeddedRow* strong = find_row(rules, "reduction_above_strength")) {
        air.reduction_percent = constant(rules, "reduction", system);
        air.reduction_above_strength_mpa = constant(rules, "reduction_above_strength", system);
        air.reduction_above_strength_twin_mpa =
            constant(rules, "reduction_above_strength",
                     system == UnitSystem::us ? UnitSystem::si : UnitSystem::us);
        air.reduction_in_other_editions = std::string{note(*strong, "other_editions")};
    }
    return air;
}

core::ChlorideOf chloride_of(std::string_view words) {
    return words == "cement"                         ? core::ChlorideOf::cement
           : words == "cement and counted additions" ? core::ChlorideOf::cement_and_counted
           : words == "concrete"                     ? core::ChlorideOf::concrete
                                                     : core::ChlorideOf::cementitious_to_cement;
}

core::ChlorideRules chloride_rules(const CodeData& data) {
    core::ChlorideRules rules{.of = chloride_of(code_note(data, "chloride_of")),
                              .acid_soluble = code_note(data, "chloride") == "acid-soluble",
                              .classes = {}};
    if (const EmbeddedTable* printed = data.find("chloride")) {
        for (const EmbeddedRow& line : printed->rows) {
            auto& classes = note(line, "steel") == "bars" ? rules.classes : rules.without_bars;
            classes.push_back({std::string{note(line, "class")}, cell(*printed, line, "most"),
                               source_of(line.source)});
        }
    }
    return rules;
}

std::optional<core::SeawaterCement> seawater_cement(const CodeData& data) {
    const EmbeddedTable* rules = data.find("seawater");
    if (!rules) {
        return std::nullopt;
    }
    const EmbeddedRow& c3a = row(*rules, "c3a");
    return core::SeawaterCement{.class_name = std::string{note(c3a, "class")},
                                .max_c3a_percent = cell(*rules, c3a, "most"),
                                .max_w_cm = cell(*rules, row(*rules, "w_cm"), "most"),
                                .source = source_of(c3a.source)};
}

core::SizeRules size_rules(const CodeData& data) {
    const EmbeddedTable& rules = *data.find("aggregate-size");
    const auto fraction = [&](std::string_view name) {
        return cell(rules, row(rules, name), "fraction");
    };
    return {.of_form = fraction("of_form"),
            .of_slab = fraction("of_slab"),
            .of_bar_spacing = fraction("of_bar_spacing"),
            .of_cover = fraction("of_cover"),
            .source = source_of(rules.source),
            .cover_source = source_of(row(rules, "of_cover").source)};
}

} // namespace

core::CodeTables code_tables(const CodeData& data, UnitSystem system,
                             core::Deferred<core::SiteRules> site) {
    const EmbeddedTable& printed = *data.find("exposure");
    auto categories = categories_of(printed);
    auto classes = exposure_classes_of(data, categories, system);
    for (const core::ExposureClass& one : classes) {
        core::ExposureCategory& category = categories[one.category];
        category.asks_air = category.asks_air || one.air_percent;
    }
    core::CodeTables code{.name = std::string{printed.source.work},
                          .edition = std::string{code_note(data, "edition")},
                          .scope = std::string{code_note(data, "scope")},
                          .strength_rule = std::string{code_note(data, "strength_rule")},
                          .several_of_category = several_of_category(data),
                          .categories = std::move(categories),
                          .classes = std::move(classes),
                          .site = std::move(site),
                          .air = air_rules(data, system),
                          .binder = {},
                          .chloride = chloride_rules(data),
                          .seawater = seawater_cement(data),
                          .average_strength = average_strength_rules(data, system),
                          .size = size_rules(data)};
    code.binder = binder_rules(data, code, system);
    return code;
}

} // namespace boardmark::reference

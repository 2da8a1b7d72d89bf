#include "code_tables.hpp"

#include "lookup.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <iterator>
#include <limits>
#include <utility>

namespace boardmark::reference {
namespace {

using core::UnitSystem;

/// The cell under a column that not every code has.
double cell_or_gap(const EmbeddedTable& table, const EmbeddedRow& row, std::string_view column) {
    const auto found = std::ranges::find(table.columns, column, &EmbeddedColumn::name);
    return found == table.columns.end()
               ? std::numeric_limits<double>::quiet_NaN()
               : row.cells[static_cast<std::size_t>(found - table.columns.begin())];
}

/// Where a code writes strengths as classes, the class pairs its specimens.
void take_strength_class(std::string_view name, const CodeData& data, core::ClassLimits& limits) {
    const EmbeddedTable& classes = *data.find("strength-class");
    const EmbeddedRow& line = row(classes, name);
    limits.strength_name = name;
    limits.min_strength_mpa = cell(classes, line, "cylinder");
    limits.min_strength_twin_mpa = limits.min_strength_mpa;
    limits.min_cube_strength_mpa = present(cell(classes, line, "cube"));
}

core::ClassLimits limits(const EmbeddedRow& printed, const CodeData& data, UnitSystem system) {
    const EmbeddedTable& classes = *data.find("exposure");
    const double us_mpa = cell_or_gap(classes, printed, "min_strength_us");
    const double si_mpa = cell_or_gap(classes, printed, "min_strength_si");
    const bool us = system == UnitSystem::us && !std::isnan(us_mpa);
    core::ClassLimits found{.max_w_cm = present(cell_or_gap(classes, printed, "max_w_cm")),
                            .min_strength_mpa = us ? us_mpa : si_mpa,
                            .min_strength_twin_mpa = us || std::isnan(us_mpa) ? si_mpa : us_mpa,
                            .source = source_of(printed.source),
                            .min_cement_kg_m3 =
                                present(cell_or_gap(classes, printed, "min_cement")),
                            .min_cement_with_additions_kg_m3 =
                                present(cell_or_gap(classes, printed, "min_cement_with_additions")),
                            .strength_age = std::string{note(printed, "strength_age")}};
    if (const auto name = note(printed, "strength_class"); !name.empty()) {
        take_strength_class(name, data, found);
    }
    return found;
}

core::Salt salt_of(const EmbeddedRow& line) {
    const std::string_view said = note(line, "salt");
    return said == "none"      ? core::Salt::none
           : said == "deicers" ? core::Salt::deicers
           : said == "any"     ? core::Salt::any
                               : core::Salt::unsaid;
}

std::optional<core::ClassBeside> beside_of(const EmbeddedRow& line) {
    const std::string_view name = note(line, "beside");
    return name.empty() ? std::nullopt
                        : std::optional{core::ClassBeside{
                              std::string{name}, std::string{note(line, "beside_reason")}}};
}

/// Evidence stands in a clause of its own.
std::optional<core::Source> reactivity_evidence(const EmbeddedRow& line) {
    if (note(line, "alkali_reactivity") != "evidence") {
        return std::nullopt;
    }
    return core::Source{
        std::string{line.source.work}.append(" ").append(note(line, "reactivity_place")),
        core::Confidence::read};
}

core::Addition addition_named(std::string_view name) {
    static constexpr std::pair<std::string_view, core::Addition> additions[] = {
        {"fly_ash", core::Addition::fly_ash},
        {"slag_cement", core::Addition::slag_cement},
        {"silica_fume", core::Addition::silica_fume},
        {"total", core::Addition::total},
        {"ash_and_fume", core::Addition::ash_and_fume}};
    const auto found =
        std::ranges::find(additions, name, &std::pair<std::string_view, core::Addition>::first);
    assert(found != std::end(additions));
    return found->second;
}

std::vector<core::Cap> caps_of(std::string_view class_name, const CodeData& data) {
    std::vector<core::Cap> caps;
    if (const EmbeddedTable* printed = data.find("supplementary")) {
        for (const EmbeddedRow& line : printed->rows) {
            if (note(line, "class") == class_name) {
                caps.push_back({addition_named(line.name), cell(*printed, line, "most"),
                                source_of(line.source)});
            }
        }
    }
    return caps;
}

std::optional<core::SizeRow> air_of(std::string_view class_name, const CodeData& data,
                                    UnitSystem system) {
    const EmbeddedTable* air = data.find("air");
    if (!air) {
        return std::nullopt;
    }
    const auto line = std::ranges::find(air->rows, class_name, &EmbeddedRow::name);
    return line == air->rows.end() ? std::nullopt : std::optional{size_row(*air, *line, system)};
}

std::vector<core::ExposureCategory> categories_of(const EmbeddedTable& printed) {
    std::vector<core::ExposureCategory> categories;
    for (const EmbeddedRow& line : printed.rows) {
        if (line.group == "category") {
            categories.push_back({std::string{line.name}, std::string{note(line, "subject")},
                                  std::string{note(line, "step")}, false});
        }
    }
    return categories;
}

std::size_t category_named(std::string_view name,
                           const std::vector<core::ExposureCategory>& categories) {
    const auto found = std::ranges::find(categories, name, &core::ExposureCategory::name);
    assert(found != categories.end());
    return static_cast<std::size_t>(found - categories.begin());
}

core::ExposureClass exposure_class_of(const EmbeddedRow& line, const CodeData& data,
                                      const std::vector<core::ExposureCategory>& categories,
                                      UnitSystem system) {
    const EmbeddedTable& printed = *data.find("exposure");
    const auto cements = split(note(line, "cements"), "; ");
    return {.name = std::string{line.name},
            .category = category_named(note(line, "category"), categories),
            .meaning = std::string{note(line, "meaning")},
            .limits = limits(line, data, system),
            .plain_limits = {},
            .pozzolanic_limits = {},
            .chloride_percent = present(cell_or_gap(printed, line, "chloride")),
            .bars_calcium_chloride = note(line, "calcium_chloride") == "barred",
            .reactivity_evidence = reactivity_evidence(line),
            .sulfate_cements = {cements.begin(), cements.end()},
            .air_percent = air_of(line.name, data, system),
            .caps = caps_of(line.name, data),
            .beside = beside_of(line),
            .salt = salt_of(line),
            .never_freezes = note(line, "frost") == "never",
            .other_editions = std::string{note(line, "other_editions")}};
}

std::vector<core::ExposureClass>
exposure_classes_of(const CodeData& data, const std::vector<core::ExposureCategory>& categories,
                    UnitSystem system) {
    const EmbeddedTable& printed = *data.find("exposure");
    std::vector<core::ExposureClass> classes;
    classes.reserve(printed.rows.size());
    for (const EmbeddedRow& line : printed.rows) {
        if (line.group == "plain concrete") {
            classes.back().plain_limits = limits(line, data, system);
        } else if (line.group == "with pozzolan or slag") {
            classes.back().pozzolanic_limits = limits(line, data, system);
        } else if (line.group.empty()) {
            classes.push_back(exposure_class_of(line, data, categories, system));
        }
    }
    return classes;
}

const EmbeddedRow* find_row(const EmbeddedTable& table, std::string_view name) {
    const auto found = std::ranges::find(table.rows, name, &EmbeddedRow::name);
    return found == table.rows.end() ? nullptr : &*found;
}

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

/// The row of a code's exposure table that speaks of the whole code, or nullptr.
const EmbeddedRow* code_row(const CodeData& data) {
    const EmbeddedTable& printed = *data.find("exposure");
    const auto found = std::ranges::find(printed.rows, "code", &EmbeddedRow::group);
    return found == printed.rows.end() ? nullptr : &*found;
}

std::string_view code_note(const CodeData& data, std::string_view name) {
    const EmbeddedRow* line = code_row(data);
    return line ? note(*line, name) : std::string_view{};
}

bool several_of_category(const CodeData& data) {
    return code_note(data, "classes") == "any number";
}

std::vector<std::size_t> categories_among(std::string_view names,
                                          const std::vector<core::ExposureCategory>& categories) {
    std::vector<std::size_t> places;
    for (const std::string_view name : split(names, "; ")) {
        places.push_back(category_named(name, categories));
    }
    return places;
}

std::vector<std::size_t> classes_among(std::string_view names,
                                       const std::vector<core::ExposureClass>& classes) {
    std::vector<std::size_t> places;
    for (const std::string_view name : split(names, "; ")) {
        const auto found = std::ranges::find(classes, name, &core::ExposureClass::name);
        assert(found != classes.end());
        places.push_back(static_cast<std::size_t>(found - classes.begin()));
    }
    return places;
}

core::CountedAddition counted_addition(const EmbeddedRow& line, const CodeData& data,
                                       const core::CodeTables& code) {
    const EmbeddedTable& printed = *data.find("additions");
    core::CountedAddition counted{
        .addition = addition_named(line.name),
        .k = cell(printed, line, "k"),
        .most_of_cement = cell(printed, line, "most"),
        .most_of_composite = present(cell(printed, line, "most_composite")),
        .low_k = present(cell(printed, line, "low_k")),
        .low_k_above_w_c = cell(printed, line, "low_k_above"),
        .low_k_categories = categories_among(note(line, "low_k_in"), code.categories),
        .barred_classes = classes_among(note(line, "barred_in"), code.classes),
        .standard = std::string{note(line, "standard")},
        .doubt = std::string{note(line, "doubt")},
        .source = source_of(line.source),
        .relief_above_kg_m3 = {},
        .most_relief_kg_m3 = {},
        .relief_source = {}};
    const EmbeddedTable* relief = data.find("least-cement");
    if (const EmbeddedRow* eased = relief ? find_row(*relief, line.name) : nullptr) {
        counted.relief_above_kg_m3 = present(cell(*relief, *eased, "above"));
        counted.most_relief_kg_m3 = present(cell(*relief, *eased, "most"));
        counted.relief_source = source_of(eased->source);
    }
    return counted;
}

/// What the code counts as binder; its categories and classes are known already.
core::BinderRules binder_rules(const CodeData& data, const core::CodeTables& code,
                               UnitSystem system) {
    core::BinderRules rules;
    const std::string_view additions = code_note(data, "additions");
    rules.by_k = additions == "by k";
    rules.cement_standard = std::string{code_note(data, "cement_standard")};
    if (additions == "all, from memory") {
        rules.all_counts = core::Source{code.name, core::Confidence::from_memory};
    }
    if (const EmbeddedTable* printed = data.find("additions")) {
        for (const EmbeddedRow& line : printed->rows) {
            rules.additions.push_back(counted_addition(line, data, code));
        }
    }
    if (const EmbeddedTable* by_size = data.find("cement-by-size")) {
        rules.cement_by_size = size_row(*by_size, by_size->rows.front(), system);
    }
    if (const EmbeddedTable* most = data.find("cement-most")) {
        rules.most_cement_kg_m3 = core::TypicalFigure{cell(*most, most->rows.front(), "most"),
                                                      source_of(most->rows.front().source)};
    }
    return rules;
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
            if (note(line, "steel") == "bars") {
                rules.classes.push_back({std::string{note(line, "class")},
                                         cell(*printed, line, "most"), source_of(line.source)});
            }
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

/// The code's own rule by deviations. Nothing where the code has none here.
std::optional<core::DeviationRules> deviation_rules(const CodeData& data) {
    const EmbeddedTable* printed = data.find("average-strength");
    if (!printed) {
        return std::nullopt;
    }
    const auto value = [&](std::string_view name) {
        return cell(*printed, row(*printed, name), "value");
    };
    core::DeviationRules rules{.deviations = value("deviations"),
                               .least_tests = value("least_tests"),
                               .floor_mpa = value("floor"),
                               .source = source_of(row(*printed, "deviations").source),
                               .assumed = {}};
    for (const EmbeddedRow& line : printed->rows) {
        if (line.name == "assumed") {
            rules.assumed.push_back({cell(*printed, line, "up_to"), cell(*printed, line, "value"),
                                     source_of(line.source)});
        }
    }
    return rules;
}

core::AverageStrengthRules average_strength_rules(const CodeData& data, UnitSystem system) {
    const EmbeddedTable& factors = table("average-strength-factor");
    const EmbeddedTable& rules = table("average-strength");
    const auto value = [&](std::string_view name) { return constant(rules, name, system); };
    const auto source = [&](std::string_view name) { return source_of(row(rules, name).source); };
    core::AverageStrengthRules result{
        .factors = {},
        .average_of_three_factor = value("average_of_three_factor"),
        .single_test_factor = value("single_test_factor"),
        .single_test_allowance_mpa = value("single_test_allowance"),
        .single_test_fraction = value("single_test_fraction"),
        .step_mpa = value("step"),
        .no_record_low_step_mpa = value("no_record_low_step"),
        .no_record_low_margin_mpa = value("no_record_low_margin"),
        .no_record_middle_margin_mpa = value("no_record_middle_margin"),
        .no_record_high_factor = value("no_record_high_factor"),
        .no_record_high_margin_mpa = value("no_record_high_margin"),
        .oldest_record_d = value("oldest_record"),
        .record_strength_distance_mpa = value("record_strength_distance"),
        .with_records = source("single_test_factor"),
        .without_records = source("no_record_middle_margin"),
        .without_records_above_step = source("no_record_high_margin")};
    for (const EmbeddedRow& factor : factors.rows) {
        result.factors.push_back({factor.from_us, cell(factors, factor, "factor")});
    }
    result.by_deviations = deviation_rules(data);
    result.borrowed = !result.by_deviations && code_note(data, "average_strength").empty();
    return result;
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

core::ClassNames class_names(const CodeData& data) {
    const EmbeddedTable& printed = *data.find("exposure");
    const auto categories = categories_of(printed);
    core::ClassNames names{.code = std::string{printed.source.work},
                           .classes = {},
                           .several_of_category = several_of_category(data)};
    for (const EmbeddedRow& line : printed.rows) {
        if (line.group.empty()) {
            names.classes.push_back(
                {std::string{line.name}, category_named(note(line, "category"), categories)});
        }
    }
    return names;
}

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

#include "exposure_classes.hpp"

#include "lookup.hpp"

#include <algorithm>
#include <cassert>
#include <charconv>
#include <cmath>
#include <iterator>
#include <limits>
#include <string>
#include <utility>

namespace boardmark::reference {

using core::UnitSystem;

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

namespace {

/// Where a code writes strengths as classes, the class pairs its specimens.
void take_strength_class(std::string_view name, const CodeData& data, core::ClassLimits& limits) {
    const EmbeddedTable& classes = *data.find("strength-class");
    const EmbeddedRow& line = row(classes, name);
    limits.strength_name = name;
    limits.min_strength_mpa = cell(classes, line, "cylinder");
    limits.min_strength_twin_mpa = limits.min_strength_mpa;
    limits.min_cube_strength_mpa = present(cell(classes, line, "cube"));
}

/// The days of "56 d"; nothing where no number stands there.
std::optional<double> days_of(std::string_view age) {
    int days = 0;
    const auto end = std::from_chars(age.data(), age.data() + age.size(), days);
    return end.ec == std::errc{} && days > 0 ? std::optional{static_cast<double>(days)}
                                             : std::nullopt;
}

core::ClassLimits limits(const EmbeddedRow& printed, const CodeData& data, UnitSystem system) {
    const EmbeddedTable& classes = *data.find("exposure");
    const double us_mpa = cell_or_gap(classes, printed, "min_strength_us");
    const double si_mpa = cell_or_gap(classes, printed, "min_strength_si");
    // A code may print one system alone, which holds in a file of the other one too.
    const bool us = !std::isnan(us_mpa) && (system == UnitSystem::us || std::isnan(si_mpa));
    const double printed_mpa = us ? us_mpa : si_mpa;
    const double other_mpa = us ? si_mpa : us_mpa;
    const std::string_view own_age = note(printed, "strength_age");
    const std::string_view age = own_age.empty() ? code_note(data, "strength_age") : own_age;
    core::ClassLimits found{
        .max_w_cm = present(cell_or_gap(classes, printed, "max_w_cm")),
        .min_strength_mpa = printed_mpa,
        .min_strength_twin_mpa = std::isnan(other_mpa) ? printed_mpa : other_mpa,
        .source = source_of(printed.source),
        .min_cement_kg_m3 = present(cell_or_gap(classes, printed, "min_cement")),
        .min_cement_with_additions_kg_m3 =
            present(cell_or_gap(classes, printed, "min_cement_with_additions")),
        .strength_age = std::string{age},
        .strength_age_d = days_of(age)};
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
                              std::string{name}, std::string{note(line, "beside_reason")},
                              note(line, "beside_where") == "plain concrete too"}};
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
            .cements_where = std::string{note(line, "cements_where")},
            .needs_pozzolan = note(line, "beside_cement") == "pozzolan or slag",
            .air_percent = air_of(line.name, data, system),
            .caps = caps_of(line.name, data),
            .caps_open_with = std::string{note(line, "caps_open_with")},
            .beside = beside_of(line),
            .salt = salt_of(line),
            .never_freezes = note(line, "frost") == "never",
            .other_editions = std::string{note(line, "other_editions")}};
}

} // namespace

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

bool several_of_category(const CodeData& data) {
    return code_note(data, "classes") == "any number";
}

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

} // namespace boardmark::reference

#include <boardmark/input/fields/starter.hpp>

#include "field_path.hpp"
#include "fields.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>
#include <string_view>

namespace boardmark::input {
namespace {

using core::UnitSystem;

/// A key of the starter file with a value in either system. A key without a value begins a section.
struct StarterLine {
    std::string_view path;
    std::string_view us = {};
    std::string_view si = {};

    std::string_view value(UnitSystem system) const {
        return system == UnitSystem::us || si.empty() ? us : si;
    }
};

// Invented figures of a usual concrete: the user's own papers replace them.
constexpr std::array lines{
    StarterLine{"boardmark", "1"},
    StarterLine{"title", "\"Name of the job and of the wall\""},
    StarterLine{"reporting", "us", "si"},
    StarterLine{"method", "ACI 211.1"},

    StarterLine{"requirements"},
    StarterLine{"requirements.code", "ACI 318-19"},
    StarterLine{"requirements.exposure", "[F2, S0, W1, C1]"},
    StarterLine{"requirements.strength", "4500 psi", "31 MPa"},
    StarterLine{"requirements.slump", "4 in", "100 mm"},
    StarterLine{"requirements.finish", "board-marked"},
    StarterLine{"requirements.section",
                "{thickness: 10 in, clear_bar_spacing: 5 in, clear_cover: 2 in}",
                "{thickness: 250 mm, clear_bar_spacing: 125 mm, clear_cover: 50 mm}"},

    StarterLine{"materials"},
    StarterLine{"materials.cement"},
    StarterLine{"materials.cement.kind", "portland cement"},
    StarterLine{"materials.cement.standard", "ASTM C150 II"},
    StarterLine{"materials.cement.relative_density", "3.15"},
    StarterLine{"materials.stone"},
    StarterLine{"materials.stone.kind", "coarse aggregate"},
    StarterLine{"materials.stone.nominal_max_size", "3/4 in", "20 mm"},
    StarterLine{"materials.stone.relative_density", "2.68"},
    StarterLine{"materials.stone.absorption", "0.5 %"},
    StarterLine{"materials.stone.dry_rodded_density", "100 lb/ft3", "1600 kg/m3"},
    StarterLine{"materials.stone.moisture", "2.0 %"},
    StarterLine{"materials.sand"},
    StarterLine{"materials.sand.kind", "fine aggregate"},
    StarterLine{"materials.sand.relative_density", "2.64"},
    StarterLine{"materials.sand.absorption", "0.7 %"},
    StarterLine{"materials.sand.fineness_modulus", "2.8"},
    StarterLine{"materials.sand.moisture", "6.0 %"},
    StarterLine{"materials.reducer"},
    StarterLine{"materials.reducer.kind", "high-range water reducer"},
    StarterLine{"materials.reducer.standard", "ASTM C494 F"},
    StarterLine{"materials.reducer.relative_density", "1.07"},
    StarterLine{"materials.reducer.solids", "35 %"},
    StarterLine{"materials.reducer.water_reduction", "{4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}",
                "{260 mL/100 kg: 8 %, 520 mL/100 kg: 16 %}"},
    StarterLine{"materials.air_agent"},
    StarterLine{"materials.air_agent.kind", "air-entraining admixture"},
    StarterLine{"materials.air_agent.relative_density", "1.01"},
    StarterLine{"materials.air_agent.solids", "8 %"},

    StarterLine{"mixture"},
    StarterLine{"mixture.binder", "{cement: 100 %}"},
    StarterLine{"mixture.coarse", "{stone: 100 %}"},
    StarterLine{"mixture.fine", "{sand: 100 %}"},
    StarterLine{"mixture.admixtures", "{reducer: 6 fl oz/cwt, air_agent: as needed}",
                "{reducer: 390 mL/100 kg, air_agent: as needed}"},
};

constexpr std::string_view heading =
    "# A mix file to begin with. Every figure is an example: replace it by your own papers'.\n"
    "#   boardmark check FILE        holds the mix against the limits\n"
    "#   boardmark proportion FILE   gives the amounts and their reasons\n"
    "# A line that begins with '# ' and a key is optional: take the '# ' away and set your "
    "value.\n";

constexpr std::size_t comment_column = 44;
constexpr std::size_t widest_line = 100;

std::size_t depth_of(std::string_view path) {
    return static_cast<std::size_t>(std::ranges::count(path, '.'));
}

/// "materials.stone.absorption" as the table of keys writes it: "materials.*.absorption".
std::string pattern_of(std::string_view path) {
    if (!path.starts_with("materials.")) {
        return std::string{path};
    }
    return depth_of(path) == 1 ? "materials.*" : "materials.*." + std::string{last_part(path)};
}

const Field* field_of(std::string_view path) {
    const auto found = std::ranges::find(mix_fields(), pattern_of(path), &Field::path);
    return found == mix_fields().end() ? nullptr : &*found;
}

/// A line with its explanation behind it, or above where there is no room.
std::string explained(const std::string& line, std::string_view meaning, std::size_t indent) {
    const std::size_t column = std::max(comment_column, line.size() + 2);
    if (column + meaning.size() + 2 <= widest_line) {
        return fmt::format("{:<{}}# {}\n", line, column, meaning);
    }
    return fmt::format("{:{}}# {}\n{}\n", "", indent, meaning, line);
}

/// Roles of the material that a path stands in; any role elsewhere.
Roles roles_of(std::string_view section) {
    const std::string kind_path = std::string{section} + ".kind";
    for (const StarterLine& line : lines) {
        if (line.path == kind_path) {
            for (const core::KindName& kind : core::all_kinds()) {
                if (kind.name == line.us) {
                    return role_bit(kind.role);
                }
            }
        }
    }
    return any_role;
}

/// The keys that may be added to a section, commented out. A key of several materials is shown
/// once.
std::string optional_keys(std::string_view section, std::set<std::string_view>& shown) {
    std::string text;
    const std::string prefix = pattern_of(section) + ".";
    const std::size_t indent = 2 * (depth_of(section) + 1);
    for (const Field& field : mix_fields()) {
        const bool inside = field.path.starts_with(prefix) &&
                            field.path.find('.', prefix.size()) == std::string_view::npos;
        const bool fits =
            inside && last_part(field.path) != "*" && (field.roles & roles_of(section)) != 0;
        if (fits && shown.insert(field.path).second) {
            text += explained(fmt::format("{:{}}#{}", "", indent, field.example), field.meaning,
                              indent);
        }
    }
    return text;
}

/// Whether the line after this one leaves a section, and with it the place for optional keys.
bool ends_section(std::size_t index, std::string_view section) {
    return !section.empty() &&
           (index + 1 == lines.size() || parent_of(lines[index + 1].path) != section);
}

std::string text_of(const StarterLine& line, UnitSystem system) {
    const std::size_t indent = 2 * depth_of(line.path);
    const Field* field = field_of(line.path);
    const std::string_view value = line.value(system);
    const std::string written = fmt::format("{:{}}{}:{}{}", "", indent, last_part(line.path),
                                            value.empty() ? "" : " ", value);
    const bool is_material = depth_of(line.path) == 1 && line.path.starts_with("materials.");
    return field && !is_material ? explained(written, field->meaning, indent) : written + "\n";
}

} // namespace

std::string starter_mix(UnitSystem system) {
    std::string text{heading};
    std::set<std::string_view> shown;
    for (const StarterLine& line : lines) {
        shown.insert(field_of(line.path)->path);
    }
    for (std::size_t index = 0; index < lines.size(); ++index) {
        const StarterLine& line = lines[index];
        const bool begins_part = depth_of(line.path) == 0 && line.us.empty();
        text += begins_part ? "\n" : "";
        text += text_of(line, system);
        if (ends_section(index, parent_of(line.path)) && !line.us.empty()) {
            text += optional_keys(parent_of(line.path), shown);
        }
    }
    return text;
}

} // namespace boardmark::input

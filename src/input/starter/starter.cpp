#include <boardmark/input/starter/starter.hpp>
#include <boardmark/text/wrap.hpp>

#include "../fields/field_path.hpp"
#include "in_si.hpp"
#include "starter_lines.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <set>
#include <string_view>

namespace boardmark::input {
namespace {

using core::UnitSystem;

constexpr std::string_view optional_heading = "# A line whose '#' stands right before a key is "
                                              "optional: take the '#' away and set your value.\n"
                                              "# 'boardmark help KEY' explains any key.\n";

constexpr std::size_t comment_column = 44;
constexpr std::size_t widest_line = 100;

std::size_t depth_of(std::string_view path) {
    return static_cast<std::size_t>(std::ranges::count(path, '.'));
}

/// Where a kind of material, named in the lines, tells the keys that it may have.
Roles role_of(std::string_view kind_written) {
    for (const core::KindName& kind : core::all_kinds()) {
        if (kind.name == kind_written) {
            return role_bit(kind.role);
        }
    }
    return any_role;
}

class StarterWriter {
public:
    StarterWriter(const StarterFile& file, UnitSystem system)
        : file_(file)
        , system_(system) {
        for (const StarterLine& line : file.lines) {
            shown_.insert(field_of(line.path).path);
        }
    }

    std::string written() {
        std::string text = std::string{file_.heading} + std::string{optional_heading};
        for (std::size_t index = 0; index < file_.lines.size(); ++index) {
            const StarterLine& line = file_.lines[index];
            const bool is_section = line.us.empty();
            text += depth_of(line.path) == 0 && is_section ? "\n" : "";
            text += text_of(line);
            if (ends_section(index, parent_of(line.path)) && !is_section) {
                text += optional_keys(parent_of(line.path));
            }
        }
        const std::string rest = optional_keys("");
        return rest.empty() ? text : text + "\n" + rest;
    }

private:
    const Field& field_of(std::string_view path) const {
        const auto found = std::ranges::find_if(
            file_.fields, [&](const Field& field) { return stands_for(field.path, path); });
        assert(found != file_.fields.end());
        return *found;
    }

    std::string text_of(const StarterLine& line) {
        const std::size_t indent = 2 * depth_of(line.path);
        const Field& field = field_of(line.path);
        const std::string_view value = line.value(system_);
        const std::string written = fmt::format("{:{}}{}:{}{}", "", indent, last_part(line.path),
                                                value.empty() ? "" : " ", value);
        // What is true of every name of the user's is said once, and not of a name with keys below.
        const bool is_name = last_part(field.path) == "*";
        const bool tells = !is_name || (!value.empty() && told_.insert(field.path).second);
        return tells ? explained(written, in_its_units(field.meaning), indent) : written + "\n";
    }

    /// A line with its explanation behind it, or above where there is no room.
    static std::string explained(const std::string& line, std::string_view meaning,
                                 std::size_t indent) {
        const std::size_t column = std::max(comment_column, line.size() + 2);
        if (column + meaning.size() + 2 <= widest_line) {
            return fmt::format("{:<{}}# {}\n", line, column, meaning);
        }
        const std::string above = std::string(indent, ' ') + "# ";
        return text::wrapped(meaning, {above, above}, widest_line) + line + "\n";
    }

    /// Whether the line after this one leaves a section, and with it the place for optional keys.
    bool ends_section(std::size_t index, std::string_view section) const {
        return !section.empty() && (index + 1 == file_.lines.size() ||
                                    parent_of(file_.lines[index + 1].path) != section);
    }

    /// Roles of the material that a section is; any role elsewhere.
    Roles roles_of(std::string_view section) const {
        const auto kind =
            std::ranges::find(file_.lines, std::string{section} + ".kind", &StarterLine::path);
        return kind == file_.lines.end() ? any_role : role_of(kind->us);
    }

    /// The keys that may be added to a section, or at the top, commented out. A key of several
    /// materials is shown once.
    std::string optional_keys(std::string_view section) {
        const std::string_view pattern = section.empty() ? section : field_of(section).path;
        const std::size_t indent = section.empty() ? 0 : 2 * (depth_of(section) + 1);
        std::string text;
        for (const Field& field : file_.fields) {
            const bool fits = parent_of(field.path) == pattern && last_part(field.path) != "*" &&
                              (field.roles & roles_of(section)) != 0;
            if (fits && shown_.insert(field.path).second) {
                text += explained(fmt::format("{:{}}#{}", "", indent, in_its_units(field.example)),
                                  in_its_units(field.meaning), indent);
            }
        }
        return text;
    }

    /// A text of the table of keys in the units of this file.
    std::string in_its_units(std::string_view text) const {
        return system_ == UnitSystem::us ? std::string{text} : in_si(text);
    }

    const StarterFile& file_;
    UnitSystem system_;
    std::set<std::string_view> shown_; ///< patterns of keys that stand in the file
    std::set<std::string_view> told_;  ///< patterns that end in `*` and are explained
};

} // namespace

std::string starter(FileKind kind, UnitSystem system) {
    const StarterFile file = [&] {
        switch (kind) {
        case FileKind::mix:
            return mix_starter();
        case FileKind::trial:
            return trial_starter();
        case FileKind::results:
            return results_starter();
        case FileKind::wall:
            break;
        }
        return wall_starter();
    }();
    return StarterWriter{file, system}.written();
}

} // namespace boardmark::input

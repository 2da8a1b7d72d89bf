#include "table_form.hpp"

#include "table_contradictions.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <vector>

namespace boardmark::input {
namespace {

constexpr std::string_view exposure_columns[] = {
    "max_w_cm",   "min_strength_us",           "min_strength_si",
    "min_cement", "min_cement_with_additions", "chloride"};
constexpr std::string_view exposure_notes[] = {"category",
                                               "subject",
                                               "step",
                                               "asks",
                                               "meaning",
                                               "salt",
                                               "frost",
                                               "beside",
                                               "beside_reason",
                                               "beside_where",
                                               "strength_class",
                                               "strength_age",
                                               "cements",
                                               "cements_where",
                                               "beside_cement",
                                               "caps_open_with",
                                               "calcium_chloride",
                                               "alkali_reactivity",
                                               "reactivity_place",
                                               "other_editions",
                                               "edition",
                                               "scope",
                                               "strength_rule",
                                               "average_strength",
                                               "classes",
                                               "additions",
                                               "cement_standard",
                                               "chloride_of",
                                               "chloride"};
constexpr std::string_view systems[] = {"us", "si"};
constexpr std::string_view air_rule_notes[] = {"cited", "other_editions"};
constexpr std::string_view addition_columns[] = {"k", "most", "most_composite", "low_k",
                                                 "low_k_above"};
constexpr std::string_view addition_notes[] = {"standard", "doubt", "low_k_in", "barred_in"};
constexpr std::string_view relief_columns[] = {"above", "most"};
constexpr std::string_view all_relief_columns[] = {"above", "most", "up_to"};
constexpr std::string_view relief_notes[] = {"together"};
constexpr std::string_view most_column[] = {"most"};
constexpr std::string_view chloride_notes[] = {"class", "steel"};
constexpr std::string_view cap_notes[] = {"class"};
constexpr std::string_view strength_columns[] = {"cylinder", "cube"};
constexpr std::string_view size_columns[] = {"fraction"};
constexpr std::string_view order_column[] = {"order"};
constexpr std::string_view site_notes[] = {
    "class",   "reason",       "missing",           "open_point",
    "asks",    "freezing",     "wet_when_freezing", "deicer",
    "sea",     "soil_sulfate", "reinforced",        "salty_air",
    "wetting", "facing",       "aggressive_ground"};

constexpr TableForm all_forms[] = {
    {"exposure",
     exposure_columns,
     {},
     exposure_notes,
     false,
     "[{name: max_w_cm}, {name: min_cement, unit: kg/m3}]"},
    {"air", {}, {}, {}, true, "{what: nominal maximum size, both: [10 mm, 20 mm]}"},
    {"air-rules", systems, systems, air_rule_notes, false, "[{name: us}, {name: si}]"},
    {"additions", addition_columns, addition_columns, addition_notes, false,
     "[{name: k}, {name: most}, {name: most_composite}, {name: low_k}, {name: low_k_above}]"},
    {"least-cement", all_relief_columns, relief_columns, relief_notes, false,
     "[{name: above}, {name: most}]"},
    {"cement-by-size", {}, {}, {}, true, "{what: nominal maximum size, both: [10 mm, 20 mm]}"},
    {"cement-most", most_column, most_column, {}, false, "[{name: most, unit: kg/m3}]"},
    {"chloride", most_column, most_column, chloride_notes, false, "[{name: most, unit: \"%\"}]"},
    {"supplementary", most_column, most_column, cap_notes, false, "[{name: most, unit: \"%\"}]"},
    {"strength-class",
     strength_columns,
     strength_columns,
     {},
     false,
     "[{name: cylinder, unit: MPa}, {name: cube, unit: MPa}]"},
    {"aggregate-size", size_columns, size_columns, {}, false, "[{name: fraction}]"},
    {"site", order_column, order_column, site_notes, false, "[{name: order}]"},
};

const core::PrintedTable* table_of(const core::PrintedCode& code, std::string_view subject) {
    const auto found = std::ranges::find(code.tables, subject, &core::PrintedTable::subject);
    return found == code.tables.end() ? nullptr : &*found;
}

std::string_view note_of(const core::PrintedRow& row, std::string_view name) {
    for (const auto& [key, text] : row.notes) {
        if (key == name) {
            return text;
        }
    }
    return {};
}

/// The parts of "XC; XF".
std::vector<std::string> parts_of(std::string_view list, std::string_view separator) {
    std::vector<std::string> parts;
    for (std::size_t at = 0; at < list.size();) {
        const std::size_t end = std::min(list.find(separator, at), list.size());
        parts.emplace_back(list.substr(at, end - at));
        at = end + separator.size();
    }
    return parts;
}

/// What the tables of one code say to each other.
class LooseWords {
public:
    LooseWords(const core::PrintedCode& code, const core::Vocabulary& words, const Node& tables,
               const TellFault& tell)
        : code_{code}
        , words_{words}
        , tables_{tables}
        , tell_{tell} {}

    void tell() {
        tell_of_exposure();
        for_rows("air", [&](const auto& row, const Node& node) { demand_class(row.name, node); });
        for_rows("supplementary", [&](const auto& row, const Node& node) {
            demand_class(std::string{note_of(row, "class")}, node);
            demand_one_of(row.name, caps, node, "an addition that is capped");
        });
        for_rows("additions", [&](const auto& row, const Node& node) {
            demand_one_of(row.name, counted, node, "an addition that may count");
            for (const std::string& name : parts_of(note_of(row, "barred_in"), "; ")) {
                demand_class(name, node);
            }
            for (const std::string& name : parts_of(note_of(row, "low_k_in"), "; ")) {
                demand_category(name, node);
            }
            demand_figures(row, 2, node);
        });
        for_rows("least-cement", [&](const auto& row, const Node& node) {
            demand_one_of(row.name, counted, node, "an addition that may count");
        });
        for_rows("strength-class", [&](const auto& row, const Node& node) {
            if (std::ranges::all_of(row.cells, [](double cell) { return std::isnan(cell); })) {
                tell_(node, "strength class '" + row.name + "' names no strength",
                      "give the one of cylinders, of cubes or both");
            }
        });
        for (const std::string_view subject :
             {"air-rules", "chloride", "supplementary", "cement-most", "cement-by-size",
              "aggregate-size", "air"}) {
            for_rows(subject, [&](const auto& row, const Node& node) {
                demand_figures(row, row.cells.size(), node);
            });
        }
        if (table_of(code_, "air") && !table_of(code_, "air-rules")) {
            tell_(tables_.find("air")->key, "the code has a table 'air' and no 'air-rules'",
                  "say how its air is held: a row 'tolerance', and 'below' and 'above' where the "
                  "figure is a least one");
        }
        tell_missing_rows("air-rules", tolerance_rows);
        tell_missing_rows("aggregate-size", size_rows);
        tell_of_site();
    }

private:
    static constexpr std::string_view counted[] = {"fly_ash", "slag_cement", "silica_fume"};
    static constexpr std::string_view caps[] = {"fly_ash", "slag_cement", "silica_fume", "total",
                                                "ash_and_fume"};
    static constexpr std::string_view tolerance_rows[] = {"tolerance"};
    static constexpr std::string_view size_rows[] = {"of_form", "of_slab", "of_bar_spacing",
                                                     "of_cover"};

    /// The node of a row: the tables of the tree and those that were read have the same order.
    const Node& node_of(std::string_view subject, std::size_t row) const {
        return tables_.find(subject)->value.find("rows")->value.items[row];
    }

    template <class Visit>
    void for_rows(std::string_view subject, Visit&& visit) {
        const core::PrintedTable* table = table_of(code_, subject);
        for (std::size_t i = 0; table && i < table->rows.size(); ++i) {
            visit(table->rows[i], node_of(subject, i));
        }
    }

    std::vector<std::string> names_of(std::string_view group) const {
        std::vector<std::string> names;
        for (const core::PrintedRow& row : table_of(code_, "exposure")->rows) {
            if (row.group == group) {
                names.push_back(row.name);
            }
        }
        return names;
    }

    void demand_class(const std::string& name, const Node& node) {
        if (std::ranges::count(names_of(""), name) == 0) {
            tell_(node, "'" + name + "' is no class of the table 'exposure'",
                  "write a class that stands there");
        }
    }

    void demand_category(const std::string& name, const Node& node) {
        if (std::ranges::count(names_of("category"), name) == 0) {
            tell_(node, "'" + name + "' is no category of the table 'exposure'",
                  "add a row {name: " + (name.empty() ? "X" : name) +
                      ", group: category, subject: …} before its classes");
        }
    }

    void demand_one_of(const std::string& name, std::span<const std::string_view> known,
                       const Node& node, const std::string& what) {
        if (std::ranges::count(known, std::string_view{name}) == 0) {
            std::string listed;
            for (const std::string_view one : known) {
                listed += (listed.empty() ? "" : ", ") + std::string{one};
            }
            tell_(node, "'" + name + "' is not " + what, "known here: " + listed);
        }
    }

    void demand_figures(const core::PrintedRow& row, std::size_t count, const Node& node) {
        for (std::size_t i = 0; i < std::min(count, row.cells.size()); ++i) {
            if (!std::isfinite(row.cells[i]) || row.cells[i] < 0) {
                if (row.cells[i] < 0 && row.name == "added") {
                    continue;
                }
                tell_(node, "row '" + row.name + "' has no figure where it needs one",
                      "write a number of 0 or more");
                return;
            }
        }
    }

    void tell_missing_rows(std::string_view subject, std::span<const std::string_view> needed) {
        const core::PrintedTable* table = table_of(code_, subject);
        if (!table) {
            return;
        }
        for (const std::string_view name : needed) {
            if (std::ranges::count(table->rows, name, &core::PrintedRow::name) == 0) {
                tell_(tables_.find(subject)->key,
                      std::string{subject} + " has no row '" + std::string{name} + "'", "add it");
            }
        }
    }

    void tell_of_exposure() {
        std::vector<std::string> seen;
        for_rows("exposure", [&](const core::PrintedRow& row, const Node& node) {
            const bool variant =
                row.group == "plain concrete" || row.group == "with pozzolan or slag";
            if (variant) {
                if (seen.empty() || seen.back() != row.name) {
                    tell_(node,
                          "row '" + row.name + "' of " + row.group + " does not follow its class",
                          "write it right behind the class");
                }
            } else if (row.group.empty()) {
                tell_of_class(row, seen, node);
                seen.push_back(row.name);
            } else if (row.group != "category" && row.group != "code") {
                tell_(node, "'" + row.group + "' is no group of the table 'exposure'",
                      "known here: code, category, plain concrete, with pozzolan or slag");
            }
            tell_of_limits(row, node);
        });
        if (seen.empty()) {
            tell_(tables_.find("exposure")->key, "the table 'exposure' has no class",
                  "write a row for each class");
        }
    }

    void tell_of_class(const core::PrintedRow& row, const std::vector<std::string>& seen,
                       const Node& node) {
        demand_category(std::string{note_of(row, "category")}, node);
        if (std::ranges::count(seen, row.name) > 0) {
            tell_(node, "class '" + row.name + "' stands twice", "keep one");
        }
        if (note_of(row, "meaning").empty()) {
            tell_(node, "class '" + row.name + "' has no 'meaning'",
                  "say in one line what it is stated for");
        }
        const std::string beside{note_of(row, "beside")};
        if (!beside.empty()) {
            demand_class(beside, node);
        }
    }

    void tell_of_limits(const core::PrintedRow& row, const Node& node) {
        const core::PrintedTable& table = *table_of(code_, "exposure");
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const bool ratio = table.columns[i].name == "max_w_cm";
            const double cell = row.cells[i];
            const bool impossible =
                !std::isnan(cell) && (cell <= 0 || (ratio && (cell < 0.2 || cell > 1.5)));
            if (impossible) {
                tell_(node, "row '" + row.name + "' has an impossible " + table.columns[i].name,
                      "check the figure and its unit");
            }
        }
        const std::string strength{note_of(row, "strength_class")};
        if (strength.empty()) {
            return;
        }
        const core::PrintedTable* own = table_of(code_, "strength-class");
        const bool known =
            own ? std::ranges::count(own->rows, strength, &core::PrintedRow::name) > 0
                : std::ranges::count(words_.strength_names, strength, &core::StrengthName::name) >
                      0;
        if (!known) {
            tell_(node, "strength class '" + strength + "' is not known",
                  "add a table 'strength-class' that names its strengths");
        }
    }

    void tell_of_site() {
        for_rows("site", [&](const core::PrintedRow& row, const Node& node) {
            demand_category(row.group, node);
            const std::string name{note_of(row, "class")};
            if (!name.empty()) {
                demand_class(name, node);
            }
            tell_of_conditions(row, node);
            if (note_of(row, "reason").empty() && note_of(row, "missing").empty()) {
                tell_(node, "row '" + row.name + "' gives neither 'reason' nor 'missing'",
                      "say why the class follows, or what is missing");
            }
        });
    }

    void tell_of_conditions(const core::PrintedRow& row, const Node& node) {
        static constexpr std::string_view facts[] = {
            "freezing",   "wet_when_freezing", "deicer",  "sea",    "soil_sulfate",
            "reinforced", "salty_air",         "wetting", "facing", "aggressive_ground"};
        static constexpr std::string_view values[] = {
            "open", "no",        "yes",  "spray",    "tidal",       "harmless", "more",
            "dry",  "sheltered", "rain", "long wet", "under water", "vertical", "horizontal"};
        for (const std::string_view fact : facts) {
            for (const std::string& value : parts_of(note_of(row, fact), " or ")) {
                demand_one_of(value, values, node, "what " + std::string{fact} + " may be");
            }
        }
    }

    const core::PrintedCode& code_;
    const core::Vocabulary& words_;
    const Node& tables_;
    const TellFault& tell_;
};

} // namespace

std::span<const TableForm> table_forms() {
    return all_forms;
}

const TableForm* find_table_form(std::string_view subject) {
    const auto found = std::ranges::find(all_forms, subject, &TableForm::subject);
    return found == std::end(all_forms) ? nullptr : &*found;
}

void tell_loose_words(const core::PrintedCode& code, const core::Vocabulary& words,
                      const Node& tables, const TellFault& tell) {
    LooseWords{code, words, tables, tell}.tell();
    tell_contradictions(code, tables, tell);
}

} // namespace boardmark::input

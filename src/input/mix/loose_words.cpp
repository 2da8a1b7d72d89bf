#include "loose_words.hpp"

#include "row_note.hpp"
#include "table_contradictions.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace boardmark::input {
namespace {

const core::PrintedTable* table_of(const core::PrintedCode& code, std::string_view subject) {
    const auto found = std::ranges::find(code.tables, subject, &core::PrintedTable::subject);
    return found == code.tables.end() ? nullptr : &*found;
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
        });
        for_rows("additions", [&](const auto& row, const Node& node) {
            for (const std::string& name : parts_of(note_of(row, "barred_in"), "; ")) {
                demand_class(name, node);
            }
            for (const std::string& name : parts_of(note_of(row, "low_k_in"), "; ")) {
                demand_category(name, node);
            }
            demand_figures(row, 2, node);
        });
        for_rows("strength-class", [&](const auto& row, const Node& node) {
            if (std::ranges::all_of(row.cells, [](double cell) { return std::isnan(cell); })) {
                tell_(node, "strength class '" + row.name + "' names no strength",
                      "give the one of cylinders, of cubes or both");
            }
        });
        for (const std::string_view subject :
             {"air-rules", "chloride", "supplementary", "cement-most", "cement-by-size",
              "aggregate-size", "air", "soil-sulfate"}) {
            for_rows(subject, [&](const auto& row, const Node& node) {
                demand_figures(row, row.cells.size(), node);
            });
        }
        if (table_of(code_, "air") && !table_of(code_, "air-rules")) {
            tell_(tables_.find("air")->key, "the code has a table 'air' and no 'air-rules'",
                  "say how its air is held: a row 'tolerance', and 'below' and 'above' where the "
                  "figure is a least one");
        }
        tell_of_air();
        tell_of_counting();
        tell_of_chloride();
        tell_of_soil();
        tell_of_site();
    }

private:
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

    bool is_of_frost(std::string_view category) const {
        return std::ranges::any_of(table_of(code_, "exposure")->rows,
                                   [&](const core::PrintedRow& row) {
                                       return row.group == "category" && row.name == category &&
                                              note_of(row, "step") == "exposure_freezing";
                                   });
    }

    /// A class of frost without a row of air asks none: that has to be said.
    void tell_of_air() {
        const core::PrintedTable* air = table_of(code_, "air");
        for_rows("exposure", [&](const core::PrintedRow& row, const Node& node) {
            if (air && row.group.empty() && is_of_frost(note_of(row, "category")) &&
                note_of(row, "frost").empty() && note_of(row, "asks").empty() &&
                std::ranges::count(air->rows, row.name, &core::PrintedRow::name) == 0) {
                tell_(node, "class '" + row.name + "' is of frost and has no row in 'air'",
                      "add the row, or write 'asks: no air' beside the class where the code asks "
                      "none");
            }
        });
    }

    /// What the row of the code says; empty where it, or the note, is not there.
    std::string_view code_note(std::string_view name) const {
        const auto& rows = table_of(code_, "exposure")->rows;
        const auto found =
            std::ranges::find(rows, std::string_view{"code"}, &core::PrintedRow::group);
        return found == rows.end() ? std::string_view{} : note_of(*found, name);
    }

    /// Tables of what counts that nothing would read.
    void tell_of_counting() {
        for (const std::string_view subject : {"additions", "least-cement"}) {
            if (table_of(code_, subject) && code_note("additions") != "by k") {
                tell_(tables_.find(subject)->key,
                      "the code has a table '" + std::string{subject} +
                          "', and its row of group code does not say 'additions: by k'",
                      "write it there, or leave the table out where all additions count");
            }
        }
    }

    bool limits_chloride() const {
        const core::PrintedTable& exposure = *table_of(code_, "exposure");
        const auto column =
            std::ranges::find(exposure.columns, "chloride", &core::PrintedColumn::name);
        const auto at = static_cast<std::size_t>(column - exposure.columns.begin());
        return table_of(code_, "chloride") ||
               (column != exposure.columns.end() &&
                std::ranges::any_of(exposure.rows, [&](const core::PrintedRow& row) {
                    return !std::isnan(row.cells[at]);
                }));
    }

    void tell_of_chloride() {
        const Node& key = tables_.find(table_of(code_, "chloride") ? "chloride" : "exposure")->key;
        if (limits_chloride() && code_note("chloride_of").empty()) {
            tell_(key, "the code limits chloride and does not say of what mass",
                  "write in its row of group code 'chloride_of: cementitious', 'cement', 'cement "
                  "and counted additions' or 'concrete'");
        }
        if (limits_chloride() && code_note("chloride").empty()) {
            tell_(key, "the code limits chloride and does not say which",
                  "write in its row of group code 'chloride: acid-soluble' or 'water-soluble'");
        }
        for_rows("chloride", [&](const core::PrintedRow& row, const Node& node) {
            if (note_of(row, "steel").empty()) {
                tell_(node, "row '" + row.name + "' has no 'steel'",
                      "write 'steel: bars' or 'steel: none'");
            }
        });
    }

    /// Bands of sulfate begin at nothing, so that each soil has its class.
    void tell_of_soil() {
        double before = -1;
        for_rows("soil-sulfate", [&](const core::PrintedRow& row, const Node& node) {
            demand_class(row.name, node);
            const double from = row.cells.front();
            if (before < 0 ? from != 0 : !(from > before)) {
                tell_(node, "row '" + row.name + "' does not begin where the one before it ends",
                      "write the bands from the mildest, at 0 %, to the most severe");
            }
            if (note_of(row, "bound").empty()) {
                tell_(node, "row '" + row.name + "' has no 'bound'",
                      "write 'bound: itself' where the class holds at its figure itself, 'bound: "
                      "above' where it does not");
            }
            before = from;
        });
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
            } else if (row.group == "category") {
                tell_of_category(row, node);
            } else if (row.group != "code") {
                tell_(node, "'" + row.group + "' is no group of the table 'exposure'",
                      "known here: code, category, plain concrete, with pozzolan or slag");
            }
            tell_of_strength_class(row, node);
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
        if (!note_of(row, "beside_cement").empty() && note_of(row, "cements").empty()) {
            tell_(node, "class '" + row.name + "' has 'beside_cement' and no 'cements'",
                  "write the cements that it accepts: what goes beside them is asked of those");
        }
        for (const std::string_view note : {"beside", "caps_open_with"}) {
            if (const std::string other{note_of(row, note)}; !other.empty()) {
                demand_class(other, node);
            }
        }
    }

    void tell_of_category(const core::PrintedRow& row, const Node& node) {
        if (note_of(row, "step").empty()) {
            tell_(node, "category '" + row.name + "' has no 'step'",
                  "say what attacks there: 'step: exposure_freezing' of frost, 'exposure_sea', "
                  "'exposure_carbonation', else 'exposure_conditions'");
        }
    }

    void tell_of_strength_class(const core::PrintedRow& row, const Node& node) {
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
            tell_of_site_class(row, node);
            tell_of_sulfate(row, node);
            if (note_of(row, "reason").empty() && note_of(row, "missing").empty()) {
                tell_(node, "row '" + row.name + "' gives neither 'reason' nor 'missing'",
                      "say why the class follows, or what is missing");
            }
        });
        tell_of_unknown_site();
    }

    void demand_class_of(const std::string& name, const std::string& category, const Node& node) {
        demand_class(name, node);
        for (const core::PrintedRow& row : table_of(code_, "exposure")->rows) {
            if (row.group.empty() && row.name == name && note_of(row, "category") != category) {
                tell_(node, "'" + name + "' is no class of the category '" + category + "'",
                      "write a class of the row's own group");
            }
        }
    }

    void tell_of_site_class(const core::PrintedRow& row, const Node& node) {
        const std::string name{note_of(row, "class")};
        if (name == "soil") {
            for_rows("soil-sulfate", [&](const core::PrintedRow& band, const Node& at) {
                demand_class_of(band.name, row.group, at);
            });
        } else if (!name.empty()) {
            demand_class_of(name, row.group, node);
        }
    }

    /// Without bands of sulfate it is always open, and then no class follows from it.
    void tell_of_sulfate(const core::PrintedRow& row, const Node& node) {
        const auto values = parts_of(note_of(row, "soil_sulfate"), " or ");
        const bool by_soil = note_of(row, "class") == "soil";
        const bool known = !values.empty() && std::ranges::count(values, std::string{"open"}) == 0;
        if (!by_soil && note_of(row, "reason").find("{sulfate}") != std::string_view::npos) {
            tell_(node, "row '" + row.name + "' tells {sulfate} and does not take the soil's class",
                  "write its reason without it");
        }
        if (by_soil && !known) {
            tell_(node, "row '" + row.name + "' takes the soil's class and does not ask for it",
                  "write 'soil_sulfate: harmless or more', or one of the two");
        } else if (known && !table_of(code_, "soil-sulfate")) {
            tell_(node, "row '" + row.name + "' asks for sulfate, and no table tells its bands",
                  "add a table 'soil-sulfate': a row for each class with its least sulfate");
        }
    }

    /// A site of which nothing is stated may not lead to no class at all.
    void tell_of_unknown_site() {
        static constexpr std::string_view facts[] = {
            "freezing",         "wet_when_freezing", "deicer",  "sea",
            "soil_sulfate",     "salty_air",         "wetting", "facing",
            "aggressive_ground"};
        const auto asks_for_facts = [](const core::PrintedRow& row) {
            return std::ranges::any_of(
                facts, [&](std::string_view fact) { return !note_of(row, fact).empty(); });
        };
        const auto takes_unknown = [](const core::PrintedRow& row) {
            return note_of(row, "reinforced").empty() &&
                   std::ranges::all_of(facts, [&](std::string_view fact) {
                       const auto values = parts_of(note_of(row, fact), " or ");
                       return values.empty() || std::ranges::count(values, std::string{"open"}) > 0;
                   });
        };
        for (const std::string& category : names_of("category")) {
            bool any = false;
            bool found = false;
            for_rows("site", [&](const core::PrintedRow& row, const Node& node) {
                if (row.group != category || found) {
                    return;
                }
                found = takes_unknown(row);
                if (found && any && note_of(row, "asks") == "none") {
                    tell_(node,
                          "row '" + row.name +
                              "' asks no class of a site of which nothing is stated",
                          "write when that is so, for example 'sea: no'");
                }
                any = any || asks_for_facts(row);
            });
        }
    }

    const core::PrintedCode& code_;
    const core::Vocabulary& words_;
    const Node& tables_;
    const TellFault& tell_;
};

} // namespace

void tell_loose_words(const core::PrintedCode& code, const core::Vocabulary& words,
                      const Node& tables, const TellFault& tell) {
    LooseWords{code, words, tables, tell}.tell();
    tell_contradictions(code, tables, tell);
}

} // namespace boardmark::input

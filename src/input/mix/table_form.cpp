#include "table_form.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::input {
namespace {

using units::Dimension;

// The ranges are wide: they part a figure from one in another unit, not a good limit from a bad
// one.
constexpr FigureForm ratio{Dimension::mass_ratio, 0.2, 1.5};
constexpr FigureForm efficiency{Dimension::mass_ratio, 0, 4};
constexpr FigureForm part_of_cement{Dimension::mass_ratio, 0, 5};
constexpr FigureForm part_of_gap{Dimension::mass_ratio, 0.05, 1};
constexpr FigureForm count{Dimension::mass_ratio, 0, 1000};
constexpr FigureForm strength{Dimension::stress, 1, 250};
constexpr FigureForm least_content{Dimension::mass_per_volume, 50, 1000};
constexpr FigureForm content{Dimension::mass_per_volume, 0, 1000};
constexpr FigureForm more_or_less{Dimension::mass_per_volume, -200, 200};
constexpr FigureForm air{Dimension::percentage, 0.5, 15};
constexpr FigureForm points_of_air{Dimension::percentage, 0, 10};
constexpr FigureForm share_of_binder{Dimension::percentage, 0, 100};
constexpr FigureForm sulfate{Dimension::percentage, 0, 100};
constexpr FigureForm chloride_of_binder{Dimension::percentage, 0.01, 5};
constexpr FigureForm chloride_of_concrete{Dimension::mass_per_volume, 0.05, 20};

constexpr ColumnForm exposure_columns[] = {
    {"max_w_cm", ratio},
    {"min_strength_us", strength},
    {"min_strength_si", strength},
    {"min_cement", least_content},
    {"min_cement_with_additions", least_content},
    {"chloride", chloride_of_binder, false, chloride_of_concrete}};
constexpr ColumnForm systems[] = {{"us", points_of_air, true}, {"si", points_of_air, true}};
constexpr ColumnForm addition_columns[] = {{"k", efficiency, true},
                                           {"most", part_of_cement, true},
                                           {"most_composite", part_of_cement, true},
                                           {"low_k", efficiency, true},
                                           {"low_k_above", ratio, true}};
constexpr ColumnForm relief_columns[] = {
    {"above", content, true}, {"most", content, true}, {"up_to", content}};
constexpr ColumnForm most_cement[] = {{"most", least_content, true}};
constexpr ColumnForm most_chloride[] = {{"most", chloride_of_binder, true, chloride_of_concrete}};
constexpr ColumnForm most_share[] = {{"most", share_of_binder, true}};
constexpr ColumnForm strength_columns[] = {{"cylinder", strength, true}, {"cube", strength, true}};
constexpr ColumnForm size_columns[] = {{"fraction", part_of_gap, true}};
constexpr ColumnForm order_column[] = {{"order", count, true}};
constexpr ColumnForm sulfate_columns[] = {{"from", sulfate, true}};

constexpr std::string_view steps[] = {
    "exposure_attack",    "exposure_carbonation", "exposure_chloride", "exposure_conditions",
    "exposure_corrosion", "exposure_freezing",    "exposure_sea",      "exposure_sulfate",
    "exposure_surface",   "exposure_water"};
constexpr std::string_view asked[] = {"nothing", "no air"};
constexpr std::string_view salts[] = {"none", "deicers", "any"};
constexpr std::string_view frosts[] = {"never"};
constexpr std::string_view beside_places[] = {"plain concrete too"};
constexpr std::string_view cements_beside[] = {"pozzolan or slag"};
constexpr std::string_view calcium_chloride[] = {"barred"};
constexpr std::string_view reactivity[] = {"evidence"};
constexpr std::string_view average_strengths[] = {"ACI 301"};
constexpr std::string_view numbers_of_classes[] = {"any number"};
constexpr std::string_view countings[] = {"by k", "all", "all, from memory"};
constexpr std::string_view chloride_masses[] = {"cementitious", "cement",
                                                "cement and counted additions", "concrete"};
constexpr std::string_view solubilities[] = {"acid-soluble", "water-soluble"};
constexpr NoteForm exposure_notes[] = {{"category"},
                                       {"subject"},
                                       {"step", steps, NoteText::word},
                                       {"asks", asked, NoteText::word},
                                       {"meaning"},
                                       {"salt", salts, NoteText::word},
                                       {"frost", frosts, NoteText::word},
                                       {"beside"},
                                       {"beside_reason"},
                                       {"beside_where", beside_places, NoteText::word},
                                       {"strength_class"},
                                       {"strength_age", {}, NoteText::whole_days},
                                       {"cements"},
                                       {"cements_where"},
                                       {"beside_cement", cements_beside, NoteText::word},
                                       {"caps_open_with"},
                                       {"calcium_chloride", calcium_chloride, NoteText::word},
                                       {"alkali_reactivity", reactivity, NoteText::word},
                                       {"reactivity_place"},
                                       {"other_editions"},
                                       {"edition"},
                                       {"scope"},
                                       {"strength_rule"},
                                       {"average_strength", average_strengths, NoteText::word},
                                       {"classes", numbers_of_classes, NoteText::word},
                                       {"additions", countings, NoteText::word},
                                       {"cement_standard"},
                                       {"chloride_of", chloride_masses, NoteText::word},
                                       {"chloride", solubilities, NoteText::word}};

constexpr std::string_view by_k[] = {"by k"};
constexpr std::string_view steels[] = {"bars", "none"};
constexpr std::string_view bounds[] = {"itself", "above"};
constexpr NoteForm air_rule_notes[] = {{"cited"}, {"other_editions"}};
constexpr NoteForm addition_notes[] = {{"standard"}, {"doubt"}, {"low_k_in"}, {"barred_in"}};
constexpr NoteForm relief_notes[] = {{"together", by_k, NoteText::word}};
constexpr NoteForm chloride_notes[] = {{"class"}, {"steel", steels, NoteText::word}};
constexpr NoteForm cap_notes[] = {{"class"}};
constexpr NoteForm sulfate_notes[] = {{"bound", bounds, NoteText::word}};

constexpr std::string_view no_class[] = {"none"};
constexpr std::string_view yes_or_no[] = {"open", "no", "yes"};
constexpr std::string_view ways_of_the_sea[] = {"open", "no", "spray", "tidal"};
constexpr std::string_view sulfate_bands[] = {"open", "harmless", "more"};
constexpr std::string_view with_or_without[] = {"no", "yes"};
constexpr std::string_view wettings[] = {"open", "dry",      "sheltered",
                                         "rain", "long wet", "under water"};
constexpr std::string_view facings[] = {"open", "vertical", "horizontal"};
constexpr NoteForm site_notes[] = {{"class"},
                                   {"reason"},
                                   {"missing"},
                                   {"open_point"},
                                   {"asks", no_class, NoteText::word},
                                   {"freezing", yes_or_no, NoteText::words_or},
                                   {"wet_when_freezing", yes_or_no, NoteText::words_or},
                                   {"deicer", yes_or_no, NoteText::words_or},
                                   {"sea", ways_of_the_sea, NoteText::words_or},
                                   {"soil_sulfate", sulfate_bands, NoteText::words_or},
                                   {"reinforced", with_or_without, NoteText::words_or},
                                   {"salty_air", yes_or_no, NoteText::words_or},
                                   {"wetting", wettings, NoteText::words_or},
                                   {"facing", facings, NoteText::words_or},
                                   {"aggressive_ground", yes_or_no, NoteText::words_or}};

constexpr RowForm air_rule_rows[] = {{"tolerance", {}, true},
                                     {"delivery"},
                                     {"below"},
                                     {"above"},
                                     {"reduction", {}, false, "reduction_above_strength"},
                                     {"reduction_above_strength", strength, false, "reduction"},
                                     {"none_from_cube", strength}};
constexpr RowForm counted_rows[] = {{"fly_ash"}, {"slag_cement"}, {"silica_fume"}};
constexpr RowForm capped_rows[] = {
    {"fly_ash"}, {"slag_cement"}, {"silica_fume"}, {"total"}, {"ash_and_fume"}};
constexpr RowForm size_rows[] = {{"of_form", {}, true},
                                 {"of_slab", {}, true},
                                 {"of_bar_spacing", {}, true},
                                 {"of_cover", {}, true}};
constexpr std::string_view example_of_sizes = "{what: nominal maximum size, both: [10 mm, 20 mm]}";

constexpr TableForm all_forms[] = {
    {"exposure",
     exposure_columns,
     exposure_notes,
     {},
     "[{name: max_w_cm}, {name: min_cement, unit: kg/m3}]",
     {},
     true},
    {"air", {}, {}, {}, example_of_sizes, air},
    {"air-rules", systems, air_rule_notes, air_rule_rows, "[{name: us}, {name: si}]"},
    {"additions", addition_columns, addition_notes, counted_rows,
     "[{name: k}, {name: most}, {name: most_composite}, {name: low_k}, {name: low_k_above}]"},
    {"least-cement", relief_columns, relief_notes, counted_rows,
     "[{name: above, unit: kg/m3}, {name: most, unit: kg/m3}]"},
    {"cement-by-size", {}, {}, {}, example_of_sizes, more_or_less},
    {"cement-most", most_cement, {}, {}, "[{name: most, unit: kg/m3}]"},
    {"chloride", most_chloride, chloride_notes, {}, "[{name: most, unit: \"%\"}]"},
    {"supplementary", most_share, cap_notes, capped_rows, "[{name: most, unit: \"%\"}]"},
    {"strength-class",
     strength_columns,
     {},
     {},
     "[{name: cylinder, unit: MPa}, {name: cube, unit: MPa}]"},
    {"aggregate-size", size_columns, {}, size_rows, "[{name: fraction}]"},
    {"soil-sulfate", sulfate_columns, sulfate_notes, {}, "[{name: from, unit: \"%\"}]"},
    {"site", order_column, site_notes, {}, "[{name: order}]", {}, true, true},
};

} // namespace

std::span<const TableForm> table_forms() {
    return all_forms;
}

const TableForm* find_table_form(std::string_view subject) {
    const auto found = std::ranges::find(all_forms, subject, &TableForm::subject);
    return found == std::end(all_forms) ? nullptr : &*found;
}

} // namespace boardmark::input

#include "binder_tables.hpp"

#include "exposure_classes.hpp"
#include "lookup.hpp"

#include <algorithm>
#include <cassert>
#include <limits>
#include <string>
#include <vector>

namespace boardmark::reference {
namespace {

using core::UnitSystem;

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
        .low_k_above_w_c = present(cell(printed, line, "low_k_above")),
        .low_k_categories = categories_among(note(line, "low_k_in"), code.categories),
        .barred_classes = classes_among(note(line, "barred_in"), code.classes),
        .standard = std::string{note(line, "standard")},
        .doubt = std::string{note(line, "doubt")},
        .source = source_of(line.source),
        .relief_above_kg_m3 = {},
        .most_relief_kg_m3 = {},
        .most_relief_up_to_kg_m3 = std::numeric_limits<double>::infinity(),
        .relief_source = {}};
    const EmbeddedTable* relief = data.find("least-cement");
    if (const EmbeddedRow* eased = relief ? find_row(*relief, line.name) : nullptr) {
        counted.relief_above_kg_m3 = present(cell(*relief, *eased, "above"));
        counted.most_relief_kg_m3 = present(cell(*relief, *eased, "most"));
        counted.most_relief_up_to_kg_m3 = present(cell_or_gap(*relief, *eased, "up_to"))
                                              .value_or(counted.most_relief_up_to_kg_m3);
        counted.together_by_k = note(*eased, "together") == "by k";
        counted.relief_source = source_of(eased->source);
    }
    return counted;
}

} // namespace

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

} // namespace boardmark::reference

#include "finish_tables.hpp"

#include "lookup.hpp"

namespace boardmark::reference {
namespace {

std::vector<core::MostFines> most_fines(std::string_view group) {
    const EmbeddedTable& printed = table("fines-maximum");
    std::vector<core::MostFines> rows;
    for (const EmbeddedRow& line : printed.rows) {
        if (line.group == group) {
            const auto amount = [&](std::string_view name) { return cell(printed, line, name); };
            rows.push_back({.up_to_mm = amount("size"),
                            .cement_low_kg_m3 = amount("cement_low"),
                            .at_low_kg_m3 = amount("most_low"),
                            .cement_high_kg_m3 = amount("cement_high"),
                            .at_high_kg_m3 = amount("most_high"),
                            .raised_by_kg_m3 = amount("raised_by"),
                            .source = source_of(line.source)});
        }
    }
    return rows;
}

} // namespace

core::FinishTables finish_tables(core::UnitSystem system) {
    const EmbeddedTable& advice = table("finish");
    const EmbeddedTable& fines = table("fines-minimum");
    const auto advised = [&](std::string_view name) { return figure(advice, name, system); };
    return {.least_paste_percent = advised("least_paste"),
            .least_mortar_percent = advised("least_mortar"),
            .largest_size_mm = advised("largest_size"),
            .w_cm_change = advised("w_cm_change"),
            .constancy_source = advised("constancy").source,
            .bleeding_w_cm = advised("bleeding_w_cm"),
            .bleeding_signs = advised("bleeding_signs"),
            .redosings = advised("redosings"),
            .redose_revolutions = advised("redose_revolutions"),
            .least_fines_kg_m3 = size_row(fines, row(fines, "least"), system),
            .least_fines_below_mm = advised("least_fines_below").value,
            .most_fines_below_mm = advised("most_fines_below").value,
            .most_fines_strength_mpa = advised("most_fines_strength").value,
            .most_fines_freezing = most_fines("freezing"),
            .most_fines_other = most_fines("other")};
}

} // namespace boardmark::reference

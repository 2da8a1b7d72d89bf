#include <boardmark/report/strength/strength_report.hpp>
#include <boardmark/units/date.hpp>

#include "../writing/csv_cells.hpp"
#include "../writing/names.hpp"

#include <fmt/format.h>

namespace boardmark::report {

std::string csv(const StrengthResult& result, core::UnitSystem system) {
    const std::string_view stress = system == core::UnitSystem::us ? "psi" : "MPa";
    const auto headed = [&](std::string_view name) { return fmt::format("{} ({})", name, stress); };
    std::string text = csv_row({"batch", "cast", "w_cm", "air (%)", "specimens", headed("range"),
                                headed("strength"), "verdict", headed("short"),
                                headed("running mean"), "verdict of mean", headed("mean short")});
    for (const core::JudgedTest& judged : result.findings.tests) {
        const core::StrengthTest& test = judged.test;
        text += csv_row({csv_cell(test.batch.name),
                         test.batch.cast ? units::written_date(*test.batch.cast) : "",
                         csv_cell(test.batch.w_cm), csv_cell(test.batch.air_percent),
                         std::to_string(test.specimens.size()), csv_cell_in(test.range_mpa, stress),
                         csv_cell_in(test.mean_mpa, stress), name_of(judged.verdict),
                         csv_cell_in(judged.short_mpa, stress),
                         csv_cell_in(judged.running_mean_mpa, stress), name_of(judged.mean_verdict),
                         csv_cell_in(judged.mean_short_mpa, stress)});
    }
    return text;
}

} // namespace boardmark::report

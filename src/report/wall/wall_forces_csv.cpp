#include <boardmark/report/writing/words.hpp>

#include "../writing/names.hpp"
#include "wall_lines.hpp"
#include "wall_tables.hpp"

#include <fmt/format.h>

#include <string>
#include <vector>

namespace boardmark::report {
namespace {

using core::Measure;

std::string governor_of(const core::FormForces& forces, const core::FormPressure& pressure) {
    return "governed by " + in_words(std::string{core::name_of(pressure.governed_by)}) +
           (&pressure == &core::governing_pressure(forces) ? "; checks and ties go by it" : "");
}

std::string note_of(const core::FormPressure& pressure, core::UnitSystem system) {
    std::vector<std::string> told;
    for (const auto* phrases : {&pressure.why, &pressure.remarks}) {
        for (const core::Phrase& phrase : *phrases) {
            told.push_back(words(phrase, system));
        }
    }
    std::vector<std::string> origin;
    if (!pressure.source.citation.empty()) {
        origin.push_back(pressure.source.citation);
    }
    for (const core::Mark mark : pressure.marks) {
        origin.push_back(name_of(mark));
    }
    if (!origin.empty()) {
        told.push_back(fmt::format("[{}]", fmt::join(origin, ", ")));
    }
    return fmt::format("{}", fmt::join(told, "; "));
}

void add_pressure(LongTable& table, const core::FormForces& forces,
                  const core::FormPressure& pressure) {
    const std::string subject = forces.wall + ", " + pressure.method;
    table.subject(subject);
    table.add("pressure", Measure::pressure, pressure.kpa, governor_of(forces, pressure),
              note_of(pressure, table.system()));
    table.add("full liquid head", Measure::pressure, pressure.head_kpa);
    if (pressure.formula_kpa) {
        table.add("by the formula", Measure::pressure, pressure.formula_kpa);
    }
    std::size_t number = 0;
    for (const core::EnvelopePoint& point : pressure.envelope) {
        table.subject(subject, "point", ++number);
        table.add("depth below the top", Measure::line_length, point.depth_m, "",
                  with_form_caution());
        table.add("pressure there", Measure::pressure, point.kpa);
    }
}

void add_rise(LongTable& table, const char* what, const std::optional<core::AllowableRise>& rise) {
    if (rise) {
        const bool none = !rise->any && !rise->open && !rise->usable_m_h;
        table.add(what, Measure::rate_of_rise, rise->any ? std::nullopt : rise->usable_m_h,
                  rise->any    ? "any rate"
                  : rise->open ? "not known"
                  : none       ? "no rate"
                               : "at most",
                  words(rise->reason, table.system()));
    }
}

/// What the pressures of a form hold for.
void add_basis(LongTable& table, const core::FormForces& forces) {
    const auto by = forces.rise.by();
    table.add("rise of the concrete", Measure::rate_of_rise, forces.rise.fastest_m_h(),
              by == core::RiseBy::output   ? "by the output"
              : by == core::RiseBy::stated ? "as stated"
                                           : "neither rise nor output is stated",
              words(core::pressures_hold_for({&forces, 1}).front(), table.system()));
    table.add("smallest plan area", Measure::area, forces.rise.smallest_plan_m2, "",
              with_form_caution());
    table.add("output in an hour that keeps the stated rise", Measure::volume,
              forces.rise.keeps_m3_h(), "", with_form_caution());
    table.add("concrete in the form", Measure::temperature, forces.concrete_c, "",
              with_form_caution());
    table.add("slump, at most", Measure::slump, forces.slump_mm, "", with_form_caution());
}

void add_tie_rows(LongTable& table, const core::FormForces& forces) {
    std::size_t number = 0;
    for (const core::TieRowLoad& load : forces.tie_rows) {
        table.subject(forces.wall, "tie row", ++number);
        table.add("height of the row", Measure::line_length, load.height_m, "",
                  with_form_caution());
        table.add("area of a tie", Measure::area, load.area_m2, "", with_form_caution());
        table.add("highest pressure on it", Measure::pressure, load.highest_kpa);
        table.add("a tie carries", Measure::force, load.load_kn);
        table.add("ties in the row", Measure::count, double(load.stations_m.size()), "",
                  with_form_caution());
    }
    number = 0;
    for (const double station_m : forces.ties.stations_m) {
        table.subject(forces.wall, "tie column", ++number);
        table.add("station of the column", Measure::line_length, station_m, "",
                  with_form_caution());
    }
    table.subject(forces.wall);
    for (const core::Phrase& remark : forces.tie_remarks) {
        table.add("ties left out", Measure::count, forces.ties.left_out, "",
                  with_form_caution(words(remark, table.system())));
    }
    if (const auto hardest_kn = core::hardest_tie_kn(forces)) {
        table.subject(forces.wall);
        table.add("hardest tie carries", Measure::force, hardest_kn);
    }
}

} // namespace

void add_forces(LongTable& table, const core::WallPlan& plan) {
    table.section("pressure on the forms");
    for (const core::FormForces& forces : plan.forces) {
        table.subject(forces.wall);
        table.add("height", Measure::line_length, forces.height_m, "", with_form_caution());
        add_basis(table, forces);
        for (const core::FormPressure& pressure : forces.pressures) {
            add_pressure(table, forces, pressure);
        }
        table.subject(forces.wall);
        add_rise(table, "rise that the forms allow", forces.rise_by_form);
        add_rise(table, "rise that the ties allow", forces.rise_by_ties);
    }
    table.section("ties");
    for (const core::FormForces& forces : plan.forces) {
        add_tie_rows(table, forces);
    }
}

} // namespace boardmark::report

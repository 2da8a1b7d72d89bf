#include <boardmark/report/pour/pour_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/long_table.hpp"
#include "clock.hpp"
#include "lift_rows.hpp"

namespace boardmark::report {
namespace {

using core::Measure;

void add_parts(const core::PourCard& card, LongTable& table) {
    table.section("parts");
    for (const core::PouredPart& part : card.parts) {
        table.subject(part.name);
        table.add("concrete", Measure::volume, part.concrete_m3);
        if (!part.forces) {
            continue;
        }
        const core::FormPressure& pressure = core::governing_pressure(*part.forces);
        table.add("pressure", Measure::pressure, pressure.kpa, "", pressure.method);
        table.add("rise", Measure::rate_of_rise, part.forces->rise.fastest_m_h());
        table.add("highest rise", Measure::rate_of_rise, part.highest.m_h,
                  part.highest.any ? "any rate" : "", words(part.highest.why, table.system()));
        table.add("tie load", Measure::force, core::hardest_tie_kn(*part.forces));
        table.add("lift", Measure::length, 1000 * part.run->lifts.lift_m);
        table.add("cover within", Measure::duration, part.run->lifts.longest_wait_min / 60);
        if (part.run->vibration) {
            table.add_count("insertions in a lift", part.run->vibration->insertions);
        }
        if (part.vibrators) {
            table.add_count("vibrators at work", *part.vibrators);
        }
    }
}

void add_times(const PourResult& result, LongTable& table) {
    const auto time = [&](const char* what, const std::optional<double>& hours) {
        table.add(what, Measure::duration, hours,
                  hours ? clock_text(*hours, result.start_min) : "");
    };
    table.section("loads");
    for (const core::LoadOfDay& load : result.card.day.loads) {
        table.subject("", "load", static_cast<std::size_t>(load.number));
        table.add("concrete", Measure::volume, load.volume_m3);
        time("batched", load.batched_h);
        time("begins", load.begins_h);
        time("empty", load.ends_h);
        table.add("latest end of discharge", Measure::duration, load.latest_end_h,
                  load.latest_end_h ? latest_clock_text(*load.latest_end_h, result.start_min) : "");
    }
    table.section("lifts");
    for (const core::LiftOfDay& lift : result.card.day.lifts) {
        table.subject(name_of_copy(lift), "lift", static_cast<std::size_t>(lift.lift));
        time("begins", lift.begins_h);
        time("full", lift.ends_h);
    }
}

void add_window(const char* what, const core::TestWindow& window, Measure measure,
                LongTable& table) {
    table.subject(what);
    table.add("lowest", measure, window.low);
    table.add("asked", measure, window.asked);
    table.add("highest", measure, window.high);
}

void add_limits(const core::PourCard& card, LongTable& table) {
    table.section("limits");
    for (const core::PourTest& test : card.tests) {
        add_window(test.name.c_str(), test.asked, test.measure, table);
    }
    table.subject("");
    table.add("w/cm", Measure::w_cm, card.limits.w_cm, "at most");
    table.add("discharge", Measure::duration, card.limits.discharge_h.value, "at most",
              card.limits.discharge_h.source.citation);
    table.add("free fall", Measure::length, card.limits.free_fall_mm.value, "at most",
              card.limits.free_fall_mm.source.citation);
    table.add("hose apart", Measure::length, card.limits.hose_apart_mm.value, "at most",
              card.limits.hose_apart_mm.source.citation);
}

} // namespace

std::string csv(const PourResult& result, core::UnitSystem system) {
    const core::PourCard& card = result.card;
    LongTable table{system};
    table.section("pour card");
    table.add_words("title", "", result.title);
    table.add_words("concrete of", "", result.mix_file);
    table.add("order", Measure::volume, card.order.order_m3);
    add_parts(card, table);
    add_times(result, table);
    add_limits(card, table);
    table.subject("");
    table.section("stop");
    table.add("stop", card.stops);
    for (const core::BriefSection& rules : card.rules) {
        table.section(rules.name);
        table.add("rule", rules.items);
    }
    table.section("checks");
    table.add(card.checks);
    table.add(card.mix_checks);
    table.section("cautions");
    table.subject("");
    table.add("caution", card.cautions);
    return table.text();
}

} // namespace boardmark::report

#include <boardmark/report/pour/pour_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/json_values.hpp"
#include "../writing/measure_units.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/verdicts.hpp"
#include "clock.hpp"

namespace boardmark::report {
namespace {

using core::UnitSystem;

Json minutes_or_null(const std::optional<double>& hours) {
    return hours ? Json(minutes_in_hour * *hours) : Json(nullptr);
}

/// Times as minutes from the start and as the clock shows them.
class Times {
public:
    explicit Times(std::optional<int> start_min)
        : start_min_(start_min) {}

    void add(const std::string& name, double hours, Json& object) const {
        object[name + "_min"] = minutes_in_hour * hours;
        object[name + "_clock"] = clock_text(hours, start_min_);
    }
    void add_or_null(const std::string& name, const std::optional<double>& hours, bool latest,
                     Json& object) const {
        object[name + "_min"] = minutes_or_null(hours);
        object[name + "_clock"] = !hours   ? Json(nullptr)
                                  : latest ? Json(latest_clock_text(*hours, start_min_))
                                           : Json(clock_text(*hours, start_min_));
    }

private:
    std::optional<int> start_min_;
};

Json json_of(const core::HighestRise& rise) {
    return {{"rise_m_h", number_or_null(rise.m_h)},
            {"any", rise.any},
            {"reason", words(rise.why, UnitSystem::si)}};
}

void add_forces(const core::PouredPart& part, Json& object) {
    const core::FormForces* forces = part.forces;
    const auto* pressure = forces ? &core::governing_pressure(*forces) : nullptr;
    object["height_m"] = forces ? Json(forces->height_m) : Json(nullptr);
    object["kpa"] = pressure ? Json(pressure->kpa) : Json(nullptr);
    object["method"] = pressure ? Json(pressure->method) : Json(nullptr);
    object["rise_m_h"] = number_or_null(forces ? forces->rise.fastest_m_h() : std::nullopt);
    object["highest_rise"] = forces ? json_of(part.highest) : Json(nullptr);
    object["tie_load_kn"] = number_or_null(forces ? core::hardest_tie_kn(*forces) : std::nullopt);
    object["caution"] = forces ? Json(words(core::form_caution(), UnitSystem::si)) : Json(nullptr);
}

Json json_of(const core::PouredPart& part) {
    Json object{{"part", part.name}, {"copies", part.copies}, {"concrete_m3", part.concrete_m3}};
    add_forces(part, object);
    const core::RunPlan* run = part.run;
    object["lifts"] = run ? Json(run->lifts.lifts) : Json(nullptr);
    object["lift_m"] = run ? Json(run->lifts.lift_m) : Json(nullptr);
    object["cover_within_min"] =
        run && run->lifts.lifts > 1 ? Json(run->lifts.longest_wait_min) : Json(nullptr);
    object["insertions_per_lift"] =
        run && run->vibration ? Json(run->vibration->insertions) : Json(nullptr);
    object["vibrators"] = part.vibrators ? Json(*part.vibrators) : Json(nullptr);
    return object;
}

Json json_of(const core::LoadOfDay& load, const Times& times) {
    Json object{{"load", load.number}, {"m3", load.volume_m3}, {"parts", load.parts}};
    times.add_or_null("batched", load.batched_h, false, object);
    times.add("begins", load.begins_h, object);
    times.add("ends", load.ends_h, object);
    times.add_or_null("latest_end", load.latest_end_h, true, object);
    return object;
}

Json json_of(const core::LiftOfDay& lift, const Times& times) {
    Json object{{"part", lift.part}, {"copy", lift.copy},   {"copies", lift.copies},
                {"lift", lift.lift}, {"lifts", lift.lifts}, {"m3", lift.volume_m3}};
    times.add("begins", lift.begins_h, object);
    times.add("ends", lift.ends_h, object);
    return object;
}

Json json_of(const core::TestWindow& window) {
    return {{"low", number_or_null(window.low)},
            {"asked", number_or_null(window.asked)},
            {"high", number_or_null(window.high)}};
}

Json json_of(const core::PourLimits& limits) {
    return {{"slump_mm", json_of(limits.slump_mm)},
            {"air_percent", json_of(limits.air_percent)},
            {"concrete_temperature_c", json_of(limits.concrete_c)},
            {"w_cm", number_or_null(limits.w_cm)},
            {"discharge_min", minutes_in_hour * limits.discharge_h.value},
            {"discharge_source", limits.discharge_h.source.citation},
            {"free_fall_mm", limits.free_fall_mm.value},
            {"free_fall_source", limits.free_fall_mm.source.citation},
            {"hose_apart_mm", limits.hose_apart_mm.value},
            {"hose_apart_source", limits.hose_apart_mm.source.citation}};
}

Json json_of(const core::PourTest& test) {
    return {{"test", test.name},
            {"when", words(test.when, UnitSystem::si)},
            {"asked", json_of(test.asked)},
            {"unit", si_unit(test.measure)},
            {"note", words(test.note, UnitSystem::si)}};
}

template <class Items>
Json list_of_pour(const Items& items, const auto&... more) {
    Json list = Json::array();
    for (const auto& item : items) {
        list.push_back(json_of(item, more...));
    }
    return list;
}

} // namespace

std::string json(const PourResult& result) {
    const core::PourCard& card = result.card;
    const Times times{result.start_min};
    Json object = json_heading("pour", result.title, verdicts_of(card), result.inputs);
    object["mix"] = result.mix_file;
    object["start"] = result.start_min ? Json(clock_text(0, result.start_min)) : Json(nullptr);
    object["order_m3"] = card.order.order_m3;
    object["ends_min"] =
        card.day.lifts.empty() ? Json(nullptr) : Json(minutes_in_hour * card.day.ends_h);
    object["parts"] = list_of_pour(card.parts);
    object["loads"] = list_of_pour(card.day.loads, times);
    object["lifts"] = list_of_pour(card.day.lifts, times);
    object["limits"] = json_of(card.limits);
    object["tests"] = list_of_pour(card.tests);
    object["stops"] = json_of_items(card.stops);
    object["rules"] = Json::array();
    for (const core::BriefSection& section : card.rules) {
        object["rules"].push_back(
            {{"name", section.name}, {"items", json_of_items(section.items)}});
    }
    object["mix_checks"] = json_of(card.mix_checks);
    object["checks"] = json_of(card.checks);
    object["cautions"] = json_of(card.cautions);
    return written(object);
}

} // namespace boardmark::report

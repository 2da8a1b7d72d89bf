#include "fresh_test_reader.hpp"

#include <boardmark/units/unit.hpp>

#include "../values/field_values.hpp"
#include "../values/one_system.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::input {
namespace {

constexpr double minutes_in_a_day = 1440;

Path trial(std::string_view key) {
    return {"trial", key};
}

Path measure(std::string_view key) {
    return {"trial", "measure", key};
}

/// Demands one of two keys that say the same thing; nothing but its fault is told.
void demand_one_of(const FileContext& context, const std::string& first, const std::string& second,
                   const std::string& why) {
    const Reading* one = context.document.find(trial(first));
    const Reading* other = context.document.find(trial(second));
    if (one && other) {
        context.refuse(*other->key,
                       "trial: '" + first + "' and '" + second + "' say the same thing twice",
                       "keep one of the two");
    } else if (!context.has(trial(second))) {
        context.demand(trial(first), why);
    }
}

} // namespace

core::Reading reading_of(const Parsed* parsed) {
    return parsed ? core::Reading{parsed->number, parsed->step} : core::Reading{};
}

core::FilledMeasure FreshTestReader::read_measure() const {
    for (const char* key : {"full", "empty", "volume"}) {
        context.demand(measure(key), "the density follows from all three");
    }
    const Parsed* full = context.document.value(measure("full"));
    const Parsed* empty = context.document.value(measure("empty"));
    if (full && empty && full->number <= empty->number) {
        context.refuse(*full->node,
                       fmt::format("trial.measure.full: {} is not more than the empty measure, {}",
                                   full->text, empty->text),
                       "the filled measure is the heavier one");
    }
    demand_possible_density();
    OneSystem system{context, "trial.measure"};
    for (const Parsed* mass : {full, empty}) {
        if (mass) {
            system.hold(*mass);
        }
    }
    system.tell();
    return {.full_kg = reading_of(full),
            .empty_kg = reading_of(empty),
            .volume_m3 = reading_of(context.document.value(measure("volume")))};
}

void FreshTestReader::demand_possible_density() const {
    const Parsed* full = context.document.value(measure("full"));
    const Parsed* empty = context.document.value(measure("empty"));
    const Parsed* volume = context.document.value(measure("volume"));
    if (!full || !empty || !volume || full->number <= empty->number) {
        return;
    }
    const double density_kg_m3 = (full->number - empty->number) / volume->number;
    if (density_kg_m3 < fresh_density_kg_m3.low || density_kg_m3 > fresh_density_kg_m3.high) {
        context.refuse(*context.document.find({"trial", "measure"})->key,
                       fmt::format("trial.measure: these give a density of {:.1f} lb/ft3 ({:.0f} "
                                   "kg/m3), which no concrete of this kind has",
                                   units::unit("lb/ft3").from_inside(density_kg_m3), density_kg_m3),
                       "check all three figures and their units");
    }
}

core::DensityTest FreshTestReader::read_density() const {
    demand_one_of(context, "density", "measure", "yield is the batch's mass over it");
    if (context.holds_keys(trial("measure"))) {
        return read_measure();
    }
    return reading_of(context.document.value(trial("density")));
}

std::vector<core::TimedSlump> FreshTestReader::read_slumps() const {
    demand_one_of(context, "slump", "slump_after", "the next trial is corrected by it");
    std::vector<core::TimedSlump> slumps;
    if (const Reading* table = context.document.find(trial("slump_after"))) {
        for (const Pair& pair : table->pairs) {
            const double minutes = pair.key.number * minutes_in_a_day;
            if (!slumps.empty() && minutes <= slumps.back().minutes) {
                context.refuse(*pair.key.node, "trial.slump_after: the times do not increase",
                               "write them in the order of the tests");
            }
            slumps.push_back({minutes, pair.value.number});
        }
    } else if (const auto slump = context.document.number(trial("slump"))) {
        slumps.push_back({0, *slump, false});
    }
    return slumps;
}

core::FreshTests FreshTestReader::read() const {
    core::FreshTests tests{.density = core::Reading{}, .slump = {}};
    if (!context.holds_keys({"trial"})) {
        return tests;
    }
    tests.density = read_density();
    tests.slump = read_slumps();
    tests.slump_before_reducer_mm = context.document.number(trial("slump_before_reducer"));
    tests.air_percent = context.document.number(trial("air"));
    tests.temperature_c = context.document.number(trial("temperature"));
    return tests;
}

} // namespace boardmark::input

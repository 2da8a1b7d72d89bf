#pragma once

// What tests of trial batches share: a mix text and a trial text in, the yield and the next trial
// out.

#include <boardmark/core/trial/next_trial.hpp>
#include <boardmark/core/trial/yield.hpp>
#include <boardmark/input/trial/read_trial.hpp>

#include "support.hpp"

#include <algorithm>
#include <stdexcept>
#include <string>
#include <variant>
#include <vector>

namespace boardmark::test {

/// Reads a trial of a mix; the mix stands beside it as mix.yaml.
inline input::TrialReading read_trial_of(const std::string& mix, const std::string& trial) {
    const auto beside =
        [&](const std::string& name) -> std::variant<std::string, input::LoadFailure> {
        if (name == "mix.yaml") {
            return mix;
        }
        return input::LoadFailure{"not in a test"};
    };
    return input::read_trial(
        "boardmark: 1\nmix: mix.yaml\ntrial:\n" + trial, "trial.yaml",
        {.vocabulary = read_options(input::Purpose::trial).vocabulary, .load = beside});
}

/// A mix that somebody else chose, with one more material and its amount where a test asks for
/// them.
inline std::string submitted_mix(const std::string& material = "", const std::string& amount = "") {
    return R"(boardmark: 1
title: Submitted
reporting: si
requirements: {strength: 30 MPa, slump: 100 mm}
materials:
  cement: {kind: portland cement}
  stone: {kind: coarse aggregate, nominal_max_size: 19 mm, relative_density: 2.68,
          absorption: 0.5 %, moisture: 2 %}
  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, moisture: 5 %}
)" + material +
           "proportions: {volume: 1 m3, water: 170 kg, cement: 380 kg, stone: 1000 kg, sand: 780 "
           "kg, " +
           amount + "air: 2 %}\n";
}

/// A trial carried through to the next one.
struct Tried {
    core::CompleteTrial trial;
    core::Tables tables;
    core::Proportions designed;
    core::Yield yield;
    std::vector<core::Check> checks;

    core::NextTrial next() const {
        return boardmark::test::made(core::next_trial(trial, yield, designed, tables));
    }

    const core::Check* check(const std::string& id) const {
        const auto found = std::ranges::find(checks, id, &core::Check::id);
        return found == checks.end() ? nullptr : &*found;
    }
};

inline Tried tried(core::CompleteTrial trial) {
    core::Tables tables = reference::tables_for(trial->mix);
    Tried result{.trial = std::move(trial),
                 .tables = std::move(tables),
                 .designed = {},
                 .yield = {},
                 .checks = {}};
    result.designed = boardmark::test::made(core::proportions_of(result.trial->mix, result.tables));
    result.yield =
        boardmark::test::made(core::yield_of(result.trial, result.designed, result.tables));
    result.checks = core::assess(result.trial, result.yield, result.designed, result.tables);
    return result;
}

/// A trial that was built in memory; throws where it is faulty.
inline Tried tried(core::Trial trial) {
    auto result = core::complete(std::move(trial));
    if (const auto* faults = std::get_if<core::Faults>(&result)) {
        throw std::runtime_error(faults->front().message);
    }
    return tried(std::get<core::CompleteTrial>(std::move(result)));
}

/// A trial text that must be sound.
inline Tried tried(const std::string& mix, const std::string& trial) {
    auto reading = read_trial_of(mix, trial);
    if (!reading.record) {
        throw std::runtime_error(input::render(reading.diagnostics));
    }
    return tried(std::move(reading.record->trial));
}

inline const core::Ingredient& ingredient(const core::Proportions& proportions,
                                          const std::string& name) {
    return *std::ranges::find(proportions.ingredients, name, &core::Ingredient::name);
}

} // namespace boardmark::test

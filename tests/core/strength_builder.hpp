#pragma once

// Strength records for tests: production batches B1, B2, ... one after the other.

#include <boardmark/core/strength/strength_findings.hpp>
#include <boardmark/reference/tables.hpp>

#include "support.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace boardmark::test {

constexpr int a_day = 20500; // 2026-02-16

/// A record under ACI 318 without batches, 4 x 8 in cylinders.
inline core::StrengthRecord aci_record(double specified_psi) {
    return {.title = "test",
            .system = core::UnitSystem::us,
            .code = core::AcceptanceCode::aci_318,
            .specified_mpa = inside(specified_psi, "psi"),
            .specimen = {core::SpecimenShape::cylinder, 101.6, 203.2},
            .batches = {},
            .specimens = {}};
}

/// A record under EN 206 of a class's cylinder strength.
inline core::StrengthRecord en_record(double characteristic_mpa) {
    return {.title = "test",
            .system = core::UnitSystem::si,
            .code = core::AcceptanceCode::en_206,
            .specified_mpa = characteristic_mpa,
            .specimen = {core::SpecimenShape::cylinder, 150, 300},
            .batches = {},
            .specimens = {}};
}

/// Adds a batch, cast a day after the one before, with its specimens of one age.
inline void add_batch(core::StrengthRecord& record, const std::vector<double>& strengths_mpa,
                      double age_d = 28, std::optional<double> w_cm = {}) {
    const std::size_t place = record.batches.size();
    record.batches.push_back({.name = "B" + std::to_string(place + 1),
                              .cast = a_day + static_cast<int>(place),
                              .w_cm = w_cm});
    for (const double strength_mpa : strengths_mpa) {
        record.specimens.push_back(
            {record.batches.back().name + "/" + std::to_string(record.specimens.size()), place,
             age_d, strength_mpa});
    }
}

inline void add_psi(core::StrengthRecord& record, std::vector<double> strengths_psi,
                    double age_d = 28, std::optional<double> w_cm = {}) {
    for (double& strength : strengths_psi) {
        strength = inside(strength, "psi");
    }
    add_batch(record, strengths_psi, age_d, w_cm);
}

inline core::StrengthFindings findings_of(const core::StrengthRecord& record,
                                          int today = a_day + 365) {
    const auto entered = core::complete(record);
    return core::find_strength(std::get<core::CompleteRecord>(entered), today,
                               reference::tables(record.system));
}

/// The first check of that id, or nullptr.
inline const core::Check* check_of(const core::StrengthFindings& findings, const std::string& id) {
    const auto found = std::ranges::find(findings.checks, id, &core::Check::id);
    return found == findings.checks.end() ? nullptr : &*found;
}

inline core::Verdict verdict_of(const core::StrengthFindings& findings, const std::string& id) {
    const core::Check* check = check_of(findings, id);
    if (!check) {
        throw std::runtime_error("no check " + id);
    }
    return check->verdict;
}

} // namespace boardmark::test

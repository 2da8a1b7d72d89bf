#pragma once

#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/batch/charges.hpp>
#include <boardmark/core/batch/sacks.hpp>
#include <boardmark/core/batch/short_load.hpp>
#include <boardmark/core/batch/site_water.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/trial/trial_tables.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

/// What whole sacks do, and what the batch with rounded sacks would break.
struct SackResult {
    core::SackStudy study;
    std::vector<core::Check> rounded_checks;
    std::vector<core::Check> ordered_checks; ///< of the volume as ordered, part of a sack weighed
    std::vector<core::Check> below_checks;   ///< of the volume that whole sacks fall short of
};

/// What `batch` found, ready to be written.
struct BatchResult {
    std::string title;
    const core::Requirements& requirements;
    const core::Batch& batch; ///< all charges together
    const core::Batch& each;  ///< one charge
    core::Charging charging;
    double net_volume_m3; ///< without the allowance
    double allowance_percent;
    double ordered_m3;                              ///< with it; whole sacks may make more
    std::optional<SackResult> sacks;                ///< of one charge
    std::optional<core::SiteWater> site_water;      ///< of one charge
    std::optional<core::ShortLoad> short_load = {}; ///< where the supplier has a smallest load
    const core::Proportions& proportions;
    const core::BatchingTolerances& tolerances;
    const std::vector<core::Check>& checks;
    InputFiles inputs = {};
};

/// A ticket to take to the scale.
std::string text(const BatchResult& result, const TextStyle& style);

/// The same on one sheet of paper, Letter or A4: what holds is left out, reasons follow where they
/// are asked for.
std::string html(const BatchResult& result, const TextStyle& style);

/// The object of the contract.
std::string json(const BatchResult& result);

/// The items to weigh as rows for a spreadsheet (RFC 4180), units in the header.
std::string csv(const BatchResult& result, core::UnitSystem system);

} // namespace boardmark::report

#pragma once

#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/report/writing/input_file.hpp>

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

using Json = nlohmann::ordered_json;

/// Sentences in JSON have their figures in SI.
constexpr auto json_system = core::UnitSystem::si;

/// The members that begin every result.
Json json_heading(const std::string& command, const std::string& title,
                  const core::VerdictSummary& verdict, const InputFiles& inputs);

Json json_of(const core::VerdictSummary& verdict);

Json number_or_null(std::optional<double> value);
Json json_of(const std::vector<core::Check>& checks);
Json json_of(const std::vector<core::Step>& steps);
Json json_of(const std::vector<core::Phrase>& phrases);
/// Sentences with the figures that they speak of.
Json json_of_items(const std::vector<core::Phrase>& phrases);
Json json_of(const core::Selection& selection);
Json json_of(const std::vector<core::Ingredient>& ingredients);
Json json_of(const core::Totals& totals);
Json json_of(const std::vector<core::BatchItem>& items);

/// The text of an object, with a line end.
std::string written(const Json& json);

} // namespace boardmark::report

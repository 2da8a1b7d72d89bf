#include <boardmark/boardmark.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/front/input_file.hpp>
#include <boardmark/input/values/improbable.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/writing/words.hpp>

#include "faults.hpp"

namespace boardmark {
namespace {

/// No result, and why: the mix has no proportions, or the batch no yield.
Opened<WorkedTrial> nothing_of_trial(const core::Unresolved& why, const std::string& name,
                                     core::UnitSystem system, std::vector<Fault> warnings) {
    return {why, report::text(why, name, system), std::move(warnings)};
}

} // namespace

Opened<WorkedTrial> read_trial(std::string text, std::string name, input::Loader load,
                               std::optional<int> today) {
    auto reading = input::read_trial(
        std::move(text), name,
        {.vocabulary = reference::vocabulary(), .load = std::move(load), .today = today});
    auto faults = front::faults_of(reading.diagnostics);
    if (!reading.record) {
        return {std::move(faults), input::render(reading.diagnostics)};
    }
    const core::CompleteTrial& trial = reading.record->trial;
    const core::UnitSystem system = core::system_of(trial->mix);
    const core::Tables tables = reference::tables_for(trial->mix);
    auto designed = core::proportions_of(trial->mix, tables);
    if (!designed) {
        return nothing_of_trial(designed.why(), name, system, std::move(faults));
    }
    auto yield = core::yield_of(trial, *designed, tables);
    if (!yield) {
        return nothing_of_trial(yield.why(), name, system, std::move(faults));
    }
    input::add_improbable_figures(reading.diagnostics, yield->found.worksheet.cautions);
    return {
        WorkedTrial{std::move(*reading.record), tables, *std::move(designed), *std::move(yield)},
        std::move(faults)};
}

Opened<WorkedTrial> open_trial(const std::string& path, std::optional<int> today) {
    const std::string name = front::shown_name(path);
    auto bytes = front::read_bytes(path);
    if (const auto* failure = std::get_if<front::ReadFailure>(&bytes)) {
        return front::unreadable<WorkedTrial>(name, failure->reason);
    }
    return read_trial(std::get<std::string>(std::move(bytes)), name, front::loader_beside(path),
                      today);
}

} // namespace boardmark

#include <boardmark/boardmark.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/front/input_file.hpp>
#include <boardmark/front/noted_files.hpp>
#include <boardmark/input/values/improbable.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/writing/words.hpp>

#include "faults.hpp"

namespace boardmark {

Opened<WorkedWall> read_wall(std::string text, std::string name, input::Loader load) {
    report::InputFiles inputs;
    front::note(name, text, inputs);
    auto reading = input::read_wall(
        std::move(text), front::shown_name(name),
        {.vocabulary = reference::vocabulary(), .load = front::noting(std::move(load), inputs)});
    auto faults = front::faults_of(reading.diagnostics);
    if (!reading.record) {
        return {std::move(faults), input::render(reading.diagnostics)};
    }
    const core::CompleteWall& wall = reading.record->wall;
    const core::UnitSystem system = core::system_of(wall->mix);
    auto plan = core::plan_wall(wall, reference::tables(system));
    if (!plan) {
        return {plan.why(), report::text(plan.why(), front::shown_name(name), wall->system),
                std::move(faults)};
    }
    input::add_improbable_figures(reading.diagnostics, plan->cautions);
    return {WorkedWall{std::move(*reading.record), *std::move(plan), std::move(inputs)},
            std::move(faults)};
}

Opened<WorkedWall> open_wall(const std::string& path) {
    auto bytes = front::read_bytes(path);
    if (const auto* failure = std::get_if<front::ReadFailure>(&bytes)) {
        return front::unreadable<WorkedWall>(front::shown_name(path), failure->reason);
    }
    return read_wall(std::get<std::string>(std::move(bytes)), path, front::loader_beside(path));
}

} // namespace boardmark

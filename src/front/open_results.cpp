#include <boardmark/boardmark.hpp>
#include <boardmark/front/input_file.hpp>
#include <boardmark/input/strength/read_strength.hpp>
#include <boardmark/input/values/improbable.hpp>
#include <boardmark/reference/tables.hpp>

#include "faults.hpp"

namespace boardmark {

Opened<WorkedResults> read_results(std::string text, std::string name, input::Loader load,
                                   int today) {
    auto reading =
        input::read_strength(std::move(text), std::move(name),
                             {.load = std::move(load),
                              .classes = reference::tables(core::UnitSystem::si).strength->classes,
                              .today = today});
    auto faults = front::faults_of(reading.diagnostics);
    if (!reading.record) {
        return {std::move(faults), input::render(reading.diagnostics)};
    }
    auto findings =
        core::find_strength(*reading.record, today, reference::tables((*reading.record)->system));
    input::add_improbable_figures(reading.diagnostics, findings.worksheet.cautions);
    return {WorkedResults{std::move(*reading.record), std::move(findings), today},
            std::move(faults)};
}

Opened<WorkedResults> open_results(const std::string& path, int today) {
    const std::string name = front::shown_name(path);
    auto bytes = front::read_bytes(path);
    if (const auto* failure = std::get_if<front::ReadFailure>(&bytes)) {
        return front::unreadable<WorkedResults>(name, failure->reason);
    }
    return read_results(std::get<std::string>(std::move(bytes)), name, front::loader_beside(path),
                        today);
}

} // namespace boardmark

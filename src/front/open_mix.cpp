#include <boardmark/boardmark.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/front/input_file.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/writing/words.hpp>

#include "faults.hpp"

namespace boardmark {
namespace {

Opened<WorkedMix> worked(core::AnyMix mix, const std::string& name, std::vector<Fault> warnings) {
    const core::UnitSystem system = core::system_of(mix);
    core::Tables tables = reference::tables(system);
    auto proportions = core::proportions_of(mix, tables);
    if (!proportions) {
        return {proportions.why(), report::text(proportions.why(), name, system),
                std::move(warnings)};
    }
    return {WorkedMix{std::move(mix), std::move(tables), *std::move(proportions)},
            std::move(warnings)};
}

input::LoadFailure loads_nothing() {
    return {"this text names another file, and no loader was given"};
}

} // namespace

Opened<WorkedMix> read(std::string text, std::string name, Purpose purpose, input::Loader load) {
    if (!load) {
        load = [](const std::string&) { return loads_nothing(); };
    }
    auto reading = input::read_mix(
        std::move(text), name,
        {.purpose = purpose, .vocabulary = reference::vocabulary(), .load = std::move(load)});
    auto faults = front::faults_of(reading.diagnostics);
    if (!reading.mix) {
        return {std::move(faults), input::render(reading.diagnostics)};
    }
    return worked(std::move(*reading.mix), name, std::move(faults));
}

Opened<WorkedMix> open(const std::string& path, Purpose purpose) {
    const std::string name = front::shown_name(path);
    auto bytes = front::read_bytes(path);
    if (const auto* failure = std::get_if<front::ReadFailure>(&bytes)) {
        return front::unreadable<WorkedMix>(name, failure->reason);
    }
    return read(std::get<std::string>(std::move(bytes)), name, purpose, front::loader_beside(path));
}

Opened<WorkedMix> work(core::AnyMix mix) {
    const std::string title = core::title_of(mix);
    const core::Faults faults = std::visit(
        [](const auto& either) { return core::faults_of(either, reference::vocabulary()); }, mix);
    if (faults.empty()) {
        return worked(std::move(mix), title, {});
    }
    std::vector<Fault> placed;
    for (const core::Fault& fault : faults) {
        placed.push_back({.file = title, .message = fault.message});
    }
    std::string told = front::lines_of(placed);
    return {std::move(placed), std::move(told)};
}

} // namespace boardmark

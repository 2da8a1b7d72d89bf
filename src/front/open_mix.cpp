#include <boardmark/boardmark.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/front/input_file.hpp>
#include <boardmark/front/noted_files.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/writing/words.hpp>

#include "faults.hpp"

namespace boardmark {
namespace {

Opened<WorkedMix> worked(core::AnyCompleteMix mix, const std::string& name,
                         std::vector<Fault> warnings, report::InputFiles inputs) {
    const core::UnitSystem system = core::system_of(mix);
    core::Tables tables = reference::tables_for(mix);
    auto proportions = core::proportions_of(mix, tables);
    if (!proportions) {
        return {proportions.why(), report::text(proportions.why(), name, system),
                std::move(warnings)};
    }
    return {
        WorkedMix{std::move(mix), std::move(tables), *std::move(proportions), std::move(inputs)},
        std::move(warnings)};
}

} // namespace

Opened<WorkedMix> read(std::string text, std::string name, Purpose purpose, input::Loader load) {
    report::InputFiles inputs;
    front::note(name, text, inputs);
    auto reading = input::read_mix(std::move(text), front::shown_name(name),
                                   {.purpose = purpose,
                                    .vocabulary = reference::vocabulary(),
                                    .load = front::noting(std::move(load), inputs)});
    auto faults = front::faults_of(reading.diagnostics);
    if (!reading.mix) {
        return {std::move(faults), input::render(reading.diagnostics)};
    }
    return worked(std::move(*reading.mix), front::shown_name(name), std::move(faults),
                  std::move(inputs));
}

Opened<WorkedMix> open(const std::string& path, Purpose purpose) {
    auto bytes = front::read_bytes(path);
    if (const auto* failure = std::get_if<front::ReadFailure>(&bytes)) {
        return front::unreadable<WorkedMix>(front::shown_name(path), failure->reason);
    }
    return read(std::get<std::string>(std::move(bytes)), path, purpose, front::loader_beside(path));
}

Opened<WorkedMix> work(core::AnyMix mix) {
    const std::string title = std::visit([](const auto& either) { return either.title; }, mix);
    auto entered = core::complete(std::move(mix), reference::vocabulary());
    if (auto* whole = std::get_if<core::AnyCompleteMix>(&entered)) {
        return worked(std::move(*whole), title, {}, {});
    }
    std::vector<Fault> placed;
    for (const core::Fault& fault : std::get<core::Faults>(entered)) {
        placed.push_back({.file = title, .message = fault.message});
    }
    std::string told = front::lines_of(placed);
    return {std::move(placed), std::move(told)};
}

} // namespace boardmark

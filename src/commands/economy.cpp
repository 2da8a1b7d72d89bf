#include <boardmark/core/many/economy.hpp>
#include <boardmark/report/many/economy_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "worked_mix.hpp"

#include <fmt/format.h>

#include <variant>

namespace boardmark::commands {
namespace of_economy {
namespace {

constexpr std::string_view objectives[] = {"cost", "carbon", "binder"};

constexpr Option options[] = {
    all_option,
    {"least", "cost|carbon|binder", "what is to be least (default cost)", objectives},
};

constexpr std::string_view examples[] = {
    "boardmark economy examples/flowing-wall.yaml",
    "boardmark economy --least carbon --format html examples/flowing-wall.yaml",
};

core::Objective objective_of(const Arguments& arguments) {
    const std::string word = arguments.value("least").value_or("cost");
    return word == "carbon"   ? core::Objective::carbon
           : word == "binder" ? core::Objective::binder
                              : core::Objective::cost;
}

core::EconomyOrder order_of(const Arguments& arguments, const WorkedMix& worked,
                            const core::CompleteMix& mix) {
    core::EconomyOrder order{objective_of(arguments), worked.bounds};
    if (order.bounds.empty()) {
        order.bounds = core::usual_bounds(mix, worked.proportions);
    }
    const std::string file = arguments.file();
    if (order.bounds.empty()) {
        throw wrong_command_line(fmt::format("{}: nothing may vary", file),
                                 "state 'bounds', for example 'bounds: {w_cm: 0.36 to 0.45}'");
    }
    if (const auto why = core::why_no_objective(worked.proportions, order.objective)) {
        throw wrong_command_line(
            fmt::format("{}: {}", file, report::words(*why, worked.origin.system)),
            order.objective == core::Objective::carbon
                ? "add 'carbon' to each, or take '--least binder'"
                : "add 'price' to each, in one currency, or take '--least binder'");
    }
    return order;
}

ExitCode run(const Arguments& arguments) {
    MixDemand demand{.purpose = input::Purpose::proportion};
    demand.to_be_selected = true;
    const auto opened = open_mix(arguments, demand);
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const WorkedMix& worked = std::get<WorkedMix>(opened);
    const core::CompleteMix& mix = std::get<core::CompleteMix>(worked.mix);
    const auto found = core::economy(mix, order_of(arguments, worked, mix), worked.tables);
    if (!found) {
        return end_with(no_mix_follows(found.why(), arguments, worked.origin.system));
    }
    deliver(
        report::EconomyResult{worked.title, *found, worked.checks, worked.origin.files_read.inputs},
        arguments, worked.origin);
    return verdict(worked.checks);
}

} // namespace
} // namespace of_economy

const Command economy_command{
    .name = "economy",
    .summary = "the mix of least cost, carbon or binder that holds every limit within 'bounds'",
    .usage = "boardmark economy [OPTIONS] MIX",
    .reads = "MIX is a mix file",
    .kind = input::FileKind::mix,
    .options = of_economy::options,
    .examples = of_economy::examples,
    .run = of_economy::run,
    .notes = "'bounds' in the file says what may vary: 'bounds: {w_cm: 0.36 to 0.45, share.slag: "
             "0 % to\n50 %}'; where it is left out, w/cm and the doses within the data of each "
             "reducer.\nThe exit code is that of the mix as written, 3 where no mix within the "
             "bounds holds."};

} // namespace boardmark::commands

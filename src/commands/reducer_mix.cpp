#include "reducer_mix.hpp"

#include <boardmark/core/study/comparison.hpp>
#include <boardmark/front/input_file.hpp>

#include "failure.hpp"

#include <fmt/format.h>

namespace boardmark::commands {

const core::CompleteMix& mix_with_reducer(const ReadMix& read, const std::string& file) {
    const auto* selected = std::get_if<core::CompleteMix>(&read.mix);
    if (!selected) {
        throw wrong_command_line(
            fmt::format("{} holds submitted amounts: they do not show what a reducer buys",
                        front::shown_name(file)),
            "use 'boardmark check', or compare it with a second mix");
    }
    if (!core::holds_high_range_reducer(*selected)) {
        throw wrong_command_line(
            fmt::format("{} holds no high-range water reducer, whose uses are studied",
                        front::shown_name(file)),
            "add one under 'mixture.admixtures', or compare it with a second mix");
    }
    return *selected;
}

} // namespace boardmark::commands

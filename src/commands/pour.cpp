#include <boardmark/core/wall/cast_part.hpp>
#include <boardmark/report/pour/pour_report.hpp>

#include "command.hpp"
#include "option_values.hpp"
#include "part_option.hpp"
#include "planned_wall.hpp"

#include <fmt/format.h>

namespace boardmark::commands {
namespace of_pour {
namespace {

constexpr Option options[] = {
    all_option,
    {"wall", "NAME", "this part only, where parts are placed apart; 'footing of ...' too"},
    {"start", "HH:MM", "clock time of the first load (default: times count from it)"},
};

constexpr std::string_view examples[] = {
    "boardmark pour --start 07:00 examples/terrace-walls.yaml",
    "boardmark pour --wall 'stair wall' --format html examples/terrace-walls.yaml",
};

bool is_two_digits(std::string_view text) {
    return text.size() == 2 && text.find_first_not_of("0123456789") == std::string_view::npos;
}

/// Minutes after midnight of "07:00".
std::optional<int> start_of(const Arguments& arguments) {
    const auto written = arguments.value("start");
    if (!written) {
        return std::nullopt;
    }
    const std::string_view text{*written};
    const bool shaped = text.size() == 5 && text[2] == ':' && is_two_digits(text.substr(0, 2)) &&
                        is_two_digits(text.substr(3));
    const int hour = shaped ? 10 * (text[0] - '0') + text[1] - '0' : 24;
    const int minute = shaped ? 10 * (text[3] - '0') + text[4] - '0' : 60;
    if (hour > 23 || minute > 59) {
        throw wrong_command_line(fmt::format("--start: '{}' is not a time of day", *written),
                                 "write for example '--start 07:00'");
    }
    return 60 * hour + minute;
}

std::vector<std::string_view> names_of(const std::vector<core::CastPart>& parts) {
    std::vector<std::string_view> names;
    for (const core::CastPart& part : parts) {
        names.push_back(part.name);
    }
    return names;
}

ExitCode run(const Arguments& arguments) {
    const auto start_min = start_of(arguments);
    const auto opened = planned_wall(arguments);
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const PlannedWall& planned = std::get<PlannedWall>(opened);
    const core::Wall& wall = planned.record.wall;
    const std::string part = part_option(arguments, names_of(core::cast_parts(wall)));
    core::PourCard card = core::pour_card(wall, planned.plan, planned.tables, part);
    card.cautions.insert(card.cautions.begin(), planned.improbable.begin(),
                         planned.improbable.end());
    deliver(report::PourResult{wall.title, planned.record.mix_file, card, start_min,
                               planned.origin.files_read.inputs},
            arguments, planned.origin);
    return core::any_fails(card.mix_checks) ? ExitCode::requirement_not_met : verdict(card.checks);
}

} // namespace
} // namespace of_pour

const Command pour_command{
    .name = "pour",
    .summary = "one sheet for the day of placing: loads, lifts, limits, tests, when to stop",
    .usage = "boardmark pour [OPTIONS] WALL",
    .reads = "WALL is a wall file",
    .kind = input::FileKind::wall,
    .options = of_pour::options,
    .examples = of_pour::examples,
    .run = of_pour::run,
    .notes = "Parts follow each other in the order of the file; footings are placed before, each\n"
             "with '--wall'. The page of '--format html' prints on one sheet, Letter or A4."};

} // namespace boardmark::commands

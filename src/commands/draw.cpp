#include <boardmark/front/input_file.hpp>
#include <boardmark/report/drawing/drawing_report.hpp>
#include <boardmark/units/date.hpp>

#include "command.hpp"
#include "option_values.hpp"
#include "output_file.hpp"
#include "part_option.hpp"
#include "planned_wall.hpp"
#include "waiting_line.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace boardmark::commands {
namespace of_draw {
namespace {

constexpr std::string_view forms[] = {"svg", "html", "dxf"};
constexpr std::string_view papers[] = {"letter", "a4", "tabloid", "a3"};

constexpr Option options[] = {
    {"format", "svg|html|dxf", "format of the drawing (default svg)", forms},
    {"wall", "NAME", "draw this run, planter or bench only"},
    {"scale", "1:N", "scale of the elevations (default: the largest usual one that fits)"},
    {"paper", "letter|a4|tabloid|a3", "what a sheet fits (default letter; a4 in SI)", papers},
    {"date", "YYYY-MM-DD", "date of the title block (default: left open)"},
};

constexpr std::string_view examples[] = {
    "boardmark draw examples/terrace-walls.yaml",
    "boardmark draw --wall 'stair wall' --scale 1:50 examples/terrace-walls.yaml",
};

std::optional<double> scale_of(const Arguments& arguments) {
    const auto written = arguments.value("scale");
    if (!written) {
        return std::nullopt;
    }
    if (!written->starts_with("1:")) {
        throw wrong_command_line(fmt::format("--scale: '{}' is not a scale", *written),
                                 "write for example '--scale 1:20'");
    }
    return read_number_option({"scale", written->substr(2)}, {1, 1000});
}

std::string date_of(const Arguments& arguments) {
    const auto written = arguments.value("date");
    if (written && !units::read_date(*written)) {
        throw wrong_command_line(fmt::format("--date: '{}' is not a date", *written),
                                 "write for example '--date 2027-05-10'");
    }
    return written.value_or("");
}

report::Paper paper_of(const Arguments& arguments, core::UnitSystem system) {
    const auto written = arguments.value("paper");
    if (!written) {
        return system == core::UnitSystem::us ? report::Paper::letter : report::Paper::a4;
    }
    constexpr std::array all{report::Paper::letter, report::Paper::a4, report::Paper::tabloid,
                             report::Paper::a3};
    return *std::ranges::find(all, std::string_view{*written},
                              [](report::Paper paper) { return report::name_of(paper); });
}

std::vector<std::string_view> drawn_parts(const core::WallLayout& layout) {
    std::vector<std::string_view> names;
    for (const core::WallSection& section : layout.sections) {
        names.push_back(section.part);
    }
    return names;
}

void demand_fitting(const report::DrawingResult& result, const report::SheetWishes& wishes) {
    if (const auto high = report::too_high(result, wishes)) {
        throw wrong_command_line(
            fmt::format("--scale: '{}' is higher than a sheet at 1:{:g}", high->part, high->scale),
            fmt::format("take 1:{:g} or leave '--scale' out", high->fits));
    }
}

/// `walls.svg` becomes `walls-2.svg`.
std::string numbered(const std::string& path, std::size_t number) {
    const std::size_t slash = path.find_last_of('/');
    const std::size_t dot = path.find_last_of('.');
    const bool has_ending =
        dot != std::string::npos && dot > 0 && (slash == std::string::npos || dot > slash + 1);
    const std::size_t at = has_ending ? dot : path.size();
    return fmt::format("{}-{}{}", path.substr(0, at), number, path.substr(at));
}

/// One sheet to FILE, several to FILE-1, FILE-2 and so on, all or none.
void write_sheets(const std::vector<std::string>& sheets, const Arguments& arguments,
                  const Origin& origin) {
    const std::string path = *arguments.value("out");
    std::vector<NamedResult> files;
    for (const std::string& sheet : sheets) {
        files.push_back({sheets.size() == 1 ? path : numbered(path, files.size() + 1), sheet});
    }
    write_results(
        files,
        {.path = path, .overwrite = arguments.has("force"), .inputs = origin.files_read.paths});
}

ExitCode run(const Arguments& arguments) {
    const auto opened = planned_wall(arguments);
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const PlannedWall& planned = std::get<PlannedWall>(opened);
    const core::UnitSystem system = arguments.reporting().value_or(planned.origin.system);
    const report::DrawingResult result{planned.record.wall, planned.plan,
                                       front::shown_name(arguments.file()),
                                       planned.origin.files_read.inputs.front().sha256};
    const report::SheetWishes wishes{.paper = paper_of(arguments, system),
                                     .scale = scale_of(arguments),
                                     .part =
                                         part_option(arguments, drawn_parts(planned.plan.layout)),
                                     .date = date_of(arguments)};
    demand_fitting(result, wishes);
    const auto drawn = [&](const auto& draw) {
        return while_waiting("drawing", arguments, [&] { return draw(result, wishes, system); });
    };
    const std::string form = arguments.value("format").value_or("svg");
    if (form == "html") {
        write_where_asked(drawn(report::drawing_html), arguments, planned.origin);
#ifndef BOARDMARK_IN_PAGE // it shows none, and need not carry what nothing calls
    } else if (form == "dxf") {
        write_where_asked(drawn(report::drawing_dxf), arguments, planned.origin);
#endif
    } else if (arguments.value("out").value_or("-") == "-") {
        write_where_asked(drawn(report::drawing_svg), arguments, planned.origin);
    } else {
        write_sheets(drawn(report::sheets_svg), arguments, planned.origin);
    }
    return planned.verdict();
}

} // namespace
} // namespace of_draw

const Command draw_command{
    .name = "draw",
    .summary = "sheets with every face that shows and a section of each part, true to scale",
    .usage = "boardmark draw [OPTIONS] WALL",
    .reads = "WALL is a wall file",
    .kind = input::FileKind::wall,
    .options = of_draw::options,
    .examples = of_draw::examples,
    .run = of_draw::run,
    .notes =
        "Several sheets stand below each other in one SVG; with '--out FILE' each is a file of\n"
        "its own, FILE-1, FILE-2 and so on. A DXF holds each view in its real size."};

} // namespace boardmark::commands

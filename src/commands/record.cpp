#include <boardmark/reference/tables.hpp>
#include <boardmark/report/strength/record_report.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "failure.hpp"
#include "log.hpp"
#include "record_charting.hpp"
#include "record_file.hpp"
#include "record_saving.hpp"
#include "today.hpp"

#include <fmt/format.h>

namespace boardmark::commands {
namespace of_record {
namespace {

constexpr std::string_view lists[] = {"trials", "specimens", "files"};
constexpr std::string_view exports[] = {"trials", "specimens"};
constexpr std::string_view charts[] = {"slump", "air",      "density",    "w_cm",
                                       "yield", "strength", "temperature"};

constexpr Option options[] = {
    {"add", "FILE", "save a trial or strength results; makes a record where there is none"},
    {"import", "FILE", "save rows of a CSV file such as --export writes, all or none"},
    {"list", "WHAT", "trials, specimens or files that the record holds", lists},
    {"export", "WHAT", "trials or specimens as CSV, in SI unless --reporting us", exports},
    {"chart", "QUANTITY", "chart of slump, air, density, w_cm, yield, strength or temperature",
     charts},
    {"mix", "NAME", "chart the values of that mix"},
    {"title", "TEXT", "chart those with that title, where mixes of one name have several"},
    {"age", "T", "age of the strengths to chart (default 28 d)"},
    today_option,
};

constexpr std::string_view examples[] = {
    "boardmark record quay.record --import examples/quay-trials.csv",
    "boardmark record quay.record --chart slump",
};

/// What one call does; at most one of them.
constexpr std::string_view actions[] = {"add", "import", "list", "export", "chart"};

std::string_view action_of(const Arguments& arguments) {
    std::string_view asked;
    for (const std::string_view action : actions) {
        if (!arguments.has(action)) {
            continue;
        }
        if (!asked.empty()) {
            throw wrong_command_line(fmt::format(
                "--{} and --{} cannot be used together; use one at a time", asked, action));
        }
        asked = action;
    }
    for (const std::string_view of_charts : {"mix", "title", "age"}) {
        if (arguments.has(of_charts) && asked != "chart") {
            throw wrong_command_line(fmt::format("--{} belongs to --chart", of_charts));
        }
    }
    if (arguments.has("age") && arguments.value("chart") != "strength") {
        throw wrong_command_line("--age belongs to --chart strength");
    }
    return asked;
}

/// Units of a text where none are asked for: those of the file that came first.
core::UnitSystem usual_system(const record::Contents& contents) {
    return contents.files.empty() ? core::UnitSystem::si : contents.files.front().reporting;
}

/// Rows as the arguments ask, but CSV in SI; an export comes back to the last bit.
template <class Row>
void deliver_rows(const std::vector<Row>& rows, const Arguments& arguments, const Origin& origin) {
    const report::RecordList<Row> list{record_name(arguments), rows, arguments.has("export"),
                                       origin.files_read.inputs};
    if (arguments.format() == Format::csv || arguments.has("export")) {
        const auto system = arguments.reporting().value_or(core::UnitSystem::si);
        write_where_asked(report::csv(list, system), arguments, origin);
    } else {
        deliver(list, arguments, origin);
    }
}

void show_rows(const std::string& which, const record::Contents& contents,
               const Arguments& arguments, const Origin& origin) {
    if (which == "trials") {
        deliver_rows(contents.trials, arguments, origin);
    } else if (which == "specimens") {
        deliver_rows(contents.specimens, arguments, origin);
    } else {
        deliver_rows(contents.files, arguments, origin);
    }
}

void show_chart(const record::Contents& contents, const Arguments& arguments,
                const Origin& origin) {
    const ChartedValues values = charted_values(contents, arguments);
    const auto rules = reference::tables(origin.system).control_chart;
    std::vector<double> numbers;
    for (const core::ChartPoint& point : values.points) {
        numbers.push_back(point.value);
    }
    const core::ControlChart chart = core::control_chart(numbers, rules);
    deliver(report::ChartResult{.title = record_name(arguments),
                                .charted = values.charted,
                                .age_d = values.age_d,
                                .mix = values.mix,
                                .mix_title = values.mix_title,
                                .points = values.points,
                                .chart = chart,
                                .rules = rules,
                                .inputs = origin.files_read.inputs},
            arguments, origin);
}

void show(std::string_view action, const Arguments& arguments) {
    FilesRead files_read;
    const record::Contents contents = open_record(arguments, files_read);
    const Origin origin{usual_system(contents), files_read};
    if (action == "chart") {
        show_chart(contents, arguments, origin);
    } else if (action.empty()) {
        deliver(report::RecordSummary{record_name(arguments), contents.files, contents.trials,
                                      contents.specimens, origin.files_read.inputs},
                arguments, origin);
    } else {
        show_rows(*arguments.value(action), contents, arguments, origin);
    }
}

ExitCode run(const Arguments& arguments) {
    if (arguments.has("verbose")) {
        start_log();
    }
    const std::string_view action = action_of(arguments);
    if (action == "export" && arguments.has("format") && arguments.format() != Format::csv) {
        throw wrong_command_line("--export writes CSV", "--list has the other forms");
    }
    if (action == "add" || action == "import") {
        FilesRead files_read{{arguments.file()}};
        auto saved =
            action == "add" ? add_file(arguments, files_read) : import_rows(arguments, files_read);
        saved.inputs = files_read.inputs;
        deliver(saved, arguments, {core::UnitSystem::si, files_read});
    } else {
        show(action, arguments);
    }
    return ExitCode::done;
}

} // namespace
} // namespace of_record

const Command record_command{
    .name = "record",
    .summary = "keep trials and specimens of a project in one file; list, chart, export them",
    .usage = "boardmark record [OPTIONS] RECORD",
    .reads = "RECORD is the record's file, such as quay.record; without options: what it holds",
    .options = of_record::options,
    .examples = of_record::examples,
    .run = of_record::run,
    .takes_standard_input = false};

} // namespace boardmark::commands

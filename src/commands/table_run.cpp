#include "table_run.hpp"

#include <boardmark/core/basis/blocks.hpp>
#include <boardmark/front/input_file.hpp>
#include <boardmark/input/mix/mix_table.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/mix/row_report.hpp>

#include "delivery.hpp"
#include "failure.hpp"
#include "line_reader.hpp"
#include "long_run.hpp"
#include "opened_file.hpp"
#include "output_file.hpp"
#include "row_maker.hpp"
#include "table_options.hpp"
#include "terminal.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <exception>
#include <iostream>
#include <memory>
#include <optional>

namespace boardmark::commands {
namespace {

constexpr std::size_t rows_at_once = 4096;
constexpr std::size_t rows_in_block = 32;
constexpr std::size_t most_told = 20;

bool is_blank(const std::string& line) {
    return line.find_first_not_of(" \t\r") == std::string::npos;
}

/// One row, done.
struct DoneRow {
    std::string text;
    ExitCode code = ExitCode::done;
    input::Diagnostics errors = {};
    std::exception_ptr fault = {}; ///< of the program
};

std::string told_in_cell(const input::Diagnostics& errors) {
    std::string told;
    for (const input::Diagnostic& error : errors) {
        told += (told.empty() ? "" : "; ") + error.message;
    }
    return told;
}

/// What one thread works rows out with.
struct RowWork {
    input::MixRowReader reader;
    RowMaker maker;
};

DoneRow done_row(RowWork& work, const report::RowWriter& writer, input::TableLine line) {
    DoneRow done;
    try {
        input::MixReading reading = work.reader.read(std::move(line));
        if (reading.mix) {
            MixRow row = work.maker.row_of(*reading.mix);
            done.text = std::move(row.text);
            done.code = row.code;
            return done;
        }
        std::erase_if(reading.diagnostics, [](const input::Diagnostic& diagnostic) {
            return diagnostic.severity != input::Severity::error;
        });
        done.errors = std::move(reading.diagnostics);
        done.text = writer.row_of_error(told_in_cell(done.errors));
        done.code = ExitCode::wrong_input;
    } catch (...) {
        done.fault = std::current_exception();
    }
    return done;
}

/// The codes of rows, the worst of which is the program's.
class WorstCode {
public:
    void add(ExitCode code) {
        constexpr ExitCode from_best[] = {ExitCode::done, ExitCode::requirement_not_met,
                                          ExitCode::unresolved, ExitCode::wrong_input};
        const auto rank = [&](ExitCode one) { return std::ranges::find(from_best, one); };
        worst_ = rank(code) > rank(worst_) ? code : worst_;
    }
    ExitCode code() const { return worst_; }

private:
    ExitCode worst_ = ExitCode::done;
};

/// What went wrong in rows, to be told at the end: the first of it, and how much in all.
class RowErrors {
public:
    void add(const DoneRow& row) {
        wrong_ += row.code == ExitCode::wrong_input ? 1 : 0;
        without_mix_ += row.code == ExitCode::unresolved ? 1 : 0;
        errors_ += row.errors.size();
        for (const input::Diagnostic& error : row.errors) {
            if (first_.size() < most_told) {
                first_.push_back(error);
            }
        }
    }

    void tell(const std::string& table, std::size_t rows) const {
        if (wrong_ + without_mix_ == 0) {
            return;
        }
        std::string text;
        for (const input::Diagnostic& error : first_) {
            text += input::render_one(error, terminal_width(STDERR_FILENO));
        }
        if (errors_ > first_.size()) {
            text += fmt::format("and {} more\n", errors_ - first_.size());
        }
        text += fmt::format("{}: of {} rows {} {} wrong and {} {} to no mix; the last column says "
                            "why\n",
                            table, rows, wrong_, wrong_ == 1 ? "is" : "are", without_mix_,
                            without_mix_ == 1 ? "leads" : "lead");
        std::cerr << for_standard_error(text);
    }

private:
    std::size_t wrong_ = 0;
    std::size_t without_mix_ = 0;
    std::size_t errors_ = 0;
    input::Diagnostics first_;
};

/// The lines of a table that hold rows.
class TableRows {
public:
    TableRows(LineReader& lines, RowRange range)
        : lines_{lines}
        , range_{range} {}

    /// The next rows that are asked for, none at the end.
    std::vector<input::TableLine> next(const LongRun& long_run) {
        std::vector<input::TableLine> rows;
        std::string line;
        while (rows.size() < rows_at_once && passed_ < range_.last && !long_run.was_interrupted() &&
               lines_.next(line, input::longest_table_row)) {
            if (!is_blank(line) && ++passed_ >= range_.first) {
                rows.push_back({line, lines_.lines() - 1});
            }
        }
        return rows;
    }

    std::size_t passed() const { return passed_; }

private:
    LineReader& lines_;
    RowRange range_;
    std::size_t passed_ = 0;
};

/// Empty after an interruption.
std::string header_of(LineReader& lines, const std::string& name, const LongRun& long_run) {
    std::string line;
    while (lines.next(line, input::longest_table_row)) {
        if (!is_blank(line)) {
            return line;
        }
    }
    if (long_run.was_interrupted()) {
        return "";
    }
    throw wrong_command_line(fmt::format("{} is empty", name),
                             "a header comes first, then a row for each mix");
}

/// The table with the mix that its rows change.
input::MixTable opened_table(const input::TableLine& header, input::Purpose purpose,
                             const Arguments& arguments, FilesRead& files_read) {
    const Arguments of_base = arguments.for_file(*arguments.value("base"));
    OpenedFile base = open_file(of_base, files_read);
    input::MixTableOpened opened = input::open_mix_table(
        {std::move(base.name), std::move(base.text)},
        {front::shown_name(*arguments.value("table")), header.text}, header.number,
        {.purpose = purpose,
         .vocabulary = reference::vocabulary(),
         .load = loader_beside(of_base.file(), files_read)});
    demand_sound(opened.table.has_value(), opened.diagnostics, arguments);
    return *std::move(opened.table);
}

/// Works rows out one batch after the other.
class TableRun {
public:
    TableRun(const input::MixTable& table, const Arguments& arguments, const FilesRead& files_read)
        : table_{table}
        , tables_{reference::tables_for(table.base())}
        , writer_{report::row_ingredients(table.base()),
                  arguments.reporting().value_or(core::system_of(table.base()))}
        , threads_{threads_asked(arguments)}
        , output_{{.path = arguments.value("out").value_or("-"),
                   .overwrite = arguments.has("force"),
                   .inputs = files_read.paths}} {}

    void write_header() { output_.write(writer_.header()); }

    /// Does the rows; fewer of them where it was interrupted.
    void take(std::vector<input::TableLine> rows, LongRun& long_run, double share) {
        std::vector<DoneRow> done(rows.size());
        const std::size_t count = core::do_in_blocks(
            {.count = rows.size(),
             .in_block = rows_in_block,
             .threads = threads_,
             .goes_on = [&](double) { return long_run.goes_on(share); }},
            [&, thread = std::size_t{0}]() mutable -> core::BlockWork {
                RowWork& work = work_of(thread++);
                return [&](std::size_t first, std::size_t last) {
                    for (std::size_t i = first; i < last; ++i) {
                        done[i] = done_row(work, writer_, std::move(rows[i]));
                    }
                };
            });
        std::string text;
        for (std::size_t i = 0; i < count; ++i) {
            if (done[i].fault) {
                std::rethrow_exception(done[i].fault);
            }
            text += done[i].text;
            worst_.add(done[i].code);
            errors_.add(done[i]);
        }
        rows_ += count;
        output_.write(text);
    }

    void end_output() { output_.end(); }

    /// The worst of the rows, what was wrong in them told.
    ExitCode told_code(const std::string& table, const Arguments& arguments) const {
        if (!arguments.has("quiet")) {
            errors_.tell(table, rows_);
        }
        return worst_.code();
    }

private:
    /// What a thread works with, from its first rows to the last.
    RowWork& work_of(std::size_t thread) {
        while (work_.size() <= thread) {
            work_.push_back(std::make_unique<RowWork>(RowWork{
                input::MixRowReader{table_}, RowMaker{writer_, tables_, table_.base()}}));
        }
        return *work_[thread];
    }

    const input::MixTable& table_;
    const core::Tables tables_;
    const report::RowWriter writer_;
    unsigned threads_;
    std::vector<std::unique_ptr<RowWork>> work_;
    ResultStream output_;
    WorstCode worst_;
    RowErrors errors_;
    std::size_t rows_ = 0;
};

} // namespace

ExitCode run_table(input::Purpose purpose, const Arguments& arguments) {
    const RowRange range = rows_asked(arguments);
    const std::string path = *arguments.value("table");
    const std::string name = front::shown_name(path);
    FilesRead files_read;
    files_read.paths.push_back(path);
    auto long_run = std::make_unique<LongRun>("rows", arguments);
    LineReader lines{path, [&] { return !long_run->was_interrupted(); }};
    const std::string heading = header_of(lines, name, *long_run);
    if (const auto stopped = long_run->stopped()) {
        return *stopped;
    }
    const input::MixTable table =
        opened_table({heading, lines.lines() - 1}, purpose, arguments, files_read);
    TableRun run{table, arguments, files_read};
    TableRows rows{lines, range};
    std::vector<input::TableLine> next = rows.next(*long_run);
    if (next.empty() && !long_run->was_interrupted()) {
        throw wrong_command_line(
            rows.passed() == 0 ? fmt::format("{} holds no rows", name)
                               : fmt::format("--rows: {} ends with row {}", name, rows.passed()));
    }
    if (range.first == 1) {
        run.write_header();
    }
    while (!next.empty()) {
        run.take(std::move(next), *long_run, lines.share());
        next = rows.next(*long_run);
    }
    run.end_output();
    const std::optional<ExitCode> stopped = long_run->stopped();
    long_run.reset(); // the line of its progress goes before errors are told
    const ExitCode worst = run.told_code(name, arguments);
    return stopped.value_or(worst);
}

} // namespace boardmark::commands

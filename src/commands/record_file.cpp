#include "record_file.hpp"

#include <boardmark/front/input_file.hpp>
#include <boardmark/front/noted_files.hpp>
#include <boardmark/text/utf8.hpp>

#include "failure.hpp"
#include "log.hpp"
#include "waiting_line.hpp"

#include <fmt/format.h>

#include <limits>
#include <variant>

namespace boardmark::commands {
namespace {

constexpr auto largest_record = std::numeric_limits<std::size_t>::max(); // whatever was saved

void demand_file(const Arguments& arguments) {
    if (arguments.file() == "-" || arguments.file().empty()) {
        throw wrong_command_line("a record is a file, not standard input");
    }
}

} // namespace

std::string record_name(const Arguments& arguments) {
    return text::printable(front::shown_name(arguments.file()));
}

record::Contents open_record(const Arguments& arguments, FilesRead& files_read) {
    demand_file(arguments);
    try {
        log("reading " + record_name(arguments));
        record::Contents contents = while_waiting("reading the record", arguments,
                                                  [&] { return record::read(arguments.file()); });
        files_read.paths.push_back(arguments.file());
        const auto bytes = front::read_bytes(arguments.file(), largest_record);
        if (const auto* all = std::get_if<std::string>(&bytes)) {
            front::note(arguments.file(), *all, files_read.inputs);
        }
        return contents;
    } catch (const record::Failure& failure) {
        throw wrong_command_line(
            fmt::format("{} cannot be read: {}", record_name(arguments), failure.reason),
            failure.fault == record::Fault::missing
                ? "'--add FILE' or '--import FILE' makes a record"
                : "");
    }
}

record::Outcome save(const Arguments& arguments, const record::Addition& addition) {
    demand_file(arguments);
    try {
        log("writing " + record_name(arguments));
        return while_waiting("saving into the record", arguments,
                             [&] { return record::add(arguments.file(), addition); });
    } catch (const record::Failure& failure) {
        const bool system_refuses =
            failure.fault == record::Fault::cannot_write || failure.fault == record::Fault::busy;
        throw system_refuses
            ? output_failed(arguments.file(), failure.reason)
            : wrong_command_line(fmt::format("{} cannot be written to: {}", record_name(arguments),
                                             failure.reason),
                                 "nothing was saved");
    }
}

} // namespace boardmark::commands

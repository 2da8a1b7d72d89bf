#include <boardmark/boardmark.hpp>
#include <boardmark/front/input_file.hpp>
#include <boardmark/reference/tables.hpp>

#include "../commands/command.hpp"
#include "../commands/failure.hpp"
#include "form_json.hpp"
#include "held_files.hpp"
#include "held_result.hpp"
#include "tree_json.hpp"

#include <nlohmann/json.hpp>

#include <cstdlib>
#include <exception>
#include <iostream>
#include <sstream>
#include <string>
#include <vector>

// What the page may ask of the program: text in, text out. An answer stays until the next question.

namespace boardmark::page {
namespace {

using Json = nlohmann::ordered_json;

const char* answer(std::string text) {
    static std::string kept;
    kept = std::move(text);
    return kept.c_str();
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream{text};
    for (std::string line; std::getline(stream, line);) {
        lines.push_back(line);
    }
    return lines;
}

/// A page works the same file over and over: its tables are made once.
void keep_tables() {
    for (const auto system : {core::UnitSystem::us, core::UnitSystem::si}) {
        reference::tables(system);
    }
}

commands::ExitCode run_command(const std::vector<std::string>& words) {
    using namespace commands;
    keep_tables();
    const Command* command = find_command(words.front());
    if (!command) {
        throw wrong_command_line("'" + words.front() + "' is not a command of the page");
    }
    return command->run(
        Arguments{words.front(),
                  command->options,
                  {command->least_files, command->most_files, command->kind, command->in_place},
                  {words.begin() + 1, words.end()}});
}

/// Whatever is written to standard error while this stands.
class ToldHere {
public:
    ToldHere()
        : before_{std::cerr.rdbuf(told_.rdbuf())} {}
    ~ToldHere() { std::cerr.rdbuf(before_); }
    ToldHere(const ToldHere&) = delete;
    ToldHere& operator=(const ToldHere&) = delete;
    std::string text() const { return told_.str(); }

private:
    std::ostringstream told_;
    std::streambuf* before_;
};

Json fault_json(const Fault& fault) {
    return {{"file", fault.file},       {"line", fault.line},     {"column", fault.column},
            {"message", fault.message}, {"advice", fault.advice}, {"warning", fault.is_warning}};
}

template <class Result>
std::string faults_json(const Opened<Result>& opened) {
    Json faults = Json::array();
    for (const Fault& fault : opened.faults()) {
        faults.push_back(fault_json(fault));
    }
    return Json{{"sound", static_cast<bool>(opened)},
                {"unresolved", opened.unresolved() ? opened.told() : ""},
                {"faults", faults}}
        .dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string faults_of(const std::string& kind, const std::string& name) {
    const auto load = front::loader_beside(name);
    const std::string& text = held(name);
    if (kind == "wall") {
        return faults_json(read_wall(text, name, load));
    }
    if (kind == "trial") {
        return faults_json(read_trial(text, name, load));
    }
    const Purpose purpose = kind == "batch"        ? Purpose::batch
                            : kind == "proportion" ? Purpose::proportion
                                                   : Purpose::check;
    return faults_json(read(text, name, purpose, load));
}

} // namespace
} // namespace boardmark::page

extern "C" {

using namespace boardmark;

/// Opens a file of that name, in place of one that was open under it.
void boardmark_hold(const char* name, const char* text) {
    page::hold(name, text);
}

void boardmark_hold_nothing() {
    page::hold_nothing();
}

/// Runs a command whose words stand one on a line: {"code", "told"} on the first line, behind it
/// the result as it is.
const char* boardmark_run(const char* words) {
    setenv("NO_COLOR", "1", 1); // what is written here looks like a terminal's to the C library
    const page::ToldHere told;
    commands::ExitCode code{};
    try {
        code = page::run_command(page::lines_of(words));
    } catch (const commands::Failure& failure) {
        code = commands::end_with(failure);
    } catch (const std::exception& fault) {
        code = commands::end_with(commands::fault_of_the_program(fault));
    }
    return page::answer(page::Json{{"code", static_cast<int>(code)}, {"told", told.text()}}.dump(
                            -1, ' ', false, page::Json::error_handler_t::replace) +
                        "\n" + page::take_result());
}

/// What the reader finds wrong in an open file: {"sound", "unresolved", "faults"}.
///
/// @param kind proportion, check, batch, trial or wall
const char* boardmark_faults(const char* kind, const char* name) {
    return page::answer(page::faults_of(kind, name));
}

/// The kind of a text: mix, trial, results, wall, or empty.
const char* boardmark_kind(const char* text) {
    const auto kind = input::kind_of(text);
    return page::answer(kind ? std::string{page::word_of(*kind)} : "");
}

/// The keys of a kind of file, for the form.
const char* boardmark_form(const char* kind) {
    return page::answer(page::form_json(kind));
}

/// The options of a command: [{"name", "value", "meaning", "words"}].
const char* boardmark_options(const char* command) {
    return page::answer(page::options_json(command));
}

/// The values of a text with their places in it; null where it cannot be read as a tree.
const char* boardmark_tree(const char* text) {
    return page::answer(page::tree_json(text));
}
}

#include "parsed_words.hpp"

#include <boardmark/text/closest.hpp>

#include "failure.hpp"

#include <boost/program_options.hpp>
#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {
namespace {

namespace po = boost::program_options;

constexpr const char* file_argument = "file";

po::options_description description_of(const std::vector<const Option*>& options) {
    po::options_description description;
    auto add = description.add_options();
    for (const Option* option : options) {
        const std::string name = std::string{option->name} + (option->letter.empty() ? "" : ",") +
                                 std::string{option->letter};
        if (option->value.empty()) {
            add(name.c_str(), "");
        } else if (option->may_repeat) {
            add(name.c_str(), po::value<std::vector<std::string>>(), "");
        } else {
            add(name.c_str(), po::value<std::string>(), "");
        }
    }
    add(file_argument, po::value<std::vector<std::string>>(), "");
    return description;
}

Failure unknown_option(const std::string& written, const std::vector<const Option*>& options,
                       const std::string& help) {
    std::vector<std::string_view> names;
    for (const Option* option : options) {
        names.push_back(option->name);
    }
    const std::string bare =
        written.substr(std::min(written.find_first_not_of('-'), written.size()));
    const auto near = text::closest(bare, names);
    return wrong_command_line(fmt::format("'{}' is not an option", written),
                              near ? fmt::format("did you mean '--{}'?", *near) : help);
}

po::variables_map parsed_by_library(const std::vector<const Option*>& options,
                                    const std::vector<std::string>& words,
                                    const std::string& help) {
    const auto description = description_of(options);
    po::positional_options_description positions;
    positions.add(file_argument, -1);
    // No abbreviations: a new option must never change what an old script means.
    const int style =
        po::command_line_style::default_style & ~po::command_line_style::allow_guessing;
    const auto found = po::command_line_parser(words)
                           .options(description)
                           .positional(positions)
                           .style(style)
                           .run();
    for (const auto& option : found.options) {
        const bool named = option.string_key == file_argument && option.position_key < 0;
        if (named) { // the name under which the library keeps the file is no option
            throw unknown_option("--" + option.string_key, options, help);
        }
    }
    po::variables_map parsed;
    po::store(found, parsed);
    return parsed;
}

} // namespace

ParsedWords parse(const std::vector<const Option*>& options, const std::vector<std::string>& words,
                  const std::string& help) {
    try {
        const po::variables_map parsed = parsed_by_library(options, words, help);
        ParsedWords told_apart;
        if (parsed.count(file_argument)) {
            told_apart.files = parsed[file_argument].as<std::vector<std::string>>();
        }
        for (const Option* option : options) {
            const std::string name{option->name};
            if (!parsed.count(name)) {
                continue;
            }
            auto& values = told_apart.values[name];
            if (option->may_repeat) {
                values = parsed[name].as<std::vector<std::string>>();
            } else {
                values = {option->value.empty() ? "" : parsed[name].as<std::string>()};
            }
        }
        return told_apart;
    } catch (const po::unknown_option& fault) {
        throw unknown_option(fault.get_option_name(), options, help);
    } catch (const po::error& fault) {
        throw wrong_command_line(fault.what(), help);
    }
}

} // namespace boardmark::commands

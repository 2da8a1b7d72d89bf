#include "arguments.hpp"

#include <boardmark/text/closest.hpp>

#include "failure.hpp"
#include "file_kind_argument.hpp"
#include "parsed_words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {
namespace {

constexpr std::string_view formats[] = {"text", "json", "csv", "html"};
constexpr std::string_view systems[] = {"us", "si"};
constexpr std::string_view colours[] = {"auto", "always", "never"};

constexpr Option common[] = {
    {"format", "text|json|csv|html", "format of the result (default text)", formats},
    {"out", "FILE", "write the result to FILE, which must not exist yet", {}, "o"},
    {"force", "", "let --out replace an existing file"},
    {"reporting", "us|si", "units shown (default: the mix file's; JSON is always SI)", systems},
    {"explain", "", "add the reason, source and inputs of every value"},
    {"color", "auto|always|never", "colour of the verdicts (default auto; NO_COLOR turns it off)",
     colours},
    {"quiet", "", "no warnings", {}, "q"},
    {"verbose", "", "report progress on standard error"},
    {"help", "", "show this help", {}, "h"},
    {"version", "", "show the version"},
};

/// A command's own option stands in place of the common one of that name.
std::vector<const Option*> all_options(std::span<const Option> own) {
    std::vector<const Option*> options;
    for (const Option& option : own) {
        options.push_back(&option);
    }
    for (const Option& option : common) {
        if (std::ranges::find(own, option.name, &Option::name) == own.end()) {
            options.push_back(&option);
        }
    }
    return options;
}

void demand_allowed_word(const Option& option, const std::string& value) {
    if (option.words.empty() || std::ranges::count(option.words, std::string_view{value}) > 0) {
        return;
    }
    const auto near = text::closest(value, option.words);
    throw wrong_command_line(fmt::format("--{}: '{}' is not one of {}", option.name, value,
                                         fmt::join(option.words, ", ")),
                             near ? fmt::format("did you mean '{}'?", *near) : "");
}

std::string wrong_count(const std::string& command, const FilesAsked& asked, std::size_t named) {
    const std::string counted = named == 0 ? "none" : std::to_string(named);
    if (asked.most == 0) {
        return fmt::format("'{}' reads no file; {} are named", command, counted);
    }
    return asked.most == 1 ? fmt::format("'{}' reads one file; {} are named", command, counted)
                           : fmt::format("'{}' reads 1 to {} files; {} are named", command,
                                         asked.most, counted);
}

} // namespace

std::span<const Option> common_options() {
    return common;
}

std::vector<Option> with_common_options(std::span<const Option> own) {
    std::vector<Option> options;
    for (const Option* option : all_options(own)) {
        options.push_back(*option);
    }
    return options;
}

Arguments::Arguments(const std::string& command, std::span<const Option> own_options,
                     FilesAsked asked, const std::vector<std::string>& words) {
    constexpr std::size_t most_words = 100; // the library's parsing takes the square of their count
    if (words.size() > most_words) {
        throw wrong_command_line(
            fmt::format("'{}' reads one file; {} words follow it", command, words.size()));
    }
    const auto options = all_options(own_options);
    const std::string help = fmt::format("see 'boardmark help {}'", command);
    ParsedWords parsed = parse(options, words, help);
    files_ = std::move(parsed.files);
    kind_ = asked.kind;
    if (!asked.in_place.empty() && parsed.values.contains(std::string{asked.in_place})) {
        if (!files_.empty()) {
            throw wrong_command_line(
                fmt::format("--{} stands in place of '{}'", asked.in_place, files_.front()),
                "keep one of the two");
        }
    } else if (files_.size() < asked.least || files_.size() > asked.most) {
        const std::string starter = files_.empty() ? where_to_see_one() : "";
        throw wrong_command_line(wrong_count(command, asked, files_.size()),
                                 help + (starter.empty() ? "" : "; " + starter));
    }
    for (const Option* option : options) {
        const auto given = parsed.values.find(option->name);
        if (given == parsed.values.end()) {
            continue;
        }
        const std::string name{option->name};
        values_[name] = given->second.front();
        if (option->may_repeat) {
            repeated_[name] = given->second;
            continue;
        }
        demand_allowed_word(*option, values_[name]);
    }
}

std::optional<std::string> Arguments::value(std::string_view option) const {
    const auto found = values_.find(option);
    return found == values_.end() ? std::nullopt : std::optional{found->second};
}

std::vector<std::string> Arguments::all_values(std::string_view option) const {
    const auto found = repeated_.find(option);
    return found == repeated_.end() ? std::vector<std::string>{} : found->second;
}

std::string Arguments::where_to_see_one() const {
    return kind_ ? fmt::format("'boardmark starter {}' shows one", word_of(*kind_)) : "";
}

Arguments Arguments::for_file(const std::string& file) const {
    Arguments one = *this;
    one.files_ = {file};
    return one;
}

Format Arguments::format() const {
    const std::string word = value("format").value_or("text");
    return word == "json"   ? Format::json
           : word == "csv"  ? Format::csv
           : word == "html" ? Format::html
                            : Format::text;
}

Colour Arguments::colour() const {
    const std::string word = value("color").value_or("auto");
    return word == "always" ? Colour::always : word == "never" ? Colour::never : Colour::automatic;
}

std::optional<core::UnitSystem> Arguments::reporting() const {
    const auto word = value("reporting");
    if (!word) {
        return std::nullopt;
    }
    return *word == "us" ? core::UnitSystem::us : core::UnitSystem::si;
}

bool asks_for(const std::vector<std::string>& words, std::span<const std::string_view> options) {
    const auto end = std::ranges::find(words, "--");
    return std::any_of(words.begin(), end, [&](const std::string& word) {
        return std::ranges::count(options, std::string_view{word}) > 0;
    });
}

} // namespace boardmark::commands

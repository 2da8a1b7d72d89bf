#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/input/fields/file_kind.hpp>

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::commands {

/// One option of a command: the table from which parsing and help come.
struct Option {
    std::string_view name;  ///< "volume"
    std::string_view value; ///< "Q"; empty for a switch
    std::string_view meaning;
    std::span<const std::string_view> words = {}; ///< the values allowed; empty: any
    std::string_view letter = {};                 ///< its short form, "o"; empty: none
    bool may_repeat = false;                      ///< given several times, for several values
};

/// The option of the commands that show checks.
constexpr Option all_option{"all", "", "list the checks that hold too, not their count alone"};

/// Options that every command has.
std::span<const Option> common_options();

/// A command's own options, then those of every command that it does not have in its own way.
std::vector<Option> with_common_options(std::span<const Option> own);

enum class Format { text, json, csv, html };
enum class Colour { automatic, always, never };

/// The files that a command reads: how many, of what kind.
struct FilesAsked {
    std::size_t least;
    std::size_t most;
    std::optional<input::FileKind> kind = {}; ///< nothing where it is no kind of file
    std::string_view in_place = {};           ///< an option that stands in place of the files
};

/// A command's part of the command line, parsed.
class Arguments {
public:
    /// Parses strictly: no abbreviations, no unknown options, `--` ends the options.
    /// Throws Failure where the command line is wrong.
    Arguments(const std::string& command, std::span<const Option> own_options, FilesAsked asked,
              const std::vector<std::string>& words);

    /// The file that the command reads, the first where it reads several.
    const std::string& file() const { return files_.front(); }
    const std::vector<std::string>& files() const { return files_; }

    /// Where a file of the kind that is asked may be seen: "'boardmark starter wall' shows one".
    /// Empty where the command asks for no kind.
    std::string where_to_see_one() const;

    /// The same arguments for one of its files.
    Arguments for_file(const std::string& file) const;

    std::optional<std::string> value(std::string_view option) const;
    /// Of an option that may repeat, in the order given.
    std::vector<std::string> all_values(std::string_view option) const;
    bool has(std::string_view option) const { return value(option).has_value(); }

    Format format() const;
    Colour colour() const;

    /// The units asked for on the command line, if any.
    std::optional<core::UnitSystem> reporting() const;

private:
    std::vector<std::string> files_;
    std::optional<input::FileKind> kind_;
    std::map<std::string, std::string, std::less<>> values_;
    std::map<std::string, std::vector<std::string>, std::less<>> repeated_;
};

/// Whether one of some options stands before `--` ends the options, whatever else is wrong.
bool asks_for(const std::vector<std::string>& words, std::span<const std::string_view> options);

} // namespace boardmark::commands

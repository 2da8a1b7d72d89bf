#include "file_kind_argument.hpp"

#include <boardmark/text/closest.hpp>

#include "failure.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace boardmark::commands {
namespace {

constexpr input::FileKind kinds[] = {input::FileKind::mix, input::FileKind::trial,
                                     input::FileKind::results, input::FileKind::wall};

} // namespace

std::string_view word_of(input::FileKind kind) {
    return words_for_kinds[std::ranges::find(kinds, kind) - std::begin(kinds)];
}

input::FileKind file_kind_argument(const Arguments& arguments) {
    if (arguments.files().empty()) {
        return input::FileKind::mix;
    }
    const std::string& name = arguments.file();
    const auto* word = std::ranges::find(words_for_kinds, std::string_view{name});
    if (word != std::end(words_for_kinds)) {
        return kinds[word - std::begin(words_for_kinds)];
    }
    const auto near = text::closest(name, words_for_kinds);
    throw wrong_command_line(fmt::format("'{}' is not a kind of file", name),
                             near ? fmt::format("did you mean '{}'?", *near)
                                  : fmt::format("one of {}", fmt::join(words_for_kinds, ", ")));
}

} // namespace boardmark::commands

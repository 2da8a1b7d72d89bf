#include "field_example.hpp"

namespace boardmark::input {
namespace {

/// The text before a mark, all of it where there is none, and the text behind the mark.
struct Halves {
    std::string_view before;
    std::string_view after;
};

Halves halves_at(std::string_view text, std::string_view mark) {
    const std::size_t at = text.find(mark);
    return at == std::string_view::npos ? Halves{text, {}}
                                        : Halves{text.substr(0, at), text.substr(at + mark.size())};
}

} // namespace

FieldExample example_of(const Field& field) {
    const std::string_view written = halves_at(field.example, ": ").after;
    if (written.starts_with('[')) {
        const std::string_view items = halves_at(written.substr(1), "]").before;
        return {.value = halves_at(items, ", ").before};
    }
    if (written.starts_with('{')) {
        const std::string_view rows = halves_at(written.substr(1), "}").before;
        const Halves row = halves_at(halves_at(rows, ", ").before, ": ");
        return {.key = row.before, .value = row.after};
    }
    return {.value = written};
}

} // namespace boardmark::input

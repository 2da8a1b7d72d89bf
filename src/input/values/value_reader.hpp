#pragma once

#include <boardmark/core/mix/kind.hpp>
#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/units/unit.hpp>

#include "../fields/fields.hpp"
#include "../gate/node.hpp"
#include "../gate/path.hpp"

#include <optional>
#include <string>

namespace boardmark::input {

/// A value that passed its form, its dimension and its range.
struct Parsed {
    const Node* node = nullptr;
    std::string text;     ///< as written
    bool is_word = false; ///< one of the words that may stand instead
    bool flag = false;    ///< Form::flag
    double number = 0; ///< in the inside unit; a window's low end; days of a date since 1970-01-01
    double step = 0;   ///< of a quantity: its last digit as written, in the inside unit
    double high = 0;   ///< a window's or a price range's high end
    std::optional<double> likely;                  ///< of a price range, where it is stated
    std::optional<units::Dimension> dimension;     ///< of a quantity
    core::Kind kind = core::Kind::portland_cement; ///< Form::kind
    std::string currency; ///< Form::price, the number is for one kg, m3 or piece; Form::price_range
};

/// Reads one scalar by its description. Nothing where it is wrong; then a diagnostic tells why.
/// `path` is the key, for the message, `example` a line to show as advice.
std::optional<Parsed> read_value(const Node& node, const Value& value, const Path& path,
                                 std::string_view example, Diagnostics& diagnostics);

/// What a value must be, in the words of a message.
std::string describe(const Value& value);

} // namespace boardmark::input

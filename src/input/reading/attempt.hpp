#pragma once

#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/units/unit.hpp>

#include "../fields/fields.hpp"
#include "../gate/node.hpp"
#include "../gate/path.hpp"
#include "../values/value_reader.hpp"

#include <optional>
#include <string>

namespace boardmark::input {

/// One value that is being read, with what a message needs.
struct Attempt {
    const Node& node;
    const Value& value;
    const Path& path;
    std::string_view example;
    Diagnostics& diagnostics;

    /// Tells a fault; the caret stands at a byte of the value. Without advice the example is shown.
    std::nullopt_t refuse(std::string what, std::string advice, std::size_t caret = 0) const;
    void warn(std::string what, std::string advice) const;

    /// The value as it is written, nothing read of it yet.
    Parsed start() const;

    /// The value with its number, held against its range in the unit in which it was written. A
    /// suspiciously small percentage gets a warning.
    std::optional<Parsed> finish(Parsed parsed, double inside, const units::Unit* unit) const;

    /// A warning where a number is possible but beyond what is usual.
    void ask_back(double inside, const units::Unit* unit) const;

    bool in_range(double inside, const units::Unit* unit) const;
};

} // namespace boardmark::input

#pragma once

#include <boardmark/core/basis/quantity.hpp>

#include <string>
#include <variant>
#include <vector>

namespace boardmark::core {

/// A named value that a phrase speaks of: a quantity, or a text such as a material's name.
struct Argument {
    std::string name;
    std::variant<Quantity, std::string> value;

    bool operator==(const Argument&) const = default;
};

/// A sentence as data: `{name}` in the text stands for the argument of that name, so that the
/// reader's units are chosen when it is printed and not here.
struct Phrase {
    std::string text;
    std::vector<Argument> arguments;

    bool operator==(const Phrase&) const = default;
};

} // namespace boardmark::core

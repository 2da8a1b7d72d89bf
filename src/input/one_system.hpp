#pragma once

#include <boardmark/units/quantity.hpp>

#include "file_context.hpp"

#include <string>

namespace boardmark::input {

/// Refuses masses in pounds beside masses in kilograms: one sheet is written from one scale.
class OneSystem {
public:
    OneSystem(const FileContext& context, std::string place)
        : context_(context)
        , place_(std::move(place)) {}

    /// Holds a mass against the first one that was held.
    void hold(const Parsed& mass);

private:
    const FileContext& context_;
    std::string place_;
    const Parsed* first_ = nullptr;
};

} // namespace boardmark::input

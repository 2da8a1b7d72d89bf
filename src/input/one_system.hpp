#pragma once

#include <boardmark/units/quantity.hpp>

#include "file_context.hpp"

#include <string>

namespace boardmark::input {

/// Refuses, or asks back, masses in pounds beside masses in kilograms: one sheet is written from
/// one scale.
class OneSystem {
public:
    OneSystem(const FileContext& context, std::string place, Severity severity = Severity::error)
        : context_(context)
        , place_(std::move(place))
        , severity_(severity) {}

    /// Holds a mass against the first one that was held.
    void hold(const Parsed& mass);

private:
    const FileContext& context_;
    std::string place_;
    Severity severity_;
    const Parsed* first_ = nullptr;
};

} // namespace boardmark::input

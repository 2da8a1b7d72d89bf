#pragma once

#include <boardmark/units/quantity.hpp>

#include "../reading/file_context.hpp"

#include <string>
#include <vector>

namespace boardmark::input {

/// Refuses, or asks back, amounts of one system of units beside those of the other: one sheet is
/// written from one scale.
class OneSystem {
public:
    OneSystem(const FileContext& context, std::string place, Severity severity = Severity::error)
        : context_(context)
        , place_(std::move(place))
        , severity_(severity) {}

    /// Holds an amount against those that were held.
    void hold(const Parsed& amount);

    /// Tells, at each amount of the system that fewer have. Where as many have either, the first
    /// one's system is taken for the sheet's.
    void tell() const;

private:
    const FileContext& context_;
    std::string place_;
    Severity severity_;
    std::vector<const Parsed*> us_;
    std::vector<const Parsed*> metric_;
    bool first_is_us_ = false;
};

} // namespace boardmark::input

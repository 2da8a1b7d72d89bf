#include "one_system.hpp"

#include <algorithm>
#include <string_view>

namespace boardmark::input {
namespace {

bool is_us(const Parsed& amount) {
    constexpr std::string_view us_units[] = {"lb", "short ton", "gal", "fl oz", "ft3", "yd3", "cy"};
    const auto quantity = std::get<units::Quantity>(units::read_quantity(amount.text));
    return std::ranges::count(us_units, quantity.unit->spelling) > 0;
}

} // namespace

void OneSystem::hold(const Parsed& amount) {
    const bool us = is_us(amount);
    first_is_us_ = us_.empty() && metric_.empty() ? us : first_is_us_;
    (us ? us_ : metric_).push_back(&amount);
}

void OneSystem::tell() const {
    const bool us_is_odd =
        us_.size() < metric_.size() || (us_.size() == metric_.size() && !first_is_us_);
    const auto& odd = us_is_odd ? us_ : metric_;
    const auto& usual = us_is_odd ? metric_ : us_;
    for (const Parsed* amount : odd) {
        const bool mass = amount->dimension == units::Dimension::mass;
        context_.refuse(
            *amount->node,
            place_ + ": '" + amount->text + "' stands beside '" + usual.front()->text +
                "': " + (mass ? "pounds and kilograms" : "two systems of units") + " on one sheet",
            mass ? "write all masses in one system" : "write all amounts in one system");
        context_.diagnostics.back().severity = severity_;
    }
}

} // namespace boardmark::input

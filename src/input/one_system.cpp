#include "one_system.hpp"

#include <string_view>

namespace boardmark::input {
namespace {

bool is_in_pounds(const Parsed& mass) {
    const auto quantity = std::get<units::Quantity>(units::read_quantity(mass.text));
    const std::string_view unit = quantity.unit->spelling;
    return unit == "lb" || unit == "short ton";
}

} // namespace

void OneSystem::hold(const Parsed& mass) {
    if (!first_) {
        first_ = &mass;
    } else if (is_in_pounds(*first_) != is_in_pounds(mass)) {
        context_.refuse(*mass.node,
                        place_ + ": '" + mass.text + "' stands beside '" + first_->text +
                            "': pounds and kilograms on one sheet",
                        "write all masses in one system");
        context_.diagnostics.back().severity = severity_;
    }
}

} // namespace boardmark::input

// A quantity, a date, a number: each reader of one value.

#include <boardmark/units/date.hpp>
#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>

#include "target.hpp"

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <variant>

using namespace boardmark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(bytes), size);
    const auto reading = units::read_quantity(text);
    if (const auto* quantity = std::get_if<units::Quantity>(&reading)) {
        if (!std::isfinite(quantity->amount) || !std::isfinite(quantity->inside())) {
            std::abort();
        }
    }
    const auto number = units::read_number(text);
    if (const auto* value = std::get_if<double>(&number); value && !std::isfinite(*value)) {
        std::abort();
    }
    if (const auto day = units::read_date(text); day && units::written_date(*day) != text) {
        std::abort();
    }
    return 0;
}

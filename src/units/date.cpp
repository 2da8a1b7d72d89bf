#include <boardmark/units/date.hpp>

#include <algorithm>
#include <chrono>

namespace boardmark::units {
namespace {

constexpr std::string_view form = "dddd-dd-dd";

bool fits_form(std::string_view text) {
    return text.size() == form.size() &&
           std::equal(text.begin(), text.end(), form.begin(), [](char character, char wanted) {
               return wanted == 'd' ? character >= '0' && character <= '9' : character == wanted;
           });
}

int number_at(std::string_view text, std::size_t start, std::size_t digits) {
    int number = 0;
    for (const char digit : text.substr(start, digits)) {
        number = 10 * number + (digit - '0');
    }
    return number;
}

std::string padded(unsigned number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
}

} // namespace

std::optional<int> read_date(std::string_view text) {
    if (!fits_form(text)) {
        return std::nullopt;
    }
    const std::chrono::year_month_day date{
        std::chrono::year{number_at(text, 0, 4)},
        std::chrono::month{static_cast<unsigned>(number_at(text, 5, 2))},
        std::chrono::day{static_cast<unsigned>(number_at(text, 8, 2))}};
    if (!date.ok() || int{date.year()} < 1900 || int{date.year()} > 2999) {
        return std::nullopt;
    }
    return static_cast<int>(std::chrono::sys_days{date}.time_since_epoch().count());
}

std::string written_date(int days) {
    const std::chrono::year_month_day date{std::chrono::sys_days{std::chrono::days{days}}};
    return std::to_string(int{date.year()}) + "-" + padded(unsigned{date.month()}) + "-" +
           padded(unsigned{date.day()});
}

} // namespace boardmark::units

#include "section.hpp"

namespace boardmark::input {

std::optional<double> Section::number(std::string_view key) const {
    return context_.document.number(path(key));
}

std::optional<std::string> Section::text(std::string_view key) const {
    return context_.document.text(path(key));
}

bool Section::flag(std::string_view key) const {
    return context_.document.flag(path(key), false);
}

std::optional<double> Section::metres(std::string_view key) const {
    constexpr double mm_in_m = 1000;
    const auto mm = number(key);
    return mm ? std::optional{*mm / mm_in_m} : std::nullopt;
}

std::optional<double> Section::hours(std::string_view key) const {
    constexpr double hours_in_day = 24;
    const auto days = number(key);
    return days ? std::optional{*days * hours_in_day} : std::nullopt;
}

int Section::count(std::string_view key, int otherwise) const {
    return static_cast<int>(number(key).value_or(otherwise));
}

void Section::demand(std::initializer_list<const char*> keys) const {
    for (const char* key : keys) {
        context_.demand(path(key), "");
    }
}

void Section::refuse(std::string_view key, const std::string& message, std::string advice) const {
    context_.refuse(*find(key)->node, dotted(path(key)) + message, std::move(advice));
}

} // namespace boardmark::input

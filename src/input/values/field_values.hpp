#pragma once

#include "../fields/fields.hpp"

/// Values as the tables of fields write them.
namespace boardmark::input {

constexpr Value text() {
    return {.form = Form::text};
}
constexpr Value flag() {
    return {.form = Form::flag};
}
constexpr Value date() {
    return {.form = Form::date};
}

constexpr Value number(Range range) {
    return {.form = Form::number, .range = range};
}
constexpr Value count(Range range) {
    return {.form = Form::count, .range = range};
}

constexpr Value quantity(units::Dimension dimension, Range range) {
    return {.form = Form::quantity, .dimensions = {dimension, std::nullopt}, .range = range};
}
constexpr Value percentage(Range range, double suspicious_below = Range{}.low) {
    return {.form = Form::quantity,
            .dimensions = {units::Dimension::percentage, std::nullopt},
            .range = range,
            .suspicious_below = suspicious_below};
}
constexpr Value dose() {
    return {.form = Form::quantity,
            .dimensions = {units::Dimension::dose, units::Dimension::percentage},
            .range = {.low = 0, .high = 2e-4, .low_itself = false}, // 20 L/100 kg
            .second_range = {.low = 0, .high = 20, .low_itself = false},
            .usual = {.low = 1e-7, .high = 2e-5},       // 10 mL/100 kg to 2 L/100 kg
            .second_usual = {.low = 0.01, .high = 10}}; // a pigment has most
}
/// A dose of the mix, where none may go in.
constexpr Value dose_or_none() {
    Value value = dose();
    value.range.low_itself = true;
    value.second_range.low_itself = true;
    return value;
}
constexpr Value amount() {
    return {.form = Form::quantity,
            .dimensions = {units::Dimension::mass, units::Dimension::volume},
            .range = {.low = 0, .high = 1e6},
            .second_range = {.low = 0, .high = 1000}};
}
constexpr Value one_of(std::span<const std::string_view> words) {
    return {.form = Form::word, .words = words};
}
constexpr Value or_words(Value value, std::span<const std::string_view> words) {
    value.words = words;
    return value;
}

/// A value that the trade hardly meets beyond a range: possible, but asked back.
constexpr Value usually(Value value, Range usual) {
    value.usual = usual;
    return value;
}

constexpr Value price_per(std::string_view unit) {
    return {.form = Form::price_range, .range = {.low = 0, .high = 1e9}, .per = unit};
}

constexpr std::string_view as_needed[] = {"as needed"};

constexpr Range fresh_density_kg_m3{.low = 1500, .high = 3200};       // 94 to 200 lb/ft3
constexpr Range slump_mm{.low = 0, .high = 305};                      // the cone is 12 in high
constexpr Range usual_slump_mm{.low = 15, .high = 230};               // 5/8 to 9 in
constexpr Range usual_fresh_density_kg_m3{.low = 1900, .high = 2700}; // 119 to 169 lb/ft3

} // namespace boardmark::input

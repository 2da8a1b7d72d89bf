#include <boardmark/core/strength/recorded.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace boardmark::core {
namespace {

template <class Row>
RecordColumn<Row> text(std::string_view name, std::string Row::*member) {
    return {.key = name,
            .name = name,
            .si_unit = "",
            .us_unit = "",
            .kind = ColumnKind::text,
            .member = member};
}

template <class Row>
RecordColumn<Row> date(std::string_view name, std::string Row::*member) {
    return {.key = name,
            .name = name,
            .si_unit = "",
            .us_unit = "",
            .kind = ColumnKind::date,
            .member = member};
}

/// How a number is named, with its unit and without, and its units.
struct Name {
    std::string_view key;
    std::string_view name;
    std::string_view si_unit = "";
    std::string_view us_unit = si_unit;
};

/// What a number may be, ends included.
struct Range {
    double least;
    double most;
};

template <class Row>
RecordColumn<Row> number(Name name, std::optional<double> Row::*member, Measure measure,
                         Range range) {
    return {.key = name.key,
            .name = name.name,
            .si_unit = name.si_unit,
            .us_unit = name.us_unit,
            .kind = ColumnKind::number,
            .member = member,
            .measure = measure,
            .least = range.least,
            .most = range.most};
}

template <class Row>
RecordColumn<Row> required(RecordColumn<Row> column) {
    column.required = true;
    return column;
}

/// A column whose numbers are hardly true beyond a range (common practice, no source).
template <class Row>
RecordColumn<Row> usually(RecordColumn<Row> column, Range usual) {
    column.usual_from = usual.least;
    column.usual_to = usual.most;
    return column;
}

constexpr Range usual_slump{15, 280};
constexpr Range usual_air{0.8, 12};
constexpr Range usual_ratio{0.25, 0.8};
constexpr Range usual_strength{2, 120};
constexpr Range usual_yield_ratio{0.9, 1.1};

// The ranges bound what can be measured at all.
constexpr Range slump_range{0, 305}; // the cone is 12 in high
constexpr Range air_range{0, 30};
constexpr Range ratio_range{0, 10};
constexpr Range yield_ratio_range{0.1, 10}; // beyond it a percent was written
constexpr Range strength_range{0.1, 300};

using T = RecordedTrial;
using S = RecordedSpecimen;

const std::array trial_columns{
    required(text("batch", &T::batch)),
    required(date("date", &T::date)),
    required(text("mix", &T::mix)),
    text("title", &T::title),
    usually(number({"density_kg_m3", "density", "kg/m3", "lb/ft3"}, &T::density_kg_m3,
                   Measure::fresh_density, {500, 5000}),
            {1900, 2700}),
    number({"yield_m3", "yield", "m3", "ft3"}, &T::yield_m3, Measure::volume, {1e-6, 10000}),
    usually(number({"relative_yield", "relative yield"}, &T::relative_yield, Measure::ratio,
                   yield_ratio_range),
            usual_yield_ratio),
    usually(number({"w_cm", "w/cm"}, &T::w_cm, Measure::w_cm, ratio_range), usual_ratio),
    usually(number({"slump_mm", "slump", "mm", "in"}, &T::slump_mm, Measure::slump, slump_range),
            usual_slump),
    usually(number({"target_slump_mm", "target slump", "mm", "in"}, &T::target_slump_mm,
                   Measure::slump, slump_range),
            usual_slump),
    usually(number({"air_percent", "air", "%"}, &T::air_percent, Measure::percent, air_range),
            usual_air),
    usually(number({"target_air_percent", "target air", "%"}, &T::target_air_percent,
                   Measure::percent, air_range),
            usual_air),
    number({"gravimetric_air_percent", "gravimetric air", "%"}, &T::gravimetric_air_percent,
           Measure::percent, {-100, 100}),
    usually(number({"temperature_c", "temperature", "degC", "degF"}, &T::temperature_c,
                   Measure::temperature, {-30, 100}),
            {2, 45}),
    text("remark", &T::remark),
};

const std::array specimen_columns{
    required(text("specimen", &S::specimen)),
    required(text("batch", &S::batch)),
    required(date("date", &S::date)),
    text("mix", &S::mix),
    required(number({"age_d", "age", "d"}, &S::age_d, Measure::age, {0.001, 36525})),
    usually(required(number({"strength_mpa", "strength", "MPa", "psi"}, &S::strength_mpa,
                            Measure::strength, strength_range)),
            usual_strength),
    usually(number({"specified_strength_mpa", "specified strength", "MPa", "psi"},
                   &S::specified_strength_mpa, Measure::strength, strength_range),
            {10, 100}),
    usually(number({"w_cm", "w/cm"}, &S::w_cm, Measure::w_cm, ratio_range), usual_ratio),
    text("shape", &S::shape),
    text("remark", &S::remark),
};

} // namespace

template <>
std::span<const RecordColumn<RecordedTrial>> record_columns() {
    return trial_columns;
}

template <>
std::span<const RecordColumn<RecordedSpecimen>> record_columns() {
    return specimen_columns;
}

bool same(const RecordedValue& left, const RecordedValue& right) {
    const auto* one = std::get_if<std::optional<double>>(&left);
    const auto* other = std::get_if<std::optional<double>>(&right);
    if (!one || !other || !*one || !*other) {
        return left == right;
    }
    constexpr double part = 1e-9;
    const double larger = std::max(std::abs(**one), std::abs(**other));
    return std::abs(**one - **other) <= part * larger;
}

} // namespace boardmark::core

// Signals of a control chart: beyond the limits, a long run on one side; nothing from nothing.

#include <boardmark/core/strength/control_chart.hpp>
#include <boardmark/core/strength/recorded.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <stdexcept>
#include <string>

using namespace boardmark;
using core::ChartSignal;

namespace {

/// Three deviations, eight in a row, firm from 20: NIST/SEMATECH e-Handbook, 6.3.2; the last common
/// practice, no source.
const core::ControlChartRules rules{
    .limit_in_deviations = {3, {}}, .run_length = {8, {}}, .firm_count = {20, {}}};

std::string signals_of(const std::vector<double>& values) {
    std::string text;
    for (const ChartSignal signal : core::control_chart(values, rules).signals) {
        text += signal == ChartSignal::outside ? 'o' : signal == ChartSignal::run ? 'r' : '.';
    }
    return text;
}

} // namespace

TEST_CASE("one value has a mean and no limits") {
    const auto chart = core::control_chart({76.2}, rules);
    CHECK(chart.mean == 76.2);
    CHECK_FALSE(chart.deviation.has_value());
    CHECK_FALSE(chart.low.has_value());
    CHECK_FALSE(chart.high.has_value());
    CHECK(chart.signals == std::vector{ChartSignal::none});
}

TEST_CASE("equal values are inside limits of no width, whatever their digits") {
    const std::vector<double> equal(30, 0.1);
    const auto chart = core::control_chart(equal, rules);
    CHECK(*chart.deviation == 0);
    CHECK_FALSE(chart.provisional);
    CHECK(signals_of(equal) == std::string(30, '.'));
}

TEST_CASE("a value far off is outside, on either side") {
    // Neighbours differ by 5 but for the one value: mean moving range below 9, limits below
    // 3 x 9 x 0.8862 = 24 from a mean near 100.5.
    std::vector<double> values;
    for (int i = 0; i < 20; ++i) {
        values.push_back(i % 2 == 0 ? 98 : 103);
    }
    for (const double far : {+40.0, -40.0}) {
        auto moved = values;
        moved[10] = 100.5 + far;
        INFO(far);
        CHECK(signals_of(moved) == "..........o.........");
    }
}

TEST_CASE("the eighth value in a row on one side is a run") {
    // Means of 10; neighbours differ by 4, which puts the limits beyond all values.
    CHECK(signals_of({5, 9, 5, 9, 5, 9, 5, 15, 11, 15, 11, 15, 11, 15}) == "..............");
    CHECK(signals_of({5, 9, 5, 9, 5, 9, 5, 9, 5, 15, 11, 15, 11, 15, 11, 15, 11, 15}) ==
          ".......rr.......rr");
    // A value on the mean itself breaks a run.
    CHECK(signals_of({5, 9, 5, 9, 10, 5, 9, 5, 9, 15, 11, 15, 11, 10, 15, 11, 15, 11}) ==
          "..................");
}

TEST_CASE("recorded values are the same to a billionth") {
    using Value = core::RecordedValue;
    const auto number = [](std::optional<double> value) { return Value{value}; };
    CHECK(core::same(number(0.4), number(0.4 * (1 + 1e-10))));
    CHECK_FALSE(core::same(number(0.4), number(0.4 * (1 + 1e-8))));
    CHECK_FALSE(core::same(number(0.4), number(std::nullopt)));
    CHECK(core::same(number(std::nullopt), number(std::nullopt)));
    CHECK(core::same(Value{"cube"}, Value{"cube"}));
    CHECK_FALSE(core::same(Value{"cube"}, Value{"Cube"}));
    CHECK_FALSE(core::same(Value{""}, number(std::nullopt)));
}

TEST_CASE("columns bound their values and demand what they must have") {
    using Value = core::RecordedValue;
    const auto columns = core::record_columns<core::RecordedTrial>();
    const auto column = [&](std::string_view key) {
        for (const auto& candidate : columns) {
            if (candidate.key == key) {
                return candidate;
            }
        }
        throw std::runtime_error("no such column");
    };
    CHECK(core::fits(column("slump_mm"), Value{std::optional{305.0}}));
    CHECK_FALSE(core::fits(column("slump_mm"), Value{std::optional{305.1}}));
    CHECK_FALSE(core::fits(column("slump_mm"), Value{std::optional{-0.1}}));
    CHECK_FALSE(core::fits(column("slump_mm"), Value{std::optional{std::nan("")}}));
    CHECK(core::fits(column("slump_mm"), Value{std::optional<double>{}}));
    CHECK_FALSE(core::fits(column("slump_mm"), Value{"76"}));
    CHECK_FALSE(core::fits(column("batch"), Value{""}));
    CHECK(core::fits(column("title"), Value{""}));
    CHECK_FALSE(core::fits(column("title"), Value{std::string(801, 'x')}));
    for (const auto& specimen : core::record_columns<core::RecordedSpecimen>()) {
        if (specimen.key == "strength_mpa") {
            CHECK_FALSE(core::fits(specimen, Value{std::optional<double>{}}));
        }
    }
}

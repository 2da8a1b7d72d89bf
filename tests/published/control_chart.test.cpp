// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, individuals control charts: ten batches
// (values from memory; they give the mean and mean moving range that a reprint of the example
// states: 50.81, 1.8778, limits 55.8041 and 45.8159). Print divides by 1.128, we by 2/sqrt(pi) =
// 1.12838: the limits differ by 0.0017.

#include <boardmark/core/strength/control_chart.hpp>
#include <boardmark/reference/tables.hpp>

#include <catch2/catch.hpp>

using namespace boardmark;
using core::ChartSignal;

namespace {

core::ControlChart charted(const std::vector<double>& values) {
    return core::control_chart(values, reference::tables(core::UnitSystem::si).control_chart);
}

} // namespace

TEST_CASE("NIST 6.3.2.2 individuals control chart") {
    const auto chart = charted({49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1});
    using Catch::Matchers::WithinAbs;
    CHECK_THAT(chart.mean, WithinAbs(50.81, 1e-9));
    CHECK_THAT(*chart.deviation, WithinAbs(1.8778 / 1.128, 0.0006));
    CHECK_THAT(*chart.high, WithinAbs(55.8041, 0.0018));
    CHECK_THAT(*chart.low, WithinAbs(45.8159, 0.0018));
    CHECK(chart.provisional);
    for (const ChartSignal signal : chart.signals) { // "no points are out of the limits"
        CHECK(signal == ChartSignal::none);
    }
}

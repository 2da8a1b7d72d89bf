// Laws of strength records.

#include "core/strength_builder.hpp"
#include "laws/law.hpp"

#include <cmath>

using namespace boardmark;
using namespace boardmark::test;
using core::LineSide;

namespace {

core::StrengthRecord any_record() {
    core::StrengthRecord record = en_record(between(20, 50, "characteristic, MPa"));
    const int batches = *rc::gen::inRange(3, 12).as("batches");
    for (int i = 0; i < batches; ++i) {
        std::vector<double> strengths;
        const int specimens = *rc::gen::inRange(1, 4).as("specimens");
        for (int j = 0; j < specimens; ++j) {
            strengths.push_back(between(20, 60, "strength, MPa"));
        }
        add_batch(record, strengths, 28, 0.36 + 0.01 * (i % 9));
    }
    return record;
}

} // namespace

TEST_CASE("a constant added to all strengths moves the mean and not the scatter") {
    holds([] {
        core::StrengthRecord record = any_record();
        const auto before = *findings_of(record).statistics;
        const double more = between(0, 20, "more, MPa");
        for (core::CrushedSpecimen& specimen : record.specimens) {
            specimen.strength_mpa += more;
        }
        const auto after = *findings_of(record).statistics;
        demand_same(after.mean_mpa, before.mean_mpa + more, 1e-12, "mean");
        demand_same(*after.deviation_mpa + 1, *before.deviation_mpa + 1, 1e-9, "deviation");
        RC_ASSERT(after.within_test.has_value() == before.within_test.has_value());
        if (after.within_test) {
            demand_same(after.within_test->deviation_mpa + 1, before.within_test->deviation_mpa + 1,
                        1e-9, "within-test deviation");
        }
    });
}

TEST_CASE("the order of the specimens does not matter") {
    holds([] {
        core::StrengthRecord record = any_record();
        const auto before = findings_of(record);
        std::ranges::reverse(record.specimens);
        const auto after = findings_of(record);
        RC_ASSERT(before.tests.size() == after.tests.size());
        for (std::size_t i = 0; i < before.tests.size(); ++i) {
            demand_same(before.tests[i].test.mean_mpa, after.tests[i].test.mean_mpa, 1e-12, "test");
        }
        RC_ASSERT(before.line.has_value() == after.line.has_value());
        if (before.line) {
            demand_same(before.line->slope, after.line->slope, 1e-9, "slope");
        }
    });
}

TEST_CASE("stronger tests never turn a verdict worse") {
    holds([] {
        core::StrengthRecord record = any_record();
        const auto before = findings_of(record);
        const double factor = between(1, 1.5, "factor");
        for (core::CrushedSpecimen& specimen : record.specimens) {
            specimen.strength_mpa *= factor;
        }
        const auto after = findings_of(record);
        for (std::size_t i = 0; i < before.tests.size(); ++i) {
            demand_at_most(after.tests[i].short_mpa, before.tests[i].short_mpa, "shortfall");
            demand_at_most(after.tests[i].mean_short_mpa, before.tests[i].mean_short_mpa,
                           "shortfall of the mean");
        }
    });
}

TEST_CASE("strengths in another unit move the line and not its slope, scatter or ratios") {
    holds([] {
        const core::StrengthRecord record = any_record();
        auto points = findings_of(record).points;
        const auto line = core::fit_line(points, 0.95);
        const double factor = between(0.1, 10, "factor");
        for (core::LinePoint& point : points) {
            point.strength_mpa *= factor;
        }
        const auto other = core::fit_line(points, 0.95);
        RC_ASSERT(line.has_value() == other.has_value());
        if (line) {
            demand_same(line->slope + 10, other->slope + 10, 1e-9, "slope");
            demand_same(line->deviation, other->deviation, 1e-9, "scatter");
            demand_same(line->intercept + std::log(factor) + 10, other->intercept + 10, 1e-9,
                        "intercept");
        }
    });
}

TEST_CASE("a stronger demand never gets a higher ratio, and the lower side never a higher one") {
    holds([] {
        std::vector<core::LinePoint> points;
        const double fall = between(1, 4, "fall");
        const int count = *rc::gen::inRange(3, 12).as("points");
        for (int i = 0; i < count; ++i) {
            const double w_cm = 0.34 + 0.02 * i;
            const double off = between(-0.03, 0.03, "scatter");
            points.push_back({"T", w_cm, std::exp(4.7 - fall * w_cm + off)});
        }
        const auto line = core::fit_line(points, 0.95);
        RC_PRE(line && core::surely_falls(*line));
        const double weak = between(20, 60, "strength, MPa");
        const double strong = weak * between(1, 1.3, "more");
        for (const LineSide side : {LineSide::lower, LineSide::line}) {
            demand_at_most(core::ratio_for(*line, strong, side), core::ratio_for(*line, weak, side),
                           "ratio");
            const double ratio = core::ratio_for(*line, weak, side);
            // The closed form of the lower side loses half the digits where the fall is barely
            // sure.
            demand_same(core::strength_at(*line, ratio, side), weak, 1e-6, "strength");
        }
        demand_at_most(core::ratio_for(*line, weak, LineSide::lower),
                       core::ratio_for(*line, weak, LineSide::line), "lower side");
    });
}

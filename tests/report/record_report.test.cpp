// What a record writes can be read back; no text of it steers a terminal, a spreadsheet or a page.

#include <boardmark/input/csv/read_rows.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/strength/record_report.hpp>
#include <boardmark/text/utf8.hpp>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <sstream>

using namespace boardmark;
using Catch::Matchers::Contains;
using core::UnitSystem;

namespace {

std::vector<core::RecordedTrial> odd_trials() {
    core::RecordedTrial first{.batch = "=HYPERLINK(\"x\")",
                              .date = "2026-03-02",
                              .mix = "'quoted, twice'",
                              .title = "@ +\xC3\xA9 \"wall\" ",
                              .density_kg_m3 = 2290.6402624763,
                              .yield_m3 = 0.1 + 0.2,
                              .relative_yield = 1.0 / 3,
                              .w_cm = 0.4006434114638218,
                              .slump_mm = 76.19999999999999,
                              .gravimetric_air_percent = -1e-7,
                              .temperature_c = -2.5,
                              .remark = "-"};
    core::RecordedTrial second{
        .batch = "T-2", .date = "2026-03-03", .mix = " quay-wall.yaml ", .title = ""};
    return {first, second};
}

std::vector<core::RecordedSpecimen> odd_specimens() {
    return {{.specimen = "+1",
             .batch = "''",
             .date = "2026-03-02",
             .mix = "",
             .age_d = 28.041666666666668,
             .strength_mpa = 41.300000000000004,
             .specified_strength_mpa = 34.4737864657,
             .w_cm = {},
             .shape = "cylinder"}};
}

template <class Row>
void require_same(const std::vector<Row>& read, const std::vector<Row>& written, bool to_the_bit) {
    REQUIRE(read.size() == written.size());
    for (std::size_t i = 0; i < read.size(); ++i) {
        for (const auto& column : core::record_columns<Row>()) {
            INFO("row " << i << ", " << column.key);
            CHECK(core::same(column.of(read[i]), column.of(written[i])));
            CHECK((!to_the_bit || column.of(read[i]) == column.of(written[i])));
        }
    }
}

report::ChartResult chart_result(const std::vector<core::ChartPoint>& points,
                                 const core::ControlChart& chart,
                                 const core::ControlChartRules& rules) {
    return {.title = "quay.record",
            .charted = core::all_charted().front(),
            .age_d = {},
            .mix = "quay-wall.yaml",
            .points = points,
            .chart = chart,
            .rules = rules};
}

} // namespace

TEST_CASE("trials come back from CSV, in SI to the last bit") {
    const auto trials = odd_trials();
    for (const UnitSystem system : {UnitSystem::si, UnitSystem::us}) {
        const std::string written =
            report::csv(report::RecordList<core::RecordedTrial>{"quay.record", trials}, system);
        const auto reading = input::read_rows(written, "back.csv");
        INFO(written << input::render(reading.diagnostics));
        REQUIRE(reading.sound);
        CHECK(reading.system == system);
        require_same(reading.trials, trials, system == UnitSystem::si);
    }
}

TEST_CASE("specimens come back from CSV, in SI to the last bit") {
    const auto specimens = odd_specimens();
    for (const UnitSystem system : {UnitSystem::si, UnitSystem::us}) {
        const std::string written = report::csv(
            report::RecordList<core::RecordedSpecimen>{"quay.record", specimens}, system);
        const auto reading = input::read_rows(written, "back.csv");
        INFO(written << input::render(reading.diagnostics));
        REQUIRE(reading.sound);
        require_same(reading.specimens, specimens, system == UnitSystem::si);
    }
}

TEST_CASE("no cell of a record's CSV begins as a formula") {
    const auto trials = odd_trials();
    std::istringstream lines{report::csv(
        report::RecordList<core::RecordedTrial>{"quay.record", trials}, UnitSystem::si)};
    std::string line;
    std::getline(lines, line);
    std::getline(lines, line);
    CHECK(line.starts_with("\"'=HYPERLINK(\"\"x\"\")\",2026-03-02,\"''quoted, twice'\","));
    CHECK_THAT(line, Contains(",\"'@ +"));
    CHECK(line.ends_with(",-2.5,'-\r"));
}

TEST_CASE("a chart names what is outside in a word and keeps to the page") {
    std::vector<core::ChartPoint> points;
    std::vector<double> values;
    for (int i = 0; i < 12; ++i) {
        points.push_back({.date = "2026-03-" + std::to_string(10 + i),
                          .batch = "a batch with a very long name indeed " + std::to_string(i),
                          .mix = "quay-wall.yaml",
                          .value = i == 6 ? 200.0 : 100.0 + i % 2,
                          .target = 101.6});
        values.push_back(points.back().value);
    }
    const auto rules = reference::tables(UnitSystem::us).control_chart;
    const auto chart = core::control_chart(values, rules);
    const report::TextStyle style{.system = UnitSystem::us, .explain = false, .colour = false};
    const std::string text = report::text(chart_result(points, chart, rules), style);
    std::istringstream lines{text};
    std::size_t outside = 0;
    for (std::string line; std::getline(lines, line);) {
        INFO(line);
        CHECK(text::display_width(line) <= 100);
        outside += line.ends_with("  outside") ? 1 : 0;
    }
    CHECK(outside == 1);
    CHECK_THAT(text, Contains("target          4 in"));
    CHECK_THAT(text, Contains("provisional [common practice, no source]"));

    const auto json = nlohmann::json::parse(report::json(chart_result(points, chart, rules)));
    CHECK(json["chart"]["points"].size() == 12);
    CHECK(json["chart"]["points"][6]["signal"] == "outside");
    CHECK(json["chart"]["points"][5]["signal"].is_null());
    CHECK(json["chart"]["mean"] == chart.mean);
    CHECK(json["chart"]["target"] == 101.6);
}

TEST_CASE("names that steer a terminal are written out") {
    const std::string steering = "T\xE2\x80\xAE-1"; // a right-to-left override
    const std::vector<core::RecordedTrial> trials{
        {.batch = steering, .date = "2026-03-02", .mix = steering, .title = steering}};
    const std::vector<core::RecordedFile> files{{.name = steering,
                                                 .kind = "trial",
                                                 .reporting = UnitSystem::us,
                                                 .trials = 1,
                                                 .specimens = 0}};
    const std::vector<core::RecordedSpecimen> none;
    const report::TextStyle style{.system = UnitSystem::us, .explain = false, .colour = false};
    for (const std::string& text :
         {report::text(report::RecordList<core::RecordedTrial>{"r", trials}, style),
          report::text(report::RecordList<core::RecordedFile>{"r", files}, style),
          report::text(report::RecordSummary{"r", files, trials, none}, style)}) {
        INFO(text);
        CHECK(text.find("\xE2\x80\xAE") == std::string::npos);
        CHECK_THAT(text, Contains("\\u202E"));
    }
}

// 4 in is 101.6 mm, whose mean over three differs from it in the last bit: no axis has such a span.
TEST_CASE("a chart of one value again and again has an axis") {
    const std::vector<core::ChartPoint> points(3, {.date = "2026-03-02",
                                                   .batch = "T-1",
                                                   .mix = "quay-wall.yaml",
                                                   .value = 101.6,
                                                   .target = 101.6});
    const auto rules = reference::tables(UnitSystem::us).control_chart;
    const auto chart = core::control_chart({101.6, 101.6, 101.6}, rules);
    const report::TextStyle style{.system = UnitSystem::us, .explain = false, .colour = false};
    CHECK_THAT(report::html(chart_result(points, chart, rules), style), Contains("target, 4.00"));
}

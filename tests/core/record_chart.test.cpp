// What a chart over a record follows: one value for each trial, one for each strength test.

#include <boardmark/core/strength/record_chart.hpp>

#include <catch2/catch.hpp>

using namespace boardmark;
using core::Charted;

namespace {

core::RecordedSpecimen specimen(const std::string& batch, double age_d, double strength_mpa,
                                const std::string& shape = "cylinder") {
    return {.specimen = batch + shape + std::to_string(strength_mpa),
            .batch = batch,
            .date = "2026-03-02",
            .mix = "",
            .age_d = age_d,
            .strength_mpa = strength_mpa,
            .specified_strength_mpa = 30,
            .w_cm = {},
            .shape = shape};
}

} // namespace

TEST_CASE("trials without the value are left out") {
    const std::vector<core::RecordedTrial> trials{
        {.batch = "A", .date = "2026-03-02", .mix = "m", .title = "", .slump_mm = 80},
        {.batch = "B", .date = "2026-03-03", .mix = "m", .title = "", .air_percent = 6},
        {.batch = "C",
         .date = "2026-03-04",
         .mix = "n",
         .title = "",
         .slump_mm = 90,
         .target_slump_mm = 100}};
    const auto points = core::trial_points(trials, Charted::slump);
    REQUIRE(points.size() == 2);
    CHECK(points[0].batch == "A");
    CHECK(points[0].value == 80);
    CHECK(points[1].target == 100.0);
    CHECK(core::mixes_of(points) == std::vector<std::string>{"m", "n"});
    CHECK(core::common_target(points) == std::nullopt);
    CHECK(core::trial_points(trials, Charted::temperature).empty());
}

TEST_CASE("a strength test is the mean of a batch's specimens of one age and shape") {
    const std::vector<core::RecordedSpecimen> specimens{
        specimen("A", 28, 40), specimen("A", 7, 25),     specimen("B", 28, 36),
        specimen("A", 28, 42), specimen("A", 28.02, 41), specimen("A", 28, 50, "cube")};
    const std::vector<core::RecordedTrial> trials{
        {.batch = "A", .date = "2026-03-02", .mix = "quay-wall.yaml", .title = ""}};
    const auto points = core::strength_points(specimens, trials, 28);
    REQUIRE(points.size() == 3);
    CHECK(points[0].batch == "A");
    CHECK(points[0].value == 41); // (40 + 42 + 41) / 3
    CHECK(points[0].mix == "quay-wall.yaml");
    CHECK(points[1].value == 36);
    CHECK(points[1].mix.empty());
    CHECK(points[2].value == 50);
    CHECK(core::shapes_of(points) == std::vector<std::string>{"cylinder", "cube"});
    CHECK(core::common_target(points) == 30.0);
    CHECK(core::strength_points(specimens, trials, 90).empty());
    CHECK(core::ages_of(specimens).size() == 2);
}

TEST_CASE("values of one mix file tell the titles that it had") {
    // Mix files of two projects may carry one name.
    const std::vector<core::RecordedTrial> trials{
        {.batch = "A", .date = "2026-03-02", .mix = "m", .title = "North quay", .slump_mm = 80},
        {.batch = "B", .date = "2026-03-03", .mix = "m", .title = "South quay", .slump_mm = 90},
        {.batch = "C", .date = "2026-03-04", .mix = "m", .title = "", .slump_mm = 90}};
    const std::vector<std::string> both{"North quay", "South quay"};
    CHECK(core::titles_of(core::trial_points(trials, Charted::slump)) == both);
    core::RecordedSpecimen of_another = specimen("A", 28, 36);
    of_another.mix = "n";
    const auto points = core::strength_points(
        {specimen("B", 28, 40), specimen("A", 28, 40), of_another}, trials, 28);
    REQUIRE(points.size() == 3);
    CHECK(points[0].title == "South quay");
    CHECK(points[1].title == "North quay");
    CHECK(points[2].title.empty());
}

TEST_CASE("batches of one name but another mix or day stay apart") {
    core::RecordedSpecimen spring = specimen("B-01", 28, 36);
    spring.mix = "spring";
    core::RecordedSpecimen summer = specimen("B-01", 28, 22);
    summer.mix = "summer";
    summer.date = "2026-07-01";
    const auto points = core::strength_points({spring, summer}, {}, 28);
    REQUIRE(points.size() == 2);
    CHECK(points[0].value == 36);
    CHECK(points[1].value == 22);
}

// Common practice, no source: less than an hour is how punctual a laboratory is, not another age.
TEST_CASE("ages less than an hour apart are one") {
    constexpr double minute = 1.0 / (24 * 60);
    const auto ages = [](double apart_d) {
        return core::ages_of({specimen("A", 28, 40), specimen("B", 28 + apart_d, 36)}).size();
    };
    CHECK(ages(59 * minute) == 1);
    CHECK(ages(61 * minute) == 2);
}

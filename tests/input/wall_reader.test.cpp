// A wall file as values: every key arrives where core::Wall has it, in its unit.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/input/wall/read_wall.hpp>

#include "mix_text.hpp"

#include <catch2/catch.hpp>

#include <map>
#include <string>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

const std::string heading = "boardmark: 1\n"
                            "title: Quay terrace\n"
                            "mix: mix.yaml\n";
const std::string one_wall = heading + "walls:\n"
                                       "  quay: {length: 20 m, height: 2 m, thickness: 300 mm}\n";

input::WallReading read_with(const std::string& text, const std::string& mix) {
    return input::read_wall(
        text, "wall.yaml",
        {.vocabulary = reference::vocabulary(),
         .load = [mix](const std::string& name) -> std::variant<std::string, input::LoadFailure> {
             return name == "mix.yaml" ? std::variant<std::string, input::LoadFailure>{mix}
                                       : input::LoadFailure{"it is not there"};
         }});
}

core::Wall wall_of(const std::string& text, const std::string& mix = sound_mix) {
    const auto reading = read_with(text, mix);
    INFO(input::render(reading.diagnostics));
    REQUIRE(reading.record);
    return reading.record->wall;
}

constexpr double tight = 1e-9;

} // namespace

TEST_CASE("a wall of the least that is needed") {
    const core::Wall wall = wall_of(one_wall);
    CHECK(wall.title == "Quay terrace");
    CHECK(wall.system == core::UnitSystem::us); // the mix file's
    REQUIRE(wall.runs.size() == 1);
    const core::WallRun& run = wall.runs[0];
    CHECK(run.name == "quay");
    CHECK_THAT(run.length_m, WithinAbs(20, tight));
    CHECK(run.top == core::Top::level);
    REQUIRE(run.heights.size() == 1);
    CHECK(run.heights[0].station_m == 0);
    CHECK_THAT(run.heights[0].height_m, WithinAbs(2, tight));
    CHECK_THAT(run.thickness_mm, WithinAbs(300, tight));
    CHECK_THAT(run.bottom_thickness_mm, WithinAbs(300, tight));
    CHECK(run.shows == core::ShownFaces::one);
    CHECK(run.corners == 0);
    CHECK_FALSE(run.footing);
    CHECK_FALSE(wall.boards);
    CHECK_FALSE(wall.ties);
    CHECK_FALSE(wall.edges);
    CHECK_FALSE(wall.reinforcement);
    CHECK_FALSE(wall.mockup);
    CHECK_FALSE(wall.prices);
    CHECK_FALSE(wall.placing.rise_m_h);
    CHECK_FALSE(wall.placing.by_formula);
}

TEST_CASE("a wall of a submitted mix, reported in its own units") {
    const core::Wall wall = wall_of(one_wall + "reporting: si\n", submitted_mix);
    CHECK(std::holds_alternative<core::CompleteSubmittedMix>(wall.mix));
    CHECK(wall.system == core::UnitSystem::si);
}

TEST_CASE("a stepped and battered run with its footing and openings") {
    const core::Wall wall =
        wall_of(heading + "walls:\n"
                          "  stair:\n"
                          "    length: 24 ft\n"
                          "    height: {0 ft: 6 ft, 12 ft: 4 ft}\n"
                          "    top: stepped\n"
                          "    thickness: 10 in\n"
                          "    bottom_thickness: 14 in\n"
                          "    shows: both faces\n"
                          "    corners: 2\n"
                          "    footing: {width: 4 ft, depth: 12 in}\n"
                          "    openings:\n"
                          "      niche: {width: 18 in, height: 12 in, depth: 6 in, sill: 2 ft, "
                          "at: [2 ft, 20 ft]}\n"
                          "      gate: {width: 3 ft, height: 4 ft, count: 2}\n");
    const core::WallRun& run = wall.runs.at(0);
    CHECK(run.top == core::Top::stepped);
    REQUIRE(run.heights.size() == 2);
    CHECK_THAT(run.heights[1].station_m, WithinAbs(3.6576, tight));
    CHECK_THAT(run.heights[1].height_m, WithinAbs(1.2192, tight));
    CHECK_THAT(run.bottom_thickness_mm, WithinAbs(355.6, tight));
    CHECK(run.shows == core::ShownFaces::both);
    CHECK(run.corners == 2);
    REQUIRE(run.footing);
    CHECK_THAT(run.footing->width_mm, WithinAbs(1219.2, tight));
    CHECK_THAT(run.footing->depth_mm, WithinAbs(304.8, tight));
    REQUIRE(run.openings.size() == 2);
    const core::Opening& niche = run.openings[0];
    CHECK(niche.name == "niche");
    CHECK_THAT(niche.width_mm, WithinAbs(457.2, tight));
    CHECK_THAT(niche.height_mm, WithinAbs(304.8, tight));
    CHECK_THAT(niche.depth_mm.value(), WithinAbs(152.4, tight));
    CHECK_THAT(niche.sill_m.value(), WithinAbs(0.6096, tight));
    REQUIRE(niche.at_m.size() == 2);
    CHECK_THAT(niche.at_m[1], WithinAbs(6.096, tight));
    CHECK(niche.count == 2);
    CHECK(run.openings[1].at_m.empty());
    CHECK(run.openings[1].count == 2);
    CHECK_FALSE(run.openings[1].depth_mm);
}

TEST_CASE("planters, benches and embedments") {
    const core::Wall wall = wall_of(
        one_wall + "planters: {tub: {length: 12 ft, width: 5 ft, height: 2 ft, thickness: 8 in, "
                   "floor: 6 in, count: 2}}\n"
                   "benches: {seat: {length: 18 ft, depth: 20 in, thickness: 5 in, "
                   "overhang: 4 in}}\n"
                   "embedments: {lamp box: {count: 3}}\n");
    REQUIRE(wall.planters.size() == 1);
    CHECK_THAT(wall.planters[0].width_m, WithinAbs(1.524, tight));
    CHECK_THAT(wall.planters[0].floor_mm, WithinAbs(152.4, tight));
    CHECK(wall.planters[0].count == 2);
    REQUIRE(wall.benches.size() == 1);
    CHECK_THAT(wall.benches[0].depth_mm, WithinAbs(508, tight));
    CHECK_THAT(wall.benches[0].overhang_mm, WithinAbs(101.6, tight));
    CHECK(wall.benches[0].count == 1);
    REQUIRE(wall.embedments.size() == 1);
    CHECK(wall.embedments[0].name == "lamp box");
    CHECK(wall.embedments[0].count == 3);
}

TEST_CASE("corners by station and counted, planters and benches alone, what was not stated") {
    const core::Wall bent = wall_of(
        heading + "walls:\n"
                  "  quay: {length: 20 m, height: 2 m, thickness: 300 mm, "
                  "corners: {4 m: 90 deg, 20 m: 45 deg}, "
                  "footing: {width: 1 m, depth: 300 mm, cover: 75 mm}}\n"
                  "reinforcement: {cover: 50 mm}\n"
                  "boards: {face_width: 150 mm, thickness: 20 mm, stock: [4 m], saw_cut: 3 mm}\n");
    const core::WallRun& run = bent.runs.at(0);
    CHECK(run.corners == 2);
    REQUIRE(run.corners_at.size() == 2);
    CHECK_THAT(run.corners_at[0].station_m, WithinAbs(4, tight));
    CHECK(run.corners_at[1].turn_deg == 45);
    CHECK_THAT(run.footing->cover_mm.value(), WithinAbs(75, tight));
    CHECK_FALSE(bent.reinforcement->layers_stated);
    CHECK_FALSE(bent.reinforcement->yield_stated);
    CHECK_FALSE(bent.boards->relief_stated);
    const core::Wall alone = wall_of(
        heading + "planters: {tub: {length: 3 m, width: 2 m, height: 1 m, thickness: 200 mm}}\n"
                  "reinforcement: {layers: 2, yield_strength: 420 MPa}\n");
    CHECK(alone.runs.empty());
    CHECK(alone.planters.size() == 1);
    CHECK(alone.reinforcement->layers_stated);
    CHECK(alone.reinforcement->yield_stated);
    CHECK(wall_of(heading + "benches: {seat: {length: 2 m, depth: 0.5 m, thickness: 120 mm, "
                            "cover: 40 mm}}\n")
              .benches.at(0)
              .cover_mm == 40);
}

TEST_CASE("boards, ties, edges and joints") {
    const core::Wall wall = wall_of(
        one_wall + "boards: {face_width: 5 1/2 in, thickness: 3/4 in, direction: vertical, "
                   "stock: [8 ft, 12 ft], saw_cut: 1/8 in, spoiled: 8 %, uses: 2, relief: 1/4 in, "
                   "treatment: brushed}\n"
                   "ties: {kind: glass fibre, across: 24 in, up: 600 mm, breaking_load: 20 kN}\n"
                   "edges: {kind: tooled, size: 10 mm}\n"
                   "joints: {spacing: 5 m, groove: 60 mm}\n");
    REQUIRE(wall.boards);
    CHECK_THAT(wall.boards->face_width_mm, WithinAbs(139.7, tight));
    CHECK_THAT(wall.boards->course_mm, WithinAbs(139.7, tight)); // the face width
    CHECK_THAT(wall.boards->thickness_mm, WithinAbs(19.05, tight));
    CHECK(wall.boards->direction == core::BoardDirection::vertical);
    REQUIRE(wall.boards->stock_m.size() == 2);
    CHECK_THAT(wall.boards->stock_m[1], WithinAbs(3.6576, tight));
    CHECK_THAT(wall.boards->saw_cut_mm, WithinAbs(3.175, tight));
    CHECK(wall.boards->spoiled_percent == 8);
    CHECK(wall.boards->uses == 2);
    CHECK_THAT(wall.boards->relief_mm, WithinAbs(6.35, tight));
    CHECK(wall.boards->treatment == "brushed");
    REQUIRE(wall.ties);
    CHECK(wall.ties->kind == core::TieKind::glass_fibre);
    CHECK_THAT(wall.ties->across_mm, WithinAbs(609.6, tight));
    CHECK_THAT(wall.ties->up_mm, WithinAbs(600, tight));
    CHECK_FALSE(wall.ties->working_load_kn);
    CHECK(wall.ties->breaking_load_kn == 20);
    REQUIRE(wall.edges);
    CHECK(wall.edges->kind == core::EdgeKind::tooled);
    CHECK(wall.edges->size_mm == 10);
    CHECK_THAT(wall.joints.spacing_m.value(), WithinAbs(5, tight));
    CHECK(wall.joints.groove_mm == 60);
}

TEST_CASE("bars by number and by diameter") {
    const core::Wall wall = wall_of(one_wall + "reinforcement:\n"
                                               "  layers: 2\n"
                                               "  cover: 50 mm\n"
                                               "  yield_strength: 500 MPa\n"
                                               "  vertical: {bar: No. 5, spacing: 12 in}\n"
                                               "  horizontal: {bar: 12mm, spacing: 200 mm}\n");
    REQUIRE(wall.reinforcement);
    const core::Reinforcement& bars = *wall.reinforcement;
    CHECK(bars.layers == 2);
    CHECK(bars.cover_mm == 50);
    CHECK(bars.yield_strength_mpa == 500);
    REQUIRE(bars.vertical);
    CHECK_THAT(bars.vertical->bar_mm, WithinAbs(15.875, tight));
    CHECK_THAT(bars.vertical->area_mm2, WithinAbs(0.31 * 645.16, 1e-6)); // ASTM A615: 0.31 in2
    CHECK_THAT(bars.vertical->spacing_mm, WithinAbs(304.8, tight));
    REQUIRE(bars.horizontal);
    CHECK(bars.horizontal->bar_mm == 12);
    CHECK_THAT(bars.horizontal->area_mm2, WithinAbs(113.0973, 1e-4)); // pi 12^2 / 4
}

TEST_CASE("placing, mock-up and order") {
    const core::Wall wall =
        wall_of(one_wall + "placing:\n"
                           "  rise: 4 ft/h\n"
                           "  output: 10 yd3/h\n"
                           "  lift: 20 in\n"
                           "  concrete_temperature: 59 degF\n"
                           "  air_temperature: 50 degF\n"
                           "  humidity: 60 %\n"
                           "  wind: 10 mph\n"
                           "  setting: 4 h\n"
                           "  end_of_set: 420 min\n"
                           "  strip_after: 3 d\n"
                           "  strip_strength: 400 psi\n"
                           "  soffit_strip_after: 7 d\n"
                           "  soffit_strength: 75 %\n"
                           "  lowest_air: 23 degF\n"
                           "  held_at: 50 degF\n"
                           "  protected_until: 72 h\n"
                           "  loaded_after: 28 d\n"
                           "  truck: 10 yd3\n"
                           "  round_trip: 75 min\n"
                           "  vibrator: {head: 2 in, depth: 3 ft, external: yes}\n"
                           "  pumped_from_below: yes\n"
                           "  redosed_on_site: yes\n"
                           "  self_consolidating: yes\n"
                           "  pressure: by formula\n"
                           "  form_pressure: 1000 psf\n"
                           "  flow_class: F4\n"
                           "  season: spring\n"
                           "mockup: {length: 6 ft, height: 2 m, thickness: 12 in, number: 2, "
                           "viewed_from: 3 m, signed_by: designer}\n"
                           "order: {waste: 5 %, increment: 0.5 m3}\n");
    const core::WallPlacing& placing = wall.placing;
    CHECK_THAT(placing.rise_m_h.value(), WithinAbs(1.2192, tight));
    CHECK_THAT(placing.output_m3_h.value(), WithinAbs(7.64554857984, tight));
    CHECK_THAT(placing.lift_m.value(), WithinAbs(0.508, tight));
    CHECK_THAT(placing.concrete_c.value(), WithinAbs(15, tight));
    CHECK_THAT(placing.air_c.value(), WithinAbs(10, tight));
    CHECK(placing.humidity_percent == 60);
    CHECK_THAT(placing.wind_km_h.value(), WithinAbs(16.09344, tight));
    CHECK_THAT(placing.setting_h.value(), WithinAbs(4, tight));
    CHECK_THAT(placing.end_of_set_h.value(), WithinAbs(7, tight));
    CHECK_THAT(placing.strip_after_h.value(), WithinAbs(72, tight));
    CHECK_THAT(placing.strip_strength_mpa.value(), WithinAbs(2.757903, 5e-6)); // NIST SP 811 B.8
    CHECK_THAT(placing.soffit_strip_after_h.value(), WithinAbs(168, tight));
    CHECK(placing.soffit_strength_percent == 75);
    CHECK_THAT(placing.lowest_air_c.value(), WithinAbs(-5, tight));
    CHECK_THAT(placing.held_at_c.value(), WithinAbs(10, tight));
    CHECK_THAT(placing.protected_until_h.value(), WithinAbs(72, tight));
    CHECK_THAT(placing.loaded_after_h.value(), WithinAbs(672, tight));
    CHECK_THAT(placing.truck_m3.value(), WithinAbs(7.64554857984, tight));
    CHECK_THAT(placing.round_trip_min.value(), WithinAbs(75, tight));
    CHECK_THAT(placing.vibrator_head_mm.value(), WithinAbs(50.8, tight));
    CHECK_THAT(placing.vibrator_depth_m.value(), WithinAbs(0.9144, tight));
    CHECK(placing.external_vibration);
    CHECK(placing.pumped_from_below);
    CHECK(placing.redosed_on_site);
    CHECK(placing.self_consolidating);
    CHECK(placing.by_formula);
    // 1000 psf = 47.88026 kPa: NIST SP 811 B.8
    CHECK_THAT(placing.form_pressure_kpa.value(), WithinAbs(47.88026, 5e-6));
    CHECK(placing.flow_class == 4);
    CHECK(placing.season == "spring");
    REQUIRE(wall.mockup);
    CHECK_THAT(wall.mockup->length_m.value(), WithinAbs(1.8288, tight));
    CHECK_THAT(wall.mockup->height_m.value(), WithinAbs(2, tight));
    CHECK_THAT(wall.mockup->thickness_mm.value(), WithinAbs(304.8, tight));
    CHECK(wall.mockup->number == 2);
    CHECK(wall.mockup->viewed_from == "3 m");
    CHECK(wall.mockup->signed_by == "designer");
    CHECK(wall.order.waste_percent == 5);
    CHECK(wall.order.increment_m3 == 0.5);
}

TEST_CASE("prices with a likely one stated, taken as the middle, and single") {
    const core::Wall wall = wall_of(one_wall + "prices:\n"
                                               "  board_stock: 2 to 4 EUR/m likely 2.5\n"
                                               "  curing: 1 to 2 EUR/m2\n"
                                               "  mitre: 5 EUR/piece\n");
    REQUIRE(wall.prices);
    CHECK(wall.prices->currency == "EUR");
    REQUIRE(wall.prices->item.size() == 3);
    const core::PriceRange& stock = wall.prices->item.at("board_stock");
    CHECK(stock.low == 2);
    CHECK(stock.likely == 2.5);
    CHECK(stock.high == 4);
    CHECK(stock.likely_stated);
    CHECK(wall.prices->item.at("curing").likely == 1.5);
    CHECK_FALSE(wall.prices->item.at("curing").likely_stated);
    CHECK(wall.prices->item.at("mitre").likely == 5);
    CHECK(wall.prices->item.at("mitre").likely_stated);
}

TEST_CASE("openings that fit are read without a fault") {
    const std::string run = heading + "walls:\n"
                                      "  quay:\n"
                                      "    length: 10 m\n"
                                      "    height: {0 m: 3 m, 10 m: 1 m}\n"
                                      "    top: sloping\n"
                                      "    thickness: 300 mm\n"
                                      "    shows: both faces\n"
                                      "    openings:\n";
    // the top falls by 0.2 m in each metre
    const std::string openings =
        GENERATE("      a: {width: 1 m, height: 1 m, sill: 1 m, at: [4 m]}\n", // 2 m high at 5 m
                 "      a: {width: 1 m, height: 1 m, at: [9 m]}\n",            // up to the end
                 "      a: {width: 1 m, height: 1 m, at: [1 m, 2 m, 3 m]}\n",  // edge to edge
                 "      a: {width: 1 m, height: 50 cm, depth: 140 mm, sill: 20 cm, at: [2 m]}\n"
                 "      b: {width: 1 m, height: 50 cm, depth: 140 mm, sill: 20 cm, at: [2 m]}\n",
                 "      a: {width: 1 m, height: 50 cm, sill: 0 m, at: [2 m]}\n"
                 "      b: {width: 1 m, height: 50 cm, sill: 50 cm, at: [2 m]}\n");
    INFO(openings);
    CHECK(wall_of(run + openings).runs[0].openings.size() >= 1);
}

TEST_CASE("openings that do not fit under a slope or behind one another") {
    const std::string run = heading + "walls:\n"
                                      "  quay:\n"
                                      "    length: 10 m\n"
                                      "    height: {0 m: 3 m, 10 m: 1 m}\n"
                                      "    top: sloping\n"
                                      "    thickness: 300 mm\n"
                                      "    shows: both faces\n"
                                      "    openings:\n";
    const std::string openings =
        GENERATE("      a: {width: 1 m, height: 1 m, sill: 1 m, at: [4.01 m]}\n",
                 "      a: {width: 1 m, height: 1 m, at: [9.01 m]}\n",
                 "      a: {width: 1 m, height: 1 m, at: [1 m, 1.99 m]}\n",
                 "      a: {width: 1 m, height: 50 cm, depth: 160 mm, sill: 20 cm, at: [2 m]}\n"
                 "      b: {width: 1 m, height: 50 cm, depth: 140 mm, sill: 20 cm, at: [2 m]}\n",
                 "      a: {width: 1 m, height: 51 cm, sill: 0 m, at: [2 m]}\n"
                 "      b: {width: 1 m, height: 50 cm, sill: 50 cm, at: [2 m]}\n");
    INFO(openings);
    const auto reading = read_with(run + openings, sound_mix);
    CHECK_FALSE(reading.record);
    CHECK(reading.diagnostics.size() == 1);
}

TEST_CASE("an output of one wall and of one planter") {
    const core::Wall wall =
        wall_of(heading + "walls:\n"
                          "  quay: {length: 20 m, height: 2 m, thickness: 300 mm, output: 8 m3/h}\n"
                          "  stair: {length: 20 m, height: 2 m, thickness: 300 mm}\n"
                          "planters:\n"
                          "  box: {length: 4 m, width: 2 m, height: 1 m, thickness: 200 mm, "
                          "output: 10 yd3/h}\n");
    REQUIRE(wall.runs.size() == 2);
    CHECK(wall.runs[0].output_m3_h == 8);
    CHECK_FALSE(wall.runs[1].output_m3_h);
    REQUIRE(wall.planters.size() == 1);
    CHECK_THAT(wall.planters[0].output_m3_h.value(), WithinAbs(7.64554857984, tight));
}

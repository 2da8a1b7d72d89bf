// The table of doses, its "limits hold from" and what the uses of a reducer break, worked by hand.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/study/comparison.hpp>
#include <boardmark/core/study/dose_response.hpp>

#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

/// w/cm 0.45 as written, in C2, which allows 0.40 (ACI 318-19 Table 19.3.2.1); its strength curve
/// is never in the way.
struct Doses {
    std::string w_cm;
    std::string selections = "";
    std::string reduction = "{4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %, 12 fl oz/cwt: 22 %}";
    std::string price_of_stone = "";
    std::string price_of_reducer = "";
    std::string price_of_cement = ", price: 165 USD/short ton";
    std::string price_of_sand = ", price: 21 USD/short ton";
    std::string slump = "4 in";
    std::string dose = "8 fl oz/cwt";
    std::string second_reducer = ""; // of 8 fl oz/cwt
    std::string maximum_dose = "";
};

core::CompleteMix mix_at(const Doses& doses) {
    const core::AnyCompleteMix mix = read(R"(boardmark: 1
title: doses
reporting: us
requirements:
  code: ACI 318-19
  exposure: [F0, C2]
  strength: 5000 psi
  strength_curve: {0.30: 9000 psi, 0.50: 6500 psi}
  slump: )" + doses.slump + R"(
materials:
  cement: {kind: portland cement, relative_density: 3.15)" +
                                              doses.price_of_cement + R"(}
  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in, relative_density: 2.68, absorption: 0.5 %,
          dry_rodded_density: 100 lb/ft3)" + doses.price_of_stone +
                                              R"(}
  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, fineness_modulus: 2.8)" +
                                              doses.price_of_sand + R"(}
  reducer: {kind: high-range water reducer, relative_density: 1.07)" +
                                              doses.price_of_reducer + doses.maximum_dose + R"(,
            water_reduction: )" + doses.reduction +
                                              "}\n" + doses.second_reducer + R"(
mixture: {binder: {cement: 100 %}, coarse: {stone: 100 %}, fine: {sand: 100 %},
          admixtures: {reducer: )" + doses.dose +
                                              (doses.second_reducer.empty()
                                                   ? ""
                                                   : ", second: 8 fl oz/cwt") +
                                              R"(}}
selections: {)" + (doses.w_cm.empty() ? "" : "w_cm: " + doses.w_cm) +
                                              doses.selections + "}\n",
                                          input::Purpose::proportion);
    return std::get<core::CompleteMix>(mix);
}

core::CompleteMix mix_at(const std::string& w_cm) {
    return mix_at(Doses{.w_cm = w_cm});
}

const core::Tables& us_tables() {
    static const core::Tables tables = reference::tables(core::UnitSystem::us);
    return tables;
}

double fl_oz_cwt(const core::DosePoint& point) {
    return in_unit(point.ml_100kg * 1e-8, "fl oz/cwt");
}

std::vector<std::string> failed(const core::ComparedMix& column) {
    std::vector<std::string> ids;
    for (const core::Check& check : column.checks) {
        if (check.verdict == core::Verdict::fails) {
            ids.push_back(check.id);
        }
    }
    return ids;
}

} // namespace

TEST_CASE("dose by dose: water saved, ratio, and the dose from which the limits hold") {
    // ACI 211.1-91 Table 6.3.3: 3/4 in stone, 3 to 4 in, no air: 340 lb/yd3; at 0.45 755.6 lb/yd3
    // of cement, which stay. At each dose the water is 340 (1 - r) and the ratio 0.45 (1 - r):
    // limits hold from the first dose whose ratio is 0.40 or less to the hundredth.
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at("0.45"), us_tables()));
    struct Row {
        double fl_oz;
        double percent;
        bool holds;
    };
    const std::vector<Row> rows{{0, 0, false},       {1.5, 3, false}, {3, 6, false},
                                {4, 8, false},       {4.5, 9, false}, {6, 12, true},
                                {7.5, 15, true},     {8, 16, true},   {9, 17.5, true},
                                {10.5, 19.75, true}, {12, 22, true}};
    REQUIRE(response.points.size() == rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const core::ComparedMix& use = response.points[i].less_water;
        INFO(rows[i].fl_oz);
        CHECK_THAT(fl_oz_cwt(response.points[i]), WithinAbs(rows[i].fl_oz, 1e-6));
        REQUIRE(use.proportions);
        const double kept = 1 - rows[i].percent / 100;
        CHECK_THAT(in_unit(use.proportions->totals.water_kg_m3, "lb/yd3"),
                   WithinAbs(340 * kept, 1e-3));
        CHECK_THAT(use.proportions->totals.w_cm, WithinAbs(0.45 * kept, 1e-6));
        CHECK(failed(use).empty() == rows[i].holds);
    }
    REQUIRE(response.limits_hold_from);
    CHECK_THAT(fl_oz_cwt(response.points[*response.limits_hold_from]), WithinAbs(6, 1e-6));
}

TEST_CASE("a limit holds from where it is kept, not from where it rounds to it") {
    // 0.44 x (1 - 8 %) = 0.4048 and 0.44 x (1 - 9 %) = 0.4004 round to 0.40 and pass it;
    // 0.44 x (1 - 12 %) = 0.387 at 6 fl oz/cwt does not
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at("0.44"), us_tables()));
    REQUIRE(response.limits_hold_from);
    CHECK_THAT(fl_oz_cwt(response.points[*response.limits_hold_from]), WithinAbs(6, 1e-6));
    CHECK(response.limits_hold_at_last);
    CHECK_FALSE(response.slump_of_water_mm); // it is the one asked
}

TEST_CASE("only a dose that fails nothing is the cheapest") {
    // With less binder the ratio stays: 0.44 passes the 0.40 of C2 at every dose, 0.40 at none.
    const core::DoseResponse failing =
        boardmark::test::made(core::dose_response(mix_at("0.44"), us_tables()));
    CHECK_FALSE(failing.cheapest);
    CHECK(failing.failing_less_binder() == failing.points.size());
    const core::DoseResponse sound =
        boardmark::test::made(core::dose_response(mix_at("0.40"), us_tables()));
    CHECK(sound.failing_less_binder() == 0);
}

TEST_CASE("a ratio that keeps its limit only by rounding makes no dose the cheapest") {
    // 0.404 rounds to the 0.40 of C2 and passes it at every dose of less binder; nothing fails.
    const auto at = [](const char* w_cm) {
        return boardmark::test::made(
            core::dose_response(mix_at(Doses{.w_cm = w_cm,
                                             .price_of_stone = ", price: 24 USD/short ton",
                                             .price_of_reducer = ", price: 16 USD/gal"}),
                                us_tables()));
    };
    CHECK(at("0.40").cheapest);
    CHECK(at("0.40").not_chosen_less_binder() == 0);
    const core::DoseResponse rounding = at("0.404");
    CHECK(rounding.failing_less_binder() == 0);
    CHECK(rounding.not_chosen_less_binder() == rounding.points.size());
    CHECK_FALSE(rounding.cheapest);
}

TEST_CASE("a strength that no trial shows makes no dose the cheapest") {
    // The curve ends at 0.30: at 0.29 no strength is read, whatever the dose.
    const Doses beyond{.w_cm = "0.29",
                       .price_of_stone = ", price: 0 USD/short ton",
                       .price_of_reducer = ", price: 0 USD/gal",
                       .price_of_cement = ", price: 165 USD/short ton"};
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at(beyond), us_tables()));
    CHECK(response.failing_less_binder() == 0);
    CHECK_FALSE(response.cheapest);
}

TEST_CASE("no dose is shown above the highest that the data sheet permits") {
    const auto at = [](const char* most) {
        return boardmark::test::made(
            core::dose_response(mix_at(Doses{.w_cm = "0.40",
                                             .price_of_stone = ", price: 0 USD/short ton",
                                             .price_of_reducer = ", price: 0 USD/gal",
                                             .maximum_dose = most}),
                                us_tables()));
    };
    // Every dose saves cement at no price: the last one is the cheapest.
    const core::DoseResponse capped = at(", maximum_dose: 9 fl oz/cwt");
    CHECK(capped.ends_at_maximum);
    CHECK_THAT(fl_oz_cwt(capped.points.back()), WithinAbs(9, 1e-6));
    REQUIRE(capped.cheapest);
    CHECK(*capped.cheapest + 1 == capped.points.size());
    for (const char* wide : {"", ", maximum_dose: 12 fl oz/cwt", ", maximum_dose: 14 fl oz/cwt"}) {
        INFO(wide);
        const core::DoseResponse whole = at(wide);
        CHECK_FALSE(whole.ends_at_maximum);
        CHECK_THAT(fl_oz_cwt(whole.points.back()), WithinAbs(12, 1e-6));
    }
}

TEST_CASE("a least binder lowers the ratio at each dose, not the ratio of every dose") {
    // 340 lb/yd3 of water over 0.45 is 755.6 of cement without the reducer; at 8 fl oz/cwt, as
    // written, 340 (1 - 16 %) over 0.45 is 634.7, raised to the 700 that are asked, as at 12.
    const Doses least{.w_cm = "0.45", .slump = "4 in\n  minimum_binder: 700 lb/yd3"};
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at(least), us_tables()));
    const auto binder = [](const core::DosePoint& point) {
        return in_unit(point.less_binder.proportions->totals.binder_kg_m3, "lb/yd3");
    };
    CHECK_THAT(binder(response.points.front()), WithinAbs(340 / 0.45, 1e-6));
    CHECK_THAT(binder(response.points.back()), WithinAbs(700, 1e-6));
}

TEST_CASE("the cheapest dose is found where every price is known, by hand") {
    // Less binder at 0.40: 850 (1 - r) lb/yd3 of cement at 0.0825 USD/lb; sand at 0.0105 USD/lb
    // fills what is freed, 32.5 lb for each per cent; the reducer costs 0.125 USD/fl oz. From 0 to
    // 4 fl oz/cwt (10 %) 7.01 USD/yd3 are saved and 1.70 + 3.83 spent; from 4 to 8 (16 %) 4.21
    // saved, 1.02 + 3.32 spent.
    const Doses priced{.w_cm = "0.40",
                       .reduction = "{4 fl oz/cwt: 10 %, 8 fl oz/cwt: 16 %, 12 fl oz/cwt: 20 %}",
                       .price_of_stone = ", price: 24 USD/short ton",
                       .price_of_reducer = ", price: 16 USD/gal"};
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at(priced), us_tables()));
    REQUIRE(response.cheapest);
    CHECK_THAT(fl_oz_cwt(response.points[*response.cheapest]), WithinAbs(4, 1e-6));
    Doses unpriced = priced;
    unpriced.price_of_stone = "";
    CHECK_FALSE(boardmark::test::made(core::dose_response(mix_at(unpriced), us_tables())).cheapest);
}

TEST_CASE(
    "of doses that cost the same the least is the cheapest, and none where nothing is priced") {
    const auto cheapest_at = [](const std::string& by_mass, const std::string& by_volume) {
        const Doses doses{.w_cm = "0.40",
                          .price_of_stone = by_mass,
                          .price_of_reducer = by_volume,
                          .price_of_cement = by_mass,
                          .price_of_sand = by_mass};
        return boardmark::test::made(core::dose_response(mix_at(doses), us_tables())).cheapest;
    };
    CHECK(cheapest_at(", price: 0 USD/short ton", ", price: 0 USD/gal") ==
          std::optional<std::size_t>{0});
    CHECK_FALSE(cheapest_at("", ""));
}

TEST_CASE("a reducer that works for flow has a response at the slump of the water alone") {
    // Table 6.3.3: 3 to 4 in before the reducer ask 340 lb/yd3, whatever flows with it; 0.45 is
    // that of the water alone.
    const Doses flowing{.w_cm = "0.45", .slump = "8 in\n  slump_before_reducer: 4 in"};
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at(flowing), us_tables()));
    REQUIRE(response.points.size() == 11);
    REQUIRE(response.slump_of_water_mm);
    CHECK_THAT(in_unit(*response.slump_of_water_mm, "in"), WithinAbs(4, 1e-9));
    for (const auto& [place, fl_oz, kept] :
         {std::tuple{0U, 0.0, 1.0}, std::tuple{5U, 6.0, 0.88}, std::tuple{10U, 12.0, 0.78}}) {
        const core::DosePoint& point = response.points[place];
        CHECK_THAT(fl_oz_cwt(point), WithinAbs(fl_oz, 1e-6));
        REQUIRE(point.less_water.proportions);
        REQUIRE(point.less_binder.proportions);
        CHECK_THAT(in_unit(point.less_water.proportions->totals.water_kg_m3, "lb/yd3"),
                   WithinAbs(340 * kept, 1e-6));
        CHECK_THAT(point.less_water.proportions->totals.w_cm, WithinAbs(0.45 * kept, 1e-9));
        CHECK_THAT(point.less_binder.proportions->totals.w_cm, WithinAbs(0.45, 1e-9));
        CHECK_THAT(in_unit(point.less_binder.slump.mm.value(), "in"), WithinAbs(4, 1e-9));
    }
}

TEST_CASE("a water that is given is that of the dose as written") {
    // 285.6 lb/yd3 at 8 fl oz/cwt, which takes off 16 %: 340 without a reducer, 265.2 at 12 fl
    // oz/cwt
    const Doses watered{.w_cm = "0.45", .selections = ", water: 285.6 lb/yd3"};
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at(watered), us_tables()));
    const auto water = [](const core::DosePoint& point) {
        return in_unit(point.less_water.proportions->totals.water_kg_m3, "lb/yd3");
    };
    CHECK_THAT(water(response.points.front()), WithinAbs(340, 1e-6));
    CHECK_THAT(water(response.points.back()), WithinAbs(340 * 0.78, 1e-6));

    // 8 fl oz/cwt lie beyond a curve that ends at 4: what the water was without is not known.
    Doses beyond = watered;
    beyond.reduction = "{4 fl oz/cwt: 8 %}";
    CHECK_FALSE(core::dose_response(mix_at(beyond), us_tables()));
}

TEST_CASE("a binder that is given does not hold the water as the dose changes") {
    const Doses bound{.w_cm = "0.45", .selections = ", binder: 600 lb/yd3"};
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at(bound), us_tables()));
    const auto& without = response.points.front().less_water.proportions;
    CHECK_THAT(in_unit(without->totals.water_kg_m3, "lb/yd3"),
               WithinAbs(340, 1e-6)); // of the table
}

TEST_CASE("a dose of the curve that is one of the equal steps stands once") {
    const Doses halved{.w_cm = "0.45", .reduction = "{6 fl oz/cwt: 12 %, 12 fl oz/cwt: 22 %}"};
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at(halved), us_tables()));
    for (std::size_t i = 1; i < response.points.size(); ++i) {
        CHECK(fl_oz_cwt(response.points[i]) > fl_oz_cwt(response.points[i - 1]) + 0.1);
    }
}

TEST_CASE("a ratio by the exposure stays at every dose of less binder") {
    // C2: 0.40; the ratio of the mix as written, not asked of the limits anew
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at("by exposure"), us_tables()));
    for (const core::DosePoint& point : response.points) {
        REQUIRE(point.less_binder.proportions);
        CHECK_THAT(point.less_binder.proportions->totals.w_cm, WithinAbs(0.40, 1e-9));
    }
}

TEST_CASE("a ratio that follows from the binder given stays as the dose changes") {
    // 340 (1 - 16 %) = 285.6 lb/yd3 at the dose as written, over 700: 0.408
    const Doses bound{.w_cm = "", .selections = "binder: 700 lb/yd3"};
    const core::DoseResponse response =
        boardmark::test::made(core::dose_response(mix_at(bound), us_tables()));
    for (const core::DosePoint& point : response.points) {
        REQUIRE(point.less_binder.proportions);
        CHECK_THAT(point.less_binder.proportions->totals.w_cm, WithinAbs(0.408, 1e-9));
    }
}

TEST_CASE("there is no response where nothing can be made without the reducer") {
    // 340 lb/yd3 at 0.26, 1307.7 of cement, 0.90 x 2700 of stone and 2 % of air fill
    // 5.45 + 6.65 + 14.46 (SSD, 2442 lb) + 0.54 = 27.1 of 27 ft3; with 84 % of the paste 25.2
    const Doses crowded{.w_cm = "0.26", .selections = ", coarse_volume: 0.90"};
    CHECK(core::proportion(mix_at(crowded), us_tables()));
    CHECK_FALSE(core::dose_response(mix_at(crowded), us_tables()));

    // With 16 % by a second reducer none of the first is needed; without both nothing can be made.
    Doses both = crowded;
    both.second_reducer = "  second: {kind: high-range water reducer, relative_density: 1.07,\n"
                          "           water_reduction: {8 fl oz/cwt: 16 %}}\n";
    CHECK(core::proportion(mix_at(both), us_tables()));
    CHECK_FALSE(core::dose_response(mix_at(both), us_tables()));
}

TEST_CASE("there is no response of a mix that cannot be made, nor without a curve") {
    // 285.6 lb/yd3 at 0.22, 1298 of cement, 2700 of stone and 2 % of air: 6.60 + 4.58 + 16.23 +
    // 0.54 of 27 ft3
    const Doses full{.w_cm = "0.22", .selections = ", coarse_volume: 1"};
    CHECK_FALSE(core::proportion(mix_at(full), us_tables()));
    CHECK_FALSE(core::dose_response(mix_at(full), us_tables()));

    const Doses standard{.w_cm = "0.45", .reduction = "standard minimum"};
    const auto response = core::dose_response(mix_at(standard), us_tables());
    REQUIRE_FALSE(response);
    CHECK(response.why().what.text.find("no response") != std::string::npos);

    // Water over binder as given needs no reduction of the other reducer; that of the table does.
    Doses unknown{.w_cm = "0.45", .selections = ", binder: 700 lb/yd3"};
    unknown.second_reducer = "  second: {kind: water reducer, relative_density: 1.1}\n";
    CHECK(core::proportion(mix_at(unknown), us_tables()));
    CHECK_FALSE(core::dose_response(mix_at(unknown), us_tables()));
}

TEST_CASE("limits that hold at every dose, and limits that no dose reaches") {
    CHECK_FALSE(
        boardmark::test::made(core::dose_response(mix_at("0.40"), us_tables())).limits_hold_from);
    // 0.55 x 0.78 = 0.429 at the last dose, above 0.40
    const core::DoseResponse never =
        boardmark::test::made(core::dose_response(mix_at("0.55"), us_tables()));
    CHECK_FALSE(never.limits_hold_from);
    CHECK_FALSE(failed(never.points.back().less_water).empty());
}

TEST_CASE("which uses of the reducer break the limit of the exposure") {
    // without: 0.45; less water: 0.45 x 0.84 = 0.378; less binder and more flow: 0.45
    const auto columns = boardmark::test::made(core::reducer_study(mix_at("0.45"), us_tables()));
    REQUIRE(columns.size() == 4);
    const std::vector<std::string> broken{"w_cm.exposure"};
    CHECK(failed(columns[0]) == broken);
    CHECK(failed(columns[1]).empty());
    CHECK(failed(columns[2]) == broken);
    CHECK(failed(columns[3]) == broken);
}

TEST_CASE("doses by mass give the points of doses by volume") {
    // Of relative density 1.07 to water of 62.4 lb/ft3, 1.2 % of the binder are 1.2 kg to 100 kg.
    const core::DoseResponse response = boardmark::test::made(
        core::dose_response(mix_at(Doses{.w_cm = "0.45",
                                         .reduction = "{0.4 %: 8 %, 0.8 %: 16 %, 1.2 %: 22 %}",
                                         .dose = "0.8 %"}),
                            us_tables()));
    CHECK_THAT(response.points.front().ml_100kg, WithinAbs(0, 1e-9));
    CHECK_THAT(response.points.back().ml_100kg,
               WithinAbs(1.2e6 / (1.07 * inside(62.4, "lb/ft3")), 1e-6));
    // 340 lb/yd3 less 22 % (ACI 211.1-91 Table 6.3.3) over the binder that stays, 340 / 0.45.
    CHECK_THAT(response.points.back().less_water.proportions->totals.w_cm,
               WithinAbs(0.45 * 0.78, 1e-9));
}

TEST_CASE("no response of a mix that does not follow as it is written") {
    const core::CompleteMix beyond = mix_at(Doses{.w_cm = "0.45", .dose = "13 fl oz/cwt"}); // of 12
    const auto written = core::proportion(beyond, us_tables());
    REQUIRE_FALSE(written);
    const auto response = core::dose_response(beyond, us_tables());
    REQUIRE_FALSE(response);
    CHECK(response.why().what.text == written.why().what.text);
    CHECK_FALSE(core::reducer_study(beyond, us_tables()));
}

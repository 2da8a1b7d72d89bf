// What forces full liquid head, and what a pour that is not fully known is taken for. The rules are
// those of ACI 347R-14 and of the trade; the numbers are held in tests/published.

#include <boardmark/core/forms/pressure_method_names.hpp>

#include "form_support.hpp"
#include "walls.hpp"

#include <catch2/catch.hpp>

#include <functional>
#include <limits>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::FormCase;
using core::FormCement;
using core::FormPressure;
using core::PressureGovernor;

namespace {

const core::Tables& us() {
    return form_tables_in(core::UnitSystem::us);
}

FormCase changed(const std::function<void(FormCase&)>& change) {
    FormCase pour = us_wall();
    change(pour);
    return pour;
}

double chemistry(const FormCase& pour) {
    return core::aci_form_pressure(pour, us()).steps[1].value.value();
}

bool marked(const std::vector<core::Mark>& marks, core::Mark mark) {
    return std::ranges::count(marks, mark) > 0;
}

} // namespace

TEST_CASE("each reason for full head is said and presses with the whole head") {
    struct Row {
        std::string word;
        std::function<void(FormCase&)> change;
    };
    const std::vector<Row> rows{
        {"slump", [](FormCase& pour) { pour.highest_slump_mm = 190.5; }},
        {"slump", [](FormCase& pour) { pour.highest_slump_mm.reset(); }},
        {"no highest slump",
         [](FormCase& pour) {
             pour.high_range_reducer = true;
             pour.slump_maximum_stated = false;
         }},
        {"vibration", [](FormCase& pour) { pour.vibration.depth_m = 1.3; }},
        {"vibrators on the form", [](FormCase& pour) { pour.vibration.external = true; }},
        {"again on site", [](FormCase& pour) { pour.redosing_on_site = true; }},
        {"self-consolidating", [](FormCase& pour) { pour.self_consolidating = true; }},
        {"rate of rise", [](FormCase& pour) { pour.rise_m_h = 15.1 * foot_m; }},
        {"rate of rise", [](FormCase& pour) { pour.rise_m_h.reset(); }},
        {"temperature", [](FormCase& pour) { pour.temperature_c.reset(); }},
        {"freezes", [](FormCase& pour) { pour.temperature_c = 0; }},
        {"freezes", [](FormCase& pour) { pour.temperature_c = -20; }},
    };
    for (const Row& row : rows) {
        INFO(row.word);
        const FormCase pour = changed(row.change);
        for (const auto method : {core::aci_form_pressure, core::ciria_form_pressure}) {
            const FormPressure pressure = method(pour, us());
            INFO(pressure.method);
            CHECK(pressure.governed_by == PressureGovernor::liquid_head);
            CHECK_FALSE(pressure.valid);
            CHECK_FALSE(pressure.formula_kpa);
            CHECK_THAT(in_psf(pressure.kpa), WithinAbs(1450, 1e-6));
            REQUIRE(pressure.why.size() == 1);
            CHECK(speaks_of(pressure.why, row.word));
            CHECK(pressure.envelope.size() == 2);
        }
    }
}

TEST_CASE("bounds of the formula still belong to it") {
    const FormCase pour = changed([](FormCase& wall) {
        wall.highest_slump_mm = 7 * 25.4;
        wall.vibration.depth_m = 4 * foot_m;
        wall.rise_m_h = 15 * foot_m;
    });
    CHECK(core::aci_form_pressure(pour, us()).why.empty());
}

TEST_CASE("several reasons are all said") {
    const FormCase pour = changed([](FormCase& wall) {
        wall.highest_slump_mm = 200;
        wall.vibration.external = true;
        wall.rise_m_h.reset();
    });
    CHECK(core::aci_form_pressure(pour, us()).why.size() == 3);
}

TEST_CASE("a reducer without a stated maximum takes the formula only where it is asked for") {
    FormCase pour = us_wall();
    pour.high_range_reducer = true;
    CHECK(core::aci_form_pressure(pour, us()).valid); // the maximum is stated
    pour.slump_maximum_stated = false;
    pour.formula_asked = true;
    const FormPressure asked = core::aci_form_pressure(pour, us());
    CHECK(asked.valid);
    CHECK(speaks_of(asked.remarks, "asks for a formula"));
    pour.highest_slump_mm = 190.5; // asking does not stretch the formula
    CHECK_FALSE(core::aci_form_pressure(pour, us()).valid);
}

TEST_CASE("pumping from below presses a quarter harder than the head, at every depth") {
    const FormPressure pressure = core::aci_form_pressure(
        changed([](FormCase& pour) { pour.pumped_from_below = true; }), us());
    CHECK_THAT(in_psf(pressure.kpa), WithinAbs(1.25 * 1450, 1e-6));
    CHECK(pressure.governed_by == PressureGovernor::liquid_head);
    CHECK_THAT(core::pressure_at(pressure, 5 * foot_m), WithinAbs(pressure.kpa / 2, 1e-9));
    CHECK(marked(pressure.marks, core::Mark::from_memory));
}

TEST_CASE("what is not known takes the highest coefficient that the rest allows, marked") {
    struct Row {
        FormCement cement;
        std::optional<bool> retards;
        std::optional<double> slag;
        std::optional<double> ash;
        double coefficient;
        bool marked;
    };
    const Row row = GENERATE(Row{FormCement::portland, false, {}, {}, 1.0, false},
                             Row{FormCement::portland, {}, {}, {}, 1.2, true},
                             Row{FormCement::blend, false, 25, 0, 1.2, false},
                             Row{FormCement::blend, {}, 25, 0, 1.4, true},
                             Row{FormCement::blend, false, 25, {}, 1.4, true},
                             Row{FormCement::blend, false, 70, 0, 1.4, false},
                             Row{FormCement::blend, true, 0, 40, 1.5, false},
                             // slag and ash count together: 35/70 + 20/40 = 1
                             Row{FormCement::blend, false, 35, 20, 1.4, false},
                             Row{FormCement::blend, false, 35, 19, 1.2, false},
                             Row{FormCement::unknown, false, {}, {}, 1.4, true},
                             Row{FormCement::unknown, {}, {}, {}, 1.5, true});
    FormCase pour = us_wall();
    pour.cement = row.cement;
    pour.retards = row.retards;
    pour.slag_percent = row.slag;
    pour.fly_ash_percent = row.ash;
    CAPTURE(row.coefficient, row.marked);
    CHECK(chemistry(pour) == row.coefficient);
    CHECK(marked(core::aci_form_pressure(pour, us()).marks, core::Mark::estimate) == row.marked);
}

TEST_CASE("a lift lower than the form has the head of the lift") {
    FormCase pour = us_wall({.height_ft = 10});
    pour.pour_height_m = 3 * foot_m;
    const FormPressure pressure = core::aci_form_pressure(pour, us());
    CHECK(pressure.governed_by == PressureGovernor::head);
    CHECK_THAT(in_psf(pressure.kpa), WithinAbs(435, 1e-6)); // 145 x 3
    CHECK(core::ciria_form_pressure(pour, us()).kpa <= pressure.kpa);
}

TEST_CASE("a column takes the formula of columns at any rate") {
    FormCase pour = us_wall({.height_ft = 20, .rise_ft_h = 10, .temperature_f = 60});
    const double wall_kpa = core::aci_form_pressure(pour, us()).kpa;
    pour.column = core::ColumnPlan{.long_side_m = 1.5, .short_side_m = 0.5};
    CHECK_THAT(in_psf(core::aci_form_pressure(pour, us()).kpa), // 150 + 9000 x 10 / 60
               WithinAbs(1650, 1e-6));
    pour.column->long_side_m = 2.5; // a wall again
    CHECK(core::aci_form_pressure(pour, us()).kpa == wall_kpa);
}

TEST_CASE("a low form says that full head costs little") {
    const auto [feet, said] = GENERATE(table<double, bool>({{5, true}, {6, true}, {6.1, false}}));
    const auto pressure = core::aci_form_pressure(us_wall({.height_ft = feet}), us());
    CHECK(speaks_of(pressure.remarks, "costs little") == said);
}

TEST_CASE("CIRIA gives the head where the rise alone passes the form's height") {
    FormCase pour = si_wall({.height_m = 1.5, .rise_m_h = 4}); // C1 √R = 2 m
    CHECK_THAT(core::ciria_form_pressure(pour, us()).kpa, WithinAbs(37.5, 1e-9));
}

TEST_CASE("DIN wants consistency and setting, and ends at twenty hours") {
    FormCase pour = si_wall({.height_m = 4, .rise_m_h = 1.5});
    const FormPressure bare = core::din_form_pressure(pour, us());
    CHECK_FALSE(bare.data_suffice);
    CHECK(bare.governed_by == PressureGovernor::liquid_head);
    CHECK(speaks_of(bare.why, "consistency class"));
    CHECK(speaks_of(bare.why, "end of setting"));
    pour.flow_class = "F3";
    pour.set_time_h = 7.5; // between 1.0 and 1.25
    const FormPressure between = core::din_form_pressure(pour, us());
    CHECK_THAT(between.kpa, WithinAbs(1.125 * 39, 1e-9));
    CHECK(marked(between.marks, core::Mark::interpolated));
    pour.set_time_h = 3;
    CHECK_THAT(core::din_form_pressure(pour, us()).kpa, WithinAbs(39, 1e-9));
    pour.set_time_h = 20.5;
    const FormPressure late = core::din_form_pressure(pour, us());
    CHECK(late.governed_by == PressureGovernor::liquid_head);
    CHECK(speaks_of(late.why, "later"));
}

TEST_CASE("a fluid class of DIN answers for high slump and self-consolidation") {
    FormCase pour = si_wall({.height_m = 6, .rise_m_h = 1});
    pour.set_time_h = 5;
    pour.highest_slump_mm = 230;
    pour.flow_class = "F5";
    CHECK_THAT(core::din_form_pressure(pour, us()).kpa, WithinAbs(55, 1e-9)); // 25 + 30 v
    pour.self_consolidating = true;
    CHECK_THAT(core::din_form_pressure(pour, us()).kpa, WithinAbs(58, 1e-9)); // 25 + 33 v
    pour.self_consolidating = false;
    pour.flow_class = "F3"; // such a slump is not F3
    CHECK(core::din_form_pressure(pour, us()).governed_by == PressureGovernor::liquid_head);
}

TEST_CASE("concrete heavier than DIN's raises its pressure, lighter does not lower it") {
    FormCase pour = si_wall({.height_m = 4, .rise_m_h = 1.5, .weight_kn_m3 = 27.5});
    pour.flow_class = "F3";
    pour.set_time_h = 5;
    CHECK_THAT(core::din_form_pressure(pour, us()).kpa, WithinAbs(1.1 * 39, 1e-9));
    pour.fresh_density_kg_m3 = 2000;
    CHECK_THAT(core::din_form_pressure(pour, us()).kpa, WithinAbs(39, 1e-9));
}

TEST_CASE("a figure that no pour has is a reason for full head") {
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    constexpr double endless = std::numeric_limits<double>::infinity();
    struct Row {
        std::string word;
        std::function<void(FormCase&, double)> set;
        bool zero_is_possible = false;
    };
    const std::vector<Row> rows{
        {"rate of rise", [](FormCase& pour, double x) { pour.rise_m_h = x; }},
        {"temperature", [](FormCase& pour, double x) { pour.temperature_c = x; }, true},
        {"highest slump", [](FormCase& pour, double x) { pour.highest_slump_mm = x; }, true},
        {"vibration", [](FormCase& pour, double x) { pour.vibration.depth_m = x; }, true},
        {"end of setting", [](FormCase& pour, double x) { pour.set_time_h = x; }},
        {"slag", [](FormCase& pour, double x) { pour.slag_percent = x; }, true},
        {"fly ash", [](FormCase& pour, double x) { pour.fly_ash_percent = x; }, true},
        {"side in plan",
         [](FormCase& pour, double x) {
             pour.column = core::ColumnPlan{1, x};
         }},
        {"side in plan",
         [](FormCase& pour, double x) {
             pour.pier = core::PierPlan{{x, 1}};
         }},
    };
    for (const Row& row : rows) {
        for (const double number : {none, endless, -endless, -3.0, 0.0}) {
            if (number == 0 && row.zero_is_possible) {
                continue;
            }
            INFO(row.word << " " << number);
            FormCase pour = si_wall();
            pour.flow_class = "F3";
            pour.set_time_h = 5;
            row.set(pour, number);
            for (const FormPressure& pressure : core::form_pressures(pour, us())) {
                INFO(pressure.method);
                CHECK(pressure.governed_by == PressureGovernor::liquid_head);
                CHECK_THAT(pressure.kpa, WithinAbs(75, 1e-9)); // 25 kN/m3 x 3 m, by hand
                CHECK(!pressure.why.empty());
            }
        }
    }
}

TEST_CASE("a method of pressure can be asked for by its name") {
    std::vector<std::string_view> names;
    const auto pressures = core::form_pressures(si_wall(), us());
    for (const FormPressure& pressure : pressures) {
        names.push_back(pressure.method);
    }
    CHECK(std::ranges::equal(names, core::pressure_method_names));
}

TEST_CASE("what is no number never holds and allows no rise") {
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    constexpr double endless = std::numeric_limits<double>::infinity();
    const core::TieLayout layout =
        core::tie_layout(run_of(6, 3, 250),
                         {.kind = core::TieKind::stainless_steel, .across_mm = 600, .up_mm = 600});
    for (const double number : {none, endless, -endless, -3.0, 0.0}) {
        INFO(number);
        const std::vector<std::function<void(FormCase&)>> impossible{
            [&](FormCase& pour) { pour.form_height_m = number; },
            [&](FormCase& pour) { pour.fresh_density_kg_m3 = number; },
            [&](FormCase& pour) { pour.pour_height_m = number; }};
        for (const auto& change : impossible) {
            FormCase pour = si_wall();
            change(pour);
            const bool capped = pour.pour_height_m == endless; // the form's height remains
            for (const FormPressure& pressure : core::form_pressures(pour, us())) {
                INFO(pressure.method);
                CHECK((core::form_pressure_check(pressure, 1000, us()).verdict ==
                       core::Verdict::holds) == capped);
                CHECK((core::tie_check(pressure, layout, core::TieRating{1000}, us()).verdict ==
                       core::Verdict::holds) == capped);
            }
            CHECK(core::allowable_rise(pour, 1000, us()).any == capped);
        }
        const FormPressure sound = core::aci_form_pressure(si_wall(), us());
        CHECK(core::form_pressure_check(sound, number, us()).verdict == core::Verdict::not_checked);
        CHECK(core::tie_check(sound, layout, core::TieRating{number}, us()).verdict ==
              core::Verdict::not_checked);
        const core::AllowableRise rise = core::allowable_rise(si_wall(), number, us());
        CHECK_FALSE(rise.any);
        CHECK_FALSE(rise.rise_m_h);
    }
}

// Laws of form pressure.

#include "form_support.hpp"
#include "laws/law.hpp"

using namespace boardmark;
using namespace boardmark::test;
using core::FormCase;
using core::FormPressure;
using core::UnitSystem;

namespace {

const std::vector<core::PressureMethod> methods{core::aci_form_pressure, core::ciria_form_pressure,
                                                core::din_form_pressure};

FormCase any_pour() {
    FormCase pour = si_wall({.height_m = between(0.3, 9, "height, m"),
                             .rise_m_h = between(0.1, 6, "rise, m/h"),
                             .temperature_c = between(-5, 40, "temperature, degC"),
                             .weight_kn_m3 = between(14, 30, "weight, kN/m3")});
    pour.pour_height_m = pour.form_height_m * between(0.2, 1, "part of the form filled");
    pour.highest_slump_mm = between(50, 200, "slump, mm");
    pour.cement = one_of<core::FormCement>(
        {core::FormCement::portland, core::FormCement::blend, core::FormCement::unknown}, "cement");
    pour.slag_percent = between(0, 80, "slag, %");
    pour.fly_ash_percent = between(0, 20, "ash, %");
    if (perhaps("retarder known")) {
        pour.retards = perhaps("retards");
    } else {
        pour.retards.reset();
    }
    if (perhaps("a column")) {
        pour.column = core::ColumnPlan{between(0.5, 3, "side, m"), 0.4};
    }
    pour.flow_class = one_of<std::string>({"F1", "F2", "F3", "F4", "F5", "F6", "SCC"}, "class");
    pour.set_time_h = between(3, 22, "end of setting, h");
    return pour;
}

UnitSystem any_system() {
    return perhaps("in US units") ? UnitSystem::us : UnitSystem::si;
}

} // namespace

TEST_CASE("no pressure is above the liquid head but that of pumping") {
    holds([] {
        FormCase pour = any_pour();
        const auto& tables = form_tables_in(any_system());
        for (const auto method : methods) {
            pour.pumped_from_below = false;
            const FormPressure poured = method(pour, tables);
            demand_at_most(poured.kpa, poured.head_kpa, poured.method + " over head");
            pour.pumped_from_below = true;
            demand_same(method(pour, tables).kpa, 1.25 * poured.head_kpa, 1e-12, "pumped");
        }
    });
}

TEST_CASE("faster placing never presses less") {
    holds([] {
        FormCase pour = any_pour();
        const auto& tables = form_tables_in(any_system());
        FormCase faster = pour;
        *faster.rise_m_h += between(0, 3, "faster by, m/h");
        for (const auto method : methods) {
            demand_at_most(method(pour, tables).kpa, method(faster, tables).kpa, "slower");
        }
    });
}

TEST_CASE("warmer concrete never presses more") {
    holds([] {
        FormCase pour = any_pour();
        const auto& tables = form_tables_in(any_system());
        FormCase warmer = pour;
        *warmer.temperature_c += between(0, 20, "warmer by, K");
        for (const auto method : methods) {
            demand_at_most(method(warmer, tables).kpa, method(pour, tables).kpa, "warmer");
        }
    });
}

TEST_CASE("what is not known never presses less than what is") {
    holds([] {
        const FormCase pour = any_pour();
        const auto& tables = form_tables_in(any_system());
        FormCase unknown = pour;
        const int which = *rc::gen::inRange(0, 6).as("what is not known");
        if (which == 0) {
            unknown.rise_m_h.reset();
        } else if (which == 1) {
            unknown.temperature_c.reset();
        } else if (which == 2) {
            unknown.highest_slump_mm.reset();
        } else if (which == 3) {
            unknown.retards.reset();
        } else if (which == 4) {
            unknown.cement = core::FormCement::unknown;
        } else {
            unknown.slag_percent.reset();
            unknown.cement =
                pour.cement == core::FormCement::portland ? core::FormCement::unknown : pour.cement;
        }
        for (const auto method : methods) {
            demand_at_most(method(pour, tables).kpa, method(unknown, tables).kpa, "known");
        }
    });
}

TEST_CASE("both systems of units press alike where the formula governs") {
    holds([] {
        FormCase pour = any_pour();
        pour.rise_m_h = between(0.1, 2.0, "slow rise, m/h"); // between the cases of both prints
        pour.fresh_density_kg_m3 = between(2245, 2395, "density, kg/m3");
        const auto us = core::aci_form_pressure(pour, form_tables_in(UnitSystem::us));
        const auto si = core::aci_form_pressure(pour, form_tables_in(UnitSystem::si));
        using enum core::PressureGovernor;
        const bool same_case =
            *pour.pour_height_m < 4.2 || *pour.pour_height_m > 14 * foot_m + 1e-9;
        // the prints bound the side of a column by 6.5 ft and by 2 m
        const bool same_plan =
            !pour.column || pour.column->long_side_m < 6.5 * foot_m || pour.column->long_side_m > 2;
        if (us.governed_by == formula && si.governed_by == formula && same_case && same_plan) {
            demand_same(us.kpa, si.kpa, 0.005, "US and SI");
        }
    });
}

TEST_CASE("an allowed rate of rise stays within the design, a faster one passes it") {
    holds([] {
        FormCase pour = any_pour();
        const auto& tables = form_tables_in(any_system());
        const double design_kpa = between(10, 120, "design, kPa");
        for (const auto method : methods) {
            const auto allowed = core::allowable_rise(pour, design_kpa, tables, method);
            if (!allowed.rise_m_h) {
                continue;
            }
            pour.rise_m_h = allowed.rise_m_h;
            demand_at_most(method(pour, tables).kpa, design_kpa, "allowed");
            *pour.rise_m_h *= 1.0001;
            demand_at_most(design_kpa, method(pour, tables).kpa, "faster");
            demand_at_most(*allowed.usable_m_h, *allowed.rise_m_h, "usable");
        }
    });
}

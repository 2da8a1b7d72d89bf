#pragma once

#include <boardmark/core/basis/deferred.hpp>
#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/checks/finish_tables.hpp>
#include <boardmark/core/code/alkali_rules.hpp>
#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/forms/form_tables.hpp>
#include <boardmark/core/method/method_tables.hpp>
#include <boardmark/core/mix/grading_rules.hpp>
#include <boardmark/core/mix/practice_tables.hpp>
#include <boardmark/core/panels/panel_tables.hpp>
#include <boardmark/core/placing/placing_tables.hpp>
#include <boardmark/core/strength/strength_tables.hpp>
#include <boardmark/core/trial/trial_tables.hpp>
#include <boardmark/core/wall/bar_size.hpp>
#include <boardmark/core/wall/joint_tables.hpp>
#include <boardmark/core/weather/heat_tables.hpp>
#include <boardmark/core/weather/weather_tables.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// Every published number that a calculation uses, in one system of units. What only some
/// calculations ask for is made when the first one does.
struct Tables {
    UnitSystem system;
    double water_density_kg_m3; ///< as the handbooks of that system print it
    MethodTables method;
    Deferred<CodeTables> code;
    PracticeTables practice;
    Deferred<TrialTables> trial;
    Deferred<StrengthTables> strength;
    Deferred<HeatTables> heat;
    Deferred<ControlChartRules> control_chart;
    Deferred<FormTables> forms;
    Deferred<WeatherTables> weather;
    Deferred<PlacingTables> placing;
    Deferred<JointTables> joints;
    Deferred<FinishTables> finish;
    Deferred<GradingRules> grading;
    Deferred<AlkaliRules> alkali;
    Deferred<PanelTables> panels;
    Deferred<std::vector<BarSize>> bars; ///< of either system, each system's increasing
};

} // namespace boardmark::core

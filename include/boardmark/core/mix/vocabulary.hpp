#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/forms/form_tables.hpp>
#include <boardmark/core/strength/strength_tables.hpp>
#include <boardmark/core/wall/bar_size.hpp>

#include <functional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// Words that the published tables know, so that the file's own can be held against them.
struct Vocabulary {
    std::vector<std::string> codes;
    std::vector<double> fineness_sieves_mm;
    std::vector<StrengthClass> strength_classes; ///< of results that a mix names
    double line_confidence;                      ///< of the lower side of a line, 0 to 1
    double strength_age_tolerance_d = 0;         ///< within which a test is one of the strength age
    std::vector<BarSize> bars = {};              ///< of walls
    CodeTables code = {};                        ///< whose classes a mix may state
    FlowClasses flow_classes = {};               ///< against which a wall's class of flow is held
    std::function<Tables(UnitSystem)> tables = {}; ///< that judge results
    std::vector<std::string> alkali_levels = {};   ///< of prevention
};

} // namespace boardmark::core

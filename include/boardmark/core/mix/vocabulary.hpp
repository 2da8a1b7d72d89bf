#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/class_names.hpp>
#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/forms/form_tables.hpp>
#include <boardmark/core/mix/requirements.hpp>
#include <boardmark/core/strength/strength_tables.hpp>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;
struct PrintedCode;

/// A class by which a strength may be stated. A strength that it does not name is absent.
struct StrengthName {
    std::string name; ///< "C30/37", "M40"
    std::optional<double> cylinder_mpa;
    std::optional<double> cube_mpa;
};

/// Words that the published tables know, so that the file's own can be held against them.
struct Vocabulary {
    std::vector<std::string> codes;
    std::vector<double> fineness_sieves_mm;
    std::vector<StrengthClass> strength_classes; ///< of results that a mix names
    double line_confidence;                      ///< of the lower side of a line, 0 to 1
    double strength_age_tolerance_d = 0;         ///< within which a test is one of the strength age
    FlowClasses flow_classes = {};               ///< against which a wall's class of flow is held
    /// That judge results, and name bars and levels of prevention.
    std::function<const Tables&(UnitSystem)> tables = {};
    /// One of `codes`, the first for an empty name; it outlives the vocabulary.
    std::function<const CodeTables&(const std::string&, UnitSystem)> code_named = {};
    /// Of one of `codes`, the same in both systems: quicker than all that the code asks.
    std::function<const ClassNames&(const std::string&)> class_names = {};
    std::vector<StrengthName> strength_names = {}; ///< that `requirements.strength` may be
    /// The tables of a code that a user's file prints, which the reader has found sound.
    std::function<CodeTables(const PrintedCode&, UnitSystem)> code_of_print = {};

    /// The code whose limits apply: the one named, or the user's own file.
    const CodeTables& code_of(const Requirements& requirements, UnitSystem system) const;
};

} // namespace boardmark::core

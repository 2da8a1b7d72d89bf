#pragma once

#include <boardmark/core/basis/size_row.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/typical_figure.hpp>
#include <boardmark/core/code/addition.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// How much of an addition counts beside cement in w/(c + k·a).
struct CountedAddition {
    Addition addition;
    double k;
    double most_of_cement;                   ///< mass that counts at most, of plain cement's mass
    std::optional<double> most_of_composite; ///< of a composite cement's; absent: none counts
    std::optional<double> low_k;             ///< in some categories above a ratio, instead of k
    std::optional<double> low_k_above_w_c;   ///< that ratio; nothing: at any
    std::vector<std::size_t> low_k_categories;
    std::vector<std::size_t> barred_classes; ///< of CodeTables::classes: there none of it counts
    std::string standard; ///< that the addition has to meet, "EN 450"; empty: not said
    std::string doubt;    ///< why the figure is no rule; empty where it is one
    Source source;
    std::optional<double> relief_above_kg_m3; ///< least cement falls by k times what exceeds this
    std::optional<double> most_relief_kg_m3;  ///< and by no more than so much
    double most_relief_up_to_kg_m3; ///< a least cement above this falls by more; may be infinite
    bool together_by_k = false;     ///< with the cement it reaches the least by k times what counts
    Source relief_source;
};

/// What a code counts as binder, and how much of it.
struct BinderRules {
    bool by_k = false; ///< only cement and counted additions; else all cementitious material
    std::vector<CountedAddition> additions = {};
    std::string cement_standard = {};      ///< for which k is given, "EN 197-1"; empty: not said
    /// Where that all counts is itself a rule in doubt; without a citation where no rule says it.
    std::optional<Source> all_counts = {};
    std::optional<SizeRow> cement_by_size = {}; ///< added to the least cement by nominal max size
    std::optional<TypicalFigure> most_cement_kg_m3 = {}; ///< without additions
};

} // namespace boardmark::core

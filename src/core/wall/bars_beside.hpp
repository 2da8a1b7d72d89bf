#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/wall/joint_layout.hpp>
#include <boardmark/core/wall/wall.hpp>

namespace boardmark::core {

/// Holds the cover of a run at the grooves of its contraction joints too: a `watch` where bars have
/// to stop or to move there for it, a failure where a groove reaches them.
///
/// @param cover of the run, held against the least of its face
void hold_cover_at_grooves(const JointLayout& joints, const Reinforcement& bars, Check& cover);

/// Steel and cover are held by ACI 318, the only code of which such rules are known here: of a mix
/// by another code they hold nothing.
void watch_rule_of_another_code(const CodeTables& code, Check& check);

} // namespace boardmark::core

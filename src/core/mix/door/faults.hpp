#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/vocabulary.hpp>

#include "fault_list.hpp"

namespace boardmark::core {

/// Figures that a material states, each by itself and a table of its own by its order. False where
/// the kind is none, so that nothing more can be asked of it.
bool find_material_faults(const Material& material, const FaultList& list);

/// A dose of either basis.
///
/// @param none_itself  whether it may be 0
void find_dose_faults(Field field, const Dose& dose, const FaultList& list,
                      bool none_itself = false);

/// A slump before the reducer needs a high-range water reducer of which some goes in.
void find_flow_faults(const Mix& mix, const FaultList& list);

/// A code of the user's own: some classes, each of a category and with limits that are numbers.
void find_code_faults(const CodeTables& code, Field field, const FaultList& list);

void find_requirement_faults(const Requirements& requirements, UnitSystem system,
                             const Vocabulary& words, const FaultList& list);

void find_selection_faults(const Selections& selections, const FaultList& list);

/// A method that is one, and only selections that it knows.
void find_method_faults(Method method, const Selections& selections, const FaultList& list);

/// Some water, stated once.
void find_water_faults(const SubmittedMix& mix, const FaultList& list);

/// An amount that is stated once, as its material can be.
void find_amount_faults(const SubmittedAmount& amount, const FaultList& list);

/// Some cementitious material among the amounts.
void demand_binder(const SubmittedMix& mix, const FaultList& list);

/// Days, ages and prices of the papers of a job.
void find_paper_faults(const JobPapers& papers, const FaultList& list);

void find_supply_faults(const std::optional<Supply>& supply, const FaultList& list);

} // namespace boardmark::core

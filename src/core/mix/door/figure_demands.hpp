#pragma once

#include <boardmark/core/mix/mix.hpp>

#include "fault_list.hpp"

#include <vector>

namespace boardmark::core {

/// The figures of its materials that the calculation of a mix reads, and which may be missing.
class FigureDemands {
public:
    FigureDemands(const Mix& mix, const std::vector<double>& fineness_sieves_mm)
        : mix_{mix}
        , fineness_sieves_mm_{fineness_sieves_mm} {}

    /// Tells what a binder or an aggregate lacks.
    void demand_figures(const Material& material, const FaultList& list) const;

    /// Tells where the reduction of a dosed reducer is missing that saves water which the table
    /// asks for. None is asked of a dose of nothing, or where the dose is left to the trial.
    void demand_reduction(const Dosage& dosage, const FaultList& list) const;

private:
    bool selects_bulk_volume() const;

    const Mix& mix_;
    const std::vector<double>& fineness_sieves_mm_;
};

} // namespace boardmark::core

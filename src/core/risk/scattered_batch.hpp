#pragma once

#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/mix/complete_requirements.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/risk/risk.hpp>

#include "reduction_curve.hpp"
#include "scatter_plan.hpp"

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace boardmark::core {

struct Tables;

/// The quantities of one batch by RiskQuantity; not a number where the batch does not have it.
using RiskFigures = std::array<double, risk_quantities.size()>;

/// A batch of a mix whose weights and figures are off by random amounts, made again and again in
/// the same memory.
class ScatteredBatch {
public:
    /// @param batch  of 1 m3 of the mix, weighed without a fault
    ScatteredBatch(CompleteRequirements requirements, const Proportions& designed,
                   const Batch& batch, const ScatterPlan& plan, const Tables& tables);

    /// Weighs the masses of the mix, each off by its own error, and finds what concrete they make.
    ///
    /// @param normals  one standard normal number for each dimension of the plan
    RiskFigures make(std::span<const double> normals);

    /// What it last became, 1 m3 of it.
    const Proportions& found() const { return found_; }

private:
    /// What stays the same of an ingredient from batch to batch.
    struct Planned {
        double weighed_kg;
        double moisture_percent;
        double absorption_percent;
        std::optional<double> relative_density; ///< as the papers state it
        bool is_oven_dry;                       ///< that relative density
        double liquid_part;
        std::optional<ReductionCurve> reduction;
    };

    double off(DimensionIndex dimension) const;
    double weighed_kg(std::size_t ingredient) const;
    void weigh_aggregate(std::size_t ingredient);
    void weigh_other(std::size_t ingredient);
    void set_mass(Ingredient& ingredient, double kg, std::optional<double> relative_density) const;
    void weigh();
    double volume_m3() const;
    void per_m3(double volume_m3);
    void update_selection();
    double left_by_reducers() const;
    double tested_mpa() const;

    const Requirements& requirements_;
    const ScatterPlan& plan_;
    const Tables& tables_;
    std::vector<Planned> planned_;
    std::span<const double> normals_;
    double free_water_kg_ = 0;
    double air_percent_ = 0;
    double designed_air_percent_;
    bool volume_is_known_;
    Proportions found_;
};

} // namespace boardmark::core

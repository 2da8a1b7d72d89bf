#pragma once

#include <boardmark/core/mix/material.hpp>

#include <memory>
#include <utility>

namespace boardmark::core {

/// A material that a mix and its results hold together: copying one copies a reference. It never
/// changes under another holder.
class SharedMaterial {
public:
    /// No material: that of water and air.
    SharedMaterial() = default;

    SharedMaterial(Material material)
        : material_{std::make_shared<Material>(std::move(material))} {}

    explicit operator bool() const { return material_ != nullptr; }
    operator const Material&() const { return *material_; }
    const Material& operator*() const { return *material_; }
    const Material* operator->() const { return material_.get(); }

    /// The material to be changed for this holder alone: what others hold stays as it is.
    Material& edit() {
        material_ = std::make_shared<Material>(*material_);
        return *material_;
    }

private:
    std::shared_ptr<Material> material_;
};

/// A material and its share of the binder, the coarse or the fine aggregate.
struct Share {
    SharedMaterial material;
    double percent; ///< by mass (aggregates: SSD); the shares of one blend add up to 100
};

/// An admixture and its dose; no dose means "as needed", found by trial.
struct Dosage {
    SharedMaterial material;
    std::optional<Dose> dose;

    /// Whether the dose is stated as nothing.
    bool is_none() const { return dose && dose->amount == 0; }
};

} // namespace boardmark::core

#pragma once

#include <boardmark/core/mix/designated_parts.hpp>
#include <boardmark/core/mix/material.hpp>

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace boardmark::core {

// What a material's kind or figures contradict of its standard, as far as the standard is known:
// nothing is asked of a standard that is not. The reader tells it at the key, the door of a mix by
// the field.

/// Kinds of addition that a standard is written for, from memory.
struct StandardOfAddition {
    std::string_view number; ///< "C989"
    std::vector<Kind> kinds;
};
std::span<const StandardOfAddition> standards_of_additions();

/// The one that an addition's designation names although it is of another kind, or nullptr.
const StandardOfAddition* standard_of_another_addition(const Material& binder);

/// Whether an admixture's designation names types that its kind does not have.
bool is_type_of_another_kind(const Material& admixture);

/// Whether its designation delays setting, and no admixture of its kind does.
bool delays_as_its_kind_never_does(const Material& admixture);

/// Whether the standard is one of another kind of cement, addition or admixture.
bool is_standard_of_another_kind(const Material& material);

/// A part of a blended cement of which `contains` states another percentage than its designation,
/// beyond the points by which a delivery may miss it.
struct PartMismatch {
    DesignatedPart designated;
    double stated_percent;
};
std::optional<PartMismatch> part_mismatch(const Material& cement);

/// Whether an admixture that delays setting, by its kind or its standard, is said not to.
bool denies_retarding(const Material& admixture);

/// Whether an aggregate is of a standard of lightweight aggregate, which no method here knows.
bool is_lightweight(const Material& aggregate);

} // namespace boardmark::core

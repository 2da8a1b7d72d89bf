#pragma once

#include <boardmark/core/mix/complete.hpp>
#include <boardmark/core/strength/strength_record.hpp>

namespace boardmark::core {

/// Strength results that can be judged.
using CompleteRecord = Complete<StrengthRecord>;

/// The way of strength results into the computation: complete ones, or every fault of them, field
/// by field.
///
/// What is demanded: numbers finite and in the range that their member states; a code, an assessment
/// and a shape that are some; cylinders where ACI judges; the day of casting of each batch of
/// production; batches, specimens and cores with a name of their own, each specimen and each core
/// of a batch that is there; days of a core in their order.
std::variant<CompleteRecord, Faults> complete(StrengthRecord record);

/// All faults of strength results; none of complete ones.
Faults faults_of(const StrengthRecord& record);

} // namespace boardmark::core

#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/size_row.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/requirements.hpp>

#include "../code/stated_classes.hpp"

#include <optional>

namespace boardmark::core {

struct Tables;

/// The stated class that asks for air against freezing and thawing, or nullptr.
const ExposureClass* freezing_class(const StatedClasses& classes, const CodeTables& code);

/// The row of the code's air table that a class asks for, or nullptr where it asks for none.
const SizeRow* demanded_air(const ExposureClass* freezing);

/// An air content and the stone it is held against.
struct AirAtSize {
    double percent;
    double size_mm;
};

/// Whether an air content is so far above the entrapped one that it must be entrained. Nothing
/// where the table of entrapped air does not reach the size.
std::optional<bool> is_entrained(AirAtSize air, const Tables& tables);

/// What is left at placing of the air of a batch. Only entrained air is counted as lost.
double at_placing_percent(double in_batch_percent, bool entrained,
                          const Requirements& requirements);

/// The air, and which columns of the method's tables apply.
struct AirContent {
    double in_batch_percent; ///< it fills the volume
    double at_placing_percent;
    bool entrained;
};
/// Unresolved where the table does not reach the size.
Outcome<AirContent> select_air(const Mix& mix, const StatedClasses& classes, double size_mm,
                               const Tables& tables, Worksheet& worksheet);

} // namespace boardmark::core

#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/class_names.hpp>
#include <boardmark/core/code/code_tables.hpp>

#include "code_data.hpp"

#include <cstddef>
#include <string_view>
#include <vector>

namespace boardmark::reference {

/// The categories of a code's exposure table, in its order.
std::vector<core::ExposureCategory> categories_of(const EmbeddedTable& printed);

/// The place of a category. Asserts that it is one of them.
std::size_t category_named(std::string_view name,
                           const std::vector<core::ExposureCategory>& categories);

/// The classes of a code with all that they ask.
std::vector<core::ExposureClass>
exposure_classes_of(const CodeData& data, const std::vector<core::ExposureCategory>& categories,
                    core::UnitSystem system);

/// Whether a mix may have more classes of one category.
bool several_of_category(const CodeData& data);

/// The names of its classes alone.
core::ClassNames class_names(const CodeData& data);

/// An addition as tables name it. Asserts that the name is known.
core::Addition addition_named(std::string_view name);

} // namespace boardmark::reference

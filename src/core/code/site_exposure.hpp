#pragma once

#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/mix/requirements.hpp>

namespace boardmark::core {

/// Records each class that follows from the site with its reason, also where a stated one wins.
void record_site(const Requirements& requirements, const CodeTables& code, Worksheet& worksheet);

/// Whether nobody states the class and the site gives it.
bool is_by_site(const std::string& name, const Requirements& requirements);

/// The class of a category among `exposure`, or nullptr.
const ExposureClass* class_in_force(const Requirements& requirements, std::size_t category,
                                    const CodeTables& code);

} // namespace boardmark::core

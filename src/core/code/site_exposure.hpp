#pragma once

#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/requirements.hpp>

namespace boardmark::core {

struct Tables;

/// Records each class that follows from the site with its reason, also where a stated one wins.
void record_site(const Requirements& requirements, const Tables& tables, Worksheet& worksheet);

/// The class of a category among `exposure`; empty where there is none.
std::string class_in_force(const Requirements& requirements, char category);

} // namespace boardmark::core

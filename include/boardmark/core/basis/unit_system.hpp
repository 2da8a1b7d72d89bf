#pragma once

namespace boardmark::core {

/// Which of the two published families of tables and constants applies.
enum class UnitSystem { us, si };

} // namespace boardmark::core

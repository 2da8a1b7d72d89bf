#include <boardmark/core/mix/vocabulary.hpp>

namespace boardmark::core {

const CodeTables& Vocabulary::code_of(const Requirements& requirements, UnitSystem system) const {
    return requirements.code_file ? *requirements.code_file : code_named(requirements.code, system);
}

} // namespace boardmark::core

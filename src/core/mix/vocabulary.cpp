#include <boardmark/core/mix/vocabulary.hpp>

namespace boardmark::core {

const CodeTables& Vocabulary::code_of(const std::string& name) const {
    return name.empty() || !code_named || name == codes.front() ? *code : code_named(name);
}

const CodeTables& Vocabulary::code_of(const Requirements& requirements) const {
    return requirements.code_file ? *requirements.code_file : code_of(requirements.code);
}

} // namespace boardmark::core

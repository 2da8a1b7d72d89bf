#include <boardmark/reference/tables.hpp>

#include "form_tables.hpp"
#include "kept_codes.hpp"
#include "lookup.hpp"
#include "method_tables.hpp"
#include "printed_code.hpp"
#include "strength_tables.hpp"

namespace boardmark::reference {

namespace {

core::Vocabulary words_of_tables() {
    constexpr double percent = 100;
    constexpr auto system = core::UnitSystem::si; // what is taken of them is the same in both
    const EmbeddedTable& practice = table("practice");
    core::Vocabulary words{
        .codes = codes(),
        .fineness_sieves_mm = fineness_sieves_mm(),
        .strength_classes = strength_classes(),
        .line_confidence = constant(practice, "line_confidence", system) / percent,
        .strength_age_tolerance_d = constant(practice, "strength_age_tolerance", system),
        .flow_classes = flow_classes(),
        .tables = tables};
    words.code_named = [](const std::string& name,
                          core::UnitSystem asked) -> const core::CodeTables& {
        return *kept_code(name, asked);
    };
    words.class_names = names_of_classes;
    words.strength_names = strength_names();
    words.code_of_print = code_of_print;
    return words;
}

} // namespace

const core::Vocabulary& vocabulary() {
    static const core::Vocabulary words = words_of_tables();
    return words;
}

} // namespace boardmark::reference

#include <boardmark/reference/tables.hpp>

#include "alkali_rules.hpp"
#include "bar_sizes.hpp"
#include "code_tables.hpp"
#include "form_tables.hpp"
#include "method_tables.hpp"
#include "strength_tables.hpp"

namespace boardmark::reference {

core::Vocabulary vocabulary() {
    constexpr double percent = 100;
    constexpr auto system = core::UnitSystem::si; // what is taken of them is the same in both
    const core::StrengthTables strength = strength_tables(system);
    core::Vocabulary words{.codes = codes(),
                           .fineness_sieves_mm = method_tables(system).fineness_sieves_mm,
                           .strength_classes = strength.classes,
                           .line_confidence = strength.confidence_percent.value / percent,
                           .strength_age_tolerance_d = strength.age_tolerance_d.value,
                           .bars = bar_sizes(),
                           .code = first_code(system),
                           .flow_classes = form_tables(system).flow,
                           .tables = tables};
    for (const core::AlkaliLevel& level : alkali_rules(system).levels) {
        words.alkali_levels.push_back(level.name);
    }
    return words;
}

} // namespace boardmark::reference

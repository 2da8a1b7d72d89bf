#include <boardmark/reference/tables.hpp>

namespace boardmark::reference {

core::Vocabulary vocabulary() {
    constexpr double percent = 100;
    const core::Tables known = tables(core::UnitSystem::si);
    const core::StrengthTables& strength = known.strength;
    return {.codes = codes(),
            .fineness_sieves_mm = known.method.fineness_sieves_mm,
            .strength_classes = strength.classes,
            .line_confidence = strength.confidence_percent.value / percent,
            .strength_age_tolerance_d = strength.age_tolerance_d.value,
            .bars = known.bars,
            .code = known.code,
            .flow_classes = known.forms.flow,
            .tables = tables};
}

} // namespace boardmark::reference

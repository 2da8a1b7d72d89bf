#include <boardmark/reference/tables.hpp>

namespace boardmark::reference {

core::Vocabulary vocabulary() {
    constexpr double percent = 100;
    const core::Tables known = tables(core::UnitSystem::si);
    const core::StrengthTables& strength = known.strength;
    core::Vocabulary words{.codes = codes(),
                           .exposure_classes = {},
                           .fineness_sieves_mm = known.method.fineness_sieves_mm,
                           .strength_classes = strength.classes,
                           .line_confidence = strength.confidence_percent.value / percent,
                           .strength_age_tolerance_d = strength.age_tolerance_d.value,
                           .bars = known.bars,
                           .site = known.code.site,
                           .flow_classes = known.forms.flow,
                           .tables = tables};
    for (const ExplainedClass& exposure : exposure_classes()) {
        words.exposure_classes.push_back(exposure.name);
    }
    for (const core::AlkaliLevel& level : known.alkali.levels) {
        words.alkali_levels.push_back(level.name);
    }
    return words;
}

} // namespace boardmark::reference

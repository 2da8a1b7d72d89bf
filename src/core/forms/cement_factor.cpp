#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "pressure_rules.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {
namespace {

struct Group {
    CementCoefficients coefficients;
    std::string name;
    bool known;
};

/// Slag and ash count together by their parts of either bound: no print says so, the safe side.
bool is_rich(const FormCase& pour, const FormTables& forms) {
    const double part = pour.slag_percent.value_or(0) / forms.high_slag_percent.value +
                        pour.fly_ash_percent.value_or(0) / forms.high_fly_ash_percent.value;
    return !below(part, 1);
}

Group group_of(const FormCase& pour, const CementGroups& groups, const FormTables& forms) {
    const bool blend_known = pour.slag_percent && pour.fly_ash_percent;
    if (is_rich(pour, forms)) {
        return {groups.rich_blend, "a blend rich in slag or fly ash", true};
    }
    if (pour.cement == FormCement::portland) {
        return {groups.portland, "portland cement Type I, II or III alone", true};
    }
    if (pour.cement == FormCement::blend && blend_known) {
        return {groups.blend, "another type of cement or a blend", true};
    }
    return {groups.rich_blend, "cementitious material not known well enough, so the highest",
            false};
}

} // namespace

CementFactor cement_factor(const FormCase& pour, const CementGroups& groups, const Tables& tables) {
    const Group group = group_of(pour, groups, tables.forms);
    const bool retarder = pour.retards.value_or(true);
    const char* admixture = !pour.retards   ? "admixtures not stated to be non-retarding"
                            : *pour.retards ? "an admixture that delays setting"
                                            : "no admixture that delays setting";
    CementFactor factor{
        retarder ? group.coefficients.retarder : group.coefficients.no_retarder,
        {"{cement}; {admixture}", {word("cement", group.name), word("admixture", admixture)}},
        {}};
    if (!group.known || !pour.retards) {
        factor.marks.push_back(Mark::estimate);
    }
    return factor;
}

} // namespace boardmark::core

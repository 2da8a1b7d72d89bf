#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/checks/code_judgement.hpp>
#include <boardmark/core/code/site.hpp>

#include "checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// What a code asks, in the order of `assess`.
std::vector<Check> asked_by_code(const Requirements& requirements, const Proportions& proportions,
                                 const Tables& tables, const CodeTables* specified_by) {
    std::vector<Check> told;
    Findings findings{told};
    const CodeCase code_case{requirements, proportions, tables, specified_by};
    const CheckContext& context = code_case.context();
    check_demanded_ratio(context, findings);
    check_demanded_strength(context, findings);
    check_demanded_air(context, findings);
    check_demanded_shares(context, findings);
    check_demanded_cement(context, findings);
    check_sulfate_cement(context, findings);
    check_chloride(context, findings);
    check_code_scope(context, findings);
    check_exposure_statement(context, findings);
    check_site(context, findings);
    return told;
}

/// What is asked of the same concrete by another code.
Requirements asked_in(const CodeTables& code, const Requirements& own) {
    Requirements asked = own;
    asked.code = code.name;
    asked.code_file.reset();
    asked.exposure.clear();
    asked.exposure_by_site.clear();
    const auto stated = std::ranges::find(own.exposure_by_code, code.name, &ClassesByCode::code);
    if (stated != own.exposure_by_code.end()) {
        asked.exposure = stated->exposure;
    }
    if (std::ranges::count(code.chloride.classes_for(asked.reinforced), asked.chloride_class,
                           &ChlorideClass::name) == 0) {
        asked.chloride_class.clear();
    }
    add_site_classes(asked, code);
    return asked;
}

} // namespace

CodeJudgement judged_by_own_code(CompleteRequirements requirements, const Proportions& proportions,
                                 const Tables& tables) {
    const Requirements& asked = requirements;
    return {tables.code->name, tables.code->edition, asked.exposure,
            asked_by_code(asked, proportions, tables, nullptr)};
}

CodeJudgement judged_by_other_code(CompleteRequirements requirements,
                                   const Proportions& proportions, const Tables& tables,
                                   const CodeTables& code) {
    Tables others = tables;
    others.code = code;
    const Requirements asked = asked_in(code, requirements);
    return {code.name, code.edition, asked.exposure,
            asked_by_code(asked, proportions, others, &*tables.code)};
}

} // namespace boardmark::core

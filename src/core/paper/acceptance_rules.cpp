#include "acceptance_rules.hpp"

#include <string>

namespace boardmark::core {
namespace {

/// The work of a code without its edition: the rules of acceptance did not change with it.
bool is_of_code(const Source& source, const std::string& code) {
    const std::string work = code.substr(0, code.rfind('-'));
    return !work.empty() && source.citation.rfind(work, 0) == 0;
}

} // namespace

AcceptedBy accepted_by(const PaperCase& papers) {
    const StrengthTables& strength = papers.tables.strength;
    const std::string& code = papers.asked.code;
    if (papers.tables.code->of_user) { // whatever it is named, its rules are its own
        return AcceptedBy::not_known;
    }
    return is_of_code(strength.aci.source, code)  ? AcceptedBy::averages
           : is_of_code(strength.en.source, code) ? AcceptedBy::identity
                                                  : AcceptedBy::not_known;
}

double single_test_least_mpa(const PaperCase& papers) {
    const StrengthTables& strength = papers.tables.strength;
    const double specified_mpa = papers.asked.strength_mpa;
    if (accepted_by(papers) == AcceptedBy::identity) {
        return specified_mpa - strength.en.single_test_allowance_mpa;
    }
    const AciAcceptance& rules = strength.aci;
    return specified_mpa <= rules.step_mpa * (1 + 1e-9)
               ? specified_mpa - rules.single_test_allowance_mpa
               : rules.single_test_fraction * specified_mpa;
}

double identity_margin_mpa(const PaperCase& papers, int tests) {
    const EnConformity& rules = papers.tables.strength->en;
    return tests < 2                           ? 0
           : tests <= rules.identity_few_tests ? rules.identity_few_margin_mpa
                                               : rules.identity_more_margin_mpa;
}

} // namespace boardmark::core

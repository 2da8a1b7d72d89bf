#include "../basis/phrases.hpp"
#include "../checks/strength_record_checks.hpp"
#include "cored_tests.hpp"

namespace boardmark::core {
namespace {

const Source custom_of_the_trade{"common practice, no source", Confidence::common_practice};

/// What is low: single tests by name, or averages alone.
struct LowResults {
    std::vector<std::string> tests;
    bool averages = false;
};

LowResults low_results(const StrengthFindings& findings) {
    LowResults low;
    for (const JudgedTest& judged : findings.tests) {
        if (judged.verdict == Verdict::fails) {
            low.tests.push_back(judged.test.batch.name);
        }
        low.averages = low.averages || judged.mean_verdict == Verdict::fails;
    }
    return low;
}

WayStep specimens_step(const LowResults& low) {
    return {"specimens and handling",
            {"{tests}: look at how the specimens were sampled, made, kept on site, carried, capped "
             "and crushed, and at the range within the test, before anybody doubts the concrete; a "
             "test is struck out only for a fault that somebody saw",
             {word("tests", named(low.tests))}},
            custom_of_the_trade};
}

WayStep held_step() {
    return {"held specimens",
            {"crush what was held back of the same sample and write down its age: it tells whether "
             "the low test stands alone, and takes its place no more than the early ones do",
             {}},
            custom_of_the_trade};
}

WayStep calculation_step(const Source& source) {
    return {"calculation",
            {"the licensed engineer says which strength this place needs, at the age of its load; "
             "where the found strength is enough, that settles it",
             {}},
            source};
}

WayStep in_place_step() {
    return {"in place",
            {"rebound hammer or pulse velocity compare the place with concrete whose tests were "
             "good and show where cores are worth most; they accept nothing",
             {}},
            {"UFGS 03311, in-place testing", Confidence::read}};
}

WayStep cores_step(const LowResults& low, const CoreRules& rules) {
    return {
        "cores",
        {"only where low strength is likely and the calculation shows harm: {cores} cores for "
         "each of {tests}, clear of bars and {off} from joints; bagged within {bagged}, every "
         "one dated; enter them under 'cores'",
         {quantity("cores", {rules.cores.value, Measure::count}), word("tests", named(low.tests)),
          quantity("off", {rules.off_joint_mm.value, Measure::length}),
          quantity("bagged", {rules.bagged_h.value, Measure::duration})}},
        rules.cores.source};
}

WayStep judging_step(const StrengthRecord& record, const CoreRules& rules) {
    return {"judging the cores",
            {"enough where {cores} average {average} ({average_of} of the specified) and none has "
             "less than {single} ({single_of}); places whose cores scatter may be cored again",
             {quantity("cores", {rules.cores.value, Measure::count}),
              quantity("average",
                       {rules.average_fraction.value * record.specified_mpa, Measure::strength}),
              percent_of("average_of", 100 * rules.average_fraction.value),
              quantity("single",
                       {rules.single_fraction.value * record.specified_mpa, Measure::strength}),
              percent_of("single_of", 100 * rules.single_fraction.value)}},
            rules.average_fraction.source};
}

WayStep decision_step(const Source& source) {
    return {"who decides",
            {"what stays in doubt is for the licensed engineer and the building official: strength "
             "evaluation, strengthening or removal; until then no load comes on it and no prop is "
             "taken away",
             {}},
            source};
}

WayStep averages_step(const LowResults& low, const Source& source) {
    return {"later concrete",
            {low.tests.empty()
                 ? "an average is low and no single test: the code asks for no cores for that "
                   "alone, but the average of what comes must be raised at once, less water or "
                   "more cementitious material, with new trials; the contract may ask more"
                 : "an average is low as well: raise the average of what comes at once, less water "
                   "or more cementitious material, with new trials",
             {}},
            source};
}

std::vector<WayStep> way_by_aci(const StrengthRecord& record, const LowResults& low,
                                const StrengthTables& tables) {
    std::vector<WayStep> steps;
    const CoreRules& rules = tables.cores;
    if (!low.tests.empty()) {
        steps = {specimens_step(low),
                 held_step(),
                 calculation_step(rules.cores.source),
                 in_place_step(),
                 cores_step(low, rules),
                 judging_step(record, rules),
                 decision_step(rules.average_fraction.source)};
    }
    if (low.averages) {
        steps.push_back(averages_step(low, tables.aci.source));
    }
    return steps;
}

std::vector<WayStep> way_by_en(const LowResults& low) {
    std::vector<WayStep> steps;
    if (!low.tests.empty()) {
        steps = {specimens_step(low), held_step()};
    }
    steps.push_back({"producer",
                     {"the producer tells the user of the nonconformity, finds its reason and "
                      "which deliveries it touches",
                      {}},
                     {"EN 206, nonconformity of the product", Confidence::from_memory}});
    steps.push_back({"concrete in place",
                     {"whether the structure has its strength is judged by EN 13791 with cores, "
                      "whose rules are not built here; the structural engineer plans them",
                      {}},
                     custom_of_the_trade});
    steps.push_back(decision_step(custom_of_the_trade));
    return steps;
}

} // namespace

std::vector<WayStep> way_on(const StrengthRecord& record, const StrengthFindings& findings,
                            const StrengthTables& tables) {
    const LowResults low = low_results(findings);
    if (low.tests.empty() && !low.averages) {
        return {};
    }
    return record.code == AcceptanceCode::aci_318 ? way_by_aci(record, low, tables)
                                                  : way_by_en(low);
}

} // namespace boardmark::core

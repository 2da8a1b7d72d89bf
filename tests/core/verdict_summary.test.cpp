// The headline of a result, and the state of its verdict.

#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/report/writing/words.hpp>

#include <catch2/catch.hpp>

using namespace boardmark;
using core::Check;
using core::Verdict;
using core::VerdictState;

namespace {

Check check(std::string id, Verdict verdict) {
    return {.id = std::move(id), .verdict = verdict, .requirement = ""};
}

std::string said(const core::VerdictSummary& summary) {
    return report::words(core::headline_of(summary, "DO NOT USE"), core::UnitSystem::us);
}

} // namespace

TEST_CASE("a headline counts and names by verdict, the worst first") {
    struct Case {
        std::vector<Check> checks;
        VerdictState state;
        std::string headline;
    };
    const Check held = check("h", Verdict::holds);
    const Check watched = check("w", Verdict::watch);
    const Check open = check("n", Verdict::not_checked);
    const Check failing = check("f", Verdict::fails);
    const auto [checks, state, headline] = GENERATE_COPY(values<Case>({
        {{held, held}, VerdictState::holds, "All 2 checks hold."},
        {{held}, VerdictState::holds, "The one check holds."},
        {{}, VerdictState::open, "Nothing was checked."},
        {{open}, VerdictState::open, "Nothing was checked; 1 not checked. Not checked: n."},
        {{held, open},
         VerdictState::open,
         "Nothing fails; 1 not checked, 1 holds. Not checked: n."},
        {{open, held, watched},
         VerdictState::watch,
         "Nothing fails; 1 to watch, 1 not checked, 1 holds. To watch: w. Not checked: n."},
        {{open, held, watched, failing},
         VerdictState::fails,
         "1 fails; 1 to watch, 1 not checked, 1 holds. DO NOT USE. Fails: f. To watch: w. "
         "Not checked: n."},
        {{failing, check("g", Verdict::fails), failing},
         VerdictState::fails,
         "2 fail. DO NOT USE. Fail: f, g."},
    }));
    const auto summary = core::verdicts_of(checks);
    CHECK(summary.state() == state);
    CHECK(said(summary) == headline);
}

TEST_CASE("parts are told together, and one without a mix is the worst of them") {
    auto summary = core::verdicts_of({check("a", Verdict::holds), check("b", Verdict::watch)});
    summary.add({check("b", Verdict::watch), check("a", Verdict::holds)});
    CHECK(summary.held == 2);
    CHECK(said(summary) == "Nothing fails; 1 to watch, 2 hold. To watch: b.");

    auto unmade = core::verdicts_of({check("a", Verdict::holds)});
    unmade.without_mix = {"w/cm 0.30"};
    CHECK(unmade.state() == VerdictState::fails);
    CHECK(said(unmade) ==
          "1 without a mix, nothing else fails; 1 holds. Without a mix: w/cm 0.30.");
    unmade.add({check("f", Verdict::fails)});
    CHECK(said(unmade) ==
          "1 without a mix, 1 fails; 1 holds. DO NOT USE. Without a mix: w/cm 0.30. Fails: f.");
}

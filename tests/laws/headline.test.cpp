// Laws of the headline: it says what the JSON says, and no strength that no check used.

#include <boardmark/core/checks/check_title.hpp>
#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/core/strength/expected_strength.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include "laws/mixes.hpp"

#include <nlohmann/json.hpp>

using namespace boardmark;
using namespace boardmark::test;
using core::Verdict;

namespace {

/// A drawn mix with its checks, as a result to be written.
struct Drawn {
    core::Mix mix = any_mix();
    const core::Tables& tables = tables_of(mix.system);
    core::Proportions proportions = solved(mix);
    std::vector<core::Check> checks = core::assess(entered(mix), proportions, tables);
    report::MixResult result{.command = "proportion",
                             .title = mix.title,
                             .requirements = mix.requirements,
                             .proportions = proportions,
                             .checks = checks};

    const core::Check& check(const std::string& id) const {
        const auto found = std::ranges::find(checks, id, &core::Check::id);
        RC_ASSERT(found != checks.end());
        return *found;
    }
};

/// Text without its line breaks and indents.
std::string on_one_line(const std::string& text) {
    std::string line;
    for (const char character : text) {
        const bool blank = character == '\n' || character == ' ';
        if (!blank) {
            line += character;
        } else if (!line.empty() && line.back() != ' ') {
            line += ' ';
        }
    }
    return line;
}

/// "To watch: Share of sand, Rate of rise."
std::string sentence(const nlohmann::json& ids, const std::string& heading) {
    std::string names;
    for (const std::string id : ids) {
        names += (names.empty() ? "" : ", ") + core::title_of(id);
    }
    return heading + ": " + names + ".";
}

/// "2 to watch"; nothing where there are none.
std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return count == 0 ? "" : std::to_string(count) + " " + (count == 1 ? one : many);
}

} // namespace

TEST_CASE("each sentence of a headline is in the verdict of the JSON") {
    holds([] {
        const Drawn drawn;
        const auto verdict = nlohmann::json::parse(report::json(drawn.result)).at("verdict");
        const std::string text =
            on_one_line(report::text(drawn.result, {.system = drawn.mix.system}));
        const bool all_hold = verdict.at("state") == "holds";
        RC_ASSERT((text.find(" checks hold. ") != std::string::npos) == all_hold);
        for (const auto& [key, count, heading] :
             {std::tuple{"failed", counted(verdict.at("failed").size(), "fails", "fail"),
                         verdict.at("failed").size() == 1 ? "Fails" : "Fail"},
              std::tuple{"watch", counted(verdict.at("watch").size(), "to watch", "to watch"),
                         "To watch"},
              std::tuple{"not_checked",
                         counted(verdict.at("not_checked").size(), "not checked", "not checked"),
                         "Not checked"}}) {
            const auto& ids = verdict.at(key);
            RC_ASSERT((ids.empty() || (text.find(count) != std::string::npos &&
                                       text.find(sentence(ids, heading)) != std::string::npos)));
        }
        const std::size_t held = verdict.at("held");
        RC_ASSERT((all_hold || held == 0 ||
                   text.find(", " + counted(held, "holds", "hold") + ".") != std::string::npos ||
                   text.find("; " + counted(held, "holds", "hold") + ".") != std::string::npos));
        RC_ASSERT((text.find(" Nothing fails; ") != std::string::npos) ==
                  (verdict.at("failed").empty() && !all_hold));
        RC_ASSERT(core::any_fails(drawn.checks) == !verdict.at("failed").empty());
    });
}

TEST_CASE("the strength drawn is the strength checked, and only strength designs for it") {
    holds([] {
        const Drawn drawn;
        const core::Check& average = drawn.check("strength.average");
        const auto figure =
            core::strength_over_ratio(drawn.mix.requirements, drawn.proportions, drawn.tables);
        if (figure.chosen_mpa) {
            RC_ASSERT(average.value.has_value());
            RC_ASSERT(*average.value == *figure.chosen_mpa);
            const auto& selection = drawn.proportions.selection;
            const double slack_mpa = 0.1; // what rounds to the limit is not a fail
            const double specified_mpa = selection.specified_strength_mpa;
            if (*average.value < specified_mpa - slack_mpa) {
                RC_ASSERT(average.verdict == Verdict::fails);
            } else if (*average.value < selection.required_average_strength_mpa - slack_mpa) {
                RC_ASSERT(average.verdict != Verdict::holds);
            }
        }
        const bool designed = average.message.text.starts_with("designed for");
        RC_ASSERT((!designed ||
                   drawn.proportions.selection.w_cm_governed_by == core::Governor::strength));
    });
}

// Laws of the verdicts on walls: a fact that is left out never helps, what holds shows its figures,
// and everything that is cast has its line.

#include <boardmark/core/wall/cast_part.hpp>

#include "laws/walls.hpp"

#include <map>

using namespace boardmark;
using namespace boardmark::test;
using core::Verdict;

namespace {

using Verdicts = std::map<std::pair<std::string, std::string>, Verdict>;

/// The worst verdict of each check and part; they sort from good to bad by what they allow.
Verdicts verdicts_on(const core::WallPlan& plan) {
    const auto leave = [](Verdict verdict) { return verdict == Verdict::holds; };
    Verdicts found;
    for (const auto* checks : {&plan.checks, &plan.mix_checks}) {
        for (const core::Check& check : *checks) {
            const auto place = std::pair{check.id, check.part};
            const auto [at, is_new] = found.emplace(place, check.verdict);
            if (!is_new && leave(at->second)) {
                at->second = check.verdict;
            }
        }
    }
    return found;
}

std::string told(Verdict verdict) {
    const std::map<Verdict, std::string> names{{Verdict::holds, "holds"},
                                               {Verdict::fails, "fails"},
                                               {Verdict::watch, "watch"},
                                               {Verdict::not_checked, "not checked"}};
    return names.at(verdict);
}

bool finite(const std::optional<double>& figure) {
    return !figure || std::isfinite(*figure);
}

} // namespace

TEST_CASE("leaving a fact out of a wall turns no verdict into one that holds") {
    // A check that failed or was watched stays, as it was or as one that could not be made: what
    // nobody knows may fail less surely, but it never holds and never goes without a line.
    holds([] {
        const core::Wall wall = any_wall_file();
        const Verdicts before = verdicts_on(planned(wall));
        const Fact fact = one_of(facts(), "fact");
        core::Wall less = wall;
        fact.leave_out(less);
        const Verdicts after = verdicts_on(planned(less));
        for (const auto& [place, verdict] : after) {
            const auto known = before.find(place);
            const std::string was = known == before.end() ? "absent" : told(known->second);
            if (verdict == Verdict::holds && was != "holds") {
                RC_FAIL("without " + fact.name + ": " + place.first + " of '" + place.second +
                        "' was " + was + " and holds");
            }
        }
        for (const auto& [place, verdict] : before) {
            if (verdict != Verdict::holds && !after.contains(place)) {
                RC_FAIL("without " + fact.name + ": " + place.first + " of '" + place.second +
                        "' was " + told(verdict) + " and has no line");
            }
        }
    });
}

TEST_CASE("a check of a wall that holds shows figures that are numbers") {
    holds([] {
        const core::WallPlan plan = planned(any_wall_file());
        for (const core::Check& check : plan.checks) {
            RC_ASSERT(finite(check.value));
            if (check.limit) {
                RC_ASSERT((finite(check.limit->low) && finite(check.limit->high)));
            }
            const bool of_a_kind = check.id == "ties.salt"; // no figure: stainless or glass fibre
            if (check.verdict == Verdict::holds && !of_a_kind) {
                RC_ASSERT(check.value.has_value());
                RC_ASSERT(check.limit.has_value());
            }
        }
    });
}

TEST_CASE("everything that is cast has a verdict or the reason why it has none") {
    holds([] {
        const core::Wall wall = any_wall_file();
        const Verdicts verdicts = verdicts_on(planned(wall));
        const bool reinforced = core::requirements_of(wall.mix).reinforced;
        for (const core::CastPart& part : core::cast_parts(wall)) {
            for (const char* id :
                 {"size.form", "joints.spacing", "lift.height", "forms.pressure", "forms.tie",
                  "stripping.age", "cover.least", "steel.horizontal"}) {
                const bool of_bars = std::string_view{id}.starts_with("cover.") ||
                                     std::string_view{id}.starts_with("steel.");
                if (!verdicts.contains({id, part.name}) && (reinforced || !of_bars)) {
                    RC_FAIL(std::string{id} + " has no line for " + part.name);
                }
            }
        }
    });
}

TEST_CASE("joints of walls and planters leave corners in one piece") {
    holds([] {
        const core::Wall wall = any_wall_file();
        const core::WallPlan plan = planned(wall);
        const double least_m = tables_of(wall.system).joints->contraction.least_apart_m.value;
        for (std::size_t i = 0; i < plan.runs.size(); ++i) {
            std::vector<double> kept_clear;
            if (i < wall.runs.size()) {
                kept_clear = {0, wall.runs[i].length_m};
                for (const core::Corner& corner : wall.runs[i].corners_at) {
                    kept_clear.push_back(corner.station_m);
                }
            } else {
                const core::Planter& planter = wall.planters.front();
                const double half_m = planter.length_m + planter.width_m;
                kept_clear = {0, planter.length_m, half_m, half_m + planter.length_m, 2 * half_m};
            }
            double before_m = -least_m;
            for (const double joint_m : plan.runs[i].joints.positions_m) {
                for (const double clear_m : kept_clear) {
                    demand_at_most(least_m, std::abs(joint_m - clear_m), "from end or corner");
                }
                demand_at_most(least_m, joint_m - before_m, "from joint to joint");
                before_m = joint_m;
            }
        }
    });
}

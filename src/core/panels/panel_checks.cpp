#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "panel_case.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace boardmark::core {
namespace {

const Source rule_of_panels{"common practice, no source", Confidence::common_practice};

Argument count_argument(const char* name, double count) {
    return quantity(name, {count, Measure::count});
}

Check open_check(CheckId id, const char* requirement, Phrase message) {
    return {.id = id,
            .verdict = Verdict::not_checked,
            .requirement = requirement,
            .source = rule_of_panels,
            .message = std::move(message)};
}

Check effects_check(const PanelCase& panels) {
    const PanelDesign& design = panels.programme.design;
    Check check = open_check(check_ids::panels_effects, "each question is answered", {});
    check.verdict = design.answers_all() ? Verdict::holds : Verdict::fails;
    check.value = design.rank;
    check.limit = Limit{.low = double(design.columns), .high = std::nullopt};
    check.measure = Measure::count;
    check.message = {
        "{panels} panels answer {value} of {limit} figures that the questions ask for, "
        "by the rank of the design matrix",
        {count_argument("panels", double(design.rows.size())), count_argument("value", design.rank),
         count_argument("limit", design.columns)}};
    return check;
}

/// "species with treatment, species with release agent and 3 more"
std::string pairs_named(const std::vector<PanelPair>& pairs, const PanelWishes& wishes) {
    constexpr std::size_t most_named = 2;
    std::string names;
    for (std::size_t i = 0; i < std::min(pairs.size(), most_named); ++i) {
        names += (i == 0 ? "" : ", ") + pair_words(pairs[i], wishes);
    }
    return pairs.size() > most_named
               ? names + " and " + std::to_string(pairs.size() - most_named) + " more"
               : names;
}

Check mixed_effects_check(const PanelCase& panels) {
    const PanelDesign& design = panels.programme.design;
    Check check = open_check(check_ids::panels_mixed_effects, "no effect is shifted by a pair", {});
    check.source = design.source.citation.empty() ? rule_of_panels : design.source;
    const auto worst = std::ranges::max_element(
        design.effects, {}, [](const PanelEffect& effect) { return effect.mixed_with.size(); });
    if (worst == design.effects.end()) {
        check.message = {"the panels do not answer the questions", {}};
        return check;
    }
    const auto mixed = std::ranges::count_if(
        design.effects, [](const PanelEffect& effect) { return !effect.mixed_with.empty(); });
    if (mixed == 0) {
        check.verdict = Verdict::holds;
        check.message = {"no pair of factors shifts an effect that is asked for", {}};
        return check;
    }
    const PanelWishes& wishes = panels.wishes();
    check.verdict = Verdict::watch;
    check.message = {
        "{mixed} of {all} effects shift where two factors do together what neither "
        "does alone; of {effect} it is {pairs}: ask for such a pair under "
        "'panels.questions', or cast more panels",
        {count_argument("mixed", double(mixed)),
         count_argument("all", double(design.effects.size())),
         word("effect", worst->beside ? pair_words({worst->factor, *worst->beside}, wishes)
                                      : factor_words(wishes.factors[worst->factor])),
         word("pairs", pairs_named(worst->mixed_with, wishes))}};
    return check;
}

Check repeat_check(const PanelCase& panels) {
    Check check = open_check(
        check_ids::panels_repeat, "two alike panels",
        {"no panel is cast twice ('panels.repeats'), so nobody knows how far two alike panels "
         "differ; an effect smaller than that is none",
         {}});
    const int repeats = panels.wishes().repeats;
    if (repeats > 0) {
        check.verdict = Verdict::holds;
        check.message = {repeats == 1 ? "panel 1 is cast once more from a batch of its own; what "
                                        "differs by no more than these two is no effect"
                                      : "panel 1 is cast {times} times more, each from a batch of "
                                        "its own; what differs by no more than these is no effect",
                         {count_argument("times", repeats)}};
    }
    return check;
}

/// A factor whose first level the wall file can contradict.
struct BuiltLevel {
    const char* factor;
    const char* key;
    bool stated;
    bool among; ///< the levels
};

std::vector<BuiltLevel> built_levels(const PanelCase& panels) {
    std::vector<BuiltLevel> built;
    const PanelWishes& wishes = panels.wishes();
    const Wall& wall = panels.wall;
    for (const PanelFactor& factor : wishes.factors) {
        if (factor.name == "mix") {
            built.push_back({"mix", "mix", true,
                             std::ranges::any_of(panels.programme.mixes, &PanelMix::of_the_wall)});
        } else if (factor.name == "treatment") {
            const bool stated = wall.boards && !wall.boards->treatment.empty();
            built.push_back(
                {"treatment", "boards.treatment", stated,
                 stated && std::ranges::count(factor.levels, wall.boards->treatment) > 0});
        } else if (factor.name == "strip_after") {
            const auto& strip_h = wall.placing.strip_after_h;
            built.push_back({"stripping age", "placing.strip_after", strip_h.has_value(),
                             strip_h && std::ranges::any_of(wishes.strip_after_h, [&](double h) {
                                 return same(h, *strip_h);
                             })});
        }
    }
    return built;
}

Check as_built_check(const PanelCase& panels) {
    Check check = open_check(check_ids::panels_as_built, "what is built is among the panels", {});
    const auto built = built_levels(panels);
    std::string compared;
    for (const BuiltLevel& level : built) {
        if (level.stated && !level.among) {
            check.verdict = Verdict::watch;
            check.message = {"the {factor} of the wall file ('{key}') is none of the levels: no "
                             "panel shows the wall as it is meant",
                             {word("factor", level.factor), word("key", level.key)}};
            return check;
        }
    }
    for (const BuiltLevel& level : built) {
        if (!level.stated) {
            check.message = {"'{key}' is not stated, so no panel can be compared with the wall",
                             {word("key", level.key)}};
            return check;
        }
        compared += (compared.empty() ? "" : ", ") + std::string{level.factor};
    }
    check.verdict = Verdict::holds;
    check.message = built.empty()
                        ? Phrase{"the first level of each factor is the one that the wall is meant "
                                 "to have; the panels differ from the wall file in nothing else",
                                 {}}
                        : Phrase{"the wall file's own {compared} is among the levels; of the other "
                                 "factors the first level is the one that is meant",
                                 {word("compared", compared)}};
    return check;
}

Check batch_check(const PanelCase& panels) {
    const PanelWishes& wishes = panels.wishes();
    Check check = open_check(
        check_ids::panels_batch, "one batch for a panel",
        {!panels.programme.panel_m3
             ? "the volume of a panel is not known: state 'panels.size' with its thickness"
             : "'panels.mixer', the largest batch, is not stated; a panel from two batches shows a "
               "line where they meet",
         {}});
    if (!panels.programme.panel_m3 || !wishes.mixer_m3) {
        return check;
    }
    constexpr double percent = 100;
    const double mixed_m3 =
        *panels.programme.panel_m3 * (1 + wishes.allowance_percent.value_or(0) / percent);
    check.verdict = above(mixed_m3, *wishes.mixer_m3) ? Verdict::fails : Verdict::holds;
    check.value = mixed_m3;
    check.limit = Limit{.low = std::nullopt, .high = *wishes.mixer_m3};
    check.measure = Measure::volume;
    check.message = {check.verdict == Verdict::fails
                         ? "a panel takes {value} and the mixer {limit}: it would be of two "
                           "batches and show where they meet"
                         : "a panel takes {value} of the mixer's {limit}",
                     {quantity("value", {mixed_m3, Measure::volume}),
                      quantity("limit", {*wishes.mixer_m3, Measure::volume})}};
    return check;
}

/// Ages at which panels are stripped: the levels, else the wall's own.
std::vector<double> stripping_ages_h(const PanelCase& panels) {
    const PanelWishes& wishes = panels.wishes();
    if (!wishes.strip_after_h.empty()) {
        return wishes.strip_after_h;
    }
    const auto& of_wall = panels.wall.placing.strip_after_h;
    return of_wall ? std::vector{*of_wall} : std::vector<double>{};
}

Check stripping_check(const PanelCase& panels) {
    const auto ages_h = stripping_ages_h(panels);
    const StrippingAge& strip = panels.plan.after.strip;
    Check check = open_check(
        check_ids::panels_stripping, "stripping",
        {"no stripping age is stated: 'strip_after' among the factors, or 'placing.strip_after'",
         {}});
    check.source = panels.tables.placing->curing.strip_after_h.source;
    check.measure = Measure::duration;
    if (ages_h.empty()) {
        return check;
    }
    const double earliest_level_h = *std::ranges::min_element(ages_h);
    const auto earliest_h = strip.earliest_h();
    if (!earliest_h) {
        check.message = {"no rule tells when a face may be stripped here: strength tests beside "
                         "the panels decide",
                         {}};
        return check;
    }
    check.value = earliest_level_h;
    check.limit = Limit{.low = *earliest_h, .high = std::nullopt};
    const bool early = below(earliest_level_h, *earliest_h);
    check.verdict = early ? Verdict::fails : Verdict::watch;
    check.message = {early
                         ? "a panel is stripped after {value}; in the weather of the wall file a "
                           "face may not be before {limit}"
                         : "the earliest panel is stripped after {value}, and {limit} would do in "
                           "the weather of the wall file; the panels' own day is not known, so "
                           "strength tests beside them decide",
                     {quantity("value", {earliest_level_h, Measure::duration}),
                      no_less_than("limit", {*earliest_h, Measure::duration})}};
    return check;
}

Check viewing_check(const PanelCase& panels) {
    const PanelViewing& viewing = panels.wishes().viewing;
    Check check = open_check(check_ids::panels_viewing, "viewing", {});
    check.source = panels.tables.panels->viewing_m.source;
    std::string missing;
    const auto miss = [&](bool open, const char* key) {
        if (open) {
            missing += (missing.empty() ? "'" : ", '") + std::string{"panels.viewing."} + key + "'";
        }
    };
    miss(!viewing.distance_m, "distance");
    miss(viewing.light.empty(), "light");
    miss(!viewing.age_d, "age");
    miss(viewing.by.empty(), "by");
    if (!missing.empty()) {
        check.message = {"not stated: {keys}; whoever looks closer or in other light finds more",
                         {word("keys", missing)}};
        return check;
    }
    check.verdict = Verdict::holds;
    check.message = {"judged from {distance} at {age}, {light}, by {who}",
                     {quantity("distance", {*viewing.distance_m, Measure::line_length}),
                      quantity("age", {*viewing.age_d, Measure::age}), word("light", viewing.light),
                      word("who", viewing.by)}};
    return check;
}

Check signed_check(CheckId id, const std::string& who, const char* key) {
    Check check = open_check(id, "one who signs", {"'{key}' is not stated", {word("key", key)}});
    if (!who.empty()) {
        check.verdict = Verdict::holds;
        check.message = {"signed by {who}", {word("who", who)}};
    }
    return check;
}

/// "corner, joint"
std::string features_named(const PanelRoom& room, auto has) {
    std::string names;
    for (const FeatureRoom& one : room.features) {
        if (one.wished && has(one)) {
            names += (names.empty() ? "" : ", ") + std::string{name_of(one.feature)};
        }
    }
    return names;
}

bool lacks_figure(const FeatureRoom& room) {
    return !room.length_mm || !room.height_mm;
}

/// The size that would hold everything wished for.
void add_size_needed(const PanelRoom& room, Phrase& message) {
    message.arguments.push_back(
        quantity("length", {*room.proposed_length_m, Measure::line_length}));
    message.arguments.push_back(
        quantity("height", {*room.proposed_height_m, Measure::line_length}));
}

Check room_check(CheckId id, const PanelRoom& room, const char* size_key, const char* what) {
    Check check = open_check(id, "room for what it is to show", {});
    const auto open = std::ranges::find_if(
        room.features, [](const FeatureRoom& one) { return one.wished && lacks_figure(one); });
    const std::string left_out = features_named(
        room, [](const FeatureRoom& one) { return !one.fits && !lacks_figure(one); });
    if (!room.is_sized()) {
        check.message = {
            "'{key}' is not stated; {wished} take {length} by {height}, each in a field "
            "of its own",
            {word("key", size_key), word("wished", features_named(room, [](const FeatureRoom& one) {
                                             return !lacks_figure(one);
                                         }))}};
        add_size_needed(room, check.message);
    } else if (!left_out.empty()) {
        check.verdict = room.wish_stated ? Verdict::fails : Verdict::watch;
        const std::string held =
            features_named(room, [](const FeatureRoom& one) { return one.fits; });
        check.message = {held.empty() ? "no room for {left_out}; {length} by {height} has it"
                                      : "beside {held} the {what} has no room for {left_out}; "
                                        "{length} by {height} has it",
                         {word("held", held), word("what", what), word("left_out", left_out)}};
        add_size_needed(room, check.message);
    } else if (open != room.features.end()) {
        check.message = {"how much face a {feature} takes is not known: '{key}' of the wall file",
                         {word("feature", name_of(open->feature)), word("key", open->missing)}};
    } else {
        check.verdict = Verdict::holds;
        check.message = {
            "the {what} has room for {held}, each in a field of its own",
            {word("what", what),
             word("held", features_named(room, [](const auto& one) { return one.fits; }))}};
    }
    return check;
}

double tallest_m(const Wall& wall) {
    double tallest = 0;
    for (const WallRun& run : wall.runs) {
        tallest = std::max(tallest, greatest_height_m(run));
    }
    for (const Planter& planter : wall.planters) {
        tallest = std::max(tallest, planter.height_m);
    }
    return tallest;
}

Check mockup_height_check(const Wall& wall) {
    Check check =
        open_check(check_ids::mockup_height, "full height", {"'mockup.height' is not stated", {}});
    const double wanted_m = tallest_m(wall);
    if (!wall.mockup || !wall.mockup->height_m || wanted_m <= 0) {
        return check;
    }
    const double height_m = *wall.mockup->height_m;
    check.value = height_m;
    check.limit = Limit{.low = wanted_m, .high = std::nullopt};
    check.measure = Measure::line_length;
    check.verdict = below(height_m, wanted_m) ? Verdict::watch : Verdict::holds;
    check.message = {check.verdict == Verdict::holds
                         ? "{value} high, as the highest wall, {limit}"
                         : "{value} high, the highest wall {limit}: pressure, lifts and the way "
                           "that air takes out of the concrete are not the wall's",
                     {quantity("value", {height_m, Measure::line_length}),
                      quantity("limit", {wanted_m, Measure::line_length})}};
    return check;
}

Check mockup_thickness_check(const Wall& wall) {
    Check check = open_check(check_ids::mockup_thickness, "thickness of a wall",
                             {"'mockup.thickness' is not stated", {}});
    if (!wall.mockup || !wall.mockup->thickness_mm) {
        return check;
    }
    const double thickness_mm = *wall.mockup->thickness_mm;
    const bool of_a_run = std::ranges::any_of(wall.runs, [&](const WallRun& run) {
        return same(run.thickness_mm, thickness_mm) || same(run.bottom_thickness_mm, thickness_mm);
    });
    const bool of_a_planter = std::ranges::any_of(wall.planters, [&](const Planter& planter) {
        return same(planter.thickness_mm, thickness_mm);
    });
    check.value = thickness_mm;
    check.measure = Measure::length;
    check.verdict = of_a_run || of_a_planter ? Verdict::holds : Verdict::watch;
    check.message = {check.verdict == Verdict::holds
                         ? "{value} thick, as a wall of the file"
                         : "{value} thick, as no wall of the file: bars, vibrator and warmth are "
                           "not the wall's",
                     {quantity("value", {thickness_mm, Measure::length})}};
    return check;
}

} // namespace

std::vector<Check> panel_checks(const PanelCase& panels) {
    return {effects_check(panels),
            mixed_effects_check(panels),
            repeat_check(panels),
            as_built_check(panels),
            room_check(check_ids::panels_room, panels.programme.room, "panels.size", "panel"),
            batch_check(panels),
            stripping_check(panels),
            viewing_check(panels),
            signed_check(check_ids::panels_signed, panels.wishes().signed_by, "panels.signed_by")};
}

std::vector<Check> mockup_checks(const PanelCase& panels) {
    const auto& mockup = panels.wall.mockup;
    return {room_check(check_ids::mockup_room, panels.programme.mockup_room, "mockup", "mock-up"),
            mockup_height_check(panels.wall), mockup_thickness_check(panels.wall),
            signed_check(check_ids::mockup_signed, mockup ? mockup->signed_by : "",
                         "mockup.signed_by")};
}

} // namespace boardmark::core

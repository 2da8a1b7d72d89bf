#include "behind_niche.hpp"

#include <boardmark/core/wall/wall_steel.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "placed_box.hpp"

#include <algorithm>
#include <optional>

namespace boardmark::core {
namespace {

Argument niche_length(const char* name, double value_mm) {
    return quantity(name, {value_mm, Measure::length});
}

/// What is left where the least is left.
std::optional<BehindNiche> thinnest_behind(const WallRun& run) {
    const auto all = behind_niches(run);
    const auto least = std::ranges::min_element(all, {}, &BehindNiche::left_mm);
    return least == all.end() ? std::nullopt : std::optional{*least};
}

std::optional<BehindNiche> deepest_niche(const WallRun& run) {
    const auto all = behind_niches(run);
    const auto most = std::ranges::max_element(all, {}, &BehindNiche::depth_mm);
    return most == all.end() ? std::nullopt : std::optional{*most};
}

/// Whether bars keep the least cover without being moved.
bool stay_straight(const BehindNiche& niche, const Check& cover) {
    return cover.value && cover.limit && cover.limit->low &&
           !below(*cover.value - niche.depth_mm, *cover.limit->low);
}

/// The deepest niche of the other face at the place of each box; 0 where none is.
std::vector<double> back_to_back_mm(const std::vector<PlacedBox>& placed) {
    std::vector<double> deepest_mm(placed.size(), 0);
    visit_pairs_at_one_station(placed, [&](std::size_t i, std::size_t k) {
        const PlacedBox& one = placed[i];
        const PlacedBox& other = placed[k];
        if (&one.opening != &other.opening && !one.through() && !other.through() &&
            at_one_height(one, other)) {
            deepest_mm[i] = std::max(deepest_mm[i], *other.opening.depth_mm);
            deepest_mm[k] = std::max(deepest_mm[k], *one.opening.depth_mm);
        }
    });
    return deepest_mm;
}

void worsen(Verdict verdict, const Phrase& why, Check& check) {
    check.verdict = worse(check.verdict, verdict);
    check.message.text += "; " + why.text;
    check.message.arguments.insert(check.message.arguments.end(), why.arguments.begin(),
                                   why.arguments.end());
}

} // namespace

std::vector<BehindNiche> behind_niches(const WallRun& run) {
    constexpr double mm_of_metre = 1000;
    const Profile profile = profile_of(run);
    const auto placed = placed_boxes(run, profile);
    const std::vector<double> others_mm = back_to_back_mm(placed);
    std::vector<BehindNiche> behind;
    for (std::size_t i = 0; i < placed.size(); ++i) {
        const PlacedBox& niche = placed[i];
        if (niche.through()) {
            continue;
        }
        const double upper_m = niche.opening.sill_m ? niche.box.high_m : profile.greatest_height_m;
        const double depth_mm = *niche.opening.depth_mm + others_mm[i];
        behind.push_back(
            {niche.opening.name, depth_mm, mm_of_metre * profile.thickness_at(upper_m) - depth_mm});
    }
    return behind;
}

void hold_layers_behind_niches(const WallRun& run, const Reinforcement& bars, const Check& cover,
                               Check& layers) {
    const auto thinnest = thinnest_behind(run);
    if (!thinnest) {
        return;
    }
    const double needed_mm = room_for_layers_mm(bars);
    if (above(needed_mm, thinnest->left_mm)) {
        worsen(Verdict::fails,
               {"behind '{niche}' they do not fit: {left} is left, and with the cover on both "
                "sides they need {needed_there}",
                {word("niche", thinnest->niche), niche_length("left", thinnest->left_mm),
                 niche_length("needed_there", needed_mm)}},
               layers);
        return;
    }
    const BehindNiche deepest = *deepest_niche(run);
    if (!stay_straight(deepest, cover)) {
        worsen(Verdict::watch,
               {"behind '{niche}', {deep} deep, bars must be moved to have their cover: the "
                "drawings must show how",
                {word("niche", deepest.niche), niche_length("deep", deepest.depth_mm)}},
               layers);
    }
}

void hold_cover_behind_niches(const WallRun& run, const Reinforcement& bars, Verdict worst,
                              Check& cover) {
    const auto deepest = deepest_niche(run);
    if (!deepest || !cover.value || !cover.limit || !cover.limit->low) {
        return;
    }
    const double straight_mm = *cover.value - deepest->depth_mm;
    if (stay_straight(*deepest, cover)) {
        cover.value = straight_mm;
        worsen(Verdict::holds,
               {"behind '{niche}' {behind}",
                {word("niche", deepest->niche), niche_length("behind", straight_mm)}},
               cover);
        return;
    }
    const auto thinnest = thinnest_behind(run);
    const bool fits = !above(room_for_layers_mm(bars), thinnest->left_mm);
    worsen(fits ? Verdict::watch : worst,
           {fits ? "behind '{niche}', {deep} deep, straight bars do not have it: they must be "
                   "moved there, and the drawings must show how"
                 : "behind '{niche}', {deep} deep, the bars do not have it, and there is no room "
                   "to move them",
            {word("niche", fits ? deepest->niche : thinnest->niche),
             niche_length("deep", fits ? deepest->depth_mm : thinnest->depth_mm)}},
           cover);
}

} // namespace boardmark::core

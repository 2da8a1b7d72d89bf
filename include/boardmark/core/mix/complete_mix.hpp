#pragma once

#include <boardmark/core/mix/complete.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/vocabulary.hpp>

#include <variant>

namespace boardmark::core {

/// A mix that holds every figure its calculation needs.
using CompleteMix = Complete<Mix>;
using CompleteSubmittedMix = Complete<SubmittedMix>;

/// Either of the two, by what the file holds.
using AnyCompleteMix = std::variant<CompleteMix, CompleteSubmittedMix>;

/// The way into the computation: the mix as a complete one, or every fault of it, field by field.
///
/// What is demanded: numbers finite and in the range that their member states; a strength and a
/// slump; binder, coarse and fine aggregate, whose shares add up to 100 each; of aggregates
/// relative density and absorption, of stone the nominal maximum size, and dry-rodded density and
/// the fineness modulus or sieves of the sand where the bulk volume is selected by them — unless
/// they are `typical`; the water reduction of a reducer whose water comes from the table; at most
/// two of w/cm, water and binder; words that the tables know; materials of kinds that their
/// standards are of, none named "water" or "air"; of a `blend` the shares that `take_blend` gives;
/// of a code file its own name, classes with categories, limits that are numbers. What the tables
/// do not reach is no fault: the method tells it with the ways out.
///
/// Where a site is stated, the complete mix also has the exposure classes that follow from it, as
/// `add_site_classes` says.
///
/// @param words of the tables that the mix will be worked with: reference::vocabulary()
std::variant<CompleteMix, Faults> complete(Mix mix, const Vocabulary& words);

/// The same for submitted amounts: some water, some cementitious material, and no amount that is
/// stated twice or not at all; no dose above its maximum, and no stone above the largest size.
/// Relative densities of aggregates may be missing, as `accept` says.
std::variant<CompleteSubmittedMix, Faults> complete(SubmittedMix mix, const Vocabulary& words);

/// Either of the two.
std::variant<AnyCompleteMix, Faults> complete(AnyMix mix, const Vocabulary& words);

/// All faults of a mix; none of a complete one.
Faults faults_of(const Mix& mix, const Vocabulary& words);
Faults faults_of(const SubmittedMix& mix, const Vocabulary& words);

} // namespace boardmark::core

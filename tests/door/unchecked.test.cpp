// Nothing is worked out of a mix that did not pass the door: the compiler itself refuses it.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/study/comparison.hpp>
#include <boardmark/core/study/dose_response.hpp>
#include <boardmark/core/trial/next_trial.hpp>
#include <boardmark/core/trial/trial_set.hpp>
#include <boardmark/core/trial/yield.hpp>
#include <boardmark/core/wall/wall.hpp>
#include <boardmark/front/worked_mix.hpp>

#include <catch2/catch.hpp>

#include <type_traits>

using namespace boardmark;

namespace {

using core::AnyCompleteMix;
using core::AnyMix;
using core::CompleteMix;
using core::CompleteSubmittedMix;
using core::Mix;
using core::SubmittedMix;
using core::Tables;

// Whether a call compiles with a mix of that type.

template <class Given>
concept Proportioned = requires(const Given& mix, const Tables& tables) {
    core::proportion(mix, tables);
};

template <class Given>
concept Figured = requires(const Given& mix, const Tables& tables, core::Proportions& room) {
    core::figures(mix, tables, room);
};

template <class Given>
concept Accepted = requires(const Given& mix, const Tables& tables) {
    core::accept(mix, tables);
};

template <class Given>
concept EitherOfTwo = requires(const Given& mix, const Tables& tables) {
    core::proportions_of(mix, tables);
};

template <class Given>
concept Assessed = requires(const Given& mix, const core::Proportions& made, const Tables& tables) {
    core::assess(mix, made, tables);
};

template <class Given>
concept Judged = requires(const Given& mix, const core::Proportions& made, const Tables& tables,
                          std::vector<core::Finding>& verdicts) {
    core::judge(mix, made, tables, verdicts);
};

template <class Given>
concept Compared = requires(const Given& mix, const Tables& tables) {
    core::compared("label", mix, tables);
};

template <class Given>
concept Studied = requires(const Given& mix, const Tables& tables) {
    core::reducer_study(mix, tables);
};

template <class Given>
concept Dosed = requires(const Given& mix, const Tables& tables) {
    core::dose_response(mix, tables);
};

template <class Given>
concept MadeASet = requires(const Given& mix, const Tables& tables) {
    core::trial_set(mix, {0.40, 0.45}, std::nullopt, tables);
};

template <class Given>
concept Tried = requires(Given mix) {
    core::Trial{.mix = mix, .water = {}, .batched = {}, .tests = {}};
};

template <class Given>
concept HasAYield = requires(const Given& trial, const core::Proportions& designed,
                             const Tables& tables) {
    core::yield_of(trial, designed, tables);
};

template <class Given>
concept IsAssessed = requires(const Given& trial, const core::Proportions& designed,
                              const Tables& tables, const core::Yield& yield) {
    core::assess(trial, yield, designed, tables);
};

template <class Given>
concept HasANext = requires(const Given& trial, const core::Proportions& designed,
                            const Tables& tables, const core::Yield& yield) {
    core::next_trial(trial, yield, designed, tables);
};

template <class Given>
concept Poured = requires(Given mix) {
    core::Wall{{}, "wall", core::UnitSystem::si, mix};
};

template <class Given>
concept Worked = requires(Given mix, Tables tables, core::Proportions proportions) {
    WorkedMix{mix, tables, proportions};
};

} // namespace

TEST_CASE("What is worked out takes a mix that passed the door, and no other compiles") {
    STATIC_REQUIRE(Proportioned<CompleteMix>);
    STATIC_REQUIRE(!Proportioned<Mix>);
    STATIC_REQUIRE(Figured<CompleteMix>);
    STATIC_REQUIRE(!Figured<Mix>);
    STATIC_REQUIRE(Accepted<CompleteSubmittedMix>);
    STATIC_REQUIRE(!Accepted<SubmittedMix>);
    STATIC_REQUIRE(EitherOfTwo<AnyCompleteMix>);
    STATIC_REQUIRE(!EitherOfTwo<AnyMix>);
    STATIC_REQUIRE(!EitherOfTwo<Mix>);
    STATIC_REQUIRE(Assessed<AnyCompleteMix>);
    STATIC_REQUIRE(!Assessed<AnyMix>);
    STATIC_REQUIRE(!Assessed<core::Requirements>);
    STATIC_REQUIRE(Judged<CompleteMix>);
    STATIC_REQUIRE(!Judged<Mix>);
    STATIC_REQUIRE(!Judged<core::Requirements>);
    STATIC_REQUIRE(Compared<AnyCompleteMix>);
    STATIC_REQUIRE(!Compared<AnyMix>);
    STATIC_REQUIRE(!Compared<SubmittedMix>);
    STATIC_REQUIRE(Studied<CompleteMix>);
    STATIC_REQUIRE(!Studied<Mix>);
    STATIC_REQUIRE(Dosed<CompleteMix>);
    STATIC_REQUIRE(!Dosed<Mix>);
    STATIC_REQUIRE(MadeASet<CompleteMix>);
    STATIC_REQUIRE(!MadeASet<Mix>);
}

TEST_CASE("So does what is worked out of a trial") {
    STATIC_REQUIRE(HasAYield<core::CompleteTrial>);
    STATIC_REQUIRE(!HasAYield<core::Trial>);
    STATIC_REQUIRE(IsAssessed<core::CompleteTrial>);
    STATIC_REQUIRE(!IsAssessed<core::Trial>);
    STATIC_REQUIRE(HasANext<core::CompleteTrial>);
    STATIC_REQUIRE(!HasANext<core::Trial>);
}

TEST_CASE("A trial, a wall and a worked mix hold a mix that passed the door") {
    STATIC_REQUIRE(Tried<AnyCompleteMix>);
    STATIC_REQUIRE(!Tried<AnyMix>);
    STATIC_REQUIRE(Poured<AnyCompleteMix>);
    STATIC_REQUIRE(!Poured<AnyMix>);
    STATIC_REQUIRE(Worked<AnyCompleteMix>);
    STATIC_REQUIRE(!Worked<AnyMix>);
}

TEST_CASE("A mix that passed the door is made nowhere else and never changes") {
    STATIC_REQUIRE(!std::is_default_constructible_v<CompleteMix>);
    STATIC_REQUIRE(!std::is_constructible_v<CompleteMix, Mix>);
    STATIC_REQUIRE(!std::is_constructible_v<CompleteSubmittedMix, SubmittedMix>);
    STATIC_REQUIRE(!std::is_constructible_v<AnyCompleteMix, AnyMix>);
    STATIC_REQUIRE(!std::is_constructible_v<core::CompleteTrial, core::Trial>);
    STATIC_REQUIRE(std::is_same_v<decltype(*std::declval<CompleteMix&>()), const Mix&>);
    STATIC_REQUIRE(std::is_same_v<decltype(std::declval<CompleteMix&>().operator->()), const Mix*>);
}

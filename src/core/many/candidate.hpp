#pragma once

#include <boardmark/core/checks/finding.hpp>
#include <boardmark/core/many/economy.hpp>

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace boardmark::core {

/// A mix of a search: its figures and how far it is from holding every limit.
struct Candidate {
    EconomyFigures figures{};
    double excess =
        0; ///< 0: it holds; else the relative excesses added up, more where less is known
    bool is_feasible() const { return excess <= 0; }
};

/// What a search lets pass beyond the limits: one check, by its own precision.
struct Relaxed {
    std::optional<CheckId> check = {};
};

/// How far a value lies beyond its limit; 0 inside, and where there is none.
double excess_of(const Finding& finding);

/// The precision to which a limit is held.
double precision_of(const Finding& finding, UnitSystem system);

/// Works candidates out, again and again in the same memory.
class CandidateMaker {
public:
    /// All must outlive the maker.
    CandidateMaker(const CompleteMix& mix, const VariedMix& varied, const Tables& tables);

    /// The mix as written becomes what others are held against; nothing where it does not follow.
    std::optional<Candidate> as_written();

    Candidate make(std::span<const double> at, const Relaxed& relaxed = {});

    /// Of the last one that was made.
    const std::vector<Finding>& findings() const { return findings_; }
    const Selection& selection() const { return proportions_.selection; }

    /// The check that the last one breaks: the first that fails, else the first that holds less
    /// than in the mix as written. Empty where no mix followed.
    std::string_view broken() const;

    std::size_t made() const { return made_; }

private:
    std::optional<Candidate> judged(const CompleteMix& mix);
    double excess(const Finding& finding, const Relaxed& relaxed) const;
    double beyond_written(const Finding& finding) const;
    bool is_new(const Finding& finding) const;
    const Finding* in_baseline(CheckId id) const;

    const CompleteMix& mix_;
    const VariedMix& varied_;
    const Tables& tables_;
    Proportions proportions_{};
    std::vector<Finding> findings_;
    std::optional<std::vector<Finding>> baseline_ = {};
    double written_water_kg_m3_ = 0;
    bool keeps_water_ = true; ///< the last one, and its reducers, as the mix as written has them
    std::size_t made_ = 0;
};

} // namespace boardmark::core

#pragma once

#include <boardmark/core/many/economy.hpp>

#include "candidate.hpp"
#include "pattern_search.hpp"

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// The search for one mix: its places are between 0 and 1 from the low to the high end of each
/// bound.
class EconomySearch {
public:
    /// All must outlive the search.
    EconomySearch(const CompleteMix& mix, const EconomyOrder& order, const Tables& tables);
    EconomySearch(const EconomySearch&) = delete;
    EconomySearch& operator=(const EconomySearch&) = delete;

    const EconomyOrder& order() const { return order_; }
    const Tables& tables() const { return tables_; }
    const VariedMix& varied() const { return varied_; }
    CandidateMaker& maker() { return maker_; }
    std::size_t mixes() const { return maker_.made(); }

    std::vector<double> values_at(const std::vector<double>& place) const;

    /// The same mix at the ratio that it has: where a least binder lowers a varied w/cm, every
    /// value above is that mix too.
    std::vector<double> at_its_ratio(std::vector<double> values);

    /// The values of the mix as written, as its file or its proportions have them; nothing where
    /// neither tells.
    const std::vector<std::optional<double>>& written_values() const { return written_; }

    /// Whether each of them is known.
    bool knows_written() const;

    /// Whether they are known and lie within the bounds.
    bool holds_written() const;

    /// Where the searches from the best of the even places end, the best first. At least one.
    std::vector<SearchPlace> ends(Objective objective);

    /// The check that a place breaks by most; empty where no mix follows there.
    std::string worst_check(const SearchPlace& place) const;

    /// What limits and bounds hold the best place, and what each is worth.
    void find_prices(const SearchPlace& best, Economy& found);

    /// The mixes from the least cost to the least carbon, where both are known.
    void find_front(Economy& found);

private:
    /// An even place that was worked out.
    struct Sample {
        std::vector<double> at;
        double excess;
        EconomyFigures figures;
    };

    void take_samples();
    SearchRating rating(Objective objective, const Relaxed& relaxed = {});
    std::vector<SearchPlace> best_samples(Objective objective, double most_carbon,
                                          std::size_t count) const;
    SearchPlace least_cost_within(double most_carbon_kg_m3);
    double price_of_check(const SearchPlace& best, CheckId id);
    double price_of_bound(const SearchPlace& best, std::size_t variable, bool high);

    const CompleteMix& mix_;
    const EconomyOrder& order_;
    const Tables& tables_;
    VariedMix varied_;
    mutable CandidateMaker maker_;
    std::vector<std::optional<double>> written_;
    std::vector<Sample> samples_;
};

} // namespace boardmark::core

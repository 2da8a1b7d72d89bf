#include "reducer_trade.hpp"

#include <boardmark/core/mix/footprint.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

namespace boardmark::core {
namespace {

/// What the binder that is saved costs.
struct Worth {
    std::string currency;
    double per_m3;
    bool at_least; ///< a price is missing
};

std::optional<Worth> worth_of(const Proportions& without, const Proportions& with) {
    const auto before = binder_cost(without);
    const auto after = binder_cost(with);
    if (!before || !after) {
        return std::nullopt;
    }
    return Worth{before->currency, before->sum.per_m3 - after->sum.per_m3, !before->sum.is_whole()};
}

void add_cost(const Proportions& with, Phrase& phrase) {
    const auto cost = reducer_cost(with);
    if (!cost) {
        phrase.text = "what the reducer costs is not known; it saves";
        return;
    }
    phrase.text = cost->sum.is_whole() ? "the reducer costs {currency} {cost} and saves"
                                       : "the reducer costs at least {currency} {cost} and saves";
    phrase.arguments.push_back(word("currency", cost->currency));
    phrase.arguments.push_back(quantity("cost", {cost->sum.per_m3, Measure::money}));
}

} // namespace

Phrase trade_of(const Proportions& without, const Proportions& with) {
    const double saved_kg_m3 = without.totals.binder_kg_m3 - with.totals.binder_kg_m3;
    Phrase phrase;
    add_cost(with, phrase);
    if (!above(saved_kg_m3, 0)) {
        phrase.text += " no cementitious material";
        return phrase;
    }
    phrase.text += " {saved} of cementitious material";
    phrase.arguments.push_back(quantity("saved", {saved_kg_m3, Measure::concentration}));
    if (const auto worth = worth_of(without, with)) {
        phrase.text += worth->at_least ? ", worth at least {its_currency} {worth}"
                                       : ", worth {its_currency} {worth}";
        phrase.arguments.push_back(word("its_currency", worth->currency));
        phrase.arguments.push_back(quantity("worth", {worth->per_m3, Measure::money}));
    } else {
        phrase.text += ", whose worth is not known";
    }
    return phrase;
}

} // namespace boardmark::core

#include <boardmark/core/mix/footprint.hpp>
#include <boardmark/core/study/comparison.hpp>
#include <boardmark/core/wall/added_cost.hpp>

namespace boardmark::core {
namespace {

/// A cost that is whole and in this currency.
std::optional<double> whole_in(const std::string& currency, const std::optional<Cost>& cost) {
    return cost && cost->currency == currency && cost->sum.is_whole()
               ? std::optional{cost->sum.per_m3}
               : std::nullopt;
}

} // namespace

std::optional<double> reducer_less_binder_per_m3(const Wall& wall, const Proportions& written,
                                                 const Tables& tables) {
    const auto* mix = std::get_if<CompleteMix>(&wall.mix);
    if (!wall.prices || !mix || !holds_high_range_reducer(*mix)) {
        return std::nullopt;
    }
    const ComparedMix without = without_high_range_reducer(*mix, written, tables);
    if (without.unresolved) {
        return std::nullopt;
    }
    const std::string& currency = wall.prices->currency;
    const auto reducer = whole_in(currency, reducer_cost(written));
    const auto binder_before = whole_in(currency, binder_cost(*without.proportions));
    const auto binder = whole_in(currency, binder_cost(written));
    return reducer && binder_before && binder ? std::optional{*reducer - (*binder_before - *binder)}
                                              : std::nullopt;
}

} // namespace boardmark::core

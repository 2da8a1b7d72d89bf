#pragma once

#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/wall/board_order.hpp>
#include <boardmark/core/wall/wall.hpp>
#include <boardmark/core/wall/wall_quantities.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// Money in the currency of the wall file's prices.
struct Money {
    double low = 0;
    double likely = 0;
    double high = 0;
};

/// What one price adds to the wall, or what the plain wall would have cost in its place: then the
/// money is negative, its low end by the highest price.
struct CostItem {
    std::string price; ///< key of the price in the wall file
    std::string name;
    Quantity quantity; ///< of what is priced
    Money money;
    bool likely_is_middle = false; ///< the file states no likely price: an estimate
};

/// What the board-marked face costs beyond the same wall with plain panels.
struct AddedCost {
    std::string currency;
    std::vector<CostItem> items;
    Money total;                      ///< the honest interval: all low ends, all high ends
    std::vector<std::string> missing; ///< prices or quantities that the wall calls for and the file
                                      ///< lacks: the total is then "at least"
    std::string most_moving;          ///< price whose range moves the total most; may be empty
    std::optional<double> reducer_in_concrete_per_m3 = {}; ///< the reducer less the binder that it
                                                           ///< saves, where the price of the
                                                           ///< concrete already holds it
};

/// What the added cost is counted from.
struct AddedCostCase {
    const Wall& wall;
    const WallQuantities& quantities;
    const BoardOrder& boards;
    bool full_head = false;                    ///< full liquid head governs a form
    std::optional<double> plain_strip_h = {};  ///< age at which a plain wall would be stripped
    std::optional<double> reducer_per_m3 = {}; ///< the high-range reducer less the binder that it
                                               ///< saves, by the mix file's prices, in the currency
                                               ///< of the wall file
};

/// What the high-range reducer of the wall's mix costs less the binder that it saves there, for 1
/// m3 of the mix as written. Nothing where the mix holds none, or where its prices are not all
/// stated in the wall's currency.
std::optional<double> reducer_less_binder_per_m3(const Wall& wall, const Proportions& written,
                                                 const Tables& tables);

/// Adds up the cost. A price of which only the difference to another counts (backing and plain
/// panels, the ties, the two concretes, plugs and patches) is used only where both are stated.
/// Nothing where the file has no prices or no boards.
std::optional<AddedCost> added_cost(const AddedCostCase& cost);

} // namespace boardmark::core

#include "review_case.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// Whether a charge holds on a day; nothing where it has days and the day is not known.
std::optional<bool> holds_on(const Surcharge& surcharge, const std::optional<Day>& day) {
    if (!surcharge.from && !surcharge.until) {
        return true;
    }
    if (!day) {
        return std::nullopt;
    }
    return (!surcharge.from || *surcharge.from <= *day) &&
           (!surcharge.until || *day <= *surcharge.until);
}

/// Loads of an order, the last the rest of it; what they are short of the smallest is charged.
std::optional<double> short_charge_per_m3(const ReviewCase& review, std::string& missing) {
    const auto& supply = review.submitted.supply;
    if (!supply) {
        return 0; // the supplier asks for nothing
    }
    if (!review.designer.wall) {
        missing = "volume and loads: a wall file has them";
        return std::nullopt;
    }
    const auto& truck_m3 = review.designer.wall->placing.truck_m3;
    if (!truck_m3) {
        missing = "the size of a load: 'placing.truck'";
        return std::nullopt;
    }
    const WallQuantities& found = review.designer.plan->quantities;
    double order_m3 = 0;
    double short_m3 = 0;
    for (const double placed_m3 : {found.order.order_m3, found.footing_order.order_m3}) {
        order_m3 += placed_m3;
        double left_m3 = placed_m3;
        while (left_m3 > 1e-9) {
            const double load_m3 = std::min(left_m3, *truck_m3);
            short_m3 += std::max(0.0, supply->minimum_load_m3 - load_m3);
            left_m3 -= load_m3;
        }
    }
    if (short_m3 <= 1e-9) {
        return 0;
    }
    if (!supply->short_load_charge) {
        missing = "the charge for short loads: 'supply.short_load_charge'";
        return std::nullopt;
    }
    return short_m3 * supply->short_load_charge->per_m3 / order_m3;
}

} // namespace

std::optional<DeliveredPrice> delivered_price(const ReviewCase& review) {
    const auto& terms = review.papers.delivery;
    if (!terms) {
        return std::nullopt;
    }
    DeliveredPrice price{.currency = terms->currency,
                         .concrete = terms->concrete_per_m3,
                         .haul = terms->haul_per_m3};
    if (!price.concrete) {
        price.missing.emplace_back("the price of the concrete: 'supply.concrete'");
    }
    if (!price.haul) {
        price.missing.emplace_back("the haul: 'supply.haul', 0 where it is in the price");
    }
    double surcharges = 0;
    for (const Surcharge& surcharge : terms->surcharges) {
        const auto holds = holds_on(surcharge, review.designer.job.first_pour);
        if (!holds) {
            price.missing.push_back("whether '" + surcharge.name +
                                    "' is charged: 'schedule.first_pour'");
        } else if (*holds) {
            price.surcharges.push_back(surcharge);
            surcharges += surcharge.per_m3;
        }
    }
    std::string missing;
    price.short_loads = short_charge_per_m3(review, missing);
    if (!missing.empty()) {
        price.missing.push_back(missing);
    }
    if (price.missing.empty()) {
        price.whole = *price.concrete + *price.haul + surcharges + *price.short_loads;
    }
    return price;
}

} // namespace boardmark::core

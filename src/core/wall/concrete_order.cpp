#include <boardmark/core/wall/wall_quantities.hpp>

#include "../basis/tolerance.hpp"

#include <cmath>

namespace boardmark::core {

ConcreteOrder concrete_order(double net_m3, const OrderRules& rules) {
    ConcreteOrder order{.net_m3 = net_m3,
                        .waste_percent = rules.waste_percent,
                        .exact_m3 = net_m3 * (1 + rules.waste_percent / 100),
                        .order_m3 = 0};
    order.order_m3 = order.exact_m3;
    if (rules.increment_m3) {
        const double loads = order.exact_m3 / *rules.increment_m3;
        const double nearest = std::round(loads);
        order.order_m3 = (same(loads, nearest) ? nearest : std::ceil(loads)) * *rules.increment_m3;
    }
    return order;
}

double form_spread_m3(double face_m2, double spread_mm) {
    return face_m2 * spread_mm / 1000;
}

} // namespace boardmark::core

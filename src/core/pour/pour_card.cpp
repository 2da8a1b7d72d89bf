#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/pour/pour_card.hpp>

#include "../wall/trucks.hpp"
#include "pour_case.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Of everything: the wall's own checks. Of one part: its own, and those of no part.
std::vector<Check> checks_of(const WallPlan& plan, const std::string& part) {
    std::vector<Check> checks;
    for (const Check& check : plan.checks) {
        if (part.empty() || check.part.empty() || check.part == part) {
            checks.push_back(check);
        }
    }
    return checks;
}

ConcreteOrder order_of(const std::vector<PouredPart>& parts, const OrderRules& rules) {
    double net_m3 = 0;
    for (const PouredPart& part : parts) {
        net_m3 += part.concrete_m3;
    }
    return concrete_order(net_m3, rules);
}

} // namespace

PourCard pour_card(const Wall& wall, const WallPlan& plan, const Tables& tables,
                   const std::string& part) {
    auto parts = poured_parts(wall, plan, part);
    const auto filled = filled_parts(parts, wall, tables);
    if (!wall.placing.self_consolidating) {
        add_vibrators(filled, parts);
    }
    const ConcreteOrder order = part.empty() ? plan.quantities.order : order_of(parts, wall.order);
    PourCard card{.parts = std::move(parts),
                  .order = order,
                  .day = placing_day(filled, trucked_pour(wall, order.order_m3, filled),
                                     tables.placing->lifts),
                  .limits = {},
                  .tests = {},
                  .rules = {},
                  .stops = {},
                  .cautions = {},
                  .checks = checks_of(plan, part),
                  .mix_checks = plan.mix_checks};
    const PourCase pour{wall, plan, requirements_of(wall.mix), tables, card};
    card.checks.push_back(card.day.discharge);
    card.limits = pour_limits(pour);
    card.tests = pour_tests(pour);
    card.rules = {pour_water(pour), pour_hose(pour), pour_after(pour)};
    card.stops = pour_stops(pour);
    card.cautions = pour_cautions(pour);
    return card;
}

} // namespace boardmark::core

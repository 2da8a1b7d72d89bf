#include "added_cost_report.hpp"

#include "../writing/measure_units.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

std::string money(double amount) {
    return fixed(amount, 0);
}

} // namespace

Flow flow_of_added_cost(const core::AddedCost& added, core::UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::right, Align::left}};
    grid.head({added.currency, "amount", "low", "likely", "high", ""});
    for (const core::CostItem& item : added.items) {
        grid.add({item.name, shown(item.quantity, system), money(item.money.low),
                  money(item.money.likely), money(item.money.high),
                  item.likely_is_middle ? "likely is the middle" : ""});
    }
    const char* least = added.missing.empty() ? "in all" : "in all, at least";
    grid.add({least, "", money(added.total.low), money(added.total.likely), money(added.total.high),
              ""});
    Flow flow = grid;
    if (!added.most_moving.empty()) {
        flow += paragraph("The price of " + in_words(added.most_moving) +
                              " moves the total most. Low takes every low price of what is added, "
                              "less every high price of what it replaces.",
                          {"  ", "  "});
    }
    if (added.reducer_in_concrete_per_m3) {
        flow += paragraph(
            "The cost of the reducer, less that of the binder it saves, " + added.currency + " " +
                shown({*added.reducer_in_concrete_per_m3, core::Measure::money}, system) +
                " by the mix file's prices, is included in the price of the concrete.",
            {"  ", "  "});
    }
    if (!added.missing.empty()) {
        std::string names;
        for (const std::string& key : added.missing) {
            names += (names.empty() ? "" : ", ") + in_words(key);
        }
        flow += paragraph("Not counted, not stated: " + names + ".", {"  ", "  "});
    }
    return flow;
}

Json json_of_added_cost(const std::optional<core::AddedCost>& added) {
    if (!added) {
        return nullptr;
    }
    Json items = Json::array();
    for (const core::CostItem& item : added->items) {
        items.push_back({{"price", item.price},
                         {"name", item.name},
                         {"quantity", item.quantity.value},
                         {"unit", si_unit(item.quantity.measure)},
                         {"low", item.money.low},
                         {"likely", item.money.likely},
                         {"high", item.money.high},
                         {"likely_is_middle", item.likely_is_middle}});
    }
    return {{"currency", added->currency},
            {"low", added->total.low},
            {"likely", added->total.likely},
            {"high", added->total.high},
            {"at_least", !added->missing.empty()},
            {"missing", added->missing},
            {"most_moving", added->most_moving},
            {"reducer_in_concrete_per_m3", number_or_null(added->reducer_in_concrete_per_m3)},
            {"items", std::move(items)}};
}

} // namespace boardmark::report

#include "../wall/wall_tables.hpp"
#include "../writing/measured.hpp"
#include "../writing/names.hpp"

namespace boardmark::report {
namespace {

void add_money(LongTable& table, const core::Money& money, const std::string& currency,
               const std::string& status, bool likely_is_middle) {
    table.add_in("low", money.low, currency, status);
    table.add_in("likely", money.likely, currency,
                 likely_is_middle ? "likely is the middle" : status);
    table.add_in("high", money.high, currency, status);
}

} // namespace

void add_added_cost(LongTable& table, const core::AddedCost& added) {
    table.section("added cost over plain panels");
    for (const core::CostItem& item : added.items) {
        table.subject(item.name);
        table.add("amount", item.quantity.measure, item.quantity.value);
        add_money(table, item.money, added.currency, "", item.likely_is_middle);
    }
    table.subject("in all");
    add_money(table, added.total, added.currency, added.missing.empty() ? "" : "at least", false);
    if (!added.most_moving.empty()) {
        table.add_words("moves the total most", "price of " + in_words(added.most_moving), "");
    }
    if (added.reducer_in_concrete_per_m3) {
        const Measured each =
            measured({*added.reducer_in_concrete_per_m3, core::Measure::money}, table.system());
        table.add_in("reducer less the binder that it saves", each.amount,
                     added.currency + each.unit.substr(1), "",
                     "in the price of the concrete, by the mix file's prices");
    }
    for (const std::string& key : added.missing) {
        table.subject(in_words(key));
        table.add_words("price", "not stated", "not counted");
    }
}

} // namespace boardmark::report

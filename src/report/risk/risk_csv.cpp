#include <boardmark/report/risk/risk_report.hpp>

#include "../writing/long_table.hpp"
#include "risk_words.hpp"

namespace boardmark::report {
namespace {

constexpr double in_percent = 100;

void add_distribution(const core::Distribution& one, LongTable& table) {
    const core::Measure measure = core::measure_of(one.quantity);
    table.subject(std::string{core::name_of(one.quantity)});
    table.add("mean", measure, one.mean);
    table.add("standard deviation", measure, one.standard_deviation);
    table.add("5 % below", measure, one.p05);
    table.add("median", measure, one.p50);
    table.add("95 % below", measure, one.p95);
}

void add_limit(const core::LimitRisk& limit, LongTable& table) {
    table.subject(std::string{limit.id.name()});
    const auto share = [&](std::string_view name, double value) {
        table.add(name, core::Measure::percent, in_percent * value);
    };
    share("broken", limit.probability);
    share("broken, at least", limit.low);
    share("broken, at most", limit.high);
    share("to watch", limit.watch);
    share("not checked", limit.not_checked);
}

} // namespace

std::string csv(const RiskResult& result, core::UnitSystem system) {
    const core::Risk& risk = result.risk;
    LongTable table{system};
    table.section("distribution");
    for (const core::Distribution& one : risk.quantities) {
        add_distribution(one, table);
    }
    table.section("limit");
    for (const core::LimitRisk& limit : risk.limits) {
        add_limit(limit, table);
    }
    table.section("driver");
    for (const core::Driver& driver : risk.drivers) {
        table.subject(std::string{core::name_of(driver.quantity)});
        const std::string& key = risk.inputs[driver.input].key;
        table.add(key + ", by itself", core::Measure::percent, in_percent * driver.first_order);
        table.add(key + ", in all", core::Measure::percent, in_percent * driver.total);
    }
    table.section("scatter");
    table.subject("one standard deviation");
    for (const core::ScatteredInput& input : risk.inputs) {
        table.add(input.key, input.measure, input.deviation,
                  input.assumed ? (input.deviation == 0 ? "not known" : "assumed") : "stated",
                  origin_text(input));
    }
    table.section("check");
    table.subject("mix as written");
    table.add(result.checks);
    table.section("caution");
    table.subject("");
    table.add("caution", risk.cautions);
    table.add("caution", result.cautions);
    return table.text();
}

} // namespace boardmark::report

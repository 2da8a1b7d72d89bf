#include "mix_context.hpp"

namespace boardmark::input {
namespace {

Path supply_key(std::string_view name) {
    return {"supply", name};
}

std::optional<core::Charge> read_charge(const MixContext& context) {
    const Parsed* charge = context.document.value(supply_key("short_load_charge"));
    if (!charge) {
        return std::nullopt;
    }
    if (charge->dimension != units::Dimension::volume) {
        context.refuse(*charge->node,
                       "supply.short_load_charge: '" + charge->text +
                           "' is not by volume of concrete",
                       "write for example '40 USD/yd3'");
    }
    return core::Charge{charge->currency, charge->number};
}

} // namespace

std::optional<core::Supply> read_supply(const MixContext& context) {
    if (!context.holds_keys({"supply"})) {
        return std::nullopt;
    }
    const auto charge = read_charge(context);
    const bool priced = context.has(supply_key("concrete")) || context.has(supply_key("haul")) ||
                        context.has(supply_key("surcharges"));
    if (context.has(supply_key("short_load_charge")) || !priced) {
        context.demand(supply_key("minimum_load"),
                       "a load below it is charged for the volume it is short");
    }
    const auto minimum_load_m3 = context.document.number(supply_key("minimum_load"));
    return minimum_load_m3 ? std::optional{core::Supply{*minimum_load_m3, charge}} : std::nullopt;
}

} // namespace boardmark::input

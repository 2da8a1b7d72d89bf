#include "wall_sections.hpp"

namespace boardmark::input {
namespace {

/// A time by which the concrete has gone further than at an earlier one.
void refuse_before(const Section& section, const std::string& later, const std::string& earlier,
                   const std::string& why) {
    const auto later_h = section.hours(later);
    const auto earlier_h = section.hours(earlier);
    if (later_h && earlier_h && *later_h < *earlier_h) {
        section.refuse(later, " is before '" + earlier + "'" + why, "check the two times");
    }
}

} // namespace

core::WallPlacing read_placing(const FileContext& context) {
    constexpr double metres_in_km = 1000;
    constexpr double kpa_in_mpa = 1000;
    constexpr double minutes_in_hour = 60;
    const Section section{context, {"placing"}};
    const Section vibrator = section.below("vibrator");
    const auto scaled = [&](const char* key, double factor) {
        const auto number = section.number(key);
        return number ? std::optional{*number * factor} : std::nullopt;
    };
    const Parsed* flow = section.value("flow_class");
    const bool by_class = flow && flow->is_word;
    const auto round_trip_h = section.hours("round_trip");
    refuse_before(section, "end_of_set", "setting",
                  ", when a lift can no longer be vibrated together with the next");
    refuse_before(section, "strip_after", section.value("end_of_set") ? "end_of_set" : "setting",
                  ": the concrete has not set");
    refuse_before(section, "soffit_strip_after",
                  section.value("end_of_set") ? "end_of_set" : "setting",
                  ": the concrete has not set");
    return {.rise_m_h = scaled("rise", metres_in_km),
            .output_m3_h = section.number("output"),
            .lift_m = section.metres("lift"),
            .concrete_c = section.number("concrete_temperature"),
            .air_c = section.number("air_temperature"),
            .humidity_percent = section.number("humidity"),
            .wind_km_h = section.number("wind"),
            .setting_h = section.hours("setting"),
            .truck_m3 = section.number("truck"),
            .round_trip_min =
                round_trip_h ? std::optional{*round_trip_h * minutes_in_hour} : std::nullopt,
            .vibrator_head_mm = vibrator.number("head"),
            .vibrator_depth_m = vibrator.metres("depth"),
            .external_vibration = vibrator.flag("external"),
            .pumped_from_below = section.flag("pumped_from_below"),
            .redosed_on_site = section.flag("redosed_on_site"),
            .self_consolidating = section.flag("self_consolidating"),
            .by_formula = section.text("pressure").has_value(),
            .pressure_method = section.text("method").value_or(""),
            .form_pressure_kpa = scaled("form_pressure", kpa_in_mpa),
            .flow_class = by_class ? std::optional{flow->text.back() - '0'} : std::nullopt,
            .spread_mm = section.number("flow_class"),
            .end_of_set_h = section.hours("end_of_set"),
            .strip_after_h = section.hours("strip_after"),
            .lowest_air_c = section.number("lowest_air"),
            .held_at_c = section.number("held_at"),
            .protected_until_h = section.hours("protected_until"),
            .loaded_after_h = section.hours("loaded_after"),
            .soffit_strip_after_h = section.hours("soffit_strip_after"),
            .soffit_strength_percent = section.number("soffit_strength"),
            .strip_strength_mpa = section.number("strip_strength"),
            .season = section.text("season").value_or("")};
}

std::optional<core::Mockup> read_mockup(const FileContext& context) {
    const Section section{context, {"mockup"}};
    if (!section.stands()) {
        return std::nullopt;
    }
    return core::Mockup{.length_m = section.metres("length"),
                        .height_m = section.metres("height"),
                        .thickness_mm = section.number("thickness"),
                        .number = section.count("number", 1),
                        .viewed_from = section.text("viewed_from").value_or(""),
                        .signed_by = section.text("signed_by").value_or(""),
                        .shows = read_features(section)};
}

core::OrderRules read_order(const FileContext& context) {
    const Section section{context, {"order"}};
    return {.waste_percent = section.number("waste").value_or(0),
            .increment_m3 = section.number("increment")};
}

std::optional<core::WallPrices> read_prices(const FileContext& context) {
    const Section section{context, {"prices"}};
    core::WallPrices prices;
    const Parsed* first = nullptr;
    for (const std::string_view name : section.names()) {
        const Parsed* price = section.value(name);
        if (!price) {
            continue;
        }
        first = first ? first : price;
        if (price->currency != first->currency) {
            section.refuse(
                name, " is in " + price->currency + ", a price before it in " + first->currency,
                "write all prices in one currency: rates change, and none is kept here");
        }
        prices.item[std::string{name}] = {
            .low = price->number,
            .likely = price->likely.value_or((price->number + price->high) / 2),
            .high = price->high,
            .likely_stated = price->likely.has_value() || price->number == price->high};
    }
    if (!first) {
        return std::nullopt;
    }
    prices.currency = first->currency;
    return prices;
}

} // namespace boardmark::input

#include "short_load_text.hpp"

#include "../writing/quantity_format.hpp"

#include <fmt/format.h>

namespace boardmark::report {

Flow text_of_short_load(const core::ShortLoad& load, core::UnitSystem system) {
    const auto volume = [&](double m3) { return shown({m3, core::Measure::volume}, system); };
    const std::string loads =
        load.loads == 1 ? "one load of " + volume(load.each_m3)
                        : fmt::format("{} loads of {} each", load.loads, volume(load.each_m3));
    std::string text = fmt::format("Delivered as {}; the supplier's smallest load is {}: ", loads,
                                   volume(load.minimum_m3));
    if (load.short_m3 <= 0) {
        text += "no charge for a short load.";
    } else if (const auto cost = load.cost()) {
        text += fmt::format("{} short{}, {} {} more than the concrete.", volume(load.short_m3),
                            load.loads == 1 ? "" : " each", fixed(*cost, 2), load.charge->currency);
    } else {
        text += fmt::format("{} short{}. Ask what the supplier charges for that.",
                            volume(load.short_m3), load.loads == 1 ? "" : " each");
    }
    return paragraph(text, {.first = "  ", .other = "  "});
}

} // namespace boardmark::report

#include "risk_words.hpp"

#include "../writing/quantity_format.hpp"

#include <fmt/format.h>

namespace boardmark::report {

std::string quantity_words(core::RiskQuantity quantity) {
    switch (quantity) {
    case core::RiskQuantity::w_cm:
        return "w/cm";
    case core::RiskQuantity::slump_water:
        return "slump water";
    case core::RiskQuantity::relative_yield:
        return "relative yield";
    case core::RiskQuantity::air:
        return "air at placing";
    case core::RiskQuantity::strength:
        return "strength of a test";
    }
    return "";
}

std::string percent_text(double share) {
    const double percent = 100 * share;
    constexpr double small = 1;
    constexpr double nearly_all = 99;
    if (percent == 0 || percent == 100) {
        return fmt::format("{:.0f} %", percent);
    }
    if (percent < small) {
        return fmt::format("{:.2g} %", percent);
    }
    return percent > nearly_all ? fmt::format("{:.3f} %", percent)
                                : fmt::format("{:.1f} %", percent);
}

std::string scattered_text(double value, core::Measure measure, core::UnitSystem system) {
    const bool is_ratio = measure == core::Measure::ratio || measure == core::Measure::w_cm;
    return is_ratio ? fixed(value, 4) : shown({value, measure}, system, 1);
}

std::string origin_text(const core::ScatteredInput& input) {
    if (!input.assumed) {
        return "stated";
    }
    if (input.deviation == 0) {
        return "not known: taken as exact";
    }
    return "assumed [" + input.source.citation + "]";
}

} // namespace boardmark::report

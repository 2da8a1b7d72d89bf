#include "comparison_reasons.hpp"

#include <boardmark/text/utf8.hpp>

#include "../writing/text_sections.hpp"
#include "../writing/wrap.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

/// "165 USD/short ton, 3 % waste"
std::string price_text(const core::Material& material) {
    if (!material.price) {
        return "no price";
    }
    const std::string waste =
        material.waste_percent > 0 ? fmt::format(", {:.4g} % waste", material.waste_percent) : "";
    return text::printable(material.price->written) + waste;
}

std::string carbon_text(const core::Material& material) {
    return material.carbon_kg_kg ? fmt::format("carbon {:.4g} kg/kg", *material.carbon_kg_kg)
                                 : "no carbon figure";
}

std::string source_text(const core::Material& material) {
    return material.source.empty() ? "source not stated"
                                   : "source: " + text::printable(material.source);
}

/// One line for each material, each line once.
void add_materials(const core::Proportions& proportions, std::vector<std::string>& lines) {
    for (const core::Ingredient& ingredient : proportions.ingredients) {
        if (!ingredient.material) {
            continue;
        }
        const core::Material& material = *ingredient.material;
        const std::string line = text::printable(material.name) + ": " + price_text(material) +
                                 "; " + carbon_text(material) + "; " + source_text(material);
        if (std::ranges::count(lines, line) == 0) {
            lines.push_back(line);
        }
    }
}

Flow text_of_materials(const std::vector<std::string>& lines) {
    Flow text;
    for (const std::string& line : lines) {
        text += paragraph(line, list_item);
    }
    return text;
}

/// The materials of a study are those of one file; several files may use one name for two things.
Flow text_of_prices(const ComparisonResult& result) {
    Flow text = folded_section("PRICES AND CARBON, where they come from");
    std::vector<std::string> lines;
    for (const core::ComparedMix& column : result.columns) {
        if (!column.proportions) {
            continue;
        }
        add_materials(*column.proportions, lines);
        if (!result.is_study) {
            text += "  " + text::printable(column.label) + "\n" + text_of_materials(lines);
            lines.clear();
        }
    }
    return text + text_of_materials(lines);
}

} // namespace

Flow comparison_reasons(const ComparisonResult& result, const TextStyle& style) {
    Flow text;
    for (const core::ComparedMix& column : result.columns) {
        if (column.proportions) {
            text += folded_section("REASONS, " + text::printable(column.label)) +
                    text_of_reasons(column.reasons, style);
        }
    }
    return text + text_of_prices(result);
}

} // namespace boardmark::report

#include <boardmark/core/panels/panel_design.hpp>

#include "relabelled.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// The place of a factor's letter: A is the first.
std::size_t place_of_letter(char letter) {
    return static_cast<std::size_t>(letter - 'A');
}

/// The level that a generator such as "D=AB" gives: the product of signs, the second level plus.
int product_level(const std::string& generator, const PanelRow& row) {
    constexpr std::size_t behind_equals = 2;
    int minus = 0;
    for (const char letter : generator.substr(behind_equals)) {
        minus += 1 - row[place_of_letter(letter)];
    }
    return minus % 2 == 0 ? 1 : 0;
}

/// All combinations of the first factors, the others by their generators.
std::vector<PanelRow> rows_of(const PublishedDesign& design) {
    const auto own = static_cast<std::size_t>(design.factors) - design.generators.size();
    std::vector<PanelRow> rows = every_combination({std::vector<int>(own, 2)});
    for (PanelRow& row : rows) {
        for (const std::string& generator : design.generators) {
            row.push_back(product_level(generator, row));
        }
    }
    return rows;
}

} // namespace

std::optional<PanelDesign> published_design(const PanelAsk& ask, int panels,
                                            const std::vector<PublishedDesign>& designs) {
    const auto found = std::ranges::find_if(designs, [&](const PublishedDesign& design) {
        return design.factors == static_cast<int>(ask.levels.size()) && design.runs == panels;
    });
    const bool two_levels = std::ranges::all_of(ask.levels, [](int levels) { return levels == 2; });
    if (found == designs.end() || !two_levels) {
        return std::nullopt;
    }
    PanelDesign design = judged(PanelDesignKind::published, relabelled(rows_of(*found), ask), ask);
    if (!design.answers_all()) { // asked pairs may be mixed with each other
        return std::nullopt;
    }
    design.resolution = found->resolution;
    design.source = found->source;
    return design;
}

} // namespace boardmark::core

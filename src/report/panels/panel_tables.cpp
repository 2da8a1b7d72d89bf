#include "panel_tables.hpp"

#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/blank.hpp"
#include "../writing/grid.hpp"
#include "../writing/quantity_format.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

constexpr const char* narrow_blank = "____";
const Indent under_table{.first = "  ", .other = "  "};

std::string dash_or(const std::optional<double>& value, Measure measure, UnitSystem system) {
    return value ? shown({*value, measure}, system) : "-";
}

std::string panel_numbers(const std::vector<int>& panels) {
    std::string numbers;
    for (const int number : panels) {
        numbers += (numbers.empty() ? "" : ", ") + std::to_string(number);
    }
    return numbers;
}

std::string pairs_of(const core::PanelEffect& effect, const core::PanelWishes& wishes) {
    constexpr std::size_t most = 3;
    if (effect.mixed_with.empty()) {
        return "none";
    }
    std::string named;
    for (std::size_t i = 0; i < std::min(effect.mixed_with.size(), most); ++i) {
        const core::PanelPair& pair = effect.mixed_with[i];
        named += (i == 0 ? "" : "; ") + factor_title(wishes.factors[pair.first]) + " with " +
                 factor_title(wishes.factors[pair.second]);
    }
    const std::size_t more = effect.mixed_with.size() - std::min(effect.mixed_with.size(), most);
    return more > 0 ? named + fmt::format("; {} more", more) : named;
}

/// "+1/4", "-0.375": a weight of a score.
std::string weight_text(double weight) {
    return weight == 0 ? "0" : fmt::format("{:+.4g}", weight);
}

/// Every effect with one list of weights each.
template <class Row>
void for_each_weighting(const core::PanelDesign& design, Row row) {
    for (const core::PanelEffect& effect : design.effects) {
        for (std::size_t level = 0; level < effect.weights.size(); ++level) {
            row(effect, level, effect.weights[level]);
        }
    }
}

Flow weights_table(const PanelResult& result) {
    const core::PanelDesign& design = result.programme.design;
    std::vector<Align> columns{Align::left};
    std::vector<std::string> names{"panel"};
    for (std::size_t i = 0; i < design.rows.size(); ++i) {
        columns.push_back(Align::right);
        names.push_back(std::to_string(i + 1));
    }
    Grid grid{std::move(columns)};
    grid.head(std::move(names));
    for_each_weighting(design, [&](const core::PanelEffect& effect, std::size_t level,
                                   const std::vector<double>& weights) {
        std::vector<std::string> cells{question_words(effect, level, result.wishes)};
        for (const double weight : weights) {
            cells.push_back(weight_text(weight));
        }
        grid.add(std::move(cells));
    });
    return Flow{grid} +
           paragraph("Multiply each panel's score by its figure and add up: the sum says how much "
                     "more the later level scores than level a. What is no larger than panel 1 and "
                     "its repeat differ is nothing.",
                     under_table);
}

} // namespace

std::string level_letter(int level) {
    return std::string(1, static_cast<char>('a' + level));
}

std::string factor_title(const core::PanelFactor& factor) {
    std::string words = factor.name;
    std::ranges::replace(words, '_', ' ');
    return words == "strip after" ? "stripping age" : words;
}

std::string design_words(const core::PanelDesign& design) {
    switch (design.kind) {
    case core::PanelDesignKind::one_at_a_time:
        return "one factor at a time";
    case core::PanelDesignKind::published:
        return fmt::format("published fraction, resolution {}", design.resolution.value_or(0));
    case core::PanelDesignKind::searched:
        return design.least ? "searched; none has less" : "searched; least that was found";
    case core::PanelDesignKind::every_combination:
        break;
    }
    return "every combination";
}

std::string question_words(const core::PanelEffect& effect, std::size_t of_levels,
                           const core::PanelWishes& wishes) {
    const core::PanelFactor& factor = wishes.factors[effect.factor];
    if (effect.beside) {
        return factor_title(factor) + " with " + factor_title(wishes.factors[*effect.beside]);
    }
    return factor.levels.size() == 2
               ? factor_title(factor)
               : factor_title(factor) + " " + level_letter(static_cast<int>(of_levels) + 1);
}

Flow factors_table(const PanelResult& result) {
    Grid grid{{Align::left, Align::left, Align::left}};
    for (const core::PanelFactor& factor : result.wishes.factors) {
        for (std::size_t level = 0; level < factor.levels.size(); ++level) {
            grid.add({level == 0 ? factor_title(factor) : "", level_letter(static_cast<int>(level)),
                      text::printable(factor.levels[level])});
        }
    }
    return grid;
}

Flow panels_table(const PanelResult& result) {
    std::vector<Align> columns{Align::right, Align::right, Align::right};
    std::vector<std::string> names{"cast", "panel", "batch"};
    for (const core::PanelFactor& factor : result.wishes.factors) {
        columns.push_back(Align::left);
        names.push_back(factor_title(factor));
    }
    columns.push_back(Align::left);
    names.emplace_back("");
    Grid grid{std::move(columns)};
    grid.head(std::move(names));
    std::vector<const core::SamplePanel*> in_order;
    for (const core::SamplePanel& panel : result.programme.panels) {
        in_order.push_back(&panel);
    }
    std::ranges::sort(in_order, {}, &core::SamplePanel::place);
    for (const core::SamplePanel* panel : in_order) {
        std::vector<std::string> cells{std::to_string(panel->place), std::to_string(panel->number),
                                       std::to_string(panel->batch)};
        for (const int level : panel->levels) {
            cells.push_back(level_letter(level));
        }
        cells.emplace_back(panel->repeat ? "panel 1 again" : "");
        grid.add(std::move(cells));
    }
    return grid;
}

Flow batches_table(const PanelResult& result, UnitSystem system) {
    const core::PanelProgramme& programme = result.programme;
    Grid grid{{Align::right, Align::right, Align::right, Align::left, Align::left}};
    grid.head({"batch", "in panels", "to mix", "panels in this order", "concrete"});
    for (const core::PanelBatch& batch : programme.batches) {
        grid.add({std::to_string(batch.number), dash_or(batch.panels_m3, Measure::volume, system),
                  dash_or(batch.mixed_m3, Measure::volume, system), panel_numbers(batch.panels),
                  text::printable(programme.mixes[batch.mix].file)});
    }
    Flow flow{grid};
    if (programme.panel_m3) {
        flow += paragraph("Weights of a batch: 'boardmark batch' with its mix file and "
                          "'--volume'.",
                          under_table);
    }
    return flow;
}

Flow effects_table(const PanelResult& result) {
    Grid grid{{Align::left, Align::right, Align::left}};
    grid.head({"question", "deviation", "shifted by"});
    for (const core::PanelEffect& effect : result.programme.design.effects) {
        const core::PanelFactor& factor = result.wishes.factors[effect.factor];
        grid.add({effect.beside ? question_words(effect, 0, result.wishes) : factor_title(factor),
                  fixed(std::sqrt(effect.variance), 2), pairs_of(effect, result.wishes)});
    }
    return Flow{grid} +
           paragraph("Deviation of the answer in deviations between two alike panels: the smaller, "
                     "the finer a difference is told. Shifted: by what two factors do together "
                     "beyond what each does alone.",
                     under_table) +
           weights_table(result);
}

Flow designs_table(const PanelResult& result) {
    Grid grid{{Align::right, Align::right, Align::left, Align::left}};
    grid.head({"panels", "deviation", "design", "effects shifted by pairs"});
    const auto add = [&](const core::PanelDesign& design, const char* note) {
        const auto shifted =
            std::ranges::count_if(design.effects, [](const core::PanelEffect& effect) {
                return !effect.mixed_with.empty();
            });
        grid.add({std::to_string(design.rows.size()),
                  design.answers_all() ? fixed(std::sqrt(design.mean_variance), 2) : "-",
                  design_words(design) + note,
                  fmt::format("{} of {}", shifted, design.effects.size())});
    };
    add(result.programme.design, " (this programme)");
    for (const core::PanelDesign& other : result.programme.others) {
        add(other, "");
    }
    return Flow{grid} + paragraph("'panels.number' asks for another count; repeats are not "
                                  "counted here.",
                                  under_table);
}

Flow room_table(const core::PanelRoom& room, UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::right, Align::left, Align::left}};
    grid.head({"to show", "length", "height", "alone", "beside the others"});
    for (const core::FeatureRoom& one : room.features) {
        const bool known = one.length_mm && one.height_mm;
        const bool sized = room.is_sized() && known;
        grid.add({core::name_of(one.feature), dash_or(one.length_mm, Measure::length, system),
                  dash_or(one.height_mm, Measure::length, system),
                  !sized           ? "-"
                  : one.fits_alone ? "fits"
                                   : "no room",
                  !one.wished ? "not asked"
                  : !known    ? "not known: '" + one.missing + "'"
                  : !sized    ? "-"
                  : one.fits  ? "fits"
                              : "no room"});
    }
    Flow flow{grid};
    const auto metres = [&](const std::optional<double>& m) {
        return shown({*m, Measure::line_length}, system);
    };
    if (room.proposed_length_m) {
        flow += paragraph((room.is_sized() ? "It is " + metres(room.length_m) + " by " +
                                                 metres(room.height_m) + "; all that is asked for"
                                           : std::string{"All that is asked for"}) +
                              " takes " + metres(room.proposed_length_m) + " by " +
                              metres(room.proposed_height_m) + "; no field overlaps another.",
                          under_table);
    }
    return flow;
}

Flow score_sheet(const PanelResult& result, UnitSystem system) {
    const core::PanelProgramme& programme = result.programme;
    Grid signs{{Align::left, Align::left, Align::left, Align::left, Align::left, Align::left}};
    signs.add({"date", blank, "scored by", blank, "role", blank});
    signs.add({"weather, light", blank, "distance", blank, "dry since", blank});
    std::vector<Align> columns{Align::right};
    std::vector<std::string> names{"panel"};
    for (const core::ScoreItem& item : programme.scores) {
        columns.push_back(Align::left);
        names.push_back(item.name);
    }
    Grid grid{std::move(columns)};
    grid.head(std::move(names));
    for (const core::SamplePanel& panel : programme.panels) {
        std::vector<std::string> cells(programme.scores.size() + 1, narrow_blank);
        cells.front() = std::to_string(panel.number);
        grid.add(std::move(cells));
    }
    Flow flow = Flow{signs} + "\n" + grid;
    for (const core::ScoreItem& item : programme.scores) {
        flow += paragraph(item.name + ": " + words(item.how, system), list_item);
    }
    Grid last{{Align::left, Align::left, Align::left, Align::left}};
    last.add({"chosen panel", blank, "signed", blank});
    return flow + "\n" + last;
}

} // namespace boardmark::report

#include <boardmark/report/strength/record_report.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include "../strength/record_counts.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/wrap.hpp"
#include "control_figure.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

constexpr std::size_t widest_strip = 41;
constexpr std::size_t narrowest_strip = 15;

/// The strip on which one row of the chart is drawn.
class Strip {
public:
    Strip(const ChartResult& result, std::size_t width)
        : width_(width)
        , chart_(result.chart)
        , target_(core::common_target(result.points)) {
        for (const core::ChartPoint& point : result.points) {
            stretch(point.value);
        }
        for (const auto line : {chart_.low, chart_.high, target_}) {
            stretch(line.value_or(chart_.mean));
        }
    }

    /// Lines of the chart and, over them, the value.
    std::string row(double value, core::ChartSignal signal) const {
        std::string cells(width_, ' ');
        for (const auto& [at, mark] : lines()) {
            cells[cell_of(at)] = mark;
        }
        cells[cell_of(value)] = signal == core::ChartSignal::outside ? 'o' : '*';
        return cells;
    }

private:
    struct Line {
        double at;
        char mark;
    };

    std::vector<Line> lines() const {
        std::vector<Line> found;
        if (target_) {
            found.push_back({*target_, '+'});
        }
        found.push_back({chart_.mean, ':'});
        for (const auto limit : {chart_.low, chart_.high}) {
            if (limit) {
                found.push_back({*limit, '|'});
            }
        }
        return found;
    }

    void stretch(double value) {
        low_ = std::min(low_.value_or(value), value);
        high_ = std::max(high_.value_or(value), value);
    }

    std::size_t cell_of(double value) const {
        const double span = *high_ - *low_;
        const double part = span > 0 ? (value - *low_) / span : 0.5;
        return static_cast<std::size_t>(std::lround(part * static_cast<double>(width_ - 1)));
    }

    std::size_t width_; ///< columns
    const core::ControlChart& chart_;
    std::optional<double> target_;
    std::optional<double> low_;
    std::optional<double> high_;
};

std::string number_word(std::size_t count) {
    return fmt::format("{} {}", count, count == 1 ? "value" : "values");
}

std::string signals_text(const ChartResult& result) {
    const auto signals = std::ranges::count_if(
        result.chart.signals, [](core::ChartSignal signal) { return !name_of(signal).empty(); });
    return signals == 0 ? "no value stands out."
                        : number_word(static_cast<std::size_t>(signals)) +
                              (signals == 1 ? " stands out." : " stand out.");
}

Flow heading(const ChartResult& result, const TextStyle& style) {
    std::string what = "Control chart of the " + std::string{result.charted.heading};
    if (result.age_d) {
        what += " at " + shown({*result.age_d, core::Measure::age}, style.system);
    }
    if (!result.mix.empty()) {
        what += ", " + text::printable(result.mix);
    }
    if (!result.mix_title.empty()) {
        what += ", " + text::printable(result.mix_title);
    }
    const std::string& first = result.points.front().date;
    const std::string& last = result.points.back().date;
    return paragraph("Record " + text::printable(result.title), {}) +
           record_headline("A chart shows whether the work is steady; " + signals_text(result)) +
           paragraph(what, {}) +
           paragraph(number_word(result.points.size()) +
                         (first == last ? " on " + first : ", " + first + " to " + last),
                     {}) +
           "\n";
}

/// A calculated value. That of a length is no reading: it gets decimals, not a fraction of an inch.
std::string calculated(double value, const ChartResult& result, const TextStyle& style) {
    if (result.charted.measure != core::Measure::slump) {
        return shown({value, result.charted.measure}, style.system);
    }
    const std::string_view unit = result.charted.unit(style.system);
    return fixed(units::unit(unit).from_inside(value),
                 style.system == core::UnitSystem::us ? 2 : 0) +
           " " + std::string{unit};
}

std::string limits_text(const ChartResult& result, const TextStyle& style) {
    if (!result.chart.low) {
        return "none yet: they need two values";
    }
    return calculated(*result.chart.low, result, style) + " to " +
           calculated(*result.chart.high, result, style) +
           fmt::format(", {:g} standard deviations from the mean",
                       result.rules.limit_in_deviations.value);
}

std::string target_text(const ChartResult& result, const TextStyle& style) {
    const auto target = core::common_target(result.points);
    const bool any = std::ranges::any_of(
        result.points, [](const core::ChartPoint& point) { return point.target.has_value(); });
    return target ? shown({*target, result.charted.measure}, style.system)
           : any  ? "not one and the same for all values"
                  : "none recorded";
}

Flow facts(const ChartResult& result, const TextStyle& style) {
    const bool strength = result.charted.charted == core::Charted::strength;
    Grid grid{{Align::left, Align::left}};
    grid.add({"mean", calculated(result.chart.mean, result, style)});
    grid.add({"control limits", limits_text(result, style)});
    grid.add({strength ? "specified" : "target", target_text(result, style)});
    return grid;
}

/// The values without the plot, which a page draws.
Flow table(const ChartResult& result, const TextStyle& style) {
    Grid grid{{Align::left, Align::left, Align::right, Align::left}};
    grid.head({"date", "batch", std::string{result.charted.heading}, ""});
    for (std::size_t i = 0; i < result.points.size(); ++i) {
        const core::ChartPoint& point = result.points[i];
        grid.add({point.date, column_name(point.batch),
                  shown({point.value, result.charted.measure}, style.system),
                  std::string{name_of(result.chart.signals[i])}});
    }
    return Block{PageTable{std::move(grid)}};
}

Flow rows(const ChartResult& result, const TextStyle& style) {
    std::vector<std::string> values;
    std::size_t batch_width = 0;
    std::size_t value_width = 0;
    for (const core::ChartPoint& point : result.points) {
        batch_width = std::max(batch_width, shown_width(column_name(point.batch)));
        values.push_back(shown({point.value, result.charted.measure}, style.system));
        value_width = std::max(value_width, shown_width(values.back()));
    }
    constexpr std::string_view widest_signal = "outside";
    const std::size_t before = 2 + shown_width(result.points.front().date) + 2 + batch_width + 2 +
                               value_width + 2; // two blanks part the columns
    const std::size_t behind = 2 + widest_signal.size();
    const bool is_beside = before + narrowest_strip + behind <= style.width;
    const std::size_t room = is_beside ? style.width - before - behind : widest_strip;
    const Strip strip{result, std::min(room, widest_strip)};
    const std::string parting = is_beside ? "  " : "\n      ";
    std::string text;
    for (std::size_t i = 0; i < result.points.size(); ++i) {
        const core::ChartPoint& point = result.points[i];
        const core::ChartSignal signal = result.chart.signals[i];
        std::string line = fmt::format("  {}  {}  {}{}{}  {}", point.date,
                                       padded_right(column_name(point.batch), batch_width),
                                       padded_left(values[i], value_width), parting,
                                       strip.row(point.value, signal), name_of(signal));
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + "\n";
    }
    return Block{Verbatim{.text = text, .text_only = true}} + table(result, style);
}

std::string cited(const core::TypicalFigure& figure) {
    return " [" + figure.source.citation + "]";
}

Flow notes(const ChartResult& result) {
    const core::ControlChartRules& rules = result.rules;
    std::vector<std::string> sentences{
        "outside: beyond a control limit; look for what was different that day" +
            cited(rules.limit_in_deviations),
        fmt::format("run: value {:g} or a later one in a row on one side of the mean; the mean has "
                    "moved",
                    rules.run_length.value) +
            cited(rules.run_length)};
    if (result.chart.provisional) {
        sentences.push_back(fmt::format("Limits of fewer than {:g} values are provisional",
                                        rules.firm_count.value) +
                            cited(rules.firm_count) + ".");
    }
    sentences.push_back("The limits come from the values themselves: they show whether the work is "
                        "steady, not whether the concrete meets its requirements.");
    const Indent indent{.first = "  ", .other = "      "};
    Flow text =
        Block{Paragraph{.text = "| control limit, : mean, + target, * value, o value outside",
                        .indent = indent,
                        .text_only = true}};
    for (const std::string& sentence : sentences) {
        text += paragraph(sentence, indent);
    }
    return text;
}

} // namespace

Flow flow_of(const ChartResult& result, const TextStyle& style) {
    return heading(result, style) + facts(result, style) + "\n" + rows(result, style) +
           control_figure(result, style.system) + "\n" + notes(result);
}

std::string text(const ChartResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const ChartResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = "record", .inputs = result.inputs});
}

} // namespace boardmark::report

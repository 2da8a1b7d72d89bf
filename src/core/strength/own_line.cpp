#include "own_line.hpp"

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double ratio_step = 0.01; // of w/cm, in which a fall is told

std::string side_text(LineSide side) {
    return side == LineSide::lower
               ? "lower side, above which the mean lies with {confidence} confidence"
               : "line itself, above and below which the mean may lie";
}

constexpr const char* basis = "; {tests} tests at {ratios} ratios from {lowest} to {highest} in "
                              "{file}, r2 {fit}, log strength linear in w/cm";

std::vector<Argument> arguments_of(const OwnLine& own, double average_mpa) {
    const StrengthLine& line = own.line;
    const auto strength = [&](double w_cm) {
        return Quantity{strength_at(line, w_cm, own.side), Measure::strength};
    };
    return {quantity("average", {average_mpa, Measure::strength}),
            quantity("tests", {double(line.points.size()), Measure::count}),
            quantity("ratios", {double(line.ratio_count), Measure::count}),
            quantity("lowest", {line.lowest_w_cm, Measure::w_cm}),
            quantity("highest", {line.highest_w_cm, Measure::w_cm}),
            word("file", own.file),
            quantity("fit", {line.r_squared, Measure::ratio}),
            percent_of("confidence", 100 * line.confidence),
            quantity("strongest", strength(strongest_w_cm(line, own.side))),
            quantity("strongest_at", {strongest_w_cm(line, own.side), Measure::w_cm}),
            quantity("weakest", strength(line.highest_w_cm))};
}

} // namespace

Phrase fall_of(const StrengthLine& line) {
    const auto change = [](std::string name, double slope) {
        return quantity(std::move(name), {100 * std::expm1(ratio_step * slope), Measure::percent});
    };
    const SlopeBand band = slope_band(line);
    return {"with each {step} of w/cm strength changes by {change}, in a {confidence} band from "
            "{fastest} to {slowest}; r2 {fit}, {tests} tests",
            {quantity("step", {ratio_step, Measure::w_cm}), change("change", line.slope),
             percent_of("confidence", 100 * line.confidence), change("fastest", band.low),
             change("slowest", band.high), quantity("fit", {line.r_squared, Measure::ratio}),
             quantity("tests", {double(line.points.size()), Measure::count})}};
}

std::variant<OwnRatio, Phrase> ratio_by_own_line(const OwnLine& own, double average_mpa) {
    const StrengthLine& line = own.line;
    if (use_of(line) == LineUse::none) {
        Phrase why = fall_of(line);
        why.text = (line.slope < 0 ? "the fall of the own results in {file} may be chance: "
                                   : "the own results in {file} do not fall: ") +
                   why.text;
        why.arguments.push_back(word("file", own.file));
        return why;
    }
    const double strongest_at = strongest_w_cm(line, own.side);
    if (above(average_mpa, strength_at(line, strongest_at, own.side))) {
        return Phrase{"the line of own results reaches {strongest} at w/cm {strongest_at}, "
                      "the required average strength is {average}; read from the " +
                          side_text(own.side) + basis,
                      arguments_of(own, average_mpa)};
    }
    const bool weaker = below(average_mpa, strength_at(line, line.highest_w_cm, own.side));
    return OwnRatio{weaker ? line.highest_w_cm
                           : std::clamp(ratio_for(line, average_mpa, own.side), line.lowest_w_cm,
                                        line.highest_w_cm),
                    weaker};
}

Step own_line_step(const OwnRatio& ratio, const OwnLine& own, double average_mpa) {
    return {.quantity = "w_cm_by_strength",
            .value = ratio.w_cm,
            .measure = Measure::w_cm,
            .provenance = Provenance::computed,
            .reason = {(ratio.is_weakest
                            ? "the line's weakest, {weakest}, is stronger than the required "
                              "{average}; its ratio is used, not a higher one; read from the "
                            : "own results, for {average}: read from the ") +
                           side_text(own.side) + basis,
                       arguments_of(own, average_mpa)},
            .source = {"strength results of the mix file", Confidence::read},
            .marks = ratio.is_weakest ? Marks{Mark::continued} : Marks{}};
}

} // namespace boardmark::core

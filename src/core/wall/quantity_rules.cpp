#include "quantity_rules.hpp"

#include "../basis/phrases.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

const Source practice_of_the_trade{.citation = "common practice, no source",
                                   .confidence = Confidence::common_practice};

Step rule(std::string quantity, std::optional<double> value, Measure measure, Phrase reason) {
    return {.quantity = std::move(quantity),
            .value = value,
            .measure = measure,
            .provenance = Provenance::computed,
            .reason = std::move(reason)};
}

bool any_run(const Wall& wall, auto holds) {
    return std::ranges::any_of(wall.runs, holds);
}

bool any_opening(const Wall& wall, auto holds) {
    return any_run(wall,
                   [&](const WallRun& run) { return std::ranges::any_of(run.openings, holds); });
}

void say_volumes(const Wall& wall, const WallQuantities& quantities, Worksheet& worksheet) {
    const ConcreteOrder& order = quantities.order;
    worksheet.steps.push_back(
        rule("concrete", quantities.total.concrete_m3, Measure::volume,
             {"inside the nominal faces, less {out} of box-outs; planters without the soil they "
              "hold; footings separately, {footings}",
              {quantity("out", {quantities.total.box_outs_m3, Measure::volume}),
               quantity("footings", {quantities.total.footing_m3, Measure::volume})}}));
    Phrase ordered{"{net} and {waste} for waste",
                   {quantity("net", {order.net_m3, Measure::volume}),
                    percent_of("waste", order.waste_percent)}};
    if (wall.order.increment_m3) {
        ordered.text += ", rounded up to the supplier's step of {step}";
        ordered.arguments.push_back(quantity("step", {*wall.order.increment_m3, Measure::volume}));
    }
    worksheet.steps.push_back(
        rule("concrete_order", order.order_m3, Measure::volume, std::move(ordered)));
}

void say_deductions(const WallQuantities& quantities, const PracticeTables& practice,
                    Worksheet& worksheet) {
    const FaceDeductions& less = quantities.deductions;
    const TypicalFigure& least = practice.face_deduction_matters_percent;
    const Argument threshold = percent_of("least", least.value);
    if (less.chamfers_m3 > 0) {
        const std::string text = less.chamfers_deducted
                                     ? "chamfers take {share}, more than {least}: deducted"
                                     : "chamfers take {share}, not more than {least}: not deducted";
        Step step = rule("chamfer_volume", less.chamfers_m3, Measure::volume,
                         {text, {percent_of("share", less.chamfers_percent), threshold}});
        step.source = least.source;
        worksheet.steps.push_back(std::move(step));
    }
    if (less.relief_at_most_m3 > 0) {
        const std::string text =
            less.relief_matters
                ? "the boards' relief takes {share} at most, which is more than {least}: not "
                  "deducted, "
                  "because how deep the boards stand on average is not known and forms that spread "
                  "take it back"
                : "the boards' relief takes {share} at most, not more than {least}: not deducted";
        Step step = rule("relief_volume", less.relief_at_most_m3, Measure::volume,
                         {text, {percent_of("share", less.relief_percent), threshold}});
        step.source = least.source;
        step.marks = {Mark::estimate};
        worksheet.steps.push_back(std::move(step));
    }
}

void say_faces(const Wall& wall, const WallQuantities& quantities, Worksheet& worksheet) {
    worksheet.steps.push_back(
        rule("form_face", std::nullopt, Measure::ratio,
             {"both sides of the runs, their ends and steps, the sides of box-outs; openings taken "
              "off, the back of a niche counted",
              {}}));
    worksheet.steps.push_back(rule(
        "shown_face", std::nullopt, Measure::ratio,
        {"the sides that show without box-outs, and all ends and steps; the sides and backs of "
         "box-outs are formed plain",
         {}}));
    if (quantities.total.edges_m > 0) {
        worksheet.steps.push_back(
            rule("edges", std::nullopt, Measure::ratio,
                 {"top edges, ends, steps and openings of the sides that show; each corner counts "
                  "one edge of the greatest height",
                  {}}));
    }
    if (any_run(wall,
                [](const WallRun& run) { return run.bottom_thickness_mm != run.thickness_mm; })) {
        worksheet.steps.push_back(rule(
            "batter", std::nullopt, Measure::ratio,
            {"a battered run slants on one side: on the one that does not show where one shows",
             {}}));
    }
}

void say_positions(const Wall& wall, Worksheet& worksheet) {
    if (any_opening(wall, [](const Opening& opening) { return !opening.sill_m; })) {
        Step step = rule("sill", std::nullopt, Measure::ratio,
                         {"a box-out without a sill is taken at half the height", {}});
        step.marks = {Mark::typical};
        worksheet.steps.push_back(std::move(step));
    }
    if (any_opening(wall, [](const Opening& opening) { return opening.at_m.empty(); })) {
        Step step = rule("position", std::nullopt, Measure::ratio,
                         {"box-outs without stations are taken evenly spread over the run", {}});
        step.marks = {Mark::typical};
        worksheet.steps.push_back(std::move(step));
    }
}

void say_ties(const Wall& wall, const WallQuantities& quantities, Worksheet& worksheet) {
    if (!wall.ties) {
        return;
    }
    Step step = rule(
        "ties", quantities.total.ties, Measure::count,
        {"the lowest row at {first}, then every {up} to the top at each column; columns in the "
         "least "
         "number of equal spaces of at most {across}, half a space at each end; none inside an "
         "opening through the wall; benches have none",
         {quantity("first", {wall.ties->first_mm.value_or(wall.ties->up_mm / 2), Measure::length}),
          quantity("up", {wall.ties->up_mm, Measure::length}),
          quantity("across", {wall.ties->across_mm, Measure::length})}});
    step.source = practice_of_the_trade;
    worksheet.steps.push_back(std::move(step));
    worksheet.cautions.push_back(
        {"The ties are counted for the quantities only; a qualified person "
         "designs the formwork and its ties.",
         {}});
}

} // namespace

Worksheet quantity_rules(const Wall& wall, const WallQuantities& quantities,
                         const PracticeTables& practice) {
    Worksheet worksheet;
    say_volumes(wall, quantities, worksheet);
    say_deductions(quantities, practice, worksheet);
    say_faces(wall, quantities, worksheet);
    say_positions(wall, worksheet);
    say_ties(wall, quantities, worksheet);
    return worksheet;
}

} // namespace boardmark::core

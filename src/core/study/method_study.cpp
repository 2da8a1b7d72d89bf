#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/blended_aggregate.hpp>
#include <boardmark/core/study/method_study.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/door/complete_again.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool is_of_cubes(Method method) {
    return method != Method::aci_211_1;
}

/// Leaves out what is a selection of another method.
void keep_selections_of(Method method, Selections& selections) {
    if (method != Method::aci_211_1) {
        selections.coarse_volume.reset();
        selections.coarse_adjustment_percent.reset();
    }
    if (method != Method::bre) {
        selections.fresh_density_kg_m3.reset();
        selections.fine_share_by_mass_percent.reset();
    } else {
        selections.fine_share_percent.reset();
    }
}

ComparedMix column_of(const CompleteMix& mix, const MethodOfStudy& of) {
    Mix edited = *mix;
    edited.method = of.method;
    keep_selections_of(of.method, edited.selections);
    if (edited.blend) {
        take_blend(edited);
    }
    const Specimen asked = is_of_cubes(of.method) ? Specimen::cube : Specimen::cylinder;
    if (const auto restated = restated_by(asked, edited.requirements)) {
        edited.requirements = *restated;
    }
    const std::string& label = of.tables->method.name;
    auto completed = complete_again(std::move(edited), *of.tables);
    if (!completed) {
        ComparedMix column{.label = label};
        column.unresolved = std::move(completed).why();
        return column;
    }
    ComparedMix column = compared(label, AnyCompleteMix{*std::move(completed)}, *of.tables);
    column.remarks.push_back({"it finds {finds}; its strengths are of {specimen}",
                              {word("finds", of.tables->method.finds),
                               word("specimen", of.tables->method.strength_of)}});
    return column;
}

/// A figure of the columns.
struct SpreadFigure {
    const char* name;
    Measure measure;
    double (*of)(const Proportions&);
};

double mass_of(const Proportions& proportions, Role role) {
    double sum_kg_m3 = 0;
    for (const Ingredient* one : of_role(proportions, role)) {
        sum_kg_m3 += one->kg_m3;
    }
    return sum_kg_m3;
}

constexpr SpreadFigure figures_apart[] = {
    {"w/cm", Measure::w_cm, [](const Proportions& mix) { return mix.totals.w_cm; }},
    {"mixing water", Measure::concentration,
     [](const Proportions& mix) { return mix.totals.water_kg_m3; }},
    {"cementitious material", Measure::concentration,
     [](const Proportions& mix) { return mix.totals.binder_kg_m3; }},
    {"coarse aggregate", Measure::concentration,
     [](const Proportions& mix) { return mass_of(mix, Role::coarse); }},
    {"fine aggregate", Measure::concentration,
     [](const Proportions& mix) { return mass_of(mix, Role::fine); }},
};

Phrase spread(const SpreadFigure& figure, const std::vector<const ComparedMix*>& made) {
    const auto value = [&](const ComparedMix* column) { return figure.of(*column->proportions); };
    const auto [least, most] = std::ranges::minmax_element(made, {}, value);
    if (same(value(*least), value(*most))) {
        return {"{figure}: {least} by each.",
                {word("figure", figure.name), quantity("least", {value(*least), figure.measure})}};
    }
    return {"{figure}: from {least} by {by_least} to {most} by {by_most}.",
            {word("figure", figure.name), quantity("least", {value(*least), figure.measure}),
             word("by_least", (*least)->label), quantity("most", {value(*most), figure.measure}),
             word("by_most", (*most)->label)}};
}

} // namespace

std::vector<ComparedMix> by_methods(const CompleteMix& mix,
                                    const std::vector<MethodOfStudy>& methods) {
    std::vector<ComparedMix> columns;
    for (const MethodOfStudy& of : methods) {
        columns.push_back(column_of(mix, of));
    }
    return columns;
}

std::vector<Phrase> spread_of_methods(const std::vector<ComparedMix>& columns) {
    std::vector<const ComparedMix*> made;
    for (const ComparedMix& column : columns) {
        if (column.proportions) {
            made.push_back(&column);
        }
    }
    std::vector<Phrase> told;
    if (made.size() > 1) {
        for (const SpreadFigure& figure : figures_apart) {
            told.push_back(spread(figure, made));
        }
    }
    told.push_back(
        {"Each method has its own margin above the strength and its own table of water, and "
         "finds the aggregate in its own way. Strengths of cubes and of cylinders are not "
         "compared. Only a trial batch decides.",
         {}});
    return told;
}

} // namespace boardmark::core

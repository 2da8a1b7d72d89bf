#include "../checks/exposure_limits.hpp"
#include "../checks/trial_checks.hpp"
#include "../code/required_strength.hpp"
#include "../mix/high_range_reducer.hpp"
#include "clause_list.hpp"
#include "clause_words.hpp"
#include "fresh_windows.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr const char* materials = "MATERIALS";

ClauseReason by_the_file(std::string text) {
    return {{std::move(text), {}}, {"the mix file"}};
}

const ExposureClass* stated_class(const PaperCase& papers, const std::string& name) {
    return papers.tables.code->find_class(name);
}

/// The stated class that bounds something lowest, with its limit.
template <class Figure>
const ExposureClass* strictest(const PaperCase& papers, Figure figure) {
    const ExposureClass* strictest_class = nullptr;
    for (const std::string& name : papers.asked.exposure) {
        const ExposureClass* one = stated_class(papers, name);
        if (one && figure(*one) &&
            (!strictest_class || *figure(*one) < *figure(*strictest_class))) {
            strictest_class = one;
        }
    }
    return strictest_class;
}

void require_strength(const PaperCase& papers, ClauseList& list) {
    const Requirements& asked = papers.asked;
    list.require(
        {asked.strength_class.empty()
             ? "Compressive strength {strength} of standard-cured {specimens} at {age}"
             : "Compressive strength class {class}: {strength} of standard-cured "
               "{specimens} at {age}",
         {as_strength("strength", asked.strength_mpa), as_days("age", asked.strength_age_d),
          word("class", asked.strength_class), word("specimens", plural_of(asked.specimen))}},
        by_the_file("strength that the structure and the exposure ask"));
    if (!asked.exposure.empty()) {
        list.require(
            {"Exposure {classes} of {code}: every limit of these classes counts, named "
             "below or not",
             {word("classes", joined(asked.exposure)), word("code", asked.code)}},
            {{"where the concrete stands decides how it must last", {}}, {"the mix file"}});
    }
}

void require_ratio(const PaperCase& papers, ClauseList& list) {
    const auto& limit = papers.mix.selection.w_cm_by_exposure;
    if (!limit) {
        return;
    }
    const ExposureClass* by =
        strictest(papers, [](const ExposureClass& one) { return one.limits.max_w_cm; });
    list.require(
        {"Water/cementitious ratio at most {w_cm} by mass in every load: all water counts, "
         "free moisture of the aggregates and liquid of the admixtures too",
         {quantity("w_cm", {*limit, Measure::w_cm})}},
        {{"{class}: the limit of its class",
          {word("class", by ? by->name : joined(papers.asked.exposure))}},
         by ? by->limits.source : Source{papers.asked.code}});
}

/// "cement 480 lb/yd3": amounts that the designer states.
void require_amounts(const PaperCase& papers, ClauseList& list) {
    for (const Ingredient& ingredient : papers.mix.ingredients) {
        if (ingredient.role == Role::air) {
            continue;
        }
        const bool by_trial = ingredient.by_trial && ingredient.kg_m3 == 0;
        list.require(by_trial ? Phrase{"{name}: dose by trial, written on every ticket",
                                       {word("name", ingredient.name)}}
                              : Phrase{ingredient.role == Role::water
                                           ? "{name}: {amount}, besides the moisture of the "
                                             "aggregates, which are weighed saturated surface-dry"
                                           : "{name}: {amount}",
                                       {word("name", ingredient.name),
                                        concentration("amount", ingredient.kg_m3)}},
                     by_the_file("amounts that the designer states and carries"));
    }
}

/// The record of the designer's own file says nothing of the supplier's concrete.
void require_proof(const PaperCase& papers, const Argument& stated_average, ClauseList& list) {
    const ClauseReason reason{{"so that a test falls below what is specified only rarely", {}},
                              papers.tables.code->average_strength.with_records};
    if (papers.asked.average) {
        list.require({"The supplier proves an average strength of {average} or more, by a record "
                      "of tests or by trial batches with the materials of the job",
                      {stated_average}},
                     reason);
        return;
    }
    Requirements without_record = papers.asked;
    without_record.records = std::nullopt;
    const CodeAverage average = code_average(without_record, papers.tables.code->average_strength);
    list.require({"The supplier proves the average strength that {rule} asks by his own record of "
                  "tests; without one that counts, {average} or more by trial batches with the "
                  "materials of the job",
                  {as_strength("average", average.strength_mpa),
                   word("rule", papers.tables.code->average_strength.with_records.citation)}},
                 reason);
}

void require_who_carries(const PaperCase& papers, ClauseList& list) {
    const Selection& selection = papers.mix.selection;
    const Argument average = as_strength("average", selection.required_average_strength_mpa);
    if (!papers.job.concrete_by) {
        list.choose(
            "", {"The concrete is specified by {choice}", {}},
            {"concrete_by",
             {"performance: the supplier chooses the proportions, carries the water/cementitious "
              "ratio and proves strength and ratio",
              "proportions: the designer states the amounts and carries ratio and strength"},
             {"choose performance, unless the designer has made the trial batches: whoever states "
              "amounts answers for them",
              {}}},
            trade_reason("two who carry it are none"));
        return;
    }
    if (*papers.job.concrete_by == ConcreteBy::performance) {
        list.require({"The supplier chooses the proportions, carries the water/cementitious ratio "
                      "and proves it from batch records of every load",
                      {}},
                     by_the_file("'concrete_by: performance'"));
        require_proof(papers, average, list);
        return;
    }
    list.require({"The amounts below are the designer's, for the volume named; the supplier "
                  "answers for materials, weighing, slump, air and temperature, the designer for "
                  "ratio and strength",
                  {}},
                 by_the_file("'concrete_by: proportions'"));
    require_amounts(papers, list);
    list.require({"Trial batches of these amounts reach an average of {average} or more before "
                  "the mock-up or the first pour",
                  {average}},
                 {{"so that a test falls below what is specified only rarely", {}},
                  papers.tables.code->average_strength.with_records});
}

void require_fresh(const PaperCase& papers, ClauseList& list) {
    const TestWindow slump = slump_window_of(papers.asked, papers.tables);
    if (papers.asked.slump_window) {
        list.require({"Slump at placing {low} to {high}, aimed at {slump}, the same for every load",
                      {quantity("low", {*slump.low, Measure::slump}),
                       quantity("high", {*slump.high, Measure::slump}),
                       quantity("slump", {*slump.asked, Measure::slump})}},
                     by_the_file("'requirements.slump_window'"));
    } else {
        list.choose("",
                    {"Slump at placing {slump}; permitted {choice}",
                     {quantity("slump", {*slump.asked, Measure::slump})}},
                    {"requirements.slump_window",
                     {"lowest to highest"},
                     {"the usual tolerance gives {low} to {high}; the highest decides what the "
                      "forms must carry",
                      {quantity("low", {*slump.low, Measure::slump}),
                       quantity("high", {*slump.high, Measure::slump})}}},
                    {{"an even slump is an even face", {}},
                     slump_tolerance(papers.asked.slump_mm, papers.tables).within_mm.source});
    }
    const TestWindow air = air_window_of(papers.mix.selection, papers.mix_checks, papers.tables);
    if (papers.mix.selection.air_entrained) {
        list.require(
            {"Entrained air at placing {air}, {low} to {high} in every load that is tested",
             {as_percent("air", *air.asked), as_percent("low", *air.low),
              as_percent("high", *air.high)}},
            {{"air spares the concrete from frost; tolerance of a load", {}},
             papers.tables.code->air.tolerance_source});
    }
    list.require(
        {"Nominal maximum size of the stone {size}",
         {quantity("size", {papers.mix.selection.nominal_max_size_mm, Measure::aggregate_size})}},
        {{"it must pass between forms, bars and cover", {}}, papers.tables.code->size.source});
    if (papers.asked.minimum_binder_kg_m3) {
        list.require({"Cementitious material at least {least}",
                      {concentration("least", *papers.asked.minimum_binder_kg_m3)}},
                     by_the_file("'requirements.minimum_binder'"));
    }
}

void require_class_limits(const PaperCase& papers, ClauseList& list) {
    const ExposureClass* salt =
        strictest(papers, [](const ExposureClass& one) { return one.chloride_percent; });
    if (salt && papers.asked.reinforced) {
        list.require({"Water-soluble chloride from all materials at most {most} of the "
                      "cementitious material by mass, from their reports",
                      {quantity("most", {*salt->chloride_percent, Measure::chloride})}},
                     {{"{class}: chloride rusts the bars", {word("class", salt->name)}},
                      salt->limits.source});
    }
    if (!papers.asked.chloride_class.empty()) {
        list.require(
            {"Chloride from all materials within class {class} of {code}, from their "
             "reports",
             {word("class", papers.asked.chloride_class), word("code", papers.asked.code)}},
            by_the_file("'requirements.chloride_class': chloride rusts the bars"));
    }
    for (const std::string& name : papers.asked.exposure) {
        const ExposureClass* one = stated_class(papers, name);
        if (!one) {
            continue;
        }
        if (!one->sulfate_cements.empty()) {
            list.require({one->cements_where.empty()
                              ? "Cement for {class}: {accepted}, or one that {code} takes in its "
                                "place"
                              : "Cement for {class}: where {where}, {accepted}, or one that {code} "
                                "takes in its place",
                          {word("class", name), word("accepted", joined(one->sulfate_cements)),
                           word("code", papers.asked.code), word("where", one->cements_where)}},
                         {{"sulfate attacks other cements", {}}, one->limits.source});
        }
        if (one->reactivity_evidence) {
            list.require({"Evidence for each aggregate that it does not react with alkali, or how "
                          "it is kept from reacting",
                          {}},
                         {{"{class}: the concrete stays wet", {word("class", name)}},
                          *one->reactivity_evidence});
        }
    }
}

void require_constancy(const PaperCase& papers, ClauseList& list) {
    if (!papers.asked.board_marked) {
        return;
    }
    const TypicalFigure& change = papers.tables.finish->w_cm_change;
    list.require({"Water/cementitious ratio of a load within {change} of the mock-up's, by the "
                  "ticket; moisture of sand and stone measured for every load",
                  {quantity("change", {change.value, Measure::w_cm})}},
                 {{"a change of that size shows in the colour", {}}, change.source});
}

void require_materials(const PaperCase& papers, ClauseList& list) {
    for (const Ingredient& ingredient : papers.mix.ingredients) {
        if (!ingredient.material || ingredient.role == Role::admixture) {
            continue;
        }
        const Material& material = *ingredient.material;
        const Argument kind = word("kind", name_of(material.kind));
        const Argument name = word("name", material.name);
        list.choose(material.standard, {"{name}: {kind}, {choice}", {name, kind}},
                    {"materials." + material.name + ".standard",
                     {"the standard that it conforms to"},
                     {"the paper that comes with it names the standard", {}}},
                    by_the_file("a material of the mix"));
    }
    list.require({"Mixing water: drinking water, or water with a report; no wash water in concrete "
                  "of faces that show",
                  {}},
                 trade_reason("wash water changes from load to load, and the colour with it"));
}

} // namespace

ClauseGroup clauses_of_concrete(const PaperCase& papers) {
    ClauseList list{materials, "concrete"};
    require_strength(papers, list);
    require_ratio(papers, list);
    require_who_carries(papers, list);
    require_fresh(papers, list);
    require_class_limits(papers, list);
    require_constancy(papers, list);
    require_materials(papers, list);
    return list.group();
}

ClauseGroup clauses_of_admixtures(const PaperCase& papers) {
    ClauseList list{materials, "admixtures"};
    const auto reducers = high_range_reducers(papers.mix);
    for (const Ingredient* ingredient : of_role(papers.mix, Role::admixture)) {
        const Material& material = *ingredient->material;
        list.choose(material.standard,
                    {"{name}: {kind}, {choice}",
                     {word("name", material.name), word("kind", name_of(material.kind))}},
                    {"materials." + material.name + ".standard",
                     {"the standard that it conforms to"},
                     {"the product's data sheet names the standard", {}}},
                    by_the_file("an admixture of the mix"));
    }
    if (list.group().clauses.empty()) {
        return list.group();
    }
    list.require({"No other admixture, and none that was not in the trial batches", {}},
                 trade_reason("admixtures change each other"));
    if (papers.asked.reinforced) {
        list.require({"No admixture with calcium chloride", {}},
                     trade_reason("it rusts the bars and stains the face"));
    }
    for (const Ingredient* reducer : reducers) {
        const bool known = reducer->material->admixture.retards.has_value();
        list.choose(known ? (*reducer->material->admixture.retards ? "it delays setting"
                                                                   : "it does not delay setting")
                          : "",
                    {"{name}: its data sheet states {choice}; forms are designed for that",
                     {word("name", reducer->name)}},
                    {"materials." + std::string{reducer->name} + ".retards",
                     {"that it delays setting", "that it does not"},
                     {"the maker knows; until then the forms are taken to carry more", {}}},
                    trade_reason("concrete that sets late presses longer"));
    }
    return list.group();
}

ClauseGroup clauses_of_patch_mortar(const PaperCase& papers) {
    ClauseList list{materials, "patch mortar"};
    if (!papers.wall || !papers.asked.board_marked) {
        return list.group();
    }
    double binder_kg = 0;
    double sand_kg = 0;
    for (const Ingredient* one : of_role(papers.mix, Role::binder)) {
        binder_kg += one->kg_m3;
    }
    for (const Ingredient* one : of_role(papers.mix, Role::fine)) {
        sand_kg += one->kg_m3;
    }
    constexpr double percent = 100;
    const double share = percent * binder_kg / (binder_kg + sand_kg);
    list.require({"Cementitious material and sand of the work, dry, {binder} to {sand} by mass as "
                  "in the concrete, without stone; water to a stiff ball that holds its shape",
                  {as_percent("binder", share), as_percent("sand", percent - share)}},
                 {{"mortar of the same materials comes nearest in colour", {}},
                  {"Concrete trade press (US) patching"}});
    const TypicalFigure& least = papers.rules("white_share_least");
    const TypicalFigure& most = papers.rules("white_share_most");
    const TypicalFigure& dry = papers.rules("patch_judged_after");
    list.require({"Part of the cement is white cement, as patches dry darker: the share is found "
                  "by trials on the mock-up, begun between {least} and {most} of the cement, "
                  "judged dry after {dry} or more",
                  {as_percent("least", least.value), as_percent("most", most.value),
                   as_days("dry", dry.value)}},
                 {{"no share holds for another job", {}}, dry.source});
    list.require({"No lime, no plaster and no calcium chloride in it", {}},
                 {{"they change colour, crack or rust the bars", {}},
                  {"Concrete trade press (US) patching"}});
    return list.group();
}

} // namespace boardmark::core

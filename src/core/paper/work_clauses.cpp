#include "../basis/tolerance.hpp"
#include "../brief/sections.hpp"
#include "../checks/trial_checks.hpp"
#include "../mix/high_range_reducer.hpp"
#include "acceptance_rules.hpp"
#include "clause_list.hpp"
#include "clause_words.hpp"
#include "fresh_windows.hpp"
#include "paper_days.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr const char* work = "WORK";

ClauseReason by_placing(std::string text) {
    return {{std::move(text), {}}, {"the wall file"}};
}

void require_temperature(const PaperCase& papers, ClauseList& list) {
    const TestWindow window = temperature_window_of(*papers.plan);
    const bool by_forms = above(*window.low, *papers.plan->placed_c.low);
    list.require({"Concrete between {low} and {high} when it is placed, measured in every load",
                  {no_less_than("low", {*window.low, Measure::temperature}),
                   no_more_than("high", {*window.high, Measure::temperature})}},
                 {{by_forms ? "colder sets late and presses harder than the forms are planned for, "
                              "warmer loses slump"
                            : "colder sets late and presses longer, warmer loses slump",
                   {}},
                  papers.tables.weather->section(0).least_placed_c.source});
}

/// How fast it may rise in each form: as stated, else as the output makes it where the form is
/// narrowest.
void require_rises(const PaperCase& papers, ClauseList& list) {
    const WallPlacing& placing = papers.wall->placing;
    if (placing.rise_m_h) {
        list.require({"Concrete rises at most {rise} in any form",
                      {no_more_than("rise", {*placing.rise_m_h, Measure::rate_of_rise})}},
                     by_placing("'placing.rise': the forms are planned for it"));
        return;
    }
    for (const FormForces& forces : papers.plan->forces) {
        if (const auto rise_m_h = forces.rise.fastest_m_h()) {
            list.require({"{wall}: concrete rises at most {rise}",
                          {word("wall", forces.wall),
                           no_more_than("rise", {*rise_m_h, Measure::rate_of_rise})}},
                         by_placing("the output into the smallest plan area: the forms are planned "
                                    "for it"));
        }
    }
}

} // namespace

ClauseGroup clauses_of_placing(const PaperCase& papers) {
    ClauseList list{work, "placing"};
    if (!papers.wall) {
        return list.group();
    }
    const WallPlacing& placing = papers.wall->placing;
    const LiftRules& lifts = papers.tables.placing->lifts;
    const CrewRules& crew = papers.tables.placing->crew;
    if (!placing.season.empty()) {
        list.require(
            {"The walls are cast in this season: {season}", {word("season", placing.season)}},
            by_placing("'placing.season': weather sets, presses and colours the concrete"));
    }
    require_temperature(papers, list);
    list.require({"A load is discharged within {discharge} of batching; what is left then goes "
                  "back",
                  {as_hours("discharge", lifts.discharge_h.value)}},
                 {{"later the concrete stiffens and gets water", {}}, lifts.discharge_h.source});
    list.require({"Nobody adds water beyond what the ticket says was held back, and that only "
                  "before discharge, by the supplier's technician, mixed in, tested and written "
                  "down",
                  {}},
                 trade_reason("each gallon is strength, colour and durability"));
    for (const Ingredient* reducer : high_range_reducers(papers.mix)) {
        const FinishTables& finish = papers.tables.finish;
        list.require(
            placing.redosed_on_site
                ? Phrase{"{name} is added again at most {times} times, mixed {turns} "
                         "revolutions, then slump and air are tested",
                         {word("name", reducer->name), as_count("times", finish.redosings.value),
                          as_count("turns", finish.redose_revolutions.value)}}
                : Phrase{"{name} is not added again on site", {word("name", reducer->name)}},
            placing.redosed_on_site
                ? ClauseReason{{"agreed beforehand", {}}, finish.redosings.source}
                : by_placing("'placing.redosed_on_site' is not stated"));
    }
    for (const RunPlan& run : papers.plan->runs) {
        list.require({run.lifts.lifts == 1 ? "{wall}: one lift of {lift}"
                                           : "{wall}: {lifts} lifts of at most {lift}, level",
                      {word("wall", run.wall), as_count("lifts", run.lifts.lifts),
                       as_length("lift", 1000 * run.lifts.lift_m)}},
                     {{"each lift is vibrated into the one below", {}},
                      placing.lift_m ? Source{"the wall file"} : lifts.most_mm.source});
    }
    require_rises(papers, list);
    if (!placing.pumped_from_below) {
        list.require(
            {"It falls freely at most {fall}, and is put down every {apart} or closer",
             {as_metres("fall", crew.free_fall_mm.value / 1000),
              as_metres("apart", crew.hose_apart_mm.value / 1000)}},
            {{"falling and pushing part stone from mortar", {}}, crew.free_fall_mm.source});
    }
    return list.group();
}

ClauseGroup clauses_of_consolidation(const PaperCase& papers) {
    ClauseList list{work, "consolidation"};
    if (!papers.wall || papers.plan->runs.empty()) {
        return list.group();
    }
    if (papers.wall->placing.self_consolidating) {
        list.require({"Self-consolidating: no vibrator in the form", {}},
                     by_placing("'placing.self_consolidating'"));
        return list.group();
    }
    const VibrationRules& rules = papers.tables.placing->vibration;
    const auto vibrated = std::ranges::find_if(
        papers.plan->runs, [](const RunPlan& run) { return run.vibration.has_value(); });
    if (vibrated != papers.plan->runs.end()) {
        const VibrationPlan& plan = *vibrated->vibration;
        list.require(
            {"Internal vibrator of {head}: upright every {spacing} or closer, {least} to "
             "{most} s each, {into} into the lift below, slowly out",
             {as_length("head", papers.wall->placing.vibrator_head_mm.value_or(0)),
              as_length("spacing", plan.spacing_mm), as_count("least", plan.least_s),
              as_count("most", plan.most_s), as_length("into", rules.into_lift_below_mm.value)}},
            {{"by the head's radius of action", {}}, rules.group_source});
    } else {
        list.choose("", {"Internal vibrator: {choice}", {}},
                    {"placing.vibrator",
                     {"diameter of the head, with its spacing"},
                     {"the head must pass between the bars; its size gives the spacing", {}}},
                    {{"by the head's radius of action", {}}, rules.group_source});
    }
    list.require({"The head stays {off} from the boards, and never moves concrete sideways",
                  {as_length("off", rules.off_the_face_mm.value)}},
                 {{"it burns its mark into the face", {}}, rules.off_the_face_mm.source});
    list.require(
        {"{spare} vibrator more than are at work stands by; all are tried before the first "
         "load",
         {as_count("spare", papers.tables.placing->crew.spare_vibrators.value)}},
        {{"a lift left open is a joint", {}}, papers.tables.placing->crew.spare_vibrators.source});
    return list.group();
}

ClauseGroup clauses_of_stripping(const PaperCase& papers) {
    ClauseList list{work, "stripping"};
    if (!papers.wall) {
        return list.group();
    }
    const BriefCase brief{*papers.wall, *papers.plan, papers.asked, papers.tables};
    const auto& age_h = papers.wall->placing.strip_after_h;
    const ClauseReason even = trade_reason("faces stripped at different ages differ in colour");
    if (age_h) {
        list.require({"The forms of all faces are stripped at one age: {age} after placing",
                      {as_hours("age", *age_h)}},
                     even);
    } else {
        list.choose("",
                    {"The forms of all faces are stripped at one age: {choice} after placing", {}},
                    {"placing.strip_after",
                     {"hours"},
                     {"the longest that the schedule bears, kept through the whole job", {}}},
                    even);
    }
    Phrase limit = stripping_limit(brief);
    const std::string cited = " [{source}]"; // the reason has it, and brackets are for choices
    if (const std::size_t at = limit.text.find(cited); at != std::string::npos) {
        limit.text.erase(at, cited.size());
    }
    list.require(std::move(limit), {{"edges and print break in weak concrete", {}},
                                    papers.tables.placing->curing.strip_strength_mpa.source});
    if (!papers.plan->after.soffits.empty()) {
        list.require({"Props of soffits stay until strength tests and the engineer release them; "
                      "nobody stands below, nothing is put on them",
                      {}},
                     trade_reason("a soffit carries itself and more"));
    }
    return list.group();
}

ClauseGroup clauses_of_curing_materials(const PaperCase& papers) {
    ClauseList list{"MATERIALS", "curing materials"};
    if (!papers.wall) {
        return list.group();
    }
    list.decide(papers.job, "curing", {"Means of curing: {choice}", {}},
                {"",
                 {"forms left on, then covers that do not touch the face",
                  "damp covers hung clear of the face"},
                 {"no membrane on faces that are patched or sealed, and nothing that touches the "
                  "face: it leaves its print",
                  {}}},
                trade_reason("uneven curing is uneven colour"));
    return list.group();
}

ClauseGroup clauses_of_curing(const PaperCase& papers) {
    ClauseList list{work, "curing"};
    if (!papers.wall) {
        return list.group();
    }
    const TypicalFigure& days = papers.plan->after.curing_d;
    list.require({"Every face and top is kept moist for {days} or longer, the same way on every "
                  "lift; begin and end are written down",
                  {as_days("days", days.value)}},
                 {{"by the cement of the mix", {}}, days.source});
    return list.group();
}

ClauseGroup clauses_of_protection(const PaperCase& papers) {
    ClauseList list{work, "protection"};
    if (!papers.wall) {
        return list.group();
    }
    if (const auto& cold = papers.plan->after.cold) {
        list.require({"The concrete is held at {least} or more for {days} after placing, edges and "
                      "corners first; read twice a day and written down",
                      {as_warmth("least", cold->least_c.value), as_days("days", cold->days)}},
                     {{"cold concrete stops, frozen concrete is lost", {}}, cold->days_source});
        list.require(
            {"Then it cools at most {fall} in the first 24 h",
             {quantity("fall", {cold->most_fall_k.value, Measure::temperature_difference})}},
            {{"a cold shock cracks it", {}}, cold->most_fall_k.source});
    }
    list.require({"Finished faces and edges are protected from rust, splashes and blows until "
                  "handover; no bars stand above them unwrapped",
                  {}},
                 trade_reason("rust from bars above streaks the face below"));
    if (deicers_come(papers)) {
        const TypicalFigure& age = papers.rules("no_deicer_for");
        const TypicalFigure& least = papers.rules("deicer_least_age");
        list.decide(papers.job, "deicers",
                    {"Deicing salt in the first winter: {choice}; never ammonium nitrate or "
                     "ammonium sulfate",
                     {}},
                    {"",
                     {"none, sand instead", "not before a stated age"},
                     {"sources differ from {least} in mild weather to {age} ({source}): take "
                      "none in the first winter",
                      {as_days("least", least.value), as_days("age", age.value),
                       word("source", age.source.citation)}}},
                    {{"young concrete scales under salt", {}}, age.source});
    }
    return list.group();
}

ClauseGroup clauses_of_sealer(const PaperCase& papers) {
    ClauseList list{"MATERIALS", "sealer"};
    if (!papers.wall || !weather_attacks(papers)) {
        return list.group();
    }
    list.decide(papers.job, "sealer", {"Sealer of the faces: {choice}", {}},
                {"",
                 {"none", "silane or siloxane, clear and penetrating, tried on the mock-up"},
                 {"good concrete needs none for frost; where salt comes it helps tops and benches. "
                  "Nothing that forms a film",
                  {}}},
                trade_reason("it cannot be taken off again"));
    const TypicalFigure& age = papers.rules("sealer_age");
    const TypicalFigure& dry = papers.rules("sealer_dry");
    const TypicalFigure& moist = papers.rules("sealer_moisture");
    constexpr double hours_in_day = 24;
    if (decision(papers.job, "sealer") != "none") {
        list.require({"Where one is used: concrete {age} old or more, dry for {dry} after rain or "
                      "washing, moisture at most {moist} by meter, air and face above freezing, no "
                      "release agent left",
                      {as_days("age", age.value), as_hours("dry", hours_in_day * dry.value),
                       as_percent("moist", moist.value)}},
                     {{"it must be drawn in, not lie on top", {}}, dry.source});
    }
    return list.group();
}

ClauseGroup clauses_of_repair(const PaperCase& papers) {
    ClauseList list{work, "repair and cleaning"};
    if (!papers.wall || !papers.asked.board_marked) {
        return list.group();
    }
    list.decide(
        papers.job, "patching", {"Patched is {choice}; the designer marks each place", {}},
        {"",
         {"nothing but what endangers the bars", "voids beyond those of the accepted mock-up"},
         {"honeycomb in a board-marked face is often less visible left than patched", {}}},
        {{"a patch is seen as long as the wall stands", {}},
         {"Concrete trade press (US) board-marked faces"}});
    const TypicalFigure& early = papers.rules("patch_within");
    const TypicalFigure& late = papers.rules("colour_patch_after");
    constexpr double hours_in_day = 24;
    list.require(
        {"What must bond is repaired within {early} of stripping; colour is matched only "
         "after {late} of drying",
         {as_hours("early", hours_in_day * early.value), as_days("late", late.value)}},
        {{"fresh concrete takes a patch, dry concrete shows its colour", {}}, early.source});
    const TypicalFigure& hole = papers.rules("hole_patched_from");
    list.require(
        {"A hole above {hole} is cut back square by {cut}, wetted, brushed with slurry and "
         "packed in layers of about {layer} with a wooden stick, the mortar having stood "
         "{least} to {most}; no metal tool touches the face",
         {as_length("hole", hole.value), as_length("cut", papers.rules("saw_cut").value),
          as_length("layer", papers.rules("patch_layer").value),
          as_hours("least", hours_in_day * papers.rules("patch_stands_least").value),
          as_hours("most", hours_in_day * papers.rules("patch_stands_most").value)}},
        {{"packed dry it neither shrinks nor stains", {}}, hole.source});
    list.require(
        {"Patches are kept moist {days} above {warm}, then printed with the grain of a "
         "board as on the mock-up",
         {as_days("days", papers.rules("patch_cured").value),
          as_warmth("warm", papers.rules("patch_warmer_than").value)}},
        {{"a patch dries out faster than a wall", {}}, papers.rules("patch_cured").source});
    const TypicalFigure& acid = papers.rules("acid_after");
    list.require(
        {"Cleaning: clean water and a soft brush first. Dilute acid only where the "
         "designer agrees, tried on the mock-up, of {most} at most, on concrete {age} old "
         "or more, wetted before, rinsed at once, by people with gloves and goggles",
         {as_percent("most", papers.rules("acid_most").value), as_days("age", acid.value)}},
        {{"acid opens the skin of the face and leaves chloride", {}}, acid.source});
    return list.group();
}

namespace {

void require_acceptance(const PaperCase& papers, ClauseList& list) {
    const AcceptedBy by = accepted_by(papers);
    const Argument strength = as_strength("strength", papers.asked.strength_mpa);
    const Argument single = as_strength("single", single_test_least_mpa(papers));
    const Argument specimens = word("specimens", plural_of(papers.asked.specimen));
    if (by == AcceptedBy::averages) {
        const AciAcceptance& rules = papers.tables.strength->aci;
        list.require(
            {"Strength: every average of {count} consecutive tests of {specimens} is at least "
             "{strength}, and no test is below {single}",
             {specimens, as_count("count", rules.averaged_tests), strength, single}},
            {{"rules of acceptance", {}}, rules.source});
    } else if (by == AcceptedBy::identity) {
        const EnConformity& rules = papers.tables.strength->en;
        list.require(
            {"Strength: identity of a delivery: the mean of 2 to {few} tests of {specimens} is at "
             "least {few_margin} above {strength}, of up to {most} at least {more_margin}, and no "
             "test is below {single}",
             {specimens, as_count("few", rules.identity_few_tests),
              as_strength("few_margin", rules.identity_few_margin_mpa), strength,
              as_count("most", rules.identity_most_tests),
              as_strength("more_margin", rules.identity_more_margin_mpa), single}},
            {{"rules of acceptance", {}}, rules.source});
    } else {
        list.choose(
            "",
            {"Strength: {strength} of {specimens}, accepted by {choice}", {strength, specimens}},
            {"requirements.code",
             {"the rules of the code, named with its edition"},
             {"the rules of that code are not known here: take them from it", {}}},
            trade_reason("who judges results without a rule quarrels"));
    }
}

} // namespace

ClauseGroup clauses_of_acceptance(const PaperCase& papers) {
    ClauseList list{work, "acceptance"};
    require_acceptance(papers, list);
    list.require({"A result below that is told to designer, contractor and supplier the same day; "
                  "nothing is cored, loaded or covered before the engineer has decided",
                  {}},
                 trade_reason("cores come after the specimens' own history is checked"));
    const TestWindow slump = slump_window_of(papers.asked, papers.tables);
    const TestWindow air = air_window_of(papers.mix.selection, papers.mix_checks, papers.tables);
    Phrase sent_back{air.low
                         ? "A load with a slump outside {low} to {high}, or air outside {least} "
                           "to {most}, is tested once more; outside again, it goes back"
                         : "A load with a slump outside {low} to {high} is tested once more; "
                           "outside again, it goes back",
                     {quantity("low", {*slump.low, Measure::slump}),
                      quantity("high", {*slump.high, Measure::slump})}};
    if (air.low) {
        sent_back.arguments.push_back(as_percent("least", *air.low));
        sent_back.arguments.push_back(as_percent("most", *air.high));
    }
    list.require(std::move(sent_back),
                 {{"one test may err", {}},
                  slump_tolerance(papers.asked.slump_mm, papers.tables).within_mm.source});
    if (papers.wall && papers.asked.board_marked) {
        list.decide(
            papers.job, "accepted_by",
            {"Faces are judged by {choice}, dry, beside the accepted mock-up, at the same "
             "age and from the same distance; colour and pores as the panel has them or "
             "better",
             {}},
            {"",
             {"the designer", "the one who accepted the mock-up"},
             {"one person; classes of pores are measured differently by different people", {}}},
            trade_reason("the panel is the measure"));
        const TypicalFigure& wide = papers.rules("cast_void_wide");
        list.require({"Whatever the panel shows: no void wider than {wide} or deeper than "
                      "{deep}",
                      {as_length("wide", wide.value),
                       as_length("deep", papers.rules("cast_void_deep").value)}},
                     {{"ordinary as-cast finishes patch those", {}}, wide.source});
    }
    return list.group();
}

} // namespace boardmark::core

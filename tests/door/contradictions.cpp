#include <boardmark/core/mix/blended_aggregate.hpp>
#include <boardmark/core/paper/job_papers.hpp>
#include <boardmark/reference/tables.hpp>

#include "mutators.hpp"

#include <chrono>
#include <limits>
#include <memory>

namespace boardmark::test {

using core::Field;
using core::Kind;
using core::Mix;
using core::SubmittedMix;

namespace {

/// A blend of the stone and the sand of a mix.
std::shared_ptr<const core::AggregateBlend> blend_of(const Mix& mix) {
    core::AggregateBlend blend{};
    blend.to = core::BlendTo::curve;
    blend.shares = {{mix.coarse[0].material, 56.3, 56.7}, {mix.fine[0].material, 43.7, 43.3}};
    return std::make_shared<const core::AggregateBlend>(blend);
}

std::shared_ptr<const core::CodeTables> code_file_of(const std::string& name) {
    return std::make_shared<const core::CodeTables>(*reference::code(name, core::UnitSystem::si));
}

} // namespace

std::vector<Contradiction> contradictions() {
    return {
        {"no binder", Field::binder, [](Mix& mix) { mix.binder.clear(); }},
        {"no stone", Field::coarse, [](Mix& mix) { mix.coarse.clear(); }},
        {"no sand", Field::fine, [](Mix& mix) { mix.fine.clear(); }},
        {"shares of 90 %", Field::binder, [](Mix& mix) { mix.binder[0].percent = 60; }},
        {"an unknown code", Field::code, [](Mix& mix) { mix.requirements.code = "Z 1"; }},
        {"an unknown class", Field::exposure, [](Mix& mix) { mix.requirements.exposure = {"F9"}; }},
        {"an empty class", Field::exposure, [](Mix& mix) { mix.requirements.exposure = {""}; }},
        {"a class twice", Field::exposure,
         [](Mix& mix) {
             mix.requirements.exposure = {"F2", "F2"};
         }},
        {"two classes of one category", Field::exposure,
         [](Mix& mix) {
             mix.requirements.exposure = {"F1", "F2"};
         }},
        {"more classes than a code has", Field::exposure,
         [](Mix& mix) { mix.requirements.exposure.assign(25, "F2"); }},
        {"an unknown other code", Field::exposure_by_code,
         [](Mix& mix) {
             mix.requirements.exposure_by_code = {{"Z 1", {"XC4"}}};
         }},
        {"an unknown class of another code", Field::exposure_by_code,
         [](Mix& mix) {
             mix.requirements.exposure_by_code = {{"EN 206", {"F2"}}};
         }},
        {"two classes where another code has one", Field::exposure_by_code,
         [](Mix& mix) {
             mix.requirements.exposure_by_code = {{"IS 456", {"severe", "extreme"}}};
         }},
        {"a class of chloride that the code does not have", Field::chloride_class,
         [](Mix& mix) { mix.requirements.chloride_class = "Cl 0.40"; }},
        {"an unknown level", Field::alkali_level,
         [](Mix& mix) { mix.requirements.alkali_level = "Q"; }},
        {"a system that is none", Field::system,
         [](Mix& mix) { mix.system = static_cast<core::UnitSystem>(7); }},
        {"a kind that is none", Field::kind,
         [](Mix& mix) {
             mix.binder[0].material = core::Material{.name = "dust", .kind = static_cast<Kind>(99)};
         }},
        {"sand for binder", Field::kind,
         [](Mix& mix) { mix.binder[0].material = mix.fine[0].material; }},
        {"a material without a name", Field::name,
         [](Mix& mix) {
             mix.binder[0].material = core::Material{.name = "", .kind = Kind::fly_ash};
         }},
        {"two materials of one name", Field::name,
         [](Mix& mix) {
             mix.binder[0].material = core::Material{.name = "sand", .kind = Kind::fly_ash};
         }},
        {"a material of the name of the water", Field::name,
         [](Mix& mix) { mix.binder[1].material.edit().name = "water"; }},
        {"a material of the name of the air", Field::name,
         [](Mix& mix) { mix.admixtures[1].material.edit().name = "air"; }},
        {"a share of no material", Field::name,
         [](Mix& mix) { mix.coarse[0].material = core::SharedMaterial{}; }},
        {"a dose of no material", Field::name,
         [](Mix& mix) { mix.admixtures[0].material = core::SharedMaterial{}; }},
        {"a blast furnace cement by the name of portland cement", Field::kind,
         [](Mix& mix) { mix.binder[0].material.edit().standard = "EN 197-1 CEM III/B 42.5 N"; }},
        {"slag by the name of fly ash", Field::kind,
         [](Mix& mix) {
             core::Material& material = mix.binder[1].material.edit();
             material.kind = Kind::fly_ash;
             material.standard = "ASTM C989";
             material.binder.contains.clear();
         }},
        {"less slag than the cement's type says", Field::contains,
         [](Mix& mix) { mix.binder[1].material.edit().standard = "ASTM C595 IS(60)"; }},
        {"a high-range type by the name of an air entrainer", Field::kind,
         [](Mix& mix) { mix.admixtures[1].material.edit().standard = "ASTM C494 F"; }},
        {"a retarder that does not retard", Field::kind,
         [](Mix& mix) {
             core::Material& material = mix.admixtures[0].material.edit();
             material.standard = "ASTM C494 G";
             material.admixture.retards = false;
         }},
        {"lightweight stone", Field::kind,
         [](Mix& mix) { mix.coarse[0].material.edit().standard = "ASTM C330"; }},
        {"a blend of other shares than the mix", Field::fine,
         [](Mix& mix) {
             mix.blend = blend_of(mix);
             core::take_blend(mix);
             mix.selections.fine_share_percent = 70;
         }},
        {"a blend of other stone than the mix", Field::coarse,
         [](Mix& mix) {
             mix.blend = blend_of(mix);
             core::take_blend(mix);
             mix.coarse[0].material.edit().name = "gravel";
         }},
        {"a code's name beside the file of another code", Field::code,
         [](Mix& mix) { mix.requirements.code_file = code_file_of("EN 206"); }},
        {"a code of a name only", Field::code,
         [](Mix& mix) {
             core::CodeTables code = *code_file_of("ACI 318-19");
             code.classes.clear();
             code.categories.clear();
             mix.requirements.exposure.clear();
             mix.requirements.site.reset();
             mix.requirements.code_file = std::make_shared<const core::CodeTables>(code);
         }},
        {"a code with a limit that is none", Field::code,
         [](Mix& mix) {
             core::CodeTables code = *code_file_of("ACI 318-19");
             code.classes.back().limits.max_w_cm = std::numeric_limits<double>::quiet_NaN();
             mix.requirements.code_file = std::make_shared<const core::CodeTables>(code);
         }},
        {"a code with a class of no category", Field::code,
         [](Mix& mix) {
             core::CodeTables code = *code_file_of("ACI 318-19");
             code.categories.pop_back();
             mix.requirements.code_file = std::make_shared<const core::CodeTables>(code);
         }},
        {"w/cm, water and binder", Field::selected_binder,
         [](Mix& mix) {
             mix.selections.w_cm = 0.45;
             mix.selections.water_kg_m3 = 160;
             mix.selections.binder_kg_m3 = 350;
         }},
        {"binder and w/cm by exposure", Field::selected_binder,
         [](Mix& mix) {
             mix.selections.w_cm_by_exposure = true;
             mix.selections.binder_kg_m3 = 350;
         }},
        {"coarse volume and fine share", Field::fine_share,
         [](Mix& mix) {
             mix.selections.coarse_volume = 0.6;
             mix.selections.fine_share_percent = 40;
         }},
        {"a method that is none", Field::method,
         [](Mix& mix) { mix.method = static_cast<core::Method>(9); }},
        {"a reading of a chart that the method does not have", Field::fresh_density,
         [](Mix& mix) { mix.selections.fresh_density_kg_m3 = 2400; }},
        {"another method's share", Field::fine_share_by_mass,
         [](Mix& mix) { mix.selections.fine_share_by_mass_percent = 30; }},
        {"a share of volume for a method by mass", Field::fine_share,
         [](Mix& mix) {
             mix.method = core::Method::bre;
             mix.selections.fine_share_percent = 40;
         }},
        {"a bulk volume for a method without", Field::coarse_volume,
         [](Mix& mix) {
             mix.method = core::Method::is_10262;
             mix.selections.coarse_volume = 0.6;
         }},
        {"a zone that is none", Field::zone,
         [](Mix& mix) { mix.fine[0].material.edit().aggregate.zone = 5; }},
        {"a shape that is none", Field::shape,
         [](Mix& mix) {
             mix.coarse[0].material.edit().aggregate.shape = static_cast<core::StoneShape>(7);
         }},
        {"a surface that is none", Field::surface,
         [](Mix& mix) {
             mix.coarse[0].material.edit().aggregate.surface = static_cast<core::Surface>(7);
         }},
        {"a site control that is none", Field::site_control,
         [](Mix& mix) { mix.requirements.site_control = static_cast<core::SiteControl>(7); }},
        {"a reducer without its reduction", Field::water_reduction,
         [](Mix& mix) {
             mix.admixtures = {{core::Material{.name = "plain", .kind = Kind::water_reducer},
                                core::Dose{1, core::DoseBasis::percent}}};
         }},
        {"a slump before no reducer", Field::slump_before_reducer,
         [](Mix& mix) {
             mix.admixtures.clear();
             mix.requirements.slump_before_reducer_mm = 75;
         }},
        {"a slump before a reducer of which none goes in", Field::slump_before_reducer,
         [](Mix& mix) {
             for (core::Dosage& dosage : mix.admixtures) {
                 dosage.dose = core::Dose{0, core::DoseBasis::volume};
             }
             mix.requirements.slump_before_reducer_mm = 75;
         }},
        {"a slump before that is higher", Field::slump_before_reducer,
         [](Mix& mix) { mix.requirements.slump_before_reducer_mm = 150; }},
        {"a dose above its maximum", Field::dose,
         [](Mix& mix) { mix.admixtures[0].dose->amount = 9.5e-6; }},
        {"a dose of another basis than its maximum", Field::dose,
         [](Mix& mix) {
             mix.admixtures[0].dose = core::Dose{0.5, core::DoseBasis::percent};
         }},
        {"a curve of one point", Field::strength_curve,
         [](Mix& mix) {
             mix.requirements.strength_curve = {{0.5, 30}};
         }},
        {"a curve that rises", Field::strength_curve,
         [](Mix& mix) {
             mix.requirements.strength_curve = {{0.4, 30}, {0.5, 40}};
         }},
        {"an empty line", Field::strength_line,
         [](Mix& mix) {
             mix.requirements.strength_line = core::OwnLine{{}, core::LineSide::lower, "own"};
         }},
        {"no tests", Field::records_tests, [](Mix& mix) { mix.requirements.records->tests = 0; }},
        {"a paper of another age of the world", Field::papers,
         [](Mix& mix) {
             core::JobPapers papers;
             papers.materials["cement"].mill_certificate = core::Day{std::chrono::days{800000}};
             mix.requirements.papers = std::make_shared<const core::JobPapers>(papers);
         }},
        {"a mock-up after the first pour", Field::schedule,
         [](Mix& mix) {
             core::JobPapers papers;
             papers.first_pour = core::Day{std::chrono::days{20000}};
             papers.mockup = core::Day{std::chrono::days{20001}};
             mix.requirements.papers = std::make_shared<const core::JobPapers>(papers);
         }},
        {"no day of placing", Field::schedule,
         [](Mix& mix) {
             core::JobPapers papers;
             papers.pour_days = 0;
             mix.requirements.papers = std::make_shared<const core::JobPapers>(papers);
         }},
        {"an age below zero", Field::papers,
         [](Mix& mix) {
             core::JobPapers papers;
             papers.ages[core::Paper::records] = {.months = -1};
             mix.requirements.papers = std::make_shared<const core::JobPapers>(papers);
         }},
        {"a charge below zero", Field::delivery,
         [](Mix& mix) {
             core::JobPapers papers;
             papers.delivery = core::DeliveryTerms{.currency = "USD", .haul_per_m3 = -1};
             mix.requirements.papers = std::make_shared<const core::JobPapers>(papers);
         }},
        {"a season that ends before it begins", Field::delivery,
         [](Mix& mix) {
             core::JobPapers papers;
             papers.delivery = core::DeliveryTerms{
                 .currency = "USD",
                 .surcharges = {{"winter", 5, core::Day{std::chrono::days{20001}},
                                 core::Day{std::chrono::days{20000}}}}};
             mix.requirements.papers = std::make_shared<const core::JobPapers>(papers);
         }},
        {"air lost where none is", Field::air_loss,
         [](Mix& mix) { mix.requirements.air.basis = core::AirBasis::none; }},
        {"an average below the strength", Field::average,
         [](Mix& mix) {
             mix.requirements.average = core::StatedAverage{20, ""};
         }},
    };
}

std::vector<SubmittedFault> submitted_faults() {
    return {
        {"a system that is none", Field::system,
         [](SubmittedMix& mix) { mix.system = static_cast<core::UnitSystem>(7); }},
        {"two materials of one name", Field::name,
         [](SubmittedMix& mix) { mix.amounts.push_back(mix.amounts[1]); }},
        {"boiling steam for water", Field::batched_water_temperature,
         [](SubmittedMix& mix) { mix.batched_water.temperature_c = 101; }},
        {"a negative amount of ice", Field::ice,
         [](SubmittedMix& mix) { mix.batched_water.ice_kg_m3 = -1; }},
        {"no water", Field::submitted_water, [](SubmittedMix& mix) { mix.water_kg_m3.reset(); }},
        {"water of zero", Field::submitted_water, [](SubmittedMix& mix) { mix.water_kg_m3 = 0; }},
        {"water twice", Field::submitted_water, [](SubmittedMix& mix) { mix.water_m3_m3 = 0.15; }},
        {"no cement", Field::amounts,
         [](SubmittedMix& mix) { mix.amounts.erase(mix.amounts.begin()); }},
        {"no amounts", Field::amounts, [](SubmittedMix& mix) { mix.amounts.clear(); }},
        {"an amount that is none", Field::amount,
         [](SubmittedMix& mix) { mix.amounts[0].kg_m3.reset(); }},
        {"an amount twice", Field::amount, [](SubmittedMix& mix) { mix.amounts[3].kg_m3 = 2; }},
        {"cement by volume", Field::amount,
         [](SubmittedMix& mix) {
             mix.amounts[0].kg_m3.reset();
             mix.amounts[0].m3_m3 = 0.1;
         }},
        {"a negative amount", Field::amount, [](SubmittedMix& mix) { mix.amounts[1].kg_m3 = -1; }},
        {"air of 200 %", Field::submitted_air, [](SubmittedMix& mix) { mix.air_percent = 200; }},
        {"no size", Field::submitted_size, [](SubmittedMix& mix) { mix.nominal_max_size_mm = 0; }},
        {"an amount of no material", Field::name,
         [](SubmittedMix& mix) { mix.amounts[1].material = core::SharedMaterial{}; }},
        {"stone larger than the largest", Field::submitted_size,
         [](SubmittedMix& mix) {
             mix.amounts[1].material.edit().aggregate.nominal_max_size_mm = 37.5;
             mix.nominal_max_size_mm = 9.5;
         }},
        {"a dose above its maximum", Field::amount, // 9e-6 m3/kg x 350 kg/m3 = 0.00315
         [](SubmittedMix& mix) { mix.amounts[3].m3_m3 = 0.0032; }},
        {"a dose by mass above its maximum by volume", Field::amount, // 0.00315 x 1070 = 3.37 kg
         [](SubmittedMix& mix) {
             mix.amounts[3].m3_m3.reset();
             mix.amounts[3].kg_m3 = 3.5;
         }},
        {"a dose that cannot be held against its maximum", Field::relative_density,
         [](SubmittedMix& mix) {
             mix.amounts[3].m3_m3.reset();
             mix.amounts[3].kg_m3 = 2;
             mix.amounts[3].material.edit().relative_density.reset();
         }},
        {"an unknown class", Field::exposure,
         [](SubmittedMix& mix) { mix.requirements.exposure = {"F9"}; }},
        {"no strength", Field::strength,
         [](SubmittedMix& mix) { mix.requirements.strength_mpa = 0; }},
        {"a kind that is none", Field::kind,
         [](SubmittedMix& mix) {
             mix.amounts[0].material =
                 core::Material{.name = "dust", .kind = static_cast<Kind>(99)};
         }},
    };
}

} // namespace boardmark::test

#pragma once

// A mix carried to its reports, with names that a test chooses.

#include <boardmark/core/batch/batch.hpp>
#include <boardmark/report/batch/batch_report.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include "support.hpp"

#include <sstream>
#include <string>
#include <utility>
#include <vector>

namespace boardmark::test {

/// The working case: exposed, with slag, a reducer and an agent by trial.
inline const std::string terrace = R"(boardmark: 1
title: Terrace
reporting: us
requirements:
  code: ACI 318-19
  exposure: [F2, S1, W1, C2]
  strength: 5000 psi
  strength_records: {tests: 18, standard_deviation: 480 psi, strength: 5000 psi, age: 9 months}
  strength_curve: {0.36: 6900 psi, 0.40: 6200 psi, 0.45: 5400 psi}
  slump: 4 in
  section: {thickness: 10 in, clear_bar_spacing: 5 in, clear_cover: 2 in}
materials:
  cement: {kind: portland cement, standard: ASTM C150 II, relative_density: 3.15}
  slag: {kind: slag cement, relative_density: 2.90}
  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in, relative_density: 2.68,
          absorption: 0.5 %, dry_rodded_density: 100 lb/ft3, moisture: 2.0 %}
  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %,
         fineness_modulus: 2.8, moisture: 6.0 %}
  reducer: {kind: high-range water reducer, relative_density: 1.07, solids: 35 %,
            water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}}
  agent: {kind: air-entraining admixture}
mixture:
  binder: {cement: 75 %, slag: 25 %}
  coarse: {stone: 100 %}
  fine: {sand: 100 %}
  admixtures: {reducer: 8 fl oz/cwt, agent: as needed}
)";

/// No exposure, no curve, too weak a record and too wide a stone: it fails and leaves things open.
inline const std::string faulty_wall = R"(boardmark: 1
title: Faulty wall
reporting: si
requirements:
  code: ACI 318-19
  exposure: [F3]
  strength: 25 MPa
  slump: 75 mm
  section: {thickness: 80 mm}
materials:
  cement: {kind: portland cement}
  ash: {kind: fly ash}
  stone: {kind: coarse aggregate, nominal_max_size: 19 mm, relative_density: 2.68,
          absorption: 0.5 %, dry_rodded_density: 1600 kg/m3}
  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, fineness_modulus: 2.8}
mixture:
  binder: {cement: 60 %, ash: 40 %}
  coarse: {stone: 100 %}
  fine: {sand: 100 %}
selections: {w_cm: 0.404, air: 2 %}
)";

/// Amounts that someone else chose, without what the volumes need.
inline const std::string submittal = R"(boardmark: 1
title: Submittal
reporting: us
requirements: {strength: 4000 psi, slump: 4 in}
materials:
  cement: {kind: portland cement}
  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in}
  sand: {kind: fine aggregate}
proportions: {volume: 1 yd3, water: 300 lb, cement: 600 lb, stone: 1700 lb, sand: 1300 lb, air: 2 %}
)";

/// A mix and all that a report is made of.
class Printed {
public:
    explicit Printed(const std::string& yaml, input::Purpose purpose = input::Purpose::proportion)
        : mix_{read(yaml, purpose)} {
        solve_again();
    }

    /// The same with every material renamed, and another title.
    Printed& rename(const std::string& name, const std::string& title) {
        const auto give = [&, number = 0](core::Material& material) mutable {
            // Names are unique: each gets its own last letter.
            material.name = name + static_cast<char>('a' + number++);
        };
        if (const auto* selected = std::get_if<core::CompleteMix>(&mix_)) {
            core::Mix mix = *selected;
            mix.title = title;
            auto each = give;
            for (auto* shares : {&mix.binder, &mix.coarse, &mix.fine}) {
                for (core::Share& share : *shares) {
                    each(share.material.edit());
                }
            }
            for (core::Dosage& dosage : mix.admixtures) {
                each(dosage.material.edit());
            }
            mix_ = entered(std::move(mix));
        } else {
            core::SubmittedMix mix = std::get<core::CompleteSubmittedMix>(mix_);
            mix.title = title;
            auto each = give;
            for (core::SubmittedAmount& amount : mix.amounts) {
                each(amount.material.edit());
            }
            mix_ = entered(std::move(mix));
        }
        solve_again();
        return *this;
    }

    core::Proportions& proportions() { return proportions_; }
    std::vector<core::Check>& checks() { return checks_; }

    report::MixResult result() const {
        return {.command = "proportion",
                .title = title(),
                .requirements = core::requirements_of(mix_),
                .proportions = proportions_,
                .checks = checks_};
    }

    std::string text(const report::TextStyle& style) const { return report::text(result(), style); }
    std::string json() const { return report::json(result()); }
    std::string csv(core::UnitSystem system) const { return report::csv(result(), system); }

    /// A batch of 2 ft3; every aggregate must state its moisture.
    std::string batch_text(const report::TextStyle& style) const {
        return with_batch([&](const auto& batch) { return report::text(batch, style); });
    }
    std::string batch_json() const {
        return with_batch([](const auto& batch) { return report::json(batch); });
    }
    std::string batch_csv(core::UnitSystem system) const {
        return with_batch([&](const auto& batch) { return report::csv(batch, system); });
    }

private:
    void solve_again() {
        const core::Tables tables = reference::tables_for(mix_);
        water_density_kg_m3_ = tables.water_density_kg_m3;
        proportions_ = boardmark::test::made(core::proportions_of(mix_, tables));
        checks_ = core::assess(mix_, proportions_, tables);
    }

    std::string title() const {
        return std::visit([](const auto& mix) { return mix->title; }, mix_);
    }

    template <class Write>
    std::string with_batch(Write write) const {
        const double volume_m3 = 0.056633693184;
        const core::Batch batch = boardmark::test::made(
            core::batch(proportions_, {volume_m3, std::nullopt}, water_density_kg_m3_));
        const core::BatchingTolerances tolerances =
            reference::tables(system_of(mix_)).trial->batching;
        return write(report::BatchResult{.title = title(),
                                         .requirements = core::requirements_of(mix_),
                                         .batch = batch,
                                         .each = batch,
                                         .charging = {.each_m3 = volume_m3},
                                         .net_volume_m3 = volume_m3,
                                         .allowance_percent = 0,
                                         .ordered_m3 = volume_m3,
                                         .sacks = std::nullopt,
                                         .site_water = std::nullopt,
                                         .short_load = std::nullopt,
                                         .proportions = proportions_,
                                         .tolerances = tolerances,
                                         .checks = checks_});
    }

    core::AnyCompleteMix mix_;
    double water_density_kg_m3_ = 0;
    core::Proportions proportions_;
    std::vector<core::Check> checks_;
};

inline std::vector<std::string> lines(const std::string& text) {
    std::vector<std::string> result;
    std::istringstream stream{text};
    for (std::string line; std::getline(stream, line);) {
        result.push_back(line);
    }
    return result;
}

} // namespace boardmark::test

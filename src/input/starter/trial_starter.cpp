#include "starter_lines.hpp"

namespace boardmark::input {
namespace {

// The batch that 'boardmark batch' asks for, of the mix starter; of its water the liquid of the
// air-entraining admixture is taken off.
constexpr StarterLine trial_lines[] = {
    {"boardmark", "1"},
    {"mix", "mix.yaml"},

    {"trial"},
    {"trial.name", "T-01"},
    {"trial.date", "2026-03-02"},
    {"trial.batched"},
    {"trial.batched.water", "9.63 lb", "4.24 kg"},
    {"trial.batched.cement", "33.14 lb", "14.39 kg"},
    {"trial.batched.stone", "96.85 lb", "41.32 kg"},
    {"trial.batched.sand", "74.78 lb", "31.53 kg"},
    {"trial.batched.reducer", "1.99 fl oz", "56 mL"},
    {"trial.batched.air_agent", "0.40 fl oz", "12 mL"},
    {"trial.moisture", "{stone: 2.0 %, sand: 6.0 %}"},
    {"trial.measure"},
    {"trial.measure.full", "43.35 lb", "19.46 kg"},
    {"trial.measure.empty", "7.60 lb", "3.45 kg"},
    {"trial.measure.volume", "0.2500 ft3", "7.000 L"},
    {"trial.slump", "4 in", "100 mm"},
    {"trial.air", "6.2 %"},
    {"trial.temperature", "68 degF", "20 degC"},
    {"trial.intended_volume", "1.5 ft3", "40 L"},
};

constexpr std::string_view trial_heading =
    "# A trial file to begin with. Every figure is an example: write what you weighed and "
    "measured.\n"
    "#   boardmark starter mix > mix.yaml   is the mix that was batched\n"
    "#   boardmark yield trial.yaml         tells what the batch was, and the next one\n";

} // namespace

StarterFile trial_starter() {
    return {trial_heading, trial_lines, trial_fields()};
}

} // namespace boardmark::input

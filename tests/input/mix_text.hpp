#pragma once

// Mix texts for the tests of the reader: a sound one, and the same with one place changed.

#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/input/mix/read_mix.hpp>

#include "support.hpp"

#include <stdexcept>
#include <string>
#include <vector>

namespace boardmark::test {

inline const std::string sound_mix =
    "boardmark: 1\n"
    "title: Quay terrace\n"
    "reporting: us\n"
    "requirements:\n"
    "  strength: 4500 psi\n"
    "  slump: 4 in\n"
    "materials:\n"
    "  cement: {kind: portland cement}\n"
    "  stone:\n"
    "    kind: coarse aggregate\n"
    "    nominal_max_size: 3/4 in\n"
    "    relative_density: 2.68\n"
    "    absorption: 0.5 %\n"
    "    dry_rodded_density: 100 lb/ft3\n"
    "  sand:\n"
    "    kind: fine aggregate\n"
    "    relative_density: 2.64\n"
    "    absorption: 0.7 %\n"
    "    fineness_modulus: 2.8\n"
    "  reducer: {kind: high-range water reducer, water_reduction: standard minimum}\n"
    "mixture:\n"
    "  binder: {cement: 100 %}\n"
    "  coarse: {stone: 100 %}\n"
    "  fine: {sand: 100 %}\n";

inline const std::string submitted_mix =
    "boardmark: 1\n"
    "title: A submittal\n"
    "reporting: us\n"
    "requirements: {strength: 4500 psi, slump: 4 in}\n"
    "materials:\n"
    "  cement: {kind: portland cement}\n"
    "  stone: {kind: coarse aggregate, nominal_max_size: 3/4 in}\n"
    "  sand: {kind: fine aggregate}\n"
    "  reducer: {kind: high-range water reducer}\n"
    "proportions:\n"
    "  volume: 2 m3\n"
    "  water: 300 kg\n"
    "  cement: 760 kg\n"
    "  stone: 2000 kg\n"
    "  sand: 1540 kg\n"
    "  air: 6 %\n";

/// The text with its first `from` replaced. A test that no longer finds its place must fail.
inline std::string changed(std::string text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    if (at == std::string::npos) {
        throw std::logic_error("'" + from + "' is not in the text");
    }
    return text.replace(at, from.size(), to);
}

/// The sound mix with one key more under `requirements`.
inline std::string with_requirement(const std::string& line) {
    return changed(sound_mix, "  slump: 4 in\n", "  slump: 4 in\n  " + line + "\n");
}

/// The sound mix with further keys of a material, each line "    key: value\n".
inline std::string with_cement(const std::string& keys) {
    return changed(sound_mix, "  cement: {kind: portland cement}\n",
                   "  cement:\n    kind: portland cement\n" + keys);
}
inline std::string with_stone(const std::string& keys) {
    return changed(sound_mix, "    kind: coarse aggregate\n",
                   "    kind: coarse aggregate\n" + keys);
}
inline std::string with_sand(const std::string& keys) {
    return changed(sound_mix, "    kind: fine aggregate\n", "    kind: fine aggregate\n" + keys);
}

/// The sound mix with a dose of its reducer, and with a reducer of other keys.
inline std::string with_dose(const std::string& dose,
                             const std::string& keys = "water_reduction: standard minimum") {
    return changed(changed(sound_mix, "water_reduction: standard minimum", keys),
                   "  fine: {sand: 100 %}\n",
                   "  fine: {sand: 100 %}\n  admixtures: {reducer: " + dose + "}\n");
}

/// The sound mix with selections, as a flow mapping without its braces.
inline std::string with_selections(const std::string& pairs) {
    return sound_mix + "selections: {" + pairs + "}\n";
}

/// The sound mix as the reader gives it.
inline core::Mix mix_of(const std::string& yaml) {
    return *std::get<core::CompleteMix>(read(yaml, input::Purpose::proportion));
}

inline core::SubmittedMix submitted_of(const std::string& yaml) {
    return *std::get<core::CompleteSubmittedMix>(read(yaml, input::Purpose::check));
}

/// What the reader finds wrong, as "line:column message".
inline std::vector<std::string> faults_of(const input::Diagnostics& diagnostics) {
    std::vector<std::string> faults;
    for (const input::Diagnostic& fault : diagnostics) {
        faults.push_back(std::to_string(fault.line) + ":" + std::to_string(fault.column) + " " +
                         fault.message);
    }
    return faults;
}

inline std::vector<std::string> faults_in(const std::string& yaml,
                                          input::Purpose purpose = input::Purpose::proportion) {
    return faults_of(input::read_mix(yaml, "test.yaml", read_options(purpose)).diagnostics);
}

} // namespace boardmark::test

#pragma once

#include <boardmark/core/mix.hpp>
#include <boardmark/core/tables.hpp>
#include <boardmark/input/diagnostic.hpp>
#include <boardmark/input/loader.hpp>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::input {

/// What the mix is read for; it decides which figures must be there.
enum class Purpose {
    check,
    proportion,
    batch,
    trial, ///< batched already: the moistures may stand in the trial file
};

/// Words that the published tables know, so that the file's own can be held against them.
struct Vocabulary {
    std::vector<std::string> codes;
    std::vector<std::string> exposure_classes;
    std::vector<double> fineness_sieves_mm;
    std::vector<core::StrengthClass> strength_classes; ///< of results that a mix names
    double line_confidence;                            ///< of the lower side of a line, 0 to 1
    double strength_age_tolerance_d = 0;  ///< within which a test is one of the strength age
    std::vector<core::BarSize> bars = {}; ///< of walls
    core::SiteRules site = {};            ///< by which a site has exposure classes
    core::FlowClasses flow_classes = {};  ///< against which a wall's class of flow is held
};

struct ReadOptions {
    Purpose purpose;
    Vocabulary vocabulary;
    Loader load;
    std::map<std::string, double> moisture_percent = {}; ///< by material, in place of the file's
    bool to_be_selected = false; ///< submitted amounts are refused, whatever the purpose
};

/// A mix, complete and in SI, or the reasons why there is none. Warnings may stand beside a mix.
struct MixReading {
    std::optional<core::AnyMix> mix;
    Diagnostics diagnostics;
};

/// Reads a mix file. Every error of the file is found in one run; nothing is thrown for a wrong
/// text.
///
/// @param text the bytes of the file, any at all
/// @param file its name, for the diagnostics
MixReading read_mix(std::string text, std::string file, const ReadOptions& options);

} // namespace boardmark::input

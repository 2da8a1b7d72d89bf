#pragma once

#include <boardmark/core/paper/specification.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// Days of the job's papers; absent where the files do not say when the first concrete is placed.
struct PaperDays {
    bool mockup_is_first = false; ///< a mock-up is cast before the work
    std::optional<Day> first_pour = {};
    std::optional<Day> mockup = {};
    std::optional<Day> mix = {};      ///< by which the mix is handed in
    std::optional<Day> drawings = {}; ///< of the forms, and samples
    std::optional<Day> conference = {};
    std::optional<Day> plan = {}; ///< of placing, curing, protection
};

PaperDays paper_days(const PaperCase& papers);

/// A paper whose age is asked.
struct AskedAge {
    Paper kind;
    std::string paper; ///< "Mill certificate of cement"
    std::string told;  ///< "at most 90 d"
    PaperAgeRule rule;
};

/// The rule of a paper's age: stated in the file, else the usual one; nothing where none is asked.
std::optional<PaperAgeRule> age_rule(const PaperCase& papers, Paper paper);

/// "at most 24 months"
std::string told_age(const PaperAge& age);

/// Of every paper that the mix of the files needs, in the order of its materials.
std::vector<AskedAge> paper_ages_asked(const PaperCase& papers);

/// The paper that proves a material.
Paper paper_of(const Material& material);

} // namespace boardmark::core

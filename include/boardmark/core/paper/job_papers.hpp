#pragma once

#include <boardmark/core/basis/calendar.hpp>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// The papers that are handed in and have an age.
enum class Paper {
    mill_certificate,      ///< of a cement
    supplementary_report,  ///< of a supplementary cementitious material
    aggregate_report,      ///< grading, densities, absorption
    reactivity_report,     ///< alkali reactivity of an aggregate
    admixture_certificate, ///< of an admixture's standard
    trial_batches,
    records, ///< of strength tests
};

/// How old a paper may be: by the calendar, or by days where months say nothing.
struct PaperAge {
    int months = 0; ///< ≥ 0
    int days = 0;   ///< ≥ 0
};

/// The dates on the papers of one material.
struct MaterialPapers {
    std::optional<Day> mill_certificate = {};
    std::optional<Day> report = {};
    std::optional<Day> certificate = {};
    std::optional<Day> reactivity = {};
};

/// Who carries the ratio of water to cementitious material, and who proves it.
enum class ConcreteBy {
    performance, ///< limits and strength are asked; the supplier chooses the proportions
    proportions, ///< the designer states the amounts and carries them
};

/// A charge for the time of year.
struct Surcharge {
    std::string name;
    double per_m3; ///< ≥ 0, in the currency of the terms
    std::optional<Day> from = {};
    std::optional<Day> until = {}; ///< the last day of it
};

/// What a supplier asks for 1 m3 at the site.
struct DeliveryTerms {
    std::string currency; ///< of every price here
    std::optional<double> concrete_per_m3 = {};
    std::optional<double> haul_per_m3 = {};
    std::vector<Surcharge> surcharges = {};
};

/// What a file says of the papers of the job: dates, who answers for what, what was decided.
struct JobPapers {
    std::map<std::string, MaterialPapers> materials = {}; ///< by the names of the file
    std::optional<Day> trial_batches = {};
    std::optional<Day> records = {};

    std::optional<Day> first_pour = {};
    std::optional<Day> mockup = {};    ///< when it is cast
    std::optional<int> pour_days = {}; ///< on which concrete is placed, ≥ 1

    std::optional<ConcreteBy> concrete_by = {};
    std::map<Paper, PaperAge> ages = {};               ///< stated in place of the usual ones
    std::map<std::string, std::string> decisions = {}; ///< by their keys, in the user's words
    std::optional<DeliveryTerms> delivery = {};
};

/// The decision of that key, or an empty text.
std::string decision(const JobPapers& job, const std::string& key);

/// The papers of two files of one job: what the first does not say, the second does.
JobPapers merged(JobPapers first, const JobPapers& second);

} // namespace boardmark::core

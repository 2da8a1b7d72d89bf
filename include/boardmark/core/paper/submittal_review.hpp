#pragma once

#include <boardmark/core/paper/specification.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// What comes back to the supplier.
enum class ReviewVerdict {
    returned,     ///< something fails, a paper or a figure that is demanded is missing
    with_remarks, ///< something is to be watched or settled before the first pour
    accepted,
};

std::string_view name_of(ReviewVerdict verdict);

/// Concrete at the site, by the terms of its supplier; per m3 of what is ordered.
struct DeliveredPrice {
    std::string currency;
    std::optional<double> concrete = {};
    std::optional<double> haul = {};
    std::vector<Surcharge> surcharges = {}; ///< of the day of the first pour
    std::optional<double> short_loads = {}; ///< spread over the order
    std::optional<double> whole = {};       ///< absent where something is not known
    std::vector<std::string> missing = {};  ///< what would complete it
};

/// A mix that somebody handed in, held against the designer's files.
struct SubmittalReview {
    std::string label;
    std::string file;
    std::string title;
    ReviewVerdict verdict = ReviewVerdict::returned;
    Proportions proportions;
    std::vector<Check> checks = {};   ///< of the demands, then of the submittal, then of its papers
    std::vector<Phrase> faults = {};  ///< to be corrected, each with its paper
    std::vector<Phrase> remarks = {}; ///< to be settled before the first pour
    std::optional<DeliveredPrice> delivered = {};
    std::vector<Phrase> letter = {}; ///< its paragraphs
};

/// A file that was handed in.
struct HandedIn {
    const CompleteSubmittedMix& mix;
    std::string label;
    std::string file;
};

/// Holds a submitted mix against what the designer's files demand, whatever it says itself of its
/// purpose; its own evidence of strength counts, not the designer's. Ages count to the day of the
/// paper, else to the first pour.
///
/// Unresolved where no figures follow from the amounts.
Outcome<SubmittalReview> reviewed(const PaperCase& designer, const HandedIn& submitted,
                                  const Vocabulary& words);

} // namespace boardmark::core

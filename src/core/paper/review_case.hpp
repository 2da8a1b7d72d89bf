#pragma once

#include <boardmark/core/paper/submittal_review.hpp>

#include <vector>

namespace boardmark::core {

/// A submittal beside the designer's demands.
struct ReviewCase {
    const PaperCase& designer;
    const SubmittedMix& submitted; ///< as it was handed in, its own requirements too
    const Proportions& proportions;
    const JobPapers& papers; ///< of the submittal
};

/// Whether it was made for what is asked: code, classes, strength, slump, stone.
void review_purpose(const ReviewCase& review, std::vector<Check>& checks);

/// Materials, their standards and, where the designer states them, amounts.
void review_materials(const ReviewCase& review, std::vector<Check>& checks);

/// Its papers and their ages.
///
/// @param demands what the designer's demands say of the mix: figures that miss them prove nothing
void review_papers(const ReviewCase& review, const std::vector<Check>& demands,
                   std::vector<Check>& checks);

/// Whether a demand is open for a figure that the supplier has to state.
bool needs_a_figure(const Check& check);

/// Figures that the demands need and the submittal does not state.
void review_figures(const std::vector<Check>& demands, std::vector<Check>& checks);

/// The price at the site; nothing where the submittal states no terms.
std::optional<DeliveredPrice> delivered_price(const ReviewCase& review);

/// The paragraphs of the answer.
std::vector<Phrase> review_letter(const SubmittalReview& review, const PaperCase& designer);

} // namespace boardmark::core

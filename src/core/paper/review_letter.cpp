#include "../checks/exposure_limits.hpp"
#include "clause_words.hpp"
#include "paper_days.hpp"
#include "review_case.hpp"

namespace boardmark::core {
namespace {

Phrase opening(const SubmittalReview& review) {
    const char* text =
        review.verdict == ReviewVerdict::returned
            ? "The mix '{title}', handed in as {file}, is returned. It must not be placed. Correct "
              "what follows and hand it in again, whole:"
        : review.verdict == ReviewVerdict::with_remarks
            ? "The mix '{title}', handed in as {file}, is accepted with remarks. They are settled "
              "before the first pour:"
            : "The mix '{title}', handed in as {file}, is accepted.";
    return {text, {word("title", review.title), word("file", review.file)}};
}

} // namespace

std::vector<Phrase> review_letter(const SubmittalReview& review, const PaperCase& designer) {
    std::vector<Phrase> letter{opening(review)};
    letter.insert(letter.end(), review.faults.begin(), review.faults.end());
    if (review.verdict == ReviewVerdict::returned && !review.remarks.empty()) {
        letter.push_back({"Besides, to be settled before the first pour:", {}});
    }
    letter.insert(letter.end(), review.remarks.begin(), review.remarks.end());
    const PaperDays days = paper_days(designer);
    if (review.verdict == ReviewVerdict::returned && days.mix) {
        letter.push_back({days.mockup_is_first
                              ? "It must be back by {day}, so that the mock-up can be cast on time."
                              : "It must be back by {day}, so that the first pour stays on time.",
                          {word("day", date_text(*days.mix))}});
    }
    if (review.verdict != ReviewVerdict::returned) {
        letter.push_back({"This holds for these materials, sources and papers and no others; the "
                          "supplier goes on answering for the concrete, and every load is tested "
                          "as specified.",
                          {}});
    }
    letter.push_back({"Dates and figures of the file were checked; somebody must read the papers "
                      "themselves and compare them with it.",
                      {}});
    return letter;
}

} // namespace boardmark::core

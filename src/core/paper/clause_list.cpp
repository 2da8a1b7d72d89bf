#include "clause_list.hpp"

#include "../basis/phrases.hpp"

namespace boardmark::core {
namespace {

std::string bracketed(const std::vector<std::string>& options) {
    std::string text = "[";
    for (const std::string& option : options) {
        text += (text.size() > 1 ? " | " : "") + option;
    }
    return text + "]";
}

} // namespace

ClauseReason trade_reason(std::string text) {
    return {.text = {std::move(text), {}},
            .source = {"common practice, no source", Confidence::common_practice}};
}

ClauseList::ClauseList(std::string division, std::string subject)
    : group_{std::move(division), std::move(subject), {}} {}

std::string ClauseList::next_number() const {
    return group_.subject + " " + std::to_string(group_.clauses.size() + 1);
}

void ClauseList::require(Phrase text, ClauseReason reason) {
    group_.clauses.push_back({.number = next_number(),
                              .text = std::move(text),
                              .reason = std::move(reason.text),
                              .source = std::move(reason.source)});
}

void ClauseList::choose(const std::string& decided, Phrase text, Choice choice,
                        ClauseReason reason) {
    const bool open = decided.empty();
    text.arguments.push_back(word("choice", open ? bracketed(choice.options) : decided));
    Clause clause{.number = next_number(),
                  .text = std::move(text),
                  .reason = std::move(reason.text),
                  .source = std::move(reason.source)};
    if (open) {
        clause.options = std::move(choice.options);
        clause.settles = std::move(choice.key);
        clause.advice = std::move(choice.advice);
    }
    group_.clauses.push_back(std::move(clause));
}

void ClauseList::decide(const JobPapers& job, const std::string& key, Phrase text, Choice choice,
                        ClauseReason reason) {
    choice.key = "decisions." + key;
    choose(decision(job, key), std::move(text), std::move(choice), std::move(reason));
}

} // namespace boardmark::core

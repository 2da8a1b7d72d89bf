#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/mix/fault.hpp>

#include <utility>
#include <variant>

namespace boardmark::core {

struct Mix;
struct StrengthRecord;
struct SubmittedMix;
struct Tables;
struct Trial;
struct Vocabulary;
struct Wall;

/// What holds every figure its calculation needs, each finite and in its range. Only `complete`
/// makes one, and of a complete mix the studies and trials of `core`; it never changes, and copying
/// it copies what it holds.
template <class Unchecked>
class Complete {
public:
    const Unchecked& operator*() const { return whole_; }
    const Unchecked* operator->() const { return &whole_; }
    operator const Unchecked&() const { return whole_; }

private:
    explicit Complete(Unchecked whole)
        : whole_{std::move(whole)} {}

    friend std::variant<Complete<Mix>, Faults> complete(Mix mix, const Vocabulary& words);
    friend std::variant<Complete<SubmittedMix>, Faults> complete(SubmittedMix mix,
                                                                 const Vocabulary& words);
    friend std::variant<Complete<Trial>, Faults> complete(Trial trial);
    friend std::variant<Complete<StrengthRecord>, Faults> complete(StrengthRecord record);
    friend std::variant<Complete<Wall>, Faults> complete(Wall wall);
    friend Outcome<Complete<Mix>> complete_again(Mix edited, const Tables& tables);
    friend Outcome<Complete<SubmittedMix>> complete_again(SubmittedMix edited);

    Unchecked whole_;
};

} // namespace boardmark::core

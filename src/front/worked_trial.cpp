#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/front/worked_trial.hpp>

namespace boardmark {

WorkedTrial::WorkedTrial(input::TrialRecord record, const core::Tables& tables,
                         core::Proportions designed, core::Yield yield)
    : record_{std::move(record)}
    , designed_{std::move(designed)}
    , yield_{std::move(yield)}
    , checks_{core::assess(record_.trial, yield_, designed_, tables)} {
    auto next = core::next_trial(record_.trial, yield_, designed_, tables);
    if (next) {
        next_ = *std::move(next);
    } else {
        no_next_ = std::move(next).why(); // what this trial was stands without it
    }
}

core::UnitSystem WorkedTrial::system() const {
    return core::system_of(record_.trial->mix);
}

report::YieldResult WorkedTrial::result() const {
    return {.title = core::title_of(record_.trial->mix),
            .mix_file = record_.mix_file,
            .name = record_.name,
            .date = record_.date,
            .trial = record_.trial,
            .designed = designed_,
            .yield = yield_,
            .checks = checks_,
            .next = next_,
            .no_next = no_next_};
}

std::string WorkedTrial::text(bool explain) const {
    return report::text(result(), {.system = system(), .explain = explain});
}

std::string WorkedTrial::json() const {
    return report::json(result());
}

std::string WorkedTrial::csv() const {
    return report::csv(result(), system());
}

std::string WorkedTrial::html() const {
    return report::html(result(), {.system = system()});
}

} // namespace boardmark

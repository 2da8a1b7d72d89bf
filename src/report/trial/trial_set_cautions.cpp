#include "trial_set_cautions.hpp"

#include <boardmark/report/writing/words.hpp>

#include "../writing/quantity_format.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

void note(const core::Phrase& caution, const std::string& label, core::UnitSystem system,
          std::vector<SetCaution>& cautions) {
    const std::string text = words(caution, system);
    const auto found = std::ranges::find(cautions, caution.text, &SetCaution::phrase);
    if (found == cautions.end()) {
        cautions.push_back({.phrase = caution.text, .text = text, .labels = {label}});
    } else {
        (found->text == text ? found->labels : found->likewise).push_back(label);
    }
}

} // namespace

std::string label_of(const core::TrialMix& mix) {
    return "w/cm " + shown({mix.w_cm, core::Measure::w_cm}, core::UnitSystem::si);
}

std::string whose(const SetCaution& caution) {
    if (caution.of_all) {
        return "";
    }
    const std::string likewise =
        caution.likewise.empty() ? ""
                                 : fmt::format(" (likewise {})", fmt::join(caution.likewise, ", "));
    return fmt::format("{}{}: ", fmt::join(caution.labels, ", "), likewise);
}

std::vector<SetCaution> cautions_of(const core::TrialSet& set, core::UnitSystem system) {
    std::vector<SetCaution> cautions;
    std::size_t solved_mixes = 0;
    for (const core::TrialMix& mix : set.mixes) {
        const core::SolvedTrial* solved = mix.solved();
        if (!solved) {
            continue;
        }
        ++solved_mixes;
        for (const core::Phrase& caution : solved->proportions.worksheet.cautions) {
            note(caution, label_of(mix), system, cautions);
        }
        if (solved->batch) {
            for (const core::Phrase& caution : solved->batch->cautions) {
                note(caution, label_of(mix), system, cautions);
            }
        }
    }
    for (SetCaution& caution : cautions) {
        caution.of_all = caution.labels.size() >= solved_mixes;
    }
    return cautions;
}

const core::Batch* first_batch(const core::TrialSet& set) {
    for (const core::TrialMix& mix : set.mixes) {
        if (mix.solved() && mix.solved()->batch) {
            return &*mix.solved()->batch;
        }
    }
    return nullptr;
}

std::vector<const core::TrialMix*> failing(const core::TrialSet& set) {
    std::vector<const core::TrialMix*> mixes;
    for (const core::TrialMix& mix : set.mixes) {
        if (mix.solved() && core::any_fails(mix.solved()->checks)) {
            mixes.push_back(&mix);
        }
    }
    return mixes;
}

} // namespace boardmark::report

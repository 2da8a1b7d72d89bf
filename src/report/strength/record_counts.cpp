#include "record_counts.hpp"

#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/text_sections.hpp"

#include <algorithm>

namespace boardmark::report {
namespace {

MixCount& count_of(std::vector<MixCount>& counts, const std::string& mix) {
    const auto found = std::ranges::find(counts, mix, &MixCount::mix);
    if (found != counts.end()) {
        return *found;
    }
    return counts.emplace_back(MixCount{.mix = mix});
}

} // namespace

std::vector<MixCount> counts_by_mix(const RecordSummary& summary) {
    std::vector<MixCount> counts;
    for (const core::RecordedTrial& trial : summary.trials) {
        ++count_of(counts, trial.mix).trials;
    }
    for (const core::RecordedSpecimen& specimen : summary.specimens) {
        ++count_of(counts, specimen.mix).specimens;
    }
    return counts;
}

Flow record_headline(const std::string& what_stands) {
    const core::VerdictSummary nothing;
    return Block{Paragraph{words(core::counts_of(nothing, not_to_be_used), core::UnitSystem::us) +
                               " " + what_stands,
                           {},
                           core::Verdict::not_checked}};
}

std::string name_of(core::ChartSignal signal) {
    switch (signal) {
    case core::ChartSignal::none:
        return "";
    case core::ChartSignal::outside:
        return "outside";
    case core::ChartSignal::run:
        return "run";
    }
    return "";
}

} // namespace boardmark::report

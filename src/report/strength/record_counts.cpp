#include "record_counts.hpp"

#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/text_sections.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace boardmark::report {
namespace {

MixCount& count_of(std::vector<MixCount>& counts, const std::string& mix,
                   const std::string& title) {
    const auto found = std::ranges::find_if(
        counts, [&](const MixCount& one) { return one.mix == mix && one.title == title; });
    return found != counts.end() ? *found
                                 : counts.emplace_back(MixCount{.mix = mix, .title = title});
}

/// Titles of trials by the names of their mixes.
using Titles = std::map<std::string, std::set<std::string>>;

Titles titles_by_mix(const std::vector<core::RecordedTrial>& trials) {
    Titles titles;
    for (const core::RecordedTrial& trial : trials) {
        if (!trial.title.empty()) {
            titles[trial.mix].insert(trial.title);
        }
    }
    return titles;
}

} // namespace

std::vector<MixCount> counts_by_mix(const RecordSummary& summary) {
    std::vector<MixCount> counts;
    const Titles titles = titles_by_mix(summary.trials);
    const auto has_several = [&](const std::string& mix) {
        const auto known = titles.find(mix);
        return known != titles.end() && known->second.size() > 1;
    };
    for (const core::RecordedTrial& trial : summary.trials) {
        const std::string title = has_several(trial.mix) ? trial.title : "";
        ++count_of(counts, trial.mix, title).trials;
    }
    for (const core::RecordedSpecimen& specimen : summary.specimens) {
        const std::string title =
            has_several(specimen.mix) ? core::title_of(specimen, summary.trials) : "";
        ++count_of(counts, specimen.mix, title).specimens;
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

#include <boardmark/core/paper/job_papers.hpp>

namespace boardmark::core {
namespace {

template <class Value>
void fill(std::optional<Value>& open, const std::optional<Value>& from) {
    if (!open) {
        open = from;
    }
}

} // namespace

std::string decision(const JobPapers& job, const std::string& key) {
    const auto found = job.decisions.find(key);
    return found == job.decisions.end() ? "" : found->second;
}

JobPapers merged(JobPapers first, const JobPapers& second) {
    first.materials.insert(second.materials.begin(), second.materials.end());
    fill(first.trial_batches, second.trial_batches);
    fill(first.records, second.records);
    fill(first.first_pour, second.first_pour);
    fill(first.mockup, second.mockup);
    fill(first.pour_days, second.pour_days);
    fill(first.concrete_by, second.concrete_by);
    first.ages.insert(second.ages.begin(), second.ages.end());
    first.decisions.insert(second.decisions.begin(), second.decisions.end());
    fill(first.delivery, second.delivery);
    return first;
}

} // namespace boardmark::core

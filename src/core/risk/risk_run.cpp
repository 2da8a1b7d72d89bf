#include "risk_run.hpp"

#include <boardmark/core/basis/blocks.hpp>

#include <memory>

namespace boardmark::core {
namespace {

constexpr std::size_t samples_in_block = 512;
constexpr std::uint32_t first_set = 0;

/// What one thread works with.
class BatchMaker {
public:
    BatchMaker(const RiskSubject& subject, const std::vector<Finding>& exact)
        : subject_{subject}
        , batch_{subject.scattered()}
        , normals_(subject.plan.dimensions.size())
        , counts_{exact} {}

    void make(std::size_t sample, RiskValues& values) {
        subject_.random.fill(first_set, sample, normals_);
        const RiskFigures figures = batch_.make(normals_);
        for (std::size_t i = 0; i < figures.size(); ++i) {
            values[i][sample] = figures[i];
        }
        judge(subject_.requirements, batch_.found(), subject_.tables, findings_);
        counts_.add(findings_);
    }

    const LimitCounts& counts() const { return counts_; }

private:
    const RiskSubject& subject_;
    ScatteredBatch batch_;
    std::vector<double> normals_;
    std::vector<Finding> findings_;
    LimitCounts counts_;
};

} // namespace

std::vector<Finding> exact_findings(const RiskSubject& subject) {
    const std::vector<double> nothing_off(subject.plan.dimensions.size());
    ScatteredBatch batch = subject.scattered();
    batch.make(nothing_off);
    std::vector<Finding> findings;
    judge(subject.requirements, batch.found(), subject.tables, findings);
    return findings;
}

BatchesMade make_batches(const RiskSubject& subject, const std::vector<Finding>& exact,
                         const RiskOrder& order) {
    BatchesMade made{.samples = 0, .values = {}, .counts = LimitCounts{exact}};
    for (auto& values : made.values) {
        values.resize(order.samples);
    }
    std::vector<std::shared_ptr<BatchMaker>> makers;
    made.samples = do_in_blocks({.count = order.samples,
                                 .in_block = samples_in_block,
                                 .threads = order.threads,
                                 .goes_on = order.goes_on},
                                [&]() -> BlockWork {
                                    makers.push_back(std::make_shared<BatchMaker>(subject, exact));
                                    return [maker = makers.back(), &made](std::size_t first,
                                                                          std::size_t last) {
                                        for (std::size_t sample = first; sample < last; ++sample) {
                                            maker->make(sample, made.values);
                                        }
                                    };
                                });
    for (const auto& maker : makers) {
        made.counts.add(maker->counts());
    }
    for (auto& values : made.values) {
        values.resize(made.samples);
    }
    return made;
}

} // namespace boardmark::core

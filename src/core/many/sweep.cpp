#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/many/sweep.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../basis/phrases.hpp"
#include "../mix/door/complete_again.hpp"
#include "share_doubt.hpp"
#include "study_base.hpp"

#include <cassert>

namespace boardmark::core {
namespace {

/// A value that the file could not hold, told as the door tells it.
Unresolved refused_by_door(const Faults& faults) {
    return {{"{fault}", {word("fault", faults.front().message)}},
            {{"leave this value out of the sweep", {}}}};
}

/// The door of files takes no dose of nothing; a study may leave an admixture out.
Mix with_some_dose(Mix mix) {
    constexpr double next_to_nothing = 1e-12;
    for (Dosage& dosage : mix.admixtures) {
        if (dosage.is_none()) {
            dosage.dose->amount = next_to_nothing;
        }
    }
    return mix;
}

/// Works points out in the same memory.
class PointMaker {
public:
    PointMaker(const CompleteMix& mix, const VariedMix& varied, const Tables& tables,
               const Vocabulary& words)
        : mix_{mix}
        , varied_{varied}
        , tables_{tables}
        , words_{words}
        , own_strengths_{mix, tables} {}

    SweepPoint point(std::vector<double> at) {
        SweepPoint point{std::move(at), std::nullopt, std::nullopt};
        Mix mix = varied_.at(point.at);
        const auto entered = complete(with_some_dose(mix), words_);
        if (const auto* faults = std::get_if<Faults>(&entered)) {
            point.unresolved = refused_by_door(*faults);
            return point;
        }
        const auto whole = complete_again(std::move(mix), tables_);
        if (!whole) {
            point.unresolved = whole.why();
            return point;
        }
        point.unresolved = figures(*whole, tables_, proportions_);
        if (!point.unresolved) {
            judge(mix_, proportions_, tables_, findings_);
            const LeftStrengths left = own_strengths_.left_by(**whole);
            point.leaves_own_shares = left.shares;
            point.leaves_own_air = left.air;
            if (left.any()) {
                watch_own_strengths(findings_);
            }
            point.mix = SweptMix{proportions_.selection,
                                 proportions_.totals,
                                 {},
                                 cost_of(proportions_),
                                 carbon_of(proportions_)};
            point.mix->verdict.add(findings_);
        }
        return point;
    }

private:
    const CompleteMix& mix_;
    const VariedMix& varied_;
    const Tables& tables_;
    const Vocabulary& words_;
    OwnStrengths own_strengths_;
    Proportions proportions_{};
    std::vector<Finding> findings_;
};

std::vector<double> values_at(const std::vector<SweepAxis>& axes, std::size_t index) {
    std::vector<double> at(axes.size());
    for (std::size_t axis = axes.size(); axis-- > 0;) {
        at[axis] = axes[axis].value(index % axes[axis].points);
        index /= axes[axis].points;
    }
    return at;
}

} // namespace

double SweepAxis::value(std::size_t point) const {
    return point + 1 == points
               ? to
               : from + (to - from) * static_cast<double>(point) / static_cast<double>(points - 1);
}

Sweep sweep(const CompleteMix& mix, std::vector<SweepAxis> axes, const Tables& tables,
            const Vocabulary& words, const std::function<bool(double)>& goes_on) {
    std::vector<Variable> variables;
    std::size_t count = 1;
    for (const SweepAxis& axis : axes) {
        assert(axis.points >= 2);
        variables.push_back(axis.variable);
        count *= axis.points;
    }
    const VariedMix varied{study_base(mix, tables), std::move(variables)};
    PointMaker maker{mix, varied, tables, words};
    Sweep found{std::move(axes), {}, {}};
    found.points.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
        if (goes_on && !goes_on(static_cast<double>(i) / static_cast<double>(count))) {
            break;
        }
        found.points.push_back(maker.point(values_at(found.axes, i)));
        if (found.cautions.empty()) {
            if (auto caution = leaves_blend_density(*mix, varied.at(found.points.back().at))) {
                found.cautions.push_back(*std::move(caution));
            }
        }
    }
    return found;
}

} // namespace boardmark::core

#include <boardmark/core/strength/record_chart.hpp>

#include <algorithm>
#include <array>
#include <cassert>
#include <map>
#include <utility>

namespace boardmark::core {
namespace {

constexpr std::array charted_names{
    ChartedName{Charted::slump, "slump", "slump", Measure::slump, "mm", "in"},
    ChartedName{Charted::air, "air", "air by meter", Measure::percent, "%"},
    ChartedName{Charted::density, "density", "fresh density", Measure::fresh_density, "kg/m3",
                "lb/ft3"},
    ChartedName{Charted::w_cm, "w_cm", "w/cm", Measure::w_cm},
    ChartedName{Charted::yield, "yield", "relative yield", Measure::ratio},
    ChartedName{Charted::strength, "strength", "strength", Measure::strength, "MPa", "psi"},
    ChartedName{Charted::temperature, "temperature", "temperature of the fresh concrete",
                Measure::temperature, "degC", "degF"},
};

/// A value and what it was to be.
struct Aimed {
    std::optional<double> value;
    std::optional<double> target = {};
};

Aimed aimed(const RecordedTrial& trial, Charted charted) {
    switch (charted) {
    case Charted::slump:
        return {trial.slump_mm, trial.target_slump_mm};
    case Charted::air:
        return {trial.air_percent, trial.target_air_percent};
    case Charted::density:
        return {trial.density_kg_m3};
    case Charted::w_cm:
        return {trial.w_cm};
    case Charted::yield:
        return {trial.relative_yield, 1};
    case Charted::temperature:
        return {trial.temperature_c};
    case Charted::strength:
        break;
    }
    assert(false);
    return {};
}

bool same_age(double one, double other) {
    constexpr double an_hour = 1.0 / 24;
    return one > other - an_hour && one < other + an_hour;
}

/// The trial of a specimen's batch; nullptr where none is recorded.
const RecordedTrial* trial_of(const RecordedSpecimen& specimen,
                              const std::vector<RecordedTrial>& trials) {
    const auto trial = std::ranges::find_if(trials, [&](const RecordedTrial& one) {
        return one.batch == specimen.batch && (specimen.mix.empty() || one.mix == specimen.mix);
    });
    return trial == trials.end() ? nullptr : &*trial;
}

std::string mix_of(const RecordedSpecimen& specimen, const std::vector<RecordedTrial>& trials) {
    if (!specimen.mix.empty()) {
        return specimen.mix;
    }
    const RecordedTrial* trial = trial_of(specimen, trials);
    return trial ? trial->mix : "";
}

/// A text of the values, each once, in their order.
std::vector<std::string> different(const std::vector<ChartPoint>& points,
                                   std::string ChartPoint::*text) {
    std::vector<std::string> found;
    for (const ChartPoint& point : points) {
        if (std::ranges::count(found, point.*text) == 0) {
            found.push_back(point.*text);
        }
    }
    return found;
}

} // namespace

std::span<const ChartedName> all_charted() {
    return charted_names;
}

std::vector<ChartPoint> trial_points(const std::vector<RecordedTrial>& trials, Charted charted) {
    std::vector<ChartPoint> points;
    for (const RecordedTrial& trial : trials) {
        const Aimed found = aimed(trial, charted);
        if (found.value) {
            points.push_back({.date = trial.date,
                              .batch = trial.batch,
                              .mix = trial.mix,
                              .title = trial.title,
                              .value = *found.value,
                              .target = found.target});
        }
    }
    return points;
}

std::vector<ChartPoint> strength_points(const std::vector<RecordedSpecimen>& specimens,
                                        const std::vector<RecordedTrial>& trials, double age_d) {
    std::vector<ChartPoint> points;
    // Batches of different mixes or days may carry one name.
    std::map<std::array<std::string, 4>, std::size_t> point_of;
    std::vector<double> counts;
    for (const RecordedSpecimen& specimen : specimens) {
        if (!same_age(*specimen.age_d, age_d)) {
            continue;
        }
        const auto [found, is_new] = point_of.emplace(
            std::array{specimen.batch, specimen.shape, specimen.date, mix_of(specimen, trials)},
            points.size());
        if (is_new) {
            points.push_back({.date = specimen.date,
                              .batch = specimen.batch,
                              .mix = mix_of(specimen, trials),
                              .title = title_of(specimen, trials),
                              .shape = specimen.shape,
                              .value = 0,
                              .target = specimen.specified_strength_mpa});
            counts.push_back(0);
        }
        points[found->second].value += *specimen.strength_mpa;
        counts[found->second] += 1;
    }
    for (std::size_t i = 0; i < points.size(); ++i) {
        points[i].value /= counts[i];
    }
    return points;
}

std::string title_of(const RecordedSpecimen& specimen, const std::vector<RecordedTrial>& trials) {
    const RecordedTrial* trial = trial_of(specimen, trials);
    return trial ? trial->title : "";
}

std::vector<double> ages_of(const std::vector<RecordedSpecimen>& specimens) {
    std::vector<double> ages;
    for (const RecordedSpecimen& specimen : specimens) {
        ages.push_back(*specimen.age_d);
    }
    std::ranges::sort(ages);
    ages.erase(std::unique(ages.begin(), ages.end(), same_age), ages.end());
    return ages;
}

std::vector<std::string> mixes_of(const std::vector<ChartPoint>& points) {
    return different(points, &ChartPoint::mix);
}

std::vector<std::string> titles_of(const std::vector<ChartPoint>& points) {
    auto titles = different(points, &ChartPoint::title);
    std::erase(titles, "");
    return titles;
}

std::vector<std::string> shapes_of(const std::vector<ChartPoint>& points) {
    return different(points, &ChartPoint::shape);
}

std::optional<double> common_target(const std::vector<ChartPoint>& points) {
    for (const ChartPoint& point : points) {
        if (!same(RecordedValue{point.target}, RecordedValue{points.front().target})) {
            return std::nullopt;
        }
    }
    return points.empty() ? std::nullopt : points.front().target;
}

} // namespace boardmark::core

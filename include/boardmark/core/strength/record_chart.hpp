#pragma once

#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/strength/recorded.hpp>

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::core {

/// What a control chart over a record can follow.
enum class Charted { slump, air, density, w_cm, yield, strength, temperature };

/// Its name, what it is called in a heading, and its measure. The yield is the relative one.
struct ChartedName {
    Charted charted;
    std::string_view name;
    std::string_view heading;
    Measure measure;
    std::string_view si_unit = ""; ///< of the values; empty for plain numbers
    std::string_view us_unit = si_unit;

    std::string_view unit(UnitSystem system) const {
        return system == UnitSystem::us ? us_unit : si_unit;
    }
};

/// Every quantity that can be charted.
std::span<const ChartedName> all_charted();

/// A value of the chart: of one trial, or of one strength test, which is the mean of the specimens
/// of one shape of a batch at one age.
struct ChartPoint {
    std::string date;
    std::string batch;
    std::string mix;        ///< may be empty
    std::string title = ""; ///< of that mix; empty where no recorded trial tells it
    std::string shape = ""; ///< of a strength's specimens
    double value;
    std::optional<double> target = {}; ///< what was to be reached, or the specified strength
};

/// The values of the trials that have them, in the order of the rows. Not for strength.
std::vector<ChartPoint> trial_points(const std::vector<RecordedTrial>& trials, Charted charted);

/// The strength tests at an age, in the order of their first specimens. A specimen without a mix
/// takes that of the recorded trial of its batch.
std::vector<ChartPoint> strength_points(const std::vector<RecordedSpecimen>& specimens,
                                        const std::vector<RecordedTrial>& trials, double age_d);

/// The title of a specimen's mix as the recorded trial of its batch states it; empty where none
/// does.
std::string title_of(const RecordedSpecimen& specimen, const std::vector<RecordedTrial>& trials);

/// The ages at which specimens were tested, increasing.
std::vector<double> ages_of(const std::vector<RecordedSpecimen>& specimens);

/// The mixes of values, each once, in the order of the values.
std::vector<std::string> mixes_of(const std::vector<ChartPoint>& points);

/// The titles that values of one mix file state, each once: files of several projects may carry one
/// name.
std::vector<std::string> titles_of(const std::vector<ChartPoint>& points);

/// The shapes of the specimens behind values, each once.
std::vector<std::string> shapes_of(const std::vector<ChartPoint>& points);

/// The target that all values share, if they do.
std::optional<double> common_target(const std::vector<ChartPoint>& points);

} // namespace boardmark::core

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../checks/remembered_limit.hpp"
#include "cast_part_checks.hpp"

namespace boardmark::core {
namespace {

/// Bars as large as any, where a size is not stated: it may be one that needs more cover.
Reinforcement with_large_bars(Reinforcement bars) {
    constexpr BarGrid larger_than_any{.bar_mm = 100, .area_mm2 = 0, .spacing_mm = 1000};
    bars.vertical = bars.vertical.value_or(larger_than_any);
    bars.horizontal = bars.horizontal.value_or(larger_than_any);
    return bars;
}

} // namespace

Check check_part_cover(const Reinforcement& bars, FaceExposure exposure, const Wall& wall,
                       const Tables& tables) {
    const Relief relief =
        exposure == FaceExposure::against_earth ? Relief{0, true} : relief_of(wall);
    const CoveredFace face{.exposure = exposure, .relief_mm = relief.mm};
    Check check = check_cover(bars, face, tables.joints);
    const Check of_large = check_cover(with_large_bars(bars), face, tables.joints);
    if (check.verdict == Verdict::holds && of_large.verdict == Verdict::fails) {
        check = of_large;
        check.verdict = Verdict::not_checked;
        check.message.text += " of large bars, and the sizes of the bars are not all stated; the "
                              "drawings have them";
    }
    if (check.verdict == Verdict::holds && !(bars.vertical && bars.horizontal)) {
        check = of_large; // held against what serves every bar
    }
    if (check.verdict == Verdict::holds && !relief.stated) {
        check.verdict = Verdict::watch;
        check.message.text += "; 'boards.relief' is not stated and taken as none";
    }
    watch_what_is_from_memory(check);
    return check;
}

} // namespace boardmark::core

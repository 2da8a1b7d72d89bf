#include "filling.hpp"

#include "../checks/compare.hpp"

#include <algorithm>

namespace boardmark::core {

void watch_planned_pace(bool by_output, Check& check) {
    if (by_output || !check.value) {
        return;
    }
    check.message.text += "; 'placing.output' is not stated: by the planned rise alone, which the "
                          "crew may not keep";
    check.verdict = worse(check.verdict, Verdict::watch);
}

double filled_after_h(const std::vector<FilledLift>& lifts, double filled_m3) {
    double hours = 0;
    for (const FilledLift& lift : lifts) {
        const double taken_m3 = std::clamp(filled_m3, 0.0, lift.volume_m3);
        hours += lift.volume_m3 > 0 ? lift.hours * taken_m3 / lift.volume_m3 : 0;
        filled_m3 -= taken_m3;
    }
    return hours;
}

double volume_of(const std::vector<FilledLift>& lifts) {
    double volume_m3 = 0;
    for (const FilledLift& lift : lifts) {
        volume_m3 += lift.volume_m3;
    }
    return volume_m3;
}

double hours_of(const std::vector<FilledLift>& lifts) {
    double hours = 0;
    for (const FilledLift& lift : lifts) {
        hours += lift.hours;
    }
    return hours;
}

double slowest_h(const std::vector<FilledLift>& lifts, double taken_m3) {
    const double all_m3 = volume_of(lifts);
    double slowest = filled_after_h(lifts, taken_m3);
    double top_m3 = 0;
    for (const FilledLift& lift : lifts) { // longest where a load begins or ends at a lift's edge
        top_m3 += lift.volume_m3;
        for (const double begins_m3 : {top_m3, top_m3 - taken_m3}) {
            const double from_m3 = std::clamp(begins_m3, 0.0, std::max(0.0, all_m3 - taken_m3));
            slowest = std::max(slowest, filled_after_h(lifts, from_m3 + taken_m3) -
                                            filled_after_h(lifts, from_m3));
        }
    }
    return slowest;
}

} // namespace boardmark::core

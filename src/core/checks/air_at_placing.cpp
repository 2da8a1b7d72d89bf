#include "air_at_placing.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "assumed_density.hpp"
#include "compare.hpp"

#include <algorithm>
#include <string_view>

namespace boardmark::core {

const Check* air_of_class(std::span<const Check> mix_checks) {
    const auto found = std::ranges::find_if(mix_checks, [](const Check& one) {
        return one.is(check_ids::air_exposure) && one.limit.has_value();
    });
    return found == mix_checks.end() ? nullptr : &*found;
}

Verdict within(double percent, Limit limit) {
    return worse(at_least({percent, *limit.low, percent_precision}),
                 at_most({percent, *limit.high, percent_precision}));
}

bool designed_below(double target_percent, Verdict verdict, const Proportions& proportions) {
    return !proportions.is_load && verdict == Verdict::holds &&
           below(proportions.selection.air_at_placing_percent, target_percent);
}

bool is_left_over(const CheckContext& context) {
    return context.tables.method.british && !context.proportions.submitted &&
           !context.proportions.is_load;
}

void append_left_over(const CheckContext& context, Phrase& message) {
    if (!is_left_over(context)) {
        return;
    }
    message.text += "; that air is what the volumes leave beside a fresh density read from a "
                    "chart: measure it on the trial batch";
    if (density_is_assumed(context.proportions)) {
        append_assumed_densities(context.proportions, message);
    }
}

void append_loss(const Selection& selection, Phrase& message) {
    if (same(selection.air_percent, selection.air_at_placing_percent)) {
        return;
    }
    constexpr std::string_view value = "{value}";
    message.text.insert(message.text.find(value) + value.size(),
                        " at placing ({batch} in the batch)");
    message.arguments.push_back(percent_of("batch", selection.air_percent));
}

void append_design_below(bool below_target, Phrase& message) {
    if (below_target) {
        message.text += "; the mix is designed below {target}: the tolerance belongs to the load";
    }
}

} // namespace boardmark::core

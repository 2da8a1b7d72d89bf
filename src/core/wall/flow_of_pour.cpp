#include "flow_of_pour.hpp"

#include <boardmark/core/forms/flow_class.hpp>

#include "../basis/phrases.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

std::string name_of_class(int flow_class) {
    return "F" + std::to_string(flow_class);
}

std::string name_of(FlowRange range) {
    return range.stiffest == range.most_fluid
               ? name_of_class(range.stiffest)
               : name_of_class(range.stiffest) + " or " + name_of_class(range.most_fluid);
}

} // namespace

std::optional<int> stated_flow_class(const WallPlacing& placing, const FlowClasses& classes) {
    return placing.spread_mm ? std::optional{flow_class_of_spread(*placing.spread_mm, classes)}
                             : placing.flow_class;
}

int governing_flow_class(int stated, std::optional<double> highest_slump_mm,
                         const FlowClasses& classes) {
    if (!highest_slump_mm) {
        return stated;
    }
    const FlowRange by_slump = flow_classes_of_slump(*highest_slump_mm, classes);
    return classes_outside(stated, by_slump) == 0 ? stated : std::max(stated, by_slump.most_fluid);
}

std::optional<Check> check_flow_class(const Wall& wall, const FormCase& pour,
                                      const FlowClasses& classes) {
    const auto stated = stated_flow_class(wall.placing, classes);
    if (!stated || !pour.highest_slump_mm || pour.self_consolidating) {
        return std::nullopt;
    }
    const FlowRange by_slump = flow_classes_of_slump(*pour.highest_slump_mm, classes);
    if (classes_outside(*stated, by_slump) == 0) {
        return std::nullopt;
    }
    const int governs = governing_flow_class(*stated, *pour.highest_slump_mm, classes);
    Check check{.id = check_ids::placing_flow_class,
                .verdict = Verdict::watch,
                .measure = Measure::slump,
                .requirement = "one consistency",
                .source = classes.source,
                .message = {"'flow_class' says {stated}, slump up to {slump} goes with {by_slump}: "
                            "pressure by DIN 18218 takes {governs}, the more fluid",
                            {word("stated", name_of_class(*stated)),
                             quantity("slump", {*pour.highest_slump_mm, Measure::slump}),
                             word("by_slump", name_of(by_slump)),
                             word("governs", name_of_class(governs))}}};
    if (wall.placing.spread_mm) {
        check.message.text.replace(0, std::string_view{"'flow_class' says {stated}"}.size(),
                                   "a spread of {spread} is {stated}");
        check.message.arguments.push_back(
            quantity("spread", {*wall.placing.spread_mm, Measure::length}));
    }
    return check;
}

} // namespace boardmark::core

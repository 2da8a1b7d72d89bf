#include <boardmark/core/forms/flow_class.hpp>
#include <boardmark/core/mix/any_mix.hpp>

#include "../wall/wall_sections.hpp"

namespace boardmark::input {
namespace {

std::string listed_classes(core::FlowRange range) {
    const std::string first = "F" + std::to_string(range.stiffest);
    return range.stiffest == range.most_fluid ? first
                                              : first + " to F" + std::to_string(range.most_fluid);
}

/// The classes of all slumps that the mix file permits at placing.
core::FlowRange permitted(const core::Requirements& asked, const core::FlowClasses& classes) {
    const double low_mm = asked.slump_window ? asked.slump_window->low_mm : asked.slump_mm;
    const double high_mm = asked.slump_window ? asked.slump_window->high_mm : asked.slump_mm;
    return {core::flow_classes_of_slump(low_mm, classes).stiffest,
            core::flow_classes_of_slump(high_mm, classes).most_fluid};
}

} // namespace

void hold_flow_class(const FileContext& context, const core::Wall& wall,
                     const core::FlowClasses& classes) {
    const Section section{context, {"placing"}};
    const core::WallPlacing& placing = wall.placing;
    if (!section.value("flow_class") || placing.self_consolidating || classes.ends.empty()) {
        return;
    }
    const int stated = placing.spread_mm ? core::flow_class_of_spread(*placing.spread_mm, classes)
                                         : placing.flow_class.value_or(0);
    const core::FlowRange by_slump = permitted(core::requirements_of(wall.mix), classes);
    if (core::classes_outside(stated, by_slump) > 1) {
        section.refuse("flow_class",
                       ": F" + std::to_string(stated) +
                           " is more than one class away from the slump of the mix file, " +
                           listed_classes(by_slump),
                       "state both of the concrete as it is placed: one of them is wrong");
    }
}

} // namespace boardmark::input

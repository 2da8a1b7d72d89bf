#include "wall_after_text.hpp"

#include <boardmark/text/utf8.hpp>

#include "../writing/quantity_format.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

const Indent after_indent{.first = "  ", .other = "  "};

std::string stripping_hours(double value, UnitSystem system) {
    return shown({value, Measure::duration, core::Keep::at_least}, system);
}

std::string face_text(const core::AfterPlacing& after, UnitSystem system) {
    const auto earliest_h = after.strip.earliest_h();
    if (!earliest_h) {
        return "";
    }
    const std::string needed = shown({after.strip.needed_mpa, Measure::strength}, system);
    const std::string from = " Forms of faces may be stripped from " +
                             stripping_hours(*earliest_h, system) + " on, all faces at one age: ";
    return after.strip.by_strength_h && after.strip.by_time_h != earliest_h
               ? from + "the face is then expected to have the " + needed +
                     " that it needs, an estimate on the slow side; strength tests decide."
               : from + "only hours in warm air count; by then it has set and had time to reach " +
                     needed +
                     " if it hardens as plain concrete does; the checks say what that leaves open.";
}

std::string soffit_text(const core::SoffitAge& age, UnitSystem system) {
    std::string text = "Soffit of " + text::printable(age.soffit.part);
    if (!age.soffit.opening.empty()) {
        text += ", head of " + text::printable(age.soffit.opening);
    }
    const auto earliest_h = age.earliest_h();
    if (!earliest_h) {
        return text + ": it is not known when its form and props may be removed.";
    }
    return text + ": form and props not before " + stripping_hours(*earliest_h, system) +
           (age.by_strength_h == earliest_h
                ? ", an estimate; strength tests and the engineer decide."
                : "; the engineer decides.");
}

std::string cold_text(const core::ColdPlan& plan, UnitSystem system) {
    std::string text =
        "Cold: air down to " + shown({plan.coldest_c, Measure::temperature}, system) +
        "; hold the concrete at " + shown({plan.least_c.value, Measure::temperature}, system) +
        " or more for " + shown({plan.days, Measure::age}, system) + ", then let it cool at most " +
        shown({plan.most_fall_k.value, Measure::temperature_difference}, system) +
        " in the first 24 h. Before it freezes it needs " +
        shown({plan.frost_strength_mpa, Measure::strength}, system);
    if (plan.frost_strength_h) {
        text += ", not before " + stripping_hours(*plan.frost_strength_h, system) +
                " at the temperature held, an estimate";
    }
    return text + "; strength tests decide.";
}

} // namespace

Flow text_of_after(const core::AfterPlacing& after, UnitSystem system) {
    Flow text =
        paragraph("Moist curing at least " + shown({after.curing_d.value, Measure::age}, system) +
                      " [" + after.curing_d.source.citation +
                      "], the same way and length on every lift." + face_text(after, system),
                  after_indent);
    for (const core::SoffitAge& age : after.soffits) {
        text += paragraph(soffit_text(age, system), after_indent);
    }
    if (after.cold) {
        text += paragraph(cold_text(*after.cold, system), after_indent);
    }
    return text;
}

} // namespace boardmark::report

#include <boardmark/core/wall/wall_plan.hpp>

#include "../basis/phrases.hpp"

namespace boardmark::core {
namespace {

void append_words(Phrase& phrase, const char* text, std::vector<Argument> arguments) {
    phrase.text += text;
    phrase.arguments.insert(phrase.arguments.end(), arguments.begin(), arguments.end());
}

void append_rise(Phrase& phrase, const FormRise& rise) {
    const auto by = rise.by();
    if (!by) {
        append_words(phrase, "at any rate, for neither rise nor output is stated", {});
        return;
    }
    append_words(phrase, "by no more than {rise}",
                 {quantity("rise", {*rise.fastest_m_h(), Measure::rate_of_rise})});
    if (by == RiseBy::output) {
        append_words(phrase, ", as {output} an hour do in {area}, the smallest plan area",
                     {quantity("output", {*rise.output_m3_h, Measure::volume}),
                      quantity("area", {rise.smallest_plan_m2, Measure::area})});
    }
}

Phrase highest_rise(const std::string& wall, const std::string& what,
                    const std::optional<AllowableRise>& rise, const char* key) {
    Phrase phrase{"{wall}, rise that the " + what + " bear: ", {word("wall", wall)}};
    if (!rise) {
        append_words(phrase, key, {});
    } else {
        phrase.text += rise->any           ? "any rate: "
                       : !rise->usable_m_h ? "no rate: "
                                           : "up to {usable}: ";
        if (rise->usable_m_h) {
            phrase.arguments.push_back(
                quantity("usable", {*rise->usable_m_h, Measure::rate_of_rise}));
        }
        append_words(phrase, rise->reason.text.c_str(), rise->reason.arguments);
    }
    return phrase;
}

} // namespace

Phrase pressures_hold_for(const FormForces& forces) {
    Phrase phrase{"{wall}: holds for concrete that rises ", {word("wall", forces.wall)}};
    append_rise(phrase, forces.rise);
    if (forces.concrete_c) {
        append_words(phrase, ", at {temperature} or warmer in the form",
                     {quantity("temperature", {*forces.concrete_c, Measure::temperature})});
    } else {
        append_words(phrase, ", at any temperature, for that of the concrete is not stated", {});
    }
    if (forces.slump_mm) {
        append_words(phrase, ", of a slump up to {slump}",
                     {quantity("slump", {*forces.slump_mm, Measure::slump})});
    }
    return phrase;
}

std::vector<Phrase> highest_rises(const FormForces& forces) {
    return {highest_rise(forces.wall, "forms", forces.rise_by_form,
                         "not known, for 'placing.form_pressure' is not stated"),
            highest_rise(forces.wall, "ties", forces.rise_by_ties,
                         "not known, for no load of 'ties' is stated")};
}

} // namespace boardmark::core

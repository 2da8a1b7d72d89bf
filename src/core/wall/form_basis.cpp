#include <boardmark/core/wall/wall_plan.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

void append_words(Phrase& phrase, const std::string& text, std::vector<Argument> arguments) {
    phrase.text += text;
    phrase.arguments.insert(phrase.arguments.end(), arguments.begin(), arguments.end());
}

/// A phrase within another: its arguments get names of their own.
void append_phrase(Phrase& phrase, const std::string& prefix, Phrase inner) {
    for (Argument& argument : inner.arguments) {
        const std::string name = "{" + argument.name + "}";
        argument.name = prefix + argument.name;
        for (std::size_t at = inner.text.find(name); at != std::string::npos;
             at = inner.text.find(name, at + name.size())) {
            inner.text.replace(at, name.size(), "{" + argument.name + "}");
        }
    }
    append_words(phrase, inner.text, std::move(inner.arguments));
}

/// Whether no rate of rise could make a pressure shown higher than it is.
bool all_full_head(const FormForces& forces) {
    return std::ranges::all_of(forces.pressures, [](const FormPressure& pressure) {
        return !below(pressure.kpa, pressure.head_kpa);
    });
}

void append_rise(Phrase& phrase, const FormRise& rise) {
    const auto by = rise.by();
    if (!by) {
        append_words(phrase, "any rate of rise (neither rise nor output is stated)", {});
        return;
    }
    append_words(phrase, "a rise of up to {rise}",
                 {no_more_than("rise", {*rise.fastest_m_h(), Measure::rate_of_rise})});
    if (by == RiseBy::output) {
        append_words(phrase, " (what {output} an hour make in {area}, the smallest plan area)",
                     {quantity("output", {*rise.output_m3_h, Measure::volume}),
                      quantity("area", {rise.smallest_plan_m2, Measure::area})});
    }
}

void append_concrete(Phrase& phrase, const FormForces& forces) {
    if (forces.concrete_c) {
        append_words(phrase, ", concrete at {temperature} or warmer in the form",
                     {no_less_than("temperature", {*forces.concrete_c, Measure::temperature})});
    } else {
        append_words(phrase, ", concrete at any temperature (it is not stated)", {});
    }
    if (forces.slump_mm) {
        append_words(phrase, ", a slump of up to {slump}",
                     {quantity("slump", {*forces.slump_mm, Measure::slump})});
    }
}

/// What the pressures of a form hold for. Full head is the same for any rise: the plan's own is
/// told, and no bound is set by it.
std::vector<Phrase> basis_of_pressures(const FormForces& forces) {
    Phrase phrase;
    if (!all_full_head(forces)) {
        append_words(phrase, "the pressures hold for ", {});
    } else {
        const FormPressure& pressure = governing_pressure(forces);
        append_words(phrase,
                     is_pumped(pressure)
                         ? "{times} times the full liquid head of concrete of {density}, the least "
                           "for concrete pumped from below, whatever the rate of rise, temperature "
                           "and slump; planned for "
                         : "full liquid head of concrete of {density}, whatever the rate of rise, "
                           "temperature and slump; planned for ",
                     {quantity("density", {forces.density_kg_m3, Measure::fresh_density}),
                      quantity("times", {pressure.kpa / pressure.head_kpa, Measure::ratio})});
    }
    append_rise(phrase, forces.rise);
    append_concrete(phrase, forces);
    return {phrase};
}

Phrase highest_by(const std::string& what, const std::optional<AllowableRise>& rise,
                  const char* not_stated) {
    if (!rise) {
        return {"it is not known how fast it may rise by the " + what + ": " + not_stated, {}};
    }
    if (rise->any || rise->open) {
        return rise->reason;
    }
    Phrase phrase{"the " + what + " allow no rate of rise: ", {}};
    if (rise->usable_m_h) {
        phrase = {"the " + what + " allow up to {usable}: ",
                  {no_more_than("usable", {*rise->usable_m_h, Measure::rate_of_rise})}};
    }
    append_words(phrase, rise->reason.text, rise->reason.arguments);
    return phrase;
}

/// How fast concrete may rise by the forms and by the ties: one sentence where no rate matters to
/// either. Elsewhere two, for a value and its limit are told apart by their names.
std::vector<Phrase> highest_of(const FormForces& forces) {
    const Phrase by_form =
        highest_by("forms", forces.rise_by_form, "'placing.form_pressure' is not stated");
    const Phrase by_ties = highest_by("ties", forces.rise_by_ties, "no load of 'ties' is stated");
    const bool any = forces.rise_by_form && forces.rise_by_form->any && forces.rise_by_ties &&
                     forces.rise_by_ties->any;
    if (!any) {
        return {by_form, by_ties};
    }
    Phrase both;
    append_phrase(both, "form_", by_form);
    append_words(both, "; ", {});
    append_phrase(both, "tie_", by_ties);
    return {both};
}

/// The sentences of each form; forms of which the same is true share one that names them all.
std::vector<Phrase> shared(std::span<const FormForces> all,
                           std::vector<Phrase> (*told_of)(const FormForces&)) {
    std::vector<Phrase> phrases;
    std::vector<std::string> walls;
    for (const FormForces& forces : all) {
        for (Phrase& phrase : told_of(forces)) {
            const auto same = std::ranges::find(phrases, phrase);
            if (same == phrases.end()) {
                phrases.push_back(std::move(phrase));
                walls.push_back(forces.wall);
            } else {
                walls[static_cast<std::size_t>(same - phrases.begin())] += ", " + forces.wall;
            }
        }
    }
    for (std::size_t i = 0; i < phrases.size(); ++i) {
        phrases[i].text = "{wall}: " + phrases[i].text;
        phrases[i].arguments.insert(phrases[i].arguments.begin(), word("wall", walls[i]));
    }
    return phrases;
}

} // namespace

std::vector<Phrase> pressures_hold_for(std::span<const FormForces> all) {
    return shared(all, basis_of_pressures);
}

std::vector<Phrase> highest_rises(std::span<const FormForces> all) {
    return shared(all, highest_of);
}

} // namespace boardmark::core

#include <boardmark/text/letter_case.hpp>

#include "mix_context.hpp"

#include <algorithm>
#include <map>

namespace boardmark::input {
namespace {

Path requirement(std::string_view name) {
    return {"requirements", name};
}

bool looks_like_strength_class(const std::string& text) {
    return text.size() > 1 && text[0] == 'C' && text.find('/') != std::string::npos;
}

/// The fault of `strength: C35/45` is told in its own words instead of as a number without digits.
void explain_strength_class(const MixContext& context) {
    const Reading* strength = context.document.find(requirement("strength"));
    if (!strength || strength->value || !looks_like_strength_class(strength->node->scalar)) {
        return;
    }
    for (Diagnostic& diagnostic : context.diagnostics) {
        if (diagnostic.message.starts_with("requirements.strength:")) {
            diagnostic.message = "requirements.strength: '" + strength->node->scalar +
                                 "' is a strength class; " + context.options.vocabulary.code.name +
                                 " has none";
            diagnostic.advice = "write the cylinder strength, for example '35 MPa'";
        }
    }
}

void read_code(const MixContext& context, core::Requirements& requirements) {
    const auto code = context.document.text(requirement("code"));
    if (!code) {
        const bool asks_classes =
            context.has(requirement("exposure")) || context.has(requirement("site"));
        if (asks_classes && !context.has(requirement("code"))) {
            context.missing({"requirements"}, "code", "exposure classes are a code's",
                            context.add_example(requirement("code")));
        }
        return;
    }
    const auto& codes = context.options.vocabulary.codes;
    if (std::ranges::count(codes, *code) == 0) {
        context.refuse(*context.document.value(requirement("code"))->node,
                       "requirements.code: '" + *code + "' is not a code known here",
                       "known here: " + codes.front());
    }
    requirements.code = *code;
}

/// The class that a word names in small letters. Other codes have other classes: no nearer guess.
std::optional<std::string> written_otherwise(const std::string& word,
                                             const core::CodeTables& code) {
    for (const core::ExposureClass& known : code.classes) {
        if (text::equal_but_for_case(known.name, word)) {
            return known.name;
        }
    }
    return std::nullopt;
}

void read_exposure(const MixContext& context, core::Requirements& requirements) {
    const Reading* exposure = context.document.find(requirement("exposure"));
    if (!exposure) {
        return;
    }
    const core::CodeTables& code = context.options.vocabulary.code;
    std::map<std::size_t, std::string> stated; // by category
    for (const Parsed& item : exposure->items) {
        const core::ExposureClass* known = code.find_class(item.text);
        if (!known) {
            const auto near = written_otherwise(item.text, code);
            context.refuse(*item.node,
                           "requirements.exposure: '" + item.text +
                               "' is not an exposure class of " + code.name,
                           near ? "did you mean '" + *near + "'?"
                                : "'boardmark help exposure' explains each class");
            continue;
        }
        const auto [earlier, added] = stated.emplace(known->category, item.text);
        if (!added && earlier->second == item.text) {
            context.refuse(*item.node,
                           "requirements.exposure: " + item.text + " is given a second time",
                           "keep one");
            continue;
        }
        if (!added) {
            context.refuse(*item.node,
                           "requirements.exposure: " + item.text + " and " + earlier->second +
                               " are of one category",
                           "keep the more severe of the two");
            continue;
        }
        requirements.exposure.push_back(item.text);
    }
}

void read_records(const MixContext& context, core::Requirements& requirements) {
    if (!context.holds_keys(requirement("strength_records"))) {
        return;
    }
    const Path path = requirement("strength_records");
    const auto inside = [&](std::string_view name) { return path.below(name); };
    for (const char* name : {"tests", "standard_deviation"}) {
        context.demand(inside(name), "");
    }
    const auto tests = context.document.number(inside("tests"));
    const auto deviation = context.document.number(inside("standard_deviation"));
    if (tests && deviation) {
        requirements.records =
            core::StrengthRecords{.tests = static_cast<int>(*tests),
                                  .standard_deviation_mpa = *deviation,
                                  .strength_mpa = context.document.number(inside("strength")),
                                  .age_d = context.document.number(inside("age"))};
    }
}

void read_curve(const MixContext& context, core::Requirements& requirements) {
    const Reading* curve = context.document.find(requirement("strength_curve"));
    if (!curve) {
        return;
    }
    if (curve->sound && curve->pairs.size() < 2) {
        context.refuse(*curve->key, "requirements.strength_curve has a single point",
                       "give two or more trials; three are usual");
    }
    for (const Pair& pair : curve->pairs) {
        const core::CurvePoint point{pair.key.number, pair.value.number};
        if (!requirements.strength_curve.empty()) {
            const core::CurvePoint& before = requirements.strength_curve.back();
            if (point.w_cm <= before.w_cm) {
                context.refuse(*pair.key.node,
                               "requirements.strength_curve: the ratios do not increase",
                               "write them from the lowest to the highest");
            } else if (point.strength_mpa >= before.strength_mpa) {
                context.refuse(*pair.value.node,
                               "requirements.strength_curve: strength does not fall as w/cm rises",
                               "check the trials; a higher ratio gives a lower strength");
            }
        }
        requirements.strength_curve.push_back(point);
    }
}

void read_average(const MixContext& context, core::Requirements& requirements) {
    const auto average = context.document.number(requirement("average_strength"));
    const auto basis = context.document.text(requirement("average_strength_basis"));
    if (basis && !context.has(requirement("average_strength"))) {
        context.refuse(*context.document.find(requirement("average_strength_basis"))->key,
                       "requirements.average_strength_basis is given without 'average_strength'",
                       context.add_example(requirement("average_strength")));
    }
    if (!average) {
        return;
    }
    requirements.average = core::StatedAverage{*average, basis.value_or("")};
    const auto strength = context.document.number(requirement("strength"));
    if (strength && *average < *strength * (1 - 1e-9)) {
        context.refuse(*context.document.value(requirement("average_strength"))->node,
                       "requirements.average_strength is below 'strength': half of all tests "
                       "would fail",
                       "the average lies above the specified strength");
    }
}

void read_slump(const MixContext& context, core::Requirements& requirements) {
    context.demand(requirement("slump"), "");
    const auto slump = context.document.number(requirement("slump"));
    requirements.slump_mm = slump.value_or(0);
    requirements.slump_before_reducer_mm =
        context.document.number(requirement("slump_before_reducer"));
    if (slump && requirements.slump_before_reducer_mm &&
        *requirements.slump_before_reducer_mm > *slump) {
        context.refuse(*context.document.value(requirement("slump_before_reducer"))->node,
                       "requirements.slump_before_reducer is above 'slump'",
                       "the reducer adds slump, it takes none away");
    }
    if (const auto days = context.document.number(requirement("time_to_place"))) {
        constexpr double minutes_in_day = 1440;
        requirements.time_to_place_min = *days * minutes_in_day;
    }
    if (const Parsed* window = context.document.value(requirement("slump_window"))) {
        requirements.slump_window = core::SlumpWindow{window->number, window->high};
        if (slump && (*slump < window->number || *slump > window->high)) {
            context.refuse(*window->node,
                           "requirements.slump_window does not include the required slump",
                           "the slump lies between the two values");
        }
    }
}

void read_air(const MixContext& context, core::Requirements& requirements) {
    requirements.air_loss_percent = context.document.number(requirement("air_loss")).value_or(0);
    const Parsed* air = context.document.value(requirement("air"));
    if (!air) {
        return;
    }
    if (air->is_word) {
        requirements.air.basis =
            air->text == "none" ? core::AirBasis::none : core::AirBasis::exposure;
    } else {
        requirements.air = {core::AirBasis::stated, air->number};
    }
    if (requirements.air.basis == core::AirBasis::none && requirements.air_loss_percent > 0) {
        context.refuse(
            *context.document.value(requirement("air_loss"))->node,
            "requirements.air_loss is given with 'air: none': there is no entrained air to lose",
            "delete one of the two");
    }
}

core::PlacingConditions read_placing(const MixContext& context) {
    const auto stated = [&](std::string_view name) {
        return context.document.number({"requirements", "placing", name});
    };
    core::PlacingConditions placing{.air_c = stated("air_temperature"),
                                    .wind_km_h = stated("wind"),
                                    .humidity_percent = stated("humidity"),
                                    .haul_h = stated("haul")};
    if (placing.haul_h) {
        constexpr double hours_in_day = 24; // times are read as days
        *placing.haul_h *= hours_in_day;
    }
    return placing;
}

} // namespace

core::Requirements read_requirements(const MixContext& context) {
    core::Requirements requirements{.strength_mpa = 0, .slump_mm = 0};
    context.demand({"requirements"}, "");
    if (!context.holds_keys({"requirements"})) {
        return requirements;
    }
    context.demand(requirement("strength"), "");
    explain_strength_class(context);
    requirements.strength_mpa = context.document.number(requirement("strength")).value_or(0);
    requirements.strength_age_d = context.document.number(requirement("strength_age")).value_or(28);
    requirements.reinforced = context.document.flag(requirement("reinforced"), true);
    read_code(context, requirements);
    read_exposure(context, requirements);
    requirements.site = read_site(context);
    core::add_site_classes(requirements, context.options.vocabulary.code);
    read_records(context, requirements);
    read_curve(context, requirements);
    read_average(context, requirements);
    read_slump(context, requirements);
    read_air(context, requirements);
    const auto dimension = [&](std::string_view name) {
        return context.document.number({"requirements", "section", name});
    };
    requirements.section = {dimension("thickness"), dimension("clear_bar_spacing"),
                            dimension("clear_cover")};
    requirements.placing = read_placing(context);
    requirements.minimum_binder_kg_m3 = context.document.number(requirement("minimum_binder"));
    requirements.alkali_level = context.document.text(requirement("alkali_level")).value_or("");
    requirements.board_marked = context.document.value(requirement("finish")) != nullptr;
    return requirements;
}

} // namespace boardmark::input

#include "exposure_reader.hpp"
#include "mix_context.hpp"
#include "strength_class.hpp"

#include <algorithm>
#include <optional>

namespace boardmark::input {
namespace {

Path requirement(std::string_view name) {
    return {"requirements", name};
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
    if (context.code_file) {
        requirements.code = context.code_file->name;
        requirements.code_file = context.code_file;
        return;
    }
    requirements.code = *code;
    if (code->starts_with("from ")) {
        return; // the fault of that file has been told
    }
    const auto& codes = context.options.vocabulary.codes;
    if (std::ranges::count(codes, *code) == 0) {
        const Reading& stated = *context.document.find(requirement("code"));
        refuse_code(context, *stated.node, requirement("code"), *code);
    }
    requirements.code = *code;
}

/// Another name of the file's own code is refused; so is a code that is not known.
std::vector<core::ClassesByCode> read_other_codes(const MixContext& context,
                                                  const core::Requirements& requirements) {
    std::vector<core::ClassesByCode> others;
    const Path path = requirement("exposure_by_code");
    for (const Reading& reading : context.document.below(path)) {
        const std::string& name = reading.key->scalar;
        const auto& codes = context.options.vocabulary.codes;
        if (name.starts_with("from ")) {
            context.refuse(*reading.key,
                           "requirements.exposure_by_code names the codes known here, no file",
                           "a file of its own stands under 'code'; compare by a second mix file");
        } else if (std::ranges::count(codes, name) == 0) {
            refuse_code(context, *reading.key, path, name);
        } else if (name == requirements.code) {
            context.refuse(*reading.key,
                           "requirements.exposure_by_code: " + name + " is the file's own code",
                           "its classes stand under 'exposure'");
        } else {
            others.push_back({name, read_classes(context, reading, dotted(path.below(name)),
                                                 context.options.vocabulary.class_names(name))});
        }
    }
    return others;
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

core::Requirements read_requirements(const MixContext& context, core::UnitSystem system) {
    core::Requirements requirements{.strength_mpa = 0, .slump_mm = 0};
    context.demand({"requirements"}, "");
    if (!context.holds_keys({"requirements"})) {
        return requirements;
    }
    context.demand(requirement("strength"), "");
    read_strength(context, requirements);
    requirements.strength_age_d = context.document.number(requirement("strength_age")).value_or(28);
    requirements.reinforced = context.document.flag(requirement("reinforced"), true);
    read_code(context, requirements);
    const core::CodeTables& code = context.options.vocabulary.code_of(requirements, system);
    const auto& codes = context.options.vocabulary.codes;
    const bool code_is_lost = !requirements.code.empty() && !requirements.code_file &&
                              std::ranges::count(codes, requirements.code) == 0; // told already
    const Reading* exposure = context.document.find(requirement("exposure"));
    if (exposure && !code_is_lost) {
        requirements.exposure =
            read_classes(context, *exposure, "requirements.exposure", core::class_names(code));
    }
    requirements.exposure_by_code = read_other_codes(context, requirements);
    requirements.chloride_class = read_chloride_class(context, code, requirements.reinforced);
    requirements.site = read_site(context);
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
    requirements.aggregate_reactivity =
        context.document.text(requirement("aggregate_reactivity")).value_or("");
    requirements.structure_class =
        context.document.text(requirement("structure_class")).value_or("");
    requirements.board_marked = context.document.value(requirement("finish")) != nullptr;
    requirements.pumped = context.document.flag(requirement("pumped"), false);
    if (const auto control = context.document.text(requirement("site_control"))) {
        requirements.site_control =
            *control == "fair" ? core::SiteControl::fair : core::SiteControl::good;
    }
    requirements.defective_percent =
        context.document.number(requirement("defective")).value_or(requirements.defective_percent);
    return requirements;
}

} // namespace boardmark::input

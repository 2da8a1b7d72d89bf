#include "mix_context.hpp"

namespace boardmark::input {
namespace {

void refuse_pair(const MixContext& context, const std::string& first, const std::string& second) {
    const Reading* one = context.document.find({"selections", first});
    const Reading* other = context.document.find({"selections", second});
    if (one && other) {
        context.refuse(*other->key,
                       "selections: '" + first + "' and '" + second + "' cannot both be given",
                       "keep one of the two");
    }
}

/// A selection and the only method that knows it.
struct SelectionOfMethod {
    const char* key;
    core::Method method;
};

constexpr SelectionOfMethod of_methods[] = {
    {"coarse_volume", core::Method::aci_211_1},
    {"coarse_adjustment", core::Method::aci_211_1},
    {"fresh_density", core::Method::bre},
    {"fine_share_by_mass", core::Method::bre},
};

void refuse_other_methods(const MixContext& context) {
    const core::Method method = read_method(context);
    for (const SelectionOfMethod& selection : of_methods) {
        const Reading* stated = context.document.find({"selections", selection.key});
        if (stated && method != selection.method) {
            context.refuse(*stated->key,
                           std::string{"selections."} + selection.key +
                               " is a figure of another method than this file's",
                           "delete it, or name its method under 'method'");
        }
    }
    const Reading* by_volume = context.document.find({"selections", "fine_share"});
    if (by_volume && method == core::Method::bre) {
        context.refuse(*by_volume->key,
                       "selections.fine_share: this file's method shares the aggregate by mass",
                       "write 'fine_share_by_mass', the reading of its chart");
    }
}

} // namespace

core::Method read_method(const MixContext& context) {
    const std::string name = context.document.text({"method"}).value_or("");
    if (name.starts_with("IS 10262")) {
        return name.ends_with("2009") ? core::Method::is_10262_2009 : core::Method::is_10262;
    }
    return name.starts_with("BRE") ? core::Method::bre : core::Method::aci_211_1;
}

core::Selections read_selections(const MixContext& context) {
    const auto number = [&](std::string_view name) {
        return context.document.number({"selections", name});
    };
    const Parsed* w_cm = context.document.value({"selections", "w_cm"});
    core::Selections selections{.w_cm = number("w_cm"),
                                .w_cm_by_exposure = w_cm && w_cm->is_word,
                                .water_kg_m3 = number("water"),
                                .binder_kg_m3 = number("binder"),
                                .air_percent = number("air"),
                                .coarse_volume = number("coarse_volume"),
                                .coarse_adjustment_percent = number("coarse_adjustment"),
                                .fine_share_percent = number("fine_share"),
                                .coarse_dry_kg_m3 = std::nullopt,
                                .fresh_density_kg_m3 = number("fresh_density"),
                                .fine_share_by_mass_percent = number("fine_share_by_mass")};
    const Reading* binder = context.document.find({"selections", "binder"});
    if (w_cm && binder && context.has({"selections", "water"})) {
        context.refuse(*binder->key, "selections: 'w_cm', 'water' and 'binder' cannot all be given",
                       "keep two of the three; the third follows");
    } else if (selections.w_cm_by_exposure && binder) {
        context.refuse(*binder->key, "selections: 'binder' leaves no room for 'w_cm: by exposure'",
                       "keep one of the two");
    }
    refuse_other_methods(context);
    refuse_pair(context, "coarse_volume", "fine_share");
    refuse_pair(context, "coarse_volume", "coarse_adjustment");
    refuse_pair(context, "fine_share", "coarse_adjustment");
    return selections;
}

} // namespace boardmark::input

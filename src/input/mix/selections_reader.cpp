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

} // namespace

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
                                .coarse_dry_kg_m3 = std::nullopt};
    const Reading* binder = context.document.find({"selections", "binder"});
    if (w_cm && binder && context.has({"selections", "water"})) {
        context.refuse(*binder->key, "selections: 'w_cm', 'water' and 'binder' cannot all be given",
                       "keep two of the three; the third follows");
    } else if (selections.w_cm_by_exposure && binder) {
        context.refuse(*binder->key, "selections: 'binder' leaves no room for 'w_cm: by exposure'",
                       "keep one of the two");
    }
    refuse_pair(context, "coarse_volume", "fine_share");
    refuse_pair(context, "coarse_volume", "coarse_adjustment");
    refuse_pair(context, "fine_share", "coarse_adjustment");
    return selections;
}

} // namespace boardmark::input

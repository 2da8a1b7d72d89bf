#include "out_of_scope.hpp"

#include <algorithm>

namespace boardmark::input {
namespace {

OutOfScope self_compacting_concrete() {
    return {
        "self-compacting concrete is not proportioned here: what it flows like follows from its "
        "paste and fines and is told by slump flow, passing and segregation tests, not by a "
        "table of water and slump",
        "take a method for self-compacting (self-consolidating) concrete, and full liquid head "
        "on the forms"};
}

/// Keys that someone writes who means self-compacting concrete.
constexpr std::string_view keys_of_flow[] = {"slump_flow",
                                             "flow_time",
                                             "passing_ability",
                                             "viscosity_class",
                                             "slump_flow_class",
                                             "segregation_class",
                                             "j_ring",
                                             "v_funnel",
                                             "self_compacting",
                                             "self_consolidating",
                                             "l_box"};

/// Classes of slump flow.
constexpr std::string_view flow_classes[] = {"SF1", "SF2", "SF3"};

bool contains(std::string_view text, std::string_view part) {
    return text.find(part) != std::string_view::npos;
}

} // namespace

OutOfScope lightweight_aggregate() {
    return {
        "lightweight aggregate is not proportioned here: it goes on taking up water, so the net "
        "w/cm is not known and volumes at saturated surface-dry do not hold",
        "take a method for lightweight concrete, which begins with the cement content, and its "
        "trials"};
}

std::optional<OutOfScope> key_out_of_scope(std::string_view key) {
    return std::ranges::count(keys_of_flow, key) > 0 ? std::optional{self_compacting_concrete()}
                                                     : std::nullopt;
}

std::optional<OutOfScope> kind_out_of_scope(std::string_view kind) {
    const bool light =
        contains(kind, "lightweight") || contains(kind, "expanded") || contains(kind, "pumice");
    return light ? std::optional{lightweight_aggregate()} : std::nullopt;
}

std::optional<OutOfScope> value_out_of_scope(std::string_view value) {
    return std::ranges::count(flow_classes, value) > 0 ? std::optional{self_compacting_concrete()}
                                                       : std::nullopt;
}

} // namespace boardmark::input

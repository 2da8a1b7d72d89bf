#include "kind_and_standard.hpp"

#include <boardmark/core/mix/designation.hpp>

#include "../values/out_of_scope.hpp"
#include "designated_parts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace boardmark::input {
namespace {

using core::CementType;
using core::Kind;
using core::Material;

/// One material whose kind is held against its standard.
struct HeldMaterial {
    const MixContext& context;
    const Material& material;

    void refuse(std::string_view key, const std::string& message, const std::string& advice) const {
        const Path path{"materials", material.name, key};
        context.refuse(*context.document.find(path)->node, dotted(path) + ": " + message, advice);
    }
    void refuse_standard(const std::string& advice) const {
        refuse("standard",
               "'" + material.standard + "' is no " + std::string{core::name_of(material.kind)},
               advice);
    }
};

/// Kinds that a standard is written for, from memory.
struct StandardKinds {
    std::string_view number;
    std::vector<Kind> kinds;
    const char* advice;
};

const std::vector<StandardKinds>& standards_of_additions() {
    static const std::vector<StandardKinds> known{
        {"C989", {Kind::slag_cement}, "write 'kind: slag cement', or correct the standard"},
        {"C618",
         {Kind::fly_ash, Kind::natural_pozzolan, Kind::metakaolin},
         "write 'kind: fly ash' or 'kind: natural pozzolan', or correct the standard"},
        {"C1240", {Kind::silica_fume}, "write 'kind: silica fume', or correct the standard"}};
    return known;
}

const char* advice_on_cement(CementType type) {
    return type == CementType::blended
               ? "write 'kind: blended cement', and with 'contains' what it holds"
           : type == CementType::limestone
               ? "write 'kind: portland-limestone cement', or correct the standard"
               : "write 'kind: portland cement', or correct the standard";
}

bool fits_cement(Kind kind, CementType type) {
    const bool pure = type == CementType::one_to_three || type == CementType::other_portland;
    switch (kind) {
    case Kind::portland_cement:
        return pure;
    case Kind::portland_limestone_cement:
        return type == CementType::limestone;
    case Kind::blended_cement:
        return !pure;
    case Kind::white_cement: // any of them may be white
        return true;
    default:
        return false;
    }
}

/// Points by which a delivery may miss its designation (ASTM C595, from memory).
constexpr double designation_points = 5;

/// What a designation says that the cement holds, against what the file says.
void hold_contents(const HeldMaterial& held) {
    const Material& material = held.material;
    if (material.binder.contains.empty()) {
        return;
    }
    for (const DesignatedPart& part : designated_parts(material.standard)) {
        const double stated = contained_percent(material, part.letter);
        if (std::abs(stated - part.percent) > designation_points) {
            const std::string what = part.letter == 'S'   ? "slag cement"
                                     : part.letter == 'L' ? "ground limestone"
                                                          : "pozzolan";
            held.refuse("contains",
                        fmt::format("{:g} % of {}, and '{}' says {:g} %", stated, what,
                                    material.standard, part.percent),
                        "correct one of the two; the mill certificate has the figure");
            return;
        }
    }
}

void hold_binder(const HeldMaterial& held) {
    const Material& material = held.material;
    const CementType type = core::cement_type(material.standard);
    if (type != CementType::not_told) {
        if (!fits_cement(material.kind, type)) {
            held.refuse_standard(advice_on_cement(type));
        }
        hold_contents(held);
        return;
    }
    for (const StandardKinds& known : standards_of_additions()) {
        if (core::names_standard(material.standard, known.number) &&
            std::ranges::count(known.kinds, material.kind) == 0) {
            held.refuse_standard(known.advice);
            return;
        }
    }
}

/// The type letters of ASTM C494 that a kind may have; S is for anything else. A normal-range type
/// under the high range is let through: nothing more lenient follows from it.
std::string_view letters_of(Kind kind) {
    switch (kind) {
    case Kind::high_range_water_reducer:
        return "ADEFGS";
    case Kind::water_reducer:
        return "ADES";
    case Kind::retarder:
        return "BDS";
    case Kind::accelerator:
        return "CES";
    default:
        return "S";
    }
}

const char* advice_on_admixture(const core::AdmixtureType& type) {
    return type.high_range ? "write 'kind: high-range water reducer', or correct the standard"
                           : "C494: A, D and E are water reducers, B and D retarders, C and E "
                             "accelerators, F and G high-range water reducers";
}

void hold_admixture(const HeldMaterial& held) {
    const Material& material = held.material;
    const core::AdmixtureType type = core::admixture_type(material.standard);
    const bool unlisted = !type.c494.empty() &&
                          type.c494.find_first_of(letters_of(material.kind)) == std::string::npos;
    const bool hides_high_range =
        type.high_range && material.kind != Kind::high_range_water_reducer;
    const bool never_delays = material.kind == Kind::air_entraining_admixture ||
                              material.kind == Kind::accelerator || material.kind == Kind::pigment;
    if (unlisted || hides_high_range) {
        held.refuse_standard(advice_on_admixture(type));
        return;
    }
    if (type.retards && never_delays) {
        held.refuse_standard("write 'kind: retarder', or correct the standard");
        return;
    }
    if (material.admixture.retards == false && (type.retards || material.kind == Kind::retarder)) {
        held.refuse("retards",
                    "'no' contradicts " +
                        (type.retards ? "'standard: " + material.standard + "'"
                                      : std::string{"'kind: retarder'"}) +
                        ", which delays setting",
                    "write 'retards: yes', or correct the other; forms carry more where setting "
                    "is delayed");
    }
}

/// Standards of lightweight aggregate, from memory.
constexpr std::string_view lightweight_standards[] = {"C330", "C331", "13055"};

void hold_aggregate(const HeldMaterial& held) {
    for (const std::string_view number : lightweight_standards) {
        if (core::names_standard(held.material.standard, number)) {
            const OutOfScope scope = lightweight_aggregate();
            held.refuse("standard", scope.reason, scope.advice);
        }
    }
}

} // namespace

void refuse_contradictions(const MixContext& context, const Material& material) {
    switch (core::role_of(material.kind)) {
    case core::Role::binder:
        hold_binder({context, material});
        break;
    case core::Role::admixture:
        hold_admixture({context, material});
        break;
    case core::Role::coarse:
    case core::Role::fine:
        hold_aggregate({context, material});
        break;
    default:
        break;
    }
}

} // namespace boardmark::input

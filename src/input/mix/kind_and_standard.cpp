#include "kind_and_standard.hpp"

#include <boardmark/core/mix/designation.hpp>
#include <boardmark/core/mix/kind_and_standard.hpp>

#include "../values/out_of_scope.hpp"

#include <fmt/format.h>

namespace boardmark::input {
namespace {

using core::CementType;
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

const char* advice_on_cement(CementType type) {
    return type == CementType::blended
               ? "write 'kind: blended cement', and with 'contains' what it holds"
           : type == CementType::limestone
               ? "write 'kind: portland-limestone cement', or correct the standard"
               : "write 'kind: portland cement', or correct the standard";
}

std::string advice_on_addition(const core::StandardOfAddition& standard) {
    std::string advice = "write ";
    for (std::size_t i = 0; i < standard.kinds.size() && i < 2; ++i) {
        advice += std::string{i == 0 ? "" : " or "} +
                  "'kind: " + std::string{core::name_of(standard.kinds[i])} + "'";
    }
    return advice + ", or correct the standard";
}

void hold_binder(const HeldMaterial& held) {
    const Material& material = held.material;
    const CementType type = core::cement_type(material.standard);
    if (core::is_standard_of_another_kind(material)) {
        held.refuse_standard(
            type != CementType::not_told
                ? advice_on_cement(type)
                : advice_on_addition(*core::standard_of_another_addition(material)));
    }
    if (const auto mismatch = core::part_mismatch(material)) {
        const core::DesignatedPart& part = mismatch->designated;
        const std::string what = part.letter == 'S'   ? "slag cement"
                                 : part.letter == 'L' ? "ground limestone"
                                                      : "pozzolan";
        held.refuse("contains",
                    fmt::format("{:g} % of {}, and '{}' says {:g} %", mismatch->stated_percent,
                                what, material.standard, part.percent),
                    "correct one of the two; the mill certificate has the figure");
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
    if (core::is_type_of_another_kind(material)) {
        held.refuse_standard(advice_on_admixture(type));
    } else if (core::delays_as_its_kind_never_does(material)) {
        held.refuse_standard("write 'kind: retarder', or correct the standard");
    } else if (core::denies_retarding(material)) {
        held.refuse("retards",
                    "'no' contradicts " +
                        (type.retards ? "'standard: " + material.standard + "'"
                                      : std::string{"'kind: retarder'"}) +
                        ", which delays setting",
                    "write 'retards: yes', or correct the other; forms carry more where setting "
                    "is delayed");
    }
}

void hold_aggregate(const HeldMaterial& held) {
    if (core::is_lightweight(held.material)) {
        const OutOfScope scope = lightweight_aggregate();
        held.refuse("standard", scope.reason, scope.advice);
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

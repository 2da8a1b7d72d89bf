#include <boardmark/core/mix/designation.hpp>
#include <boardmark/core/mix/kind_and_standard.hpp>

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

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

bool is_cement_of_another_kind(const Material& binder) {
    const CementType type = cement_type(binder.standard);
    return type != CementType::not_told ? !fits_cement(binder.kind, type)
                                        : standard_of_another_addition(binder) != nullptr;
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

/// Standards of lightweight aggregate, from memory.
constexpr std::string_view lightweight_standards[] = {"C330", "C331", "13055"};

} // namespace

std::span<const StandardOfAddition> standards_of_additions() {
    static const std::vector<StandardOfAddition> known{
        {"C989", {Kind::slag_cement}},
        {"C618", {Kind::fly_ash, Kind::natural_pozzolan, Kind::metakaolin}},
        {"C1240", {Kind::silica_fume}}};
    return known;
}

const StandardOfAddition* standard_of_another_addition(const Material& binder) {
    for (const StandardOfAddition& known : standards_of_additions()) {
        if (names_standard(binder.standard, known.number) &&
            std::ranges::count(known.kinds, binder.kind) == 0) {
            return &known;
        }
    }
    return nullptr;
}

bool is_type_of_another_kind(const Material& admixture) {
    const AdmixtureType type = admixture_type(admixture.standard);
    const bool unlisted = !type.c494.empty() &&
                          type.c494.find_first_of(letters_of(admixture.kind)) == std::string::npos;
    return unlisted || (type.high_range && admixture.kind != Kind::high_range_water_reducer);
}

bool delays_as_its_kind_never_does(const Material& admixture) {
    const Kind kind = admixture.kind;
    const bool never_delays = kind == Kind::air_entraining_admixture || kind == Kind::accelerator ||
                              kind == Kind::pigment;
    return never_delays && admixture_type(admixture.standard).retards;
}

bool is_standard_of_another_kind(const Material& material) {
    switch (role_of(material.kind)) {
    case Role::binder:
        return is_cement_of_another_kind(material);
    case Role::admixture:
        return is_type_of_another_kind(material) || delays_as_its_kind_never_does(material);
    default:
        return false;
    }
}

std::optional<PartMismatch> part_mismatch(const Material& cement) {
    constexpr double delivery_points = 5; // ASTM C595, from memory
    if (cement.binder.contains.empty() || cement_type(cement.standard) == CementType::not_told) {
        return std::nullopt;
    }
    for (const DesignatedPart& part : designated_parts(cement.standard)) {
        const double stated_percent = contained_percent(cement, part.letter);
        if (std::abs(stated_percent - part.percent) > delivery_points) {
            return PartMismatch{part, stated_percent};
        }
    }
    return std::nullopt;
}

bool denies_retarding(const Material& admixture) {
    return admixture.admixture.retards == false &&
           (admixture.kind == Kind::retarder || admixture_type(admixture.standard).retards);
}

bool is_lightweight(const Material& aggregate) {
    return std::ranges::any_of(lightweight_standards, [&](std::string_view number) {
        return names_standard(aggregate.standard, number);
    });
}

} // namespace boardmark::core

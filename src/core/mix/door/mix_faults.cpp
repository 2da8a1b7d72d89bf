#include <boardmark/core/mix/blended_aggregate.hpp>
#include <boardmark/core/mix/complete_mix.hpp>

#include "../../basis/tolerance.hpp"
#include "faults.hpp"
#include "figure_demands.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace boardmark::core {
namespace {

/// A share of a blend may be computed: the last digits of 100 are no fault.
constexpr double whole_blend_percent = 100 * (1 + 1e-6);
constexpr Bounds share_of_blend{.low = 0, .high = whole_blend_percent};

bool is_same(const std::optional<double>& one, const std::optional<double>& other) {
    return one.has_value() == other.has_value() && (!one || same(*one, *other));
}

bool are_same(const std::vector<Share>& some, const std::vector<Share>& others) {
    return std::ranges::equal(some, others, [](const Share& one, const Share& other) {
        return one.material->name == other.material->name && same(one.percent, other.percent);
    });
}

/// A mix whose faults are being found.
class MixFaults {
public:
    MixFaults(const Mix& mix, const Vocabulary& words, Faults& faults)
        : mix_{mix}
        , words_{words}
        , faults_{faults}
        , list_{faults}
        , demands_{mix, words.fineness_sieves_mm} {}

    void find() {
        if (mix_.system != UnitSystem::us && mix_.system != UnitSystem::si) {
            list_.unknown(Field::system, std::to_string(static_cast<int>(mix_.system)));
        }
        find_requirement_faults(mix_.requirements, mix_.system, words_, list_);
        find_selection_faults(mix_.selections, list_);
        find_method_faults(mix_.method, mix_.selections, list_);
        find_supply_faults(mix_.supply, list_);
        list_.hold(Field::blend_dry_rodded_density, mix_.blend_dry_rodded_density_kg_m3,
                   {.low = 300, .high = 3500});
        list_.hold(Field::batched_water_temperature, mix_.batched_water.temperature_c,
                   {.low = 0, .high = 100});
        list_.hold(Field::ice, mix_.batched_water.ice_kg_m3, {.low = 0, .high = 300});
        find_share_faults(Field::binder, mix_.binder, Role::binder);
        find_share_faults(Field::coarse, mix_.coarse, Role::coarse);
        find_share_faults(Field::fine, mix_.fine, Role::fine);
        find_admixture_faults();
        if (mix_.blend && faults_.empty()) {
            find_blend_faults();
        }
    }

private:
    FaultList list_of(Field blend, std::size_t index, const SharedMaterial& material) const {
        const std::string name = material ? material->name : "";
        return {faults_, std::string{name_of(blend)} + "[" + std::to_string(index) + "] " + name,
                name};
    }

    /// Whether the figures of a material can be asked for: it is there, and its kind belongs here.
    bool find_faults_of(const SharedMaterial& shared, Role role, const FaultList& list) {
        if (!shared) {
            list.missing(Field::name, "no material is named at all");
            return false;
        }
        const Material& material = shared;
        if (!find_material_faults(material, list)) {
            return false;
        }
        if (!names_.insert(material.name).second) {
            list.impossible(Field::name, "names two materials: results could not tell them apart");
        }
        if (role_of(material.kind) != role) {
            list.impossible(Field::kind, "is " + std::string{name_of(material.kind)} +
                                             ", which does not belong here");
            return false;
        }
        return true;
    }

    void find_share_faults(Field blend, const std::vector<Share>& shares, Role role) {
        if (shares.empty()) {
            list_.missing(blend, "concrete holds some");
            return;
        }
        double sum_percent = 0;
        for (std::size_t i = 0; i < shares.size(); ++i) {
            const SharedMaterial& material = shares[i].material;
            const FaultList list = list_of(blend, i, material);
            list.hold(Field::share, shares[i].percent, share_of_blend);
            sum_percent += shares[i].percent;
            if (find_faults_of(material, role, list)) {
                demands_.demand_figures(material, list);
            }
        }
        if (std::isfinite(sum_percent) && std::abs(sum_percent - 100) > 100 * 1e-6) {
            list_.impossible(blend,
                             "has shares that add up to " + std::to_string(sum_percent) + " %");
        }
    }

    void find_admixture_faults() {
        for (std::size_t i = 0; i < mix_.admixtures.size(); ++i) {
            const Dosage& dosage = mix_.admixtures[i];
            const FaultList list = list_of(Field::admixtures, i, dosage.material);
            if (!find_faults_of(dosage.material, Role::admixture, list)) {
                continue;
            }
            const Material& material = dosage.material;
            if (dosage.dose) {
                constexpr bool none_itself = true;
                find_dose_faults(Field::dose, *dosage.dose, list, none_itself);
                find_maximum_faults(material.admixture.maximum_dose, *dosage.dose, list);
                demands_.demand_reduction(dosage, list);
            }
        }
        find_flow_faults(mix_, list_);
    }

    /// Coarse, fine and the fine aggregate's share are those of the blend, or results would tell of
    /// another one than is weighed.
    void find_blend_faults() {
        const bool whole = std::ranges::all_of(mix_.blend->shares, [](const BlendedShare& share) {
            return static_cast<bool>(share.material);
        });
        Mix taken = mix_;
        if (whole) {
            take_blend(taken);
        }
        const Selections& asked = mix_.selections;
        const Selections& given = taken.selections;
        if (!whole || !are_same(mix_.coarse, taken.coarse)) {
            list_.impossible(Field::coarse, "is not that of the blend: see take_blend");
        } else if (!are_same(mix_.fine, taken.fine) ||
                   !is_same(asked.fine_share_percent, given.fine_share_percent) ||
                   !is_same(asked.fine_share_by_mass_percent, given.fine_share_by_mass_percent)) {
            list_.impossible(Field::fine, "is not that of the blend: see take_blend");
        }
    }

    static void find_maximum_faults(const std::optional<Dose>& maximum, const Dose& dose,
                                    const FaultList& list) {
        if (maximum && maximum->basis != dose.basis) {
            list.impossible(Field::dose, "is of another basis than maximum_dose");
        } else if (maximum && dose.amount > maximum->amount * (1 + 1e-9)) {
            list.impossible(Field::dose, "is above maximum_dose");
        }
    }

    const Mix& mix_;
    const Vocabulary& words_;
    Faults& faults_;
    FaultList list_;
    FigureDemands demands_;
    std::set<std::string> names_;
};

} // namespace

void find_flow_faults(const Mix& mix, const FaultList& list) {
    const auto brings_flow = [](const Dosage& dosage) {
        return dosage.material && dosage.material->kind == Kind::high_range_water_reducer &&
               !dosage.is_none();
    };
    if (mix.requirements.slump_before_reducer_mm &&
        std::ranges::none_of(mix.admixtures, brings_flow)) {
        list.impossible(Field::slump_before_reducer,
                        "is stated, and the mix holds no high-range water reducer");
    }
}

Faults faults_of(const Mix& mix, const Vocabulary& words) {
    Faults faults;
    MixFaults{mix, words, faults}.find();
    return faults;
}

std::variant<CompleteMix, Faults> complete(Mix mix, const Vocabulary& words) {
    add_site_classes(mix.requirements, words.code_of(mix.requirements, mix.system));
    Faults faults = faults_of(mix, words);
    if (!faults.empty()) {
        return faults;
    }
    return CompleteMix{std::move(mix)};
}

} // namespace boardmark::core

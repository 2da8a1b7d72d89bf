#include <boardmark/core/many/variable.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
namespace {

constexpr VariedKey all_varied_keys[] = {
    {"w_cm", Varied::w_cm},
    {"water", Varied::water},
    {"binder", Varied::binder},
    {"air", Varied::air},
    {"coarse_volume", Varied::coarse_volume},
    {"coarse_adjustment", Varied::coarse_adjustment},
    {"fine_share", Varied::fine_share},
    {"share.", Varied::share},
    {"dose.", Varied::dose},
};

const Share* share_of(const std::vector<Share>& blend, const std::string& material) {
    const auto found = std::ranges::find_if(
        blend, [&](const Share& share) { return share.material->name == material; });
    return found == blend.end() ? nullptr : &*found;
}

bool have_same_shares(const std::vector<Share>& one, const std::vector<Share>& other) {
    return std::ranges::equal(one, other, [](const Share& left, const Share& right) {
        return same(left.percent, right.percent);
    });
}

const std::vector<Share>* blend_of(const Mix& mix, const std::string& material) {
    for (const auto* blend : {&mix.binder, &mix.coarse, &mix.fine}) {
        if (share_of(*blend, material)) {
            return blend;
        }
    }
    return nullptr;
}

/// The aggregates of a blend follow from its target.
std::optional<Phrase> why_blended(const Variable& variable, const Mix& mix) {
    const bool of_aggregate =
        variable.figure == Varied::coarse_volume || variable.figure == Varied::coarse_adjustment ||
        variable.figure == Varied::fine_share ||
        (variable.figure == Varied::share && !share_of(mix.binder, variable.material));
    return mix.blend && of_aggregate
               ? std::optional{Phrase{"'mixture.aggregate' blends the aggregates to its target: "
                                      "their shares follow from it",
                                      {}}}
               : std::nullopt;
}

std::optional<Phrase> why_no_share(const std::string& material, const Mix& mix) {
    const std::vector<Share>* blend = blend_of(mix, material);
    if (!blend) {
        return Phrase{"no binder and no aggregate of the mixture is called {material}",
                      {word("material", material)}};
    }
    if (blend->size() == 1) {
        return Phrase{"{material} is all of its blend: nothing would take its place",
                      {word("material", material)}};
    }
    return std::nullopt;
}

bool is_way_to_stone(Varied figure) {
    return figure == Varied::coarse_volume || figure == Varied::coarse_adjustment ||
           figure == Varied::fine_share;
}

/// Of the three ways to the amount of stone a file states one: the one that is varied.
void keep_only(Varied figure, Selections& selections) {
    if (!is_way_to_stone(figure)) {
        return;
    }
    if (figure != Varied::coarse_volume) {
        selections.coarse_volume.reset();
    }
    if (figure != Varied::coarse_adjustment) {
        selections.coarse_adjustment_percent.reset();
    }
    if (figure != Varied::fine_share) {
        selections.fine_share_percent.reset();
    }
}

/// A method selects the stone in its own way, and the door lets no other in.
std::optional<Phrase> why_not_of_method(Varied figure, Method method) {
    const bool is_known = !is_way_to_stone(figure) || method == Method::aci_211_1 ||
                          (figure == Varied::fine_share && method != Method::bre);
    return is_known ? std::nullopt
                    : std::optional{Phrase{"the method of the file has no such figure", {}}};
}

/// Of water, binder and w/cm two may be stated: the third follows.
std::optional<Phrase> why_not_free(Varied figure, const Selections& given) {
    const bool w_cm = given.w_cm || given.w_cm_by_exposure;
    const bool follows = (figure == Varied::w_cm && given.water_kg_m3 && given.binder_kg_m3) ||
                         (figure == Varied::water && w_cm && given.binder_kg_m3) ||
                         (figure == Varied::binder && w_cm && given.water_kg_m3);
    return follows ? std::optional{Phrase{"the file states two of w_cm, water and binder under "
                                          "'selections': the third follows from them",
                                          {}}}
                   : std::nullopt;
}

} // namespace

const Dosage* dosage_of(const Mix& mix, const std::string& material) {
    const auto found = std::ranges::find_if(
        mix.admixtures, [&](const Dosage& dosage) { return dosage.material->name == material; });
    return found == mix.admixtures.end() ? nullptr : &*found;
}

std::span<const VariedKey> varied_keys() {
    return all_varied_keys;
}

std::optional<Variable> variable_named(std::string_view key) {
    for (const VariedKey& known : all_varied_keys) {
        const bool of_material = known.key.ends_with('.');
        if (of_material ? key.starts_with(known.key) && key.size() > known.key.size()
                        : key == known.key) {
            return Variable{known.figure, std::string{key.substr(known.key.size())}};
        }
    }
    return std::nullopt;
}

std::string key_of(const Variable& variable) {
    const auto found = std::ranges::find(all_varied_keys, variable.figure, &VariedKey::figure);
    return std::string{found->key} + variable.material;
}

Measure measure_of(const Variable& variable) {
    switch (variable.figure) {
    case Varied::w_cm:
        return Measure::w_cm;
    case Varied::water:
    case Varied::binder:
        return Measure::concentration;
    case Varied::coarse_volume:
        return Measure::bulk_volume;
    case Varied::dose:
        return variable.basis == DoseBasis::volume ? Measure::dose : Measure::percent;
    case Varied::air:
    case Varied::coarse_adjustment:
    case Varied::fine_share:
    case Varied::share:
        break;
    }
    return Measure::percent;
}

double shown_value(const Variable& variable, double value) {
    constexpr double ml_100kg_in_m3_kg = 1e8;
    return measure_of(variable) == Measure::dose ? value * ml_100kg_in_m3_kg : value;
}

std::optional<Phrase> why_not_varied(const Variable& variable, const Mix& mix) {
    if (auto why = why_blended(variable, mix)) {
        return why;
    }
    if (variable.figure == Varied::share) {
        return why_no_share(variable.material, mix);
    }
    if (variable.figure == Varied::dose) {
        return dosage_of(mix, variable.material)
                   ? std::nullopt
                   : std::optional{Phrase{"no admixture of the mixture is called {material}",
                                          {word("material", variable.material)}}};
    }
    if (auto why = why_not_of_method(variable.figure, mix.method)) {
        return why;
    }
    return why_not_free(variable.figure, mix.selections);
}

std::optional<Phrase> why_not_together(std::span<const Variable> variables, const Mix& mix) {
    const auto is_varied = [&](Varied figure) {
        return std::ranges::count(variables, figure, &Variable::figure) > 0;
    };
    const Selections& given = mix.selections;
    const bool by_exposure = given.w_cm_by_exposure && !is_varied(Varied::w_cm);
    const bool w_cm = given.w_cm || is_varied(Varied::w_cm);
    const bool water = given.water_kg_m3 || is_varied(Varied::water);
    const bool binder = given.binder_kg_m3 || is_varied(Varied::binder);
    if (by_exposure && binder) {
        return Phrase{"'selections' take the w/cm from the exposure, which goes with no amount of "
                      "binder",
                      {}};
    }
    if (w_cm && water && binder) {
        return Phrase{"of w_cm, water and binder, stated or varied, the third follows from two",
                      {}};
    }
    return std::ranges::count_if(variables, is_way_to_stone, &Variable::figure) > 1
               ? std::optional{Phrase{"coarse_volume, coarse_adjustment and fine_share each give "
                                      "the amount of stone",
                                      {}}}
               : std::nullopt;
}

VariedMix::VariedMix(const Mix& mix, std::vector<Variable> variables)
    : mix_{mix}
    , variables_{std::move(variables)} {
    for (const Variable& variable : variables_) {
        assert(!why_not_varied(variable, mix_));
        if (variable.figure == Varied::w_cm) {
            mix_.selections.w_cm_by_exposure = false;
        }
        keep_only(variable.figure, mix_.selections);
    }
}

Mix VariedMix::at(std::span<const double> values) const {
    Mix mix = mix_;
    for (std::size_t i = 0; i < variables_.size(); ++i) {
        set_figure(variables_[i], values[i], mix);
    }
    set_shares(values, mix.binder);
    set_shares(values, mix.coarse);
    if (!have_same_shares(mix_.coarse, mix.coarse)) {
        mix.blend_dry_rodded_density_kg_m3.reset(); // it was measured at the shares as written
    }
    set_shares(values, mix.fine);
    return mix;
}

/// What the varied shares leave goes to the others, as it was between them.
void VariedMix::set_shares(std::span<const double> values, std::vector<Share>& blend) const {
    double varied = 0;
    double others = 0;
    std::size_t count_of_others = blend.size();
    std::vector<const double*> value_of(blend.size(), nullptr);
    for (std::size_t i = 0; i < blend.size(); ++i) {
        for (std::size_t v = 0; v < variables_.size(); ++v) {
            if (variables_[v].figure == Varied::share &&
                variables_[v].material == blend[i].material->name) {
                value_of[i] = &values[v];
                varied += values[v];
                --count_of_others;
            }
        }
        others += value_of[i] ? 0 : blend[i].percent;
    }
    if (count_of_others == blend.size()) {
        return;
    }
    const double left = 100 - varied;
    for (std::size_t i = 0; i < blend.size(); ++i) {
        const double part =
            others > 0 ? blend[i].percent / others : 1.0 / static_cast<double>(count_of_others);
        blend[i].percent = value_of[i] ? *value_of[i] : left * part;
    }
}

void VariedMix::set_figure(const Variable& variable, double value, Mix& mix) const {
    Selections& selections = mix.selections;
    switch (variable.figure) {
    case Varied::w_cm:
        selections.w_cm = value;
        break;
    case Varied::water:
        selections.water_kg_m3 = value;
        break;
    case Varied::binder:
        selections.binder_kg_m3 = value;
        break;
    case Varied::air:
        selections.air_percent = value;
        break;
    case Varied::coarse_volume:
        selections.coarse_volume = value;
        break;
    case Varied::coarse_adjustment:
        selections.coarse_adjustment_percent = value;
        break;
    case Varied::fine_share:
        selections.fine_share_percent = value;
        break;
    case Varied::dose:
        for (Dosage& dosage : mix.admixtures) {
            if (dosage.material->name == variable.material) {
                dosage.dose = Dose{value, variable.basis};
            }
        }
        break;
    case Varied::share:
        break; // with the others of its blend
    }
}

std::optional<double> VariedMix::written(std::size_t index) const {
    const Variable& variable = variables_[index];
    const Selections& selections = mix_.selections;
    switch (variable.figure) {
    case Varied::w_cm:
        return selections.w_cm;
    case Varied::water:
        return selections.water_kg_m3;
    case Varied::binder:
        return selections.binder_kg_m3;
    case Varied::air:
        return selections.air_percent;
    case Varied::coarse_volume:
        return selections.coarse_volume;
    case Varied::coarse_adjustment:
        return selections.coarse_adjustment_percent;
    case Varied::fine_share:
        return selections.fine_share_percent;
    case Varied::share:
        return share_of(*blend_of(mix_, variable.material), variable.material)->percent;
    case Varied::dose: {
        const auto& dose = dosage_of(mix_, variable.material)->dose;
        return dose && dose->basis == variable.basis ? std::optional{dose->amount} : std::nullopt;
    }
    }
    return std::nullopt;
}

} // namespace boardmark::core

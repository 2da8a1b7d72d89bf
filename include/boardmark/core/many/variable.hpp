#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/mix/material.hpp>

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::core {

/// Which figure of a mix a study of many mixes changes.
enum class Varied {
    w_cm,
    water,             ///< kg/m3
    binder,            ///< kg/m3
    air,               ///< %
    coarse_volume,     ///< per volume of concrete
    coarse_adjustment, ///< %
    fine_share,        ///< %
    share,             ///< % of its blend
    dose,              ///< in the unit of its basis
};

/// One such figure.
struct Variable {
    Varied figure;
    std::string material = {}; ///< of a share or a dose
    DoseBasis basis = DoseBasis::volume;

    bool operator==(const Variable&) const = default;
};

/// How files and options name it: "w_cm", "share.slag", "dose.reducer".
std::string key_of(const Variable& variable);

/// What its values measure when they are shown; see `shown_value`.
Measure measure_of(const Variable& variable);

/// A value of it in the unit of its measure: a dose by volume in mL per 100 kg.
double shown_value(const Variable& variable, double value);

/// A key that can be varied, without its material: "w_cm", "share.", "dose.".
struct VariedKey {
    std::string_view key;
    Varied figure;
};

/// All of them, in the order in which they are told.
std::span<const VariedKey> varied_keys();

/// The figure that a key names, whether or not a mix has it; a dose by volume. Nothing where it is
/// no such key.
std::optional<Variable> variable_named(std::string_view key);

/// How a mix doses an admixture, by its name; nullptr where it has none of that name.
const Dosage* dosage_of(const Mix& mix, const std::string& material);

/// Why a mix has no such figure, or none that can be changed by itself; nothing where it has.
std::optional<Phrase> why_not_varied(const Variable& variable, const Mix& mix);

/// Why figures, each of which the mix has, cannot be varied together, or one of them without
/// another; nothing where they can.
std::optional<Phrase> why_not_together(std::span<const Variable> variables, const Mix& mix);

/// A mix with other figures. What is not varied of a blend keeps its proportions. A least binder
/// that is required lowers a varied ratio as it lowers one that a file gives. A density that was
/// measured on the coarse blend is none of other shares: there the method takes the mean.
class VariedMix {
public:
    /// @param mix  holds every variable: `why_not_varied` and `why_not_together` have nothing
    /// against them
    VariedMix(const Mix& mix, std::vector<Variable> variables);

    /// The mix at these values, one for each variable; unchecked.
    Mix at(std::span<const double> values) const;

    /// What the mix as written has; nothing where the method selects it.
    std::optional<double> written(std::size_t variable) const;

    const std::vector<Variable>& variables() const { return variables_; }

private:
    void set_shares(std::span<const double> values, std::vector<Share>& blend) const;
    void set_figure(const Variable& variable, double value, Mix& mix) const;

    Mix mix_;
    std::vector<Variable> variables_;
};

} // namespace boardmark::core

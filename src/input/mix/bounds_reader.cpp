#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>

#include "mix_context.hpp"
#include "plain_phrase.hpp"

#include <algorithm>
#include <variant>

namespace boardmark::input {
namespace {

using core::Varied;
using units::Dimension;

constexpr std::string_view to_word = " to ";
constexpr const char* bound_example = "write for example 'w_cm: 0.36 to 0.45'";

/// Values that one end of a bound may have, in the inside unit.
struct EndRange {
    double low;
    double high;
};

EndRange range_of(Varied figure) {
    switch (figure) {
    case Varied::w_cm:
        return {0.15, 1.5};
    case Varied::coarse_volume:
        return {0.1, 1};
    case Varied::water:
        return {60, 400};
    case Varied::binder:
        return {50, 1200};
    case Varied::air:
        return {0, 20};
    case Varied::coarse_adjustment:
        return {-10, 10};
    case Varied::fine_share:
    case Varied::share:
    case Varied::dose:
        break;
    }
    return {0, 100};
}

bool has_no_unit(Varied figure) {
    return figure == Varied::w_cm || figure == Varied::coarse_volume;
}

bool is_of(Varied figure, Dimension dimension) {
    if (figure == Varied::water || figure == Varied::binder) {
        return dimension == Dimension::mass_per_volume;
    }
    return dimension == Dimension::percentage ||
           (figure == Varied::dose && dimension == Dimension::dose);
}

/// The bounds of a file, read one by one.
class BoundsReader {
public:
    BoundsReader(const MixContext& context, const core::Mix& mix)
        : context_{context}
        , mix_{mix} {}

    void read(const Pair& pair) {
        auto variable = core::variable_named(pair.key.text);
        if (!variable) {
            context_.refuse(*pair.key.node,
                            "bounds: '" + pair.key.text + "' is no figure that can be varied",
                            "known: w_cm, water, binder, air, coarse_volume, coarse_adjustment, "
                            "fine_share, share.NAME, dose.NAME");
            return;
        }
        const std::string& written = pair.value.text;
        const std::size_t split = written.find(to_word);
        if (split == std::string::npos) {
            context_.refuse(*pair.value.node, named(pair) + ": expected two values, 'A to B'",
                            bound_example);
            return;
        }
        const auto low = end_of(pair, written.substr(0, split), *variable);
        const core::DoseBasis basis = variable->basis;
        const auto high =
            low ? end_of(pair, written.substr(split + to_word.size()), *variable) : std::nullopt;
        if (!low || !high) {
            return;
        }
        if (basis != variable->basis) {
            context_.refuse(*pair.value.node, named(pair) + ": two kinds of unit",
                            "write both by volume or both in percent of the binder");
        } else if (!(*low < *high)) {
            context_.refuse(*pair.value.node,
                            named(pair) + ": the first value is not the lower one", bound_example);
        } else if (const auto why = core::why_not_varied(*variable, mix_)) {
            context_.refuse(*pair.key.node, named(pair) + ": " + plain(*why),
                            "take the names and keys of this file");
        } else if (bounds_.size() == core::most_economy_variables) {
            context_.refuse(*pair.key.node, "bounds: more than 8 figures",
                            "keep those that matter");
        } else {
            bounds_.push_back({std::move(*variable), *low, *high, true});
        }
    }

    /// Once all are read: what stands against one may follow.
    void hold_together(const Node& key) const {
        std::vector<core::Variable> variables;
        for (const core::VariableBound& bound : bounds_) {
            variables.push_back(bound.variable);
        }
        if (const auto why = core::why_not_together(variables, mix_)) {
            context_.refuse(key, "bounds: " + plain(*why),
                            "leave out one, or name the one that goes with it");
        }
    }

    std::vector<core::VariableBound> bounds() && { return std::move(bounds_); }

private:
    static std::string named(const Pair& pair) { return "bounds." + pair.key.text; }

    std::optional<double> end_of(const Pair& pair, const std::string& written,
                                 core::Variable& variable) {
        std::optional<double> value;
        if (has_no_unit(variable.figure)) {
            const auto number = units::read_number(written);
            if (const auto* wrong = std::get_if<units::Misreading>(&number)) {
                context_.refuse(*pair.value.node, named(pair) + ": " + wrong->what, bound_example);
                return std::nullopt;
            }
            value = std::get<double>(number);
        } else {
            const auto quantity = units::read_quantity(written);
            if (const auto* wrong = std::get_if<units::Misreading>(&quantity)) {
                context_.refuse(*pair.value.node, named(pair) + ": " + wrong->what,
                                wrong->advice.empty() ? bound_example : wrong->advice);
                return std::nullopt;
            }
            const auto& read = std::get<units::Quantity>(quantity);
            const Dimension dimension = read.unit->dimension;
            if (!is_of(variable.figure, dimension)) {
                context_.refuse(*pair.value.node,
                                named(pair) + ": '" + written + "' is " +
                                    std::string{units::describe(dimension)},
                                "write it in the unit that the file has for it");
                return std::nullopt;
            }
            if (variable.figure == Varied::dose) {
                variable.basis = dimension == Dimension::dose ? core::DoseBasis::volume
                                                              : core::DoseBasis::percent;
            }
            value = read.inside();
        }
        const EndRange range = range_of(variable.figure);
        if (!(*value >= range.low && *value <= range.high)) {
            context_.refuse(*pair.value.node, named(pair) + ": '" + written + "' is out of range",
                            "check the figure and its unit");
            return std::nullopt;
        }
        return value;
    }

    const MixContext& context_;
    const core::Mix& mix_;
    std::vector<core::VariableBound> bounds_;
};

} // namespace

std::vector<core::VariableBound> read_bounds(const MixContext& context, const core::AnyMix& mix) {
    const Reading* table = context.document.find({"bounds"});
    if (!table) {
        return {};
    }
    const auto* selected = std::get_if<core::Mix>(&mix);
    if (!selected) {
        context.refuse(*table->key, "'bounds' do not go with submitted 'proportions'",
                       "delete them: submitted amounts are not varied");
        return {};
    }
    BoundsReader reader{context, *selected};
    for (const Pair& pair : table->pairs) {
        reader.read(pair);
    }
    reader.hold_together(*table->key);
    return std::move(reader).bounds();
}

} // namespace boardmark::input

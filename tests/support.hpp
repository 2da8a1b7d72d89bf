#pragma once

// What tests of several rooms share: a mix text in, proportions and checks out; units of the print.

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/input/mix/read_mix.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/units/unit.hpp>

#include "made.hpp"

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

namespace boardmark::test {

inline input::ReadOptions read_options(input::Purpose purpose) {
    const auto no_other_files = [](const std::string&) {
        return std::variant<std::string, input::LoadFailure>{input::LoadFailure{"not in a test"}};
    };
    return {.purpose = purpose, .vocabulary = reference::vocabulary(), .load = no_other_files};
}

/// A mix past the door of core; throws where it is faulty.
template <class Mix>
auto entered(Mix mix) {
    static const core::Vocabulary words = reference::vocabulary();
    auto result = core::complete(std::move(mix), words);
    if (const auto* faults = std::get_if<core::Faults>(&result)) {
        throw std::runtime_error(faults->front().message);
    }
    return std::get<0>(std::move(result));
}

/// A mix text that must be sound.
inline core::AnyCompleteMix read(const std::string& yaml, input::Purpose purpose) {
    auto reading = input::read_mix(yaml, "test.yaml", read_options(purpose));
    if (!reading.mix) {
        throw std::runtime_error(input::render(reading.diagnostics));
    }
    return *reading.mix;
}

/// A mix text carried through to the end.
struct Solved {
    core::AnyCompleteMix mix;
    core::Tables tables;
    core::Proportions proportions;
    std::vector<core::Check> checks;

    const core::Ingredient& ingredient(const std::string& name) const {
        return *std::ranges::find(proportions.ingredients, name, &core::Ingredient::name);
    }

    /// The first check of that id, or nullptr.
    const core::Check* check(const std::string& id) const {
        const auto found = std::ranges::find(checks, id, &core::Check::id);
        return found == checks.end() ? nullptr : &*found;
    }

    /// The last step of that quantity, or nullptr.
    const core::Step* step(const std::string& quantity) const {
        const core::Step* found = nullptr;
        for (const core::Step& step : proportions.worksheet.steps) {
            found = step.quantity == quantity ? &step : found;
        }
        return found;
    }
};

/// Throws core::Unresolved where no mix follows.
inline Solved solve(const std::string& yaml, input::Purpose purpose = input::Purpose::proportion) {
    const core::AnyCompleteMix mix = read(yaml, purpose);
    Solved solved{mix, reference::tables_for(mix), {}, {}};
    solved.proportions = boardmark::test::made(core::proportions_of(solved.mix, solved.tables));
    solved.checks = core::assess(solved.mix, solved.proportions, solved.tables);
    return solved;
}

/// An inside value as the print gives it: in_unit(mpa, "psi").
inline double in_unit(double inside, std::string_view spelling) {
    return units::unit(spelling).from_inside(inside);
}

/// A printed amount as an inside value: inside(4500, "psi").
inline double inside(double amount, std::string_view spelling) {
    return units::unit(spelling).to_inside(amount);
}

} // namespace boardmark::test

// Laws of codes: every class and every mix of classes that any code has.

#include "core/code/demand.hpp"
#include "laws/mixes.hpp"
#include "made.hpp"

using namespace boardmark;
using namespace boardmark::test;
using core::Demanded;

namespace {

const std::vector<core::CodeTables>& all_codes() {
    static const auto codes = [] {
        std::vector<core::CodeTables> read;
        for (const std::string& name : reference::codes()) {
            read.push_back(*reference::code(name, core::UnitSystem::si));
        }
        return read;
    }();
    return codes;
}

const core::CodeTables& any_code() {
    const std::string name = one_of(reference::codes(), "code");
    return *std::ranges::find(all_codes(), name, &core::CodeTables::name);
}

std::string any_class(const core::CodeTables& code, const std::string& what) {
    std::vector<std::string> names;
    for (const core::ExposureClass& exposure : code.classes) {
        names.push_back(exposure.name);
    }
    return one_of(names, what);
}

/// What one set of classes demands of a figure: its strictest bound, or nothing.
std::optional<double> asked(const std::vector<std::string>& names, Demanded quantity,
                            const core::CodeTables& code) {
    core::Requirements requirements{.strength_mpa = 50, .slump_mm = 100};
    requirements.exposure = names;
    requirements.twin_strength_mpa = 60;
    const core::StatedClasses stated{requirements, false, code};
    const core::Demands demands{stated, code, {core::UnitSystem::si, 20, requirements}};
    const core::Demand* found = demands.strictest(quantity);
    if (!found) {
        return std::nullopt;
    }
    RC_ASSERT(found->has_figure());
    return quantity == Demanded::w_cm || quantity == Demanded::chloride ? found->high : found->low;
}

bool is_upper(Demanded quantity) {
    return quantity == Demanded::w_cm || quantity == Demanded::chloride;
}

/// Whether one bound asks at least as much as another; no bound asks nothing.
bool asks_at_least(std::optional<double> one, std::optional<double> other, bool upper) {
    return !other || (one && (upper ? *one <= *other : *one >= *other));
}

constexpr Demanded figures[] = {Demanded::w_cm, Demanded::strength, Demanded::air,
                                Demanded::chloride, Demanded::cement};

} // namespace

TEST_CASE("several classes ask the strictest of each figure, and no more") {
    holds([] {
        const core::CodeTables& code = any_code();
        std::vector<std::string> names;
        std::vector<bool> taken(code.categories.size(), false);
        for (const core::ExposureClass& exposure : code.classes) {
            const bool free = code.several_of_category || !taken[exposure.category];
            if (free && perhaps(exposure.name)) {
                names.push_back(exposure.name);
                taken[exposure.category] = true;
            }
        }
        for (const Demanded quantity : figures) {
            std::optional<double> strictest;
            for (const std::string& name : names) {
                const auto alone = asked({name}, quantity, code);
                if (!asks_at_least(strictest, alone, is_upper(quantity))) {
                    strictest = alone;
                }
            }
            RC_ASSERT(asked(names, quantity, code) == strictest);
        }
    });
}

TEST_CASE("one more class never loosens a demand") {
    holds([] {
        const core::CodeTables& code = any_code();
        const std::string first = any_class(code, "class");
        const std::string second = any_class(code, "another class");
        if (first == second) {
            return;
        }
        for (const Demanded quantity : figures) {
            const auto alone = asked({first}, quantity, code);
            const auto together = asked({first, second}, quantity, code);
            RC_ASSERT(asks_at_least(together, alone, is_upper(quantity)));
        }
    });
}

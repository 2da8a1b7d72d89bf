#pragma once

#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/mix/requirements.hpp>

#include <array>
#include <cstddef>

namespace boardmark::core {

/// A stated class with the limits that apply to this member and this binder.
struct StatedClass {
    const ExposureClass* exposure;
    const ClassLimits* limits;
};

/// More classes no mix may state.
constexpr std::size_t most_classes = 24;

/// The classes asked of a mix in the order in which they stand, looked up by name once.
class StatedClasses {
public:
    /// Asserts that the code has every name: the reader refuses others.
    /// @param pozzolanic  whether a supplementary material is in the binder
    StatedClasses(const Requirements& requirements, bool pozzolanic, const CodeTables& code);

    const StatedClass* begin() const { return classes_.data(); }
    const StatedClass* end() const { return classes_.data() + count_; }
    bool empty() const { return count_ == 0; }

    /// The most severe class of a category, or nullptr.
    const ExposureClass* of_category(std::size_t category) const;

    /// The first class of which something holds, or nullptr.
    template <class Predicate>
    const ExposureClass* first(Predicate&& holds) const {
        for (const StatedClass& stated : *this) {
            if (holds(*stated.exposure)) {
                return stated.exposure;
            }
        }
        return nullptr;
    }

private:
    std::array<StatedClass, most_classes> classes_;
    std::size_t count_ = 0;
};

/// Whether a supplementary material is in the binder, alone or inside a blended cement.
bool binder_holds_pozzolan_or_slag(const Proportions& proportions);

} // namespace boardmark::core

#pragma once

#include <boardmark/core/mix/kind.hpp>
#include <boardmark/units/dimension.hpp>

#include <array>
#include <limits>
#include <optional>
#include <span>
#include <string_view>

namespace boardmark::input {

/// How one value is written.
enum class Form {
    text,        ///< the user's own words
    flag,        ///< yes or no
    word,        ///< one of the words listed
    kind,        ///< the kind of a material
    number,      ///< a bare number: the value has no unit
    count,       ///< a bare whole number
    quantity,    ///< amount and unit of one of the dimensions listed
    window,      ///< two quantities: `6 in to 8 in`
    price,       ///< `165 USD/short ton`
    date,        ///< `2026-03-02`
    price_range, ///< `2.80 to 3.60 USD/ft likely 3.00`, by what `per` says
};

/// Values that physics and the trade allow, in the inside unit.
struct Range {
    double low = -std::numeric_limits<double>::infinity();
    double high = std::numeric_limits<double>::infinity();
    bool low_itself = true; ///< whether the lowest value is allowed
};

/// One value: its form, its dimensions where it is a quantity, the words that may stand instead.
struct Value {
    Form form = Form::text;
    std::array<std::optional<units::Dimension>, 2> dimensions = {};
    Range range = {};        ///< of a number, or of the first dimension
    Range second_range = {}; ///< of the second dimension
    Range usual = {};        ///< beyond it a figure is hardly true (common practice, no source)
    Range second_usual = {}; ///< of the second dimension
    double suspicious_below = -std::numeric_limits<double>::infinity(); ///< percent or fraction?
    std::span<const std::string_view> words = {};
    std::string_view per = {}; ///< of a price range: what it counts, an SI unit or "piece" or "job"
};

/// What stands under a key.
enum class Shape {
    value,          ///< one value
    list,           ///< values of one form
    list_or_one,    ///< the same, or one value by itself
    table,          ///< pairs of values: a curve, a grading, shares
    value_or_table, ///< one value for all, or values by another
    table_or_point, ///< pairs of values, or one: `16 % at 8 fl oz/cwt`, or its value alone
    section,        ///< further keys
};

/// The roles of the materials that a key belongs to, as a set of bits.
using Roles = unsigned;
constexpr Roles role_bit(core::Role role) {
    return 1U << static_cast<unsigned>(role);
}
constexpr Roles any_role = ~0U;

/// One key of the mix file. The table of these is the format: reading, suggestions and ranges come
/// from it.
struct Field {
    std::string_view path; ///< "materials.*.absorption"; `*` is a name of the user's
    Shape shape = Shape::value;
    Value value = {};
    Value key = {};                     ///< of a table's left column
    std::optional<Value> whole = {};    ///< of one value for all, where it is not `value`
    Roles roles = any_role;             ///< of materials only
    std::string_view example = {};      ///< as it would be written: "strength: 4500 psi"
    std::string_view default_text = {}; ///< what holds where the key is left out; empty: nothing
    std::string_view meaning = {};
    bool required = false;  ///< wherever the section that it stands in does
    bool from_file = false; ///< whether 'from FILE' may stand in place of the keys below
};

/// Tables of keys that make one format together.
class FieldTables {
public:
    FieldTables(std::span<const Field> only) // a table by itself is one
        : tables_{only}
        , count_{1} {}
    template <std::size_t n>
    explicit FieldTables(const std::array<std::span<const Field>, n>& several)
        : count_{n} {
        static_assert(n <= most);
        for (std::size_t i = 0; i < n; ++i) {
            tables_[i] = several[i];
        }
    }

    std::span<const std::span<const Field>> all() const { return std::span{tables_}.first(count_); }

private:
    static constexpr std::size_t most = 4;
    std::array<std::span<const Field>, most> tables_;
    std::size_t count_;
};

/// The keys of the mix file but its materials, and those of the materials.
std::span<const Field> file_fields();
std::span<const Field> material_fields();

/// Every key of the mix file.
std::span<const Field> mix_fields();

/// The same, as they stand in the program: nothing is copied at its start.
FieldTables mix_field_tables();

/// Every key of a file of materials that mix files refer to.
std::span<const Field> yard_fields();

/// Every key of a trial file.
std::span<const Field> trial_fields();

/// Every key of a file of strength results.
std::span<const Field> strength_fields();

/// Every key of a wall file.
std::span<const Field> wall_fields();

/// Names that a material may not have: `proportions` uses them itself.
std::span<const std::string_view> reserved_names();

} // namespace boardmark::input

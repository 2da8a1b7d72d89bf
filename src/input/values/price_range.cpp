#include "price_range.hpp"

#include <boardmark/units/number.hpp>

#include "currency.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <vector>

namespace boardmark::input {
namespace {

using units::Misreading;

/// What a price may count, and the denominators that are read for it; the first stands in messages.
struct Counted {
    std::string_view per;
    std::string_view words;
    std::array<std::string_view, 2> denominators;
};

// Hours and days are those that are worked or hired: a day is not 24 working hours.
constexpr Counted what_is_counted[] = {
    {"m2", "by area", {"ft2", "m2"}},      {"m", "by length", {"ft", "m"}},
    {"m3", "by volume", {"yd3", "m3"}},    {"piece", "by the piece", {"piece"}},
    {"h", "by the hour", {"h"}},           {"d", "by the day", {"d"}},
    {"job", "for the whole job", {"job"}},
};

const Counted& counted_by(std::string_view per) {
    return *std::ranges::find(what_is_counted, per, &Counted::per);
}

/// How many of what is counted one of a denominator is: 0.3048 m in a foot.
double size_of(std::string_view denominator, std::string_view per) {
    return denominator == per ? 1 : units::unit(denominator).factor / units::unit(per).factor;
}

/// A text that is read from left to right.
class Cursor {
public:
    explicit Cursor(std::string_view text)
        : text_(text) {}

    std::size_t at() const { return at_; }
    std::string_view rest() const { return text_.substr(at_); }

    /// Passes over a text where it comes next.
    bool take(std::string_view expected) {
        const bool comes = rest().starts_with(expected);
        at_ += comes ? expected.size() : 0;
        return comes;
    }

    /// The amount that comes next; where there is none its fault is told.
    std::optional<double> take_amount(const Attempt& attempt) {
        const auto reading = units::read_leading_number(rest());
        if (const auto* wrong = std::get_if<Misreading>(&reading)) {
            return attempt.refuse(wrong->what, wrong->advice, at_ + wrong->offset);
        }
        const auto [amount, length] = std::get<units::LeadingNumber>(reading);
        at_ += length;
        return amount;
    }

    /// The text up to a character, or to the end.
    std::string_view take_until(char end) {
        const std::string_view taken = rest().substr(0, rest().find(end));
        at_ += taken.size();
        return taken;
    }

private:
    std::string_view text_;
    std::size_t at_ = 0;
};

/// Amounts as written, for one of the denominator.
struct Amounts {
    double low;
    double high;
    std::optional<double> likely = {};
    std::string currency = {};
    double size = 1; ///< of the denominator, in what is counted
};

/// `USD/ft`
bool take_denominator(Cursor& cursor, const Attempt& attempt, Amounts& amounts) {
    const Counted& by = counted_by(attempt.value.per);
    cursor.take(" ");
    const std::size_t start = cursor.at();
    const std::string_view currency = cursor.take_until('/');
    if (!is_currency(currency) || !cursor.take("/")) {
        attempt.refuse("a currency of three capital letters and '/' are expected after the amount",
                       "", start);
        return false;
    }
    amounts.currency = currency;
    const std::size_t unit_at = cursor.at();
    std::string_view unit = cursor.take_until(' ');
    const bool comma = unit.ends_with(',');
    unit.remove_suffix(comma ? 1 : 0);
    const auto found = std::ranges::find(by.denominators, unit);
    if (unit.empty() || found == by.denominators.end()) {
        attempt.refuse(fmt::format("'{}/{}' is not a price {}", currency, unit, by.words), "",
                       unit_at);
        return false;
    }
    if (comma) {
        attempt.refuse("a comma would end a value between braces",
                       "write 'likely' straight after the unit", cursor.at() - 1);
        return false;
    }
    amounts.size = size_of(unit, by.per);
    return true;
}

/// `likely 3.00`, or nothing. False where a fault was told.
bool take_likely(Cursor& cursor, const Attempt& attempt, bool is_range, Amounts& amounts) {
    if (cursor.rest().empty()) {
        return true;
    }
    const std::size_t start = cursor.at() + 1;
    if (!cursor.take(" likely ")) {
        attempt.refuse(fmt::format("'{}' is not expected here", attempt.node.scalar.substr(start)),
                       "only 'likely' and an amount may follow the unit", start);
        return false;
    }
    if (!is_range) {
        attempt.refuse("a likely price is given without a range",
                       "write a range, as in '2 to 4 USD/m likely 3', or one price", start);
        return false;
    }
    amounts.likely = cursor.take_amount(attempt);
    if (amounts.likely && !cursor.rest().empty()) {
        attempt.refuse(fmt::format("'{}' is not expected here", cursor.rest()),
                       "the likely price is a bare number; the unit before it holds for all three",
                       cursor.at());
        return false;
    }
    return amounts.likely.has_value();
}

std::optional<Amounts> read_amounts(const Attempt& attempt) {
    Cursor cursor{attempt.node.scalar};
    const auto low = cursor.take_amount(attempt);
    if (!low) {
        return std::nullopt;
    }
    const bool is_range = cursor.take(" to ");
    const auto high = is_range ? cursor.take_amount(attempt) : low;
    if (!high) {
        return std::nullopt;
    }
    Amounts amounts{.low = *low, .high = *high};
    const bool sound = take_denominator(cursor, attempt, amounts) &&
                       take_likely(cursor, attempt, is_range, amounts);
    if (!sound) {
        return std::nullopt;
    }
    if (is_range && amounts.low >= amounts.high) {
        return attempt.refuse("the first price must be the lower one", "one price needs no 'to'");
    }
    if (amounts.likely && (*amounts.likely < amounts.low || *amounts.likely > amounts.high)) {
        return attempt.refuse("the likely price lies outside the range",
                              "it is at least the first price and at most the second");
    }
    return amounts;
}

} // namespace

std::string priced_by(std::string_view per) {
    const Counted& by = counted_by(per);
    return fmt::format("{}, as in 'USD/{}'", by.words, by.denominators[0]);
}

std::vector<std::string_view> denominators_of(std::string_view per) {
    std::vector<std::string_view> units;
    for (const std::string_view unit : counted_by(per).denominators) {
        if (!unit.empty()) {
            units.push_back(unit);
        }
    }
    return units;
}

std::optional<Parsed> read_price_range(const Attempt& attempt) {
    const auto amounts = read_amounts(attempt);
    if (!amounts || !attempt.in_range(amounts->low, nullptr) ||
        !attempt.in_range(amounts->high, nullptr)) {
        return std::nullopt;
    }
    Parsed price = attempt.start();
    price.currency = amounts->currency;
    price.number = amounts->low / amounts->size;
    price.high = amounts->high / amounts->size;
    if (amounts->likely) {
        price.likely = *amounts->likely / amounts->size;
    }
    return price;
}

} // namespace boardmark::input

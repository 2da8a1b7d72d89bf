#pragma once

// Included before every file of the page. The C++ library of emscripten 3.1.6 has the concepts of
// ranges but none of their algorithms: those that the rooms use, each handed on to the algorithm of
// two iterators. A newer library has them itself, and this file can go.

#include <algorithm>
#include <concepts>
#include <functional>
#include <initializer_list>
#include <iterator>
#include <ranges>
#include <utility>

#if !defined(__cpp_lib_ranges)

namespace std::ranges {

template <class Iterator>
concept boardmark_iterator = input_or_output_iterator<Iterator>;

/// A predicate of a value's projection.
template <class Predicate, class Projection>
constexpr auto boardmark_seen(Predicate& predicate, Projection& projection) {
    return [&](auto&& value) -> bool {
        return std::invoke(predicate,
                           std::invoke(projection, std::forward<decltype(value)>(value)));
    };
}

/// A comparison of the projections of two values.
template <class Comparison, class Projection>
constexpr auto boardmark_compared(Comparison& comparison, Projection& projection) {
    return [&](auto&& left, auto&& right) -> bool {
        return std::invoke(comparison,
                           std::invoke(projection, std::forward<decltype(left)>(left)),
                           std::invoke(projection, std::forward<decltype(right)>(right)));
    };
}

// An algorithm of a predicate, for a range and for two iterators.
#define BOARDMARK_PREDICATE_ALGORITHM(name)                                                        \
    template <boardmark_iterator It, class Predicate, class Projection = identity>                 \
    constexpr auto name(It first, It last, Predicate predicate, Projection projection = {}) {      \
        return std::name(first, last, boardmark_seen(predicate, projection));                      \
    }                                                                                              \
    template <range Range, class Predicate, class Projection = identity>                           \
    constexpr auto name(Range&& all, Predicate predicate, Projection projection = {}) {            \
        return name(ranges::begin(all), ranges::end(all), std::move(predicate),                    \
                    std::move(projection));                                                        \
    }

BOARDMARK_PREDICATE_ALGORITHM(any_of)
BOARDMARK_PREDICATE_ALGORITHM(all_of)
BOARDMARK_PREDICATE_ALGORITHM(none_of)
BOARDMARK_PREDICATE_ALGORITHM(find_if)
BOARDMARK_PREDICATE_ALGORITHM(find_if_not)
BOARDMARK_PREDICATE_ALGORITHM(count_if)
BOARDMARK_PREDICATE_ALGORITHM(partition_point)
#undef BOARDMARK_PREDICATE_ALGORITHM

// An algorithm of one value that is sought.
#define BOARDMARK_VALUE_ALGORITHM(name, by_predicate)                                              \
    template <boardmark_iterator It, class Value, class Projection = identity>                     \
    constexpr auto name(It first, It last, const Value& value, Projection projection = {}) {       \
        return ranges::by_predicate(                                                               \
            first, last, [&](const auto& held) { return held == value; }, std::move(projection));  \
    }                                                                                              \
    template <range Range, class Value, class Projection = identity>                               \
    constexpr auto name(Range&& all, const Value& value, Projection projection = {}) {             \
        return ranges::name(ranges::begin(all), ranges::end(all), value, std::move(projection));   \
    }

BOARDMARK_VALUE_ALGORITHM(find, find_if)
BOARDMARK_VALUE_ALGORITHM(count, count_if)
#undef BOARDMARK_VALUE_ALGORITHM

// An algorithm of an order.
#define BOARDMARK_ORDER_ALGORITHM(name)                                                            \
    template <boardmark_iterator It, class Comparison = less, class Projection = identity>         \
    constexpr auto name(It first, It last, Comparison comparison = {},                             \
                        Projection projection = {}) {                                              \
        return std::name(first, last, boardmark_compared(comparison, projection));                 \
    }                                                                                              \
    template <range Range, class Comparison = less, class Projection = identity>                   \
    constexpr auto name(Range&& all, Comparison comparison = {}, Projection projection = {}) {     \
        return ranges::name(ranges::begin(all), ranges::end(all), std::move(comparison),           \
                            std::move(projection));                                                \
    }

BOARDMARK_ORDER_ALGORITHM(sort)
BOARDMARK_ORDER_ALGORITHM(stable_sort)
BOARDMARK_ORDER_ALGORITHM(is_sorted)
#undef BOARDMARK_ORDER_ALGORITHM

// By hand: the library's own refuse iterators that give their value away.
template <range Range, class Comparison = less, class Projection = identity>
constexpr auto max_element(Range&& all, Comparison comparison = {}, Projection projection = {}) {
    const auto is_less = boardmark_compared(comparison, projection);
    auto largest = ranges::begin(all);
    for (auto at = largest; at != ranges::end(all); ++at) {
        largest = is_less(*largest, *at) ? at : largest;
    }
    return largest;
}

template <range Range, class Comparison = less, class Projection = identity>
constexpr auto min_element(Range&& all, Comparison comparison = {}, Projection projection = {}) {
    const auto is_less = boardmark_compared(comparison, projection);
    auto smallest = ranges::begin(all);
    for (auto at = smallest; at != ranges::end(all); ++at) {
        smallest = is_less(*at, *smallest) ? at : smallest;
    }
    return smallest;
}

template <class Value>
struct min_max_result {
    Value min;
    Value max;
};

template <range Range, class Comparison = less, class Projection = identity>
constexpr auto minmax_element(Range&& all, Comparison comparison = {},
                              Projection projection = {}) {
    const auto found = std::minmax_element(ranges::begin(all), ranges::end(all),
                                           boardmark_compared(comparison, projection));
    return min_max_result<std::remove_const_t<decltype(found.first)>>{found.first, found.second};
}

template <range Range, class Comparison = less, class Projection = identity>
constexpr auto minmax(Range&& all, Comparison comparison = {}, Projection projection = {}) {
    const auto found = ranges::minmax_element(all, std::move(comparison), std::move(projection));
    return min_max_result<iter_value_t<std::remove_const_t<decltype(found.min)>>>{*found.min,
                                                                                  *found.max};
}

template <range Range, class Comparison = less, class Projection = identity>
constexpr auto max(Range&& all, Comparison comparison = {}, Projection projection = {}) {
    auto found = ranges::max_element(all, std::move(comparison), std::move(projection));
    return iter_value_t<decltype(found)>(*found);
}

template <range Range, class Comparison = less, class Projection = identity>
constexpr auto min(Range&& all, Comparison comparison = {}, Projection projection = {}) {
    auto found = ranges::min_element(all, std::move(comparison), std::move(projection));
    return iter_value_t<decltype(found)>(*found);
}

template <class Value>
constexpr Value max(std::initializer_list<Value> all) {
    return std::max(all);
}

template <class Value>
constexpr Value min(std::initializer_list<Value> all) {
    return std::min(all);
}

template <range Range, class Value, class Comparison = less, class Projection = identity>
constexpr auto lower_bound(Range&& all, const Value& value, Comparison comparison = {},
                           Projection projection = {}) {
    return std::lower_bound(ranges::begin(all), ranges::end(all), value,
                            [&](const auto& held, const Value& sought) {
                                return std::invoke(comparison, std::invoke(projection, held),
                                                   sought);
                            });
}

template <range Range, class Value, class Comparison = less, class Projection = identity>
constexpr auto upper_bound(Range&& all, const Value& value, Comparison comparison = {},
                           Projection projection = {}) {
    return std::upper_bound(ranges::begin(all), ranges::end(all), value,
                            [&](const Value& sought, const auto& held) {
                                return std::invoke(comparison, sought,
                                                   std::invoke(projection, held));
                            });
}

template <range Range, boardmark_iterator Out>
constexpr auto copy(Range&& all, Out out) {
    return std::copy(ranges::begin(all), ranges::end(all), out);
}

template <range Range, boardmark_iterator Out, class Predicate, class Projection = identity>
constexpr auto copy_if(Range&& all, Out out, Predicate predicate, Projection projection = {}) {
    return std::copy_if(ranges::begin(all), ranges::end(all), out,
                        boardmark_seen(predicate, projection));
}

template <range Range, boardmark_iterator Out>
constexpr auto move(Range&& all, Out out) {
    return std::move(ranges::begin(all), ranges::end(all), out);
}

template <range Range, boardmark_iterator Out, class Change, class Projection = identity>
constexpr auto transform(Range&& all, Out out, Change change, Projection projection = {}) {
    return std::transform(ranges::begin(all), ranges::end(all), out,
                          [&](auto&& value) -> decltype(auto) {
                              return std::invoke(change,
                                                 std::invoke(projection,
                                                             std::forward<decltype(value)>(value)));
                          });
}

template <range One, range Other, boardmark_iterator Out, class Change>
    requires(!boardmark_iterator<std::remove_cvref_t<Other>>)
constexpr auto transform(One&& one, Other&& other, Out out, Change change) {
    return std::transform(ranges::begin(one), ranges::end(one), ranges::begin(other), out, change);
}

template <range Range, class Value>
constexpr void replace(Range&& all, const Value& old_value, const Value& new_value) {
    std::replace(ranges::begin(all), ranges::end(all), old_value, new_value);
}

template <range Range, class Value>
constexpr void fill(Range&& all, const Value& value) {
    std::fill(ranges::begin(all), ranges::end(all), value);
}

template <range Range>
constexpr void reverse(Range&& all) {
    std::reverse(ranges::begin(all), ranges::end(all));
}

template <range One, range Other, class Comparison = equal_to, class OneProjection = identity,
          class OtherProjection = identity>
constexpr bool equal(One&& one, Other&& other, Comparison comparison = {},
                     OneProjection of_one = {}, OtherProjection of_other = {}) {
    return std::equal(ranges::begin(one), ranges::end(one), ranges::begin(other),
                      ranges::end(other), [&](const auto& left, const auto& right) -> bool {
                          return std::invoke(comparison, std::invoke(of_one, left),
                                             std::invoke(of_other, right));
                      });
}

template <range One, range Other>
constexpr bool lexicographical_compare(One&& one, Other&& other) {
    return std::lexicographical_compare(ranges::begin(one), ranges::end(one), ranges::begin(other),
                                        ranges::end(other));
}

template <range Range, class Comparison = equal_to, class Projection = identity>
constexpr auto adjacent_find(Range&& all, Comparison comparison = {}, Projection projection = {}) {
    return std::adjacent_find(ranges::begin(all), ranges::end(all),
                              boardmark_compared(comparison, projection));
}

} // namespace std::ranges

#endif

#pragma once

namespace boardmark::core {

/// What a function makes, made where a container wants it: `rows.emplace_back(MadeInPlace{[&] {
/// return row(1); }})`. Made beside it and moved, a flag or a number stored a moment ago is read as
/// part of a wider word, which waits.
template <class Make>
struct MadeInPlace {
    Make make;

    operator decltype(make())() const { return make(); }
};

// Which clang 14 does not deduce for an aggregate.
template <class Make>
MadeInPlace(Make) -> MadeInPlace<Make>;

} // namespace boardmark::core

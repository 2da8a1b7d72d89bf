#pragma once

#include <algorithm>
#include <array>
#include <cassert>
#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>

namespace boardmark::input {

/// The place of a key: the names from the top of the file down. It refers to the names and does not
/// keep them: they are literals, or stand in the tree of the file.
class Path {
public:
    /// Names that a path may have; the table of fields has none longer.
    static constexpr std::size_t longest = 8;

    Path() = default;
    Path(std::initializer_list<std::string_view> names) {
        for (const std::string_view name : names) {
            push_back(name);
        }
    }

    void push_back(std::string_view name) {
        assert(size_ < longest);
        names_[size_++] = name;
    }

    /// The place of a key under this one.
    Path below(std::string_view key) const {
        Path longer = *this;
        longer.push_back(key);
        return longer;
    }

    /// The place that this key stands under. The path must not be empty.
    Path parent() const {
        Path shorter = *this;
        --shorter.size_;
        return shorter;
    }

    const std::string_view* begin() const { return names_.data(); }
    const std::string_view* end() const { return names_.data() + size_; }
    std::size_t size() const { return size_; }
    bool empty() const { return size_ == 0; }
    std::string_view operator[](std::size_t index) const { return names_[index]; }
    std::string_view& back() { return names_[size_ - 1]; }
    std::string_view back() const { return names_[size_ - 1]; }

    friend bool operator==(const Path& left, const Path& right) {
        return std::equal(left.begin(), left.end(), right.begin(), right.end());
    }

private:
    std::array<std::string_view, longest> names_;
    std::size_t size_ = 0;
};

/// "materials.stone.absorption"
std::string dotted(const Path& path);

} // namespace boardmark::input

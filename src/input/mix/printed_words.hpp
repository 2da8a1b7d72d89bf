#pragma once

#include <boardmark/input/gate/diagnostic.hpp>

#include "../gate/node.hpp"

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::input {

/// Reads the words of a code's file; what is wrong is told and reading goes on.
class PrintedWords {
public:
    explicit PrintedWords(Diagnostics& diagnostics)
        : diagnostics_{diagnostics} {}

    /// Whether nothing was wrong so far.
    bool sound() const { return sound_; }

    void wrong(const Node& node, std::string message, std::string advice);

    /// A word that is none of those known, the nearest of which is advised.
    void unknown(const Node& node, std::string message, const std::vector<std::string_view>& words);

    void refuse_unknown_keys(const Node& node, std::initializer_list<std::string_view> known,
                             const std::string& where);

    /// A text without what a terminal or a page would trip over; empty where none stands there.
    std::string text_of(const Node& node, const std::string& key);

    std::string demanded_text(const Node& parent, const Node& at, const std::string& key);

private:
    Diagnostics& diagnostics_;
    bool sound_ = true;
};

} // namespace boardmark::input

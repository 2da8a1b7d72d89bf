#pragma once

// A text that passed the gate, kept alive with its tree: nodes point into the text.

#include "input/gate/gate.hpp"

#include <memory>
#include <stdexcept>
#include <string>

namespace boardmark::test {

struct Tree {
    std::unique_ptr<input::SourceText> source;
    input::Node root;
};

/// The tree of a text that the gate must let through.
inline Tree tree_of(const std::string& text) {
    Tree tree{std::make_unique<input::SourceText>("test.yaml", text), {}};
    input::Diagnostics diagnostics;
    auto root = input::pass_gate(*tree.source, diagnostics);
    if (!root) {
        throw std::runtime_error(input::render(diagnostics));
    }
    tree.root = std::move(*root);
    return tree;
}

} // namespace boardmark::test

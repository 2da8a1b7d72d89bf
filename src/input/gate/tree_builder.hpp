#pragma once

#include "node.hpp"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/mark.h>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::input {

/// Thrown where the gate ends the reading: what it found wrong.
struct Refused {
    Underline where;
    std::string message;
    std::string advice = "";
};

/// The place that the YAML library means.
Spot spot_of(const YAML::Mark& mark);

/// The fault of a list or mapping whose bracket is never closed.
Refused not_closed(const Node& opened);

/// Turns the events of the YAML library into a tree. Throws Refused for what this format does not
/// have: anchors, aliases, tags, merge keys, block text, values over several lines, a second
/// document, nesting above 16.
class TreeBuilder : public YAML::EventHandler {
public:
    explicit TreeBuilder(const SourceText& source);

    Node take_root() { return std::move(root_); }

    /// The innermost list or mapping that was opened with a bracket and is still open, or nullptr.
    const Node* innermost_flow_node() const;

    void OnDocumentStart(const YAML::Mark& mark) override;
    void OnDocumentEnd() override {}
    void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override;
    void OnAlias(const YAML::Mark& mark, YAML::anchor_t anchor) override;
    void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  const std::string& value) override;
    void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                         YAML::EmitterStyle::value style) override;
    void OnSequenceEnd() override { close(); }
    void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                    YAML::EmitterStyle::value style) override;
    void OnMapEnd() override { close(); }

private:
    Node node(Node::Kind kind, const YAML::Mark& mark);
    void open(Node opened, YAML::EmitterStyle::value style);
    void close();
    void add(Node done);
    std::size_t length_on_line(const Node& scalar) const;
    Refused runs_on(Spot spot) const;

    const SourceText& source_;
    Node root_;
    std::vector<Node> open_;
    std::vector<bool> flow_; ///< whether each open one was opened with a bracket
    std::vector<std::optional<Node>> keys_;
    std::size_t documents_ = 0;
    std::size_t nodes_ = 0;
};

} // namespace boardmark::input

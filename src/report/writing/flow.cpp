#include "flow.hpp"

#include "colour.hpp"

namespace boardmark::report {
namespace {

class Writer {
public:
    explicit Writer(const TextStyle& style)
        : style_(style) {}

    std::string operator()(const Heading& heading) const {
        return "\n" + text::fitted(heading.text, style_.width);
    }

    std::string operator()(const Paragraph& paragraph) const {
        if (!paragraph.verdict || !style_.colour) {
            return wrapped(paragraph.text, paragraph.indent, style_.width);
        }
        std::string text;
        for (const std::string& line : lines_of(paragraph.text, style_.width)) {
            text += coloured(line, *paragraph.verdict) + "\n";
        }
        return text;
    }

    std::string operator()(const Verbatim& verbatim) const {
        return text::fitted(verbatim.text, style_.width);
    }
    std::string operator()(const Grid& grid) const {
        return grid.text(style_.width, style_.colour);
    }
    std::string operator()(const SideBySide& table) const { return table.text(style_.width); }
    std::string operator()(const Figure&) const { return ""; }
    std::string operator()(const Drawings&) const { return ""; }

private:
    const TextStyle& style_;
};

} // namespace

std::string written(const Flow& flow, const TextStyle& style) {
    std::string text;
    for (const Block& block : flow.blocks()) {
        text += std::visit(Writer{style}, block);
    }
    return text;
}

} // namespace boardmark::report

#include "flow.hpp"

#include <boardmark/text/utf8.hpp>

#include "colour.hpp"
#include "names.hpp"

namespace boardmark::report {
namespace {

constexpr std::size_t verdict_width = 11; // of "not checked": lists below each other line up

/// The colour of a headline.
core::Verdict colour_of(core::VerdictState state) {
    switch (state) {
    case core::VerdictState::fails:
        return core::Verdict::fails;
    case core::VerdictState::watch:
        return core::Verdict::watch;
    case core::VerdictState::open:
        return core::Verdict::not_checked;
    case core::VerdictState::holds:
        return core::Verdict::holds;
    }
    return core::Verdict::not_checked;
}

/// "To watch: Share of sand, Rate of rise."
std::string names_text(const core::NamedVerdict& verdict) {
    std::string names;
    for (const core::NamedCheck& check : verdict.checks) {
        names += (names.empty() ? "" : ", ") + text::printable(check.title);
    }
    return verdict.heading + ": " + names + ".";
}

class Writer {
public:
    explicit Writer(const TextStyle& style)
        : style_(style) {}

    std::string operator()(const Heading& heading) const {
        return heading.page_only ? "" : "\n" + text::fitted(heading.text, style_.width);
    }

    std::string operator()(const Headline& headline) const {
        const core::Verdict verdict = colour_of(headline.state);
        std::string text = in_colour(headline.counts, verdict);
        for (const core::NamedVerdict& named : headline.named) {
            text += in_colour(names_text(named), verdict);
        }
        return text;
    }

    std::string operator()(const Paragraph& paragraph) const {
        return paragraph.verdict && style_.colour
                   ? in_colour(paragraph.text, *paragraph.verdict)
                   : wrapped(paragraph.text, paragraph.indent, style_.width);
    }

    std::string operator()(const CheckList& list) const {
        if (list.folded && !style_.all) {
            return "  " + held_text(list) + " (--all lists them)\n";
        }
        Grid grid{{Align::left, Align::left}};
        for (const CheckRow& row : list.rows) {
            grid.add(row.verdict, {padded_right(printed_verdict(row.verdict), verdict_width),
                                   row.title + " (" + row.id + "): " + row.told()});
        }
        return grid.text(style_.width, style_.colour);
    }

    std::string operator()(const Verbatim& verbatim) const {
        return text::fitted(verbatim.text, style_.width);
    }
    std::string operator()(const Grid& grid) const {
        return grid.text(style_.width, style_.colour);
    }
    std::string operator()(const SideBySide& table) const { return table.text(style_.width); }
    std::string operator()(const PageTable&) const { return ""; }
    std::string operator()(const Figure&) const { return ""; }
    std::string operator()(const Figures&) const { return ""; }
    std::string operator()(const Drawings&) const { return ""; }

private:
    std::string in_colour(const std::string& words, core::Verdict verdict) const {
        if (!style_.colour) {
            return wrapped(words, {}, style_.width);
        }
        std::string text;
        for (const std::string& line : lines_of(words, style_.width)) {
            text += coloured(line, verdict) + "\n";
        }
        return text;
    }

    const TextStyle& style_;
};

} // namespace

std::string printed_verdict(core::Verdict verdict) {
    return verdict == core::Verdict::fails ? "FAILS" : name_of(verdict);
}

std::string held_text(const CheckList& list) {
    std::size_t held = 0;
    for (const CheckRow& row : list.rows) {
        held += row.checks;
    }
    return std::to_string(held) + (held == 1 ? " holds" : " hold");
}

std::string written(const Flow& flow, const TextStyle& style) {
    std::string text;
    for (const Block& block : flow.blocks()) {
        text += std::visit(Writer{style}, block);
    }
    return text;
}

} // namespace boardmark::report

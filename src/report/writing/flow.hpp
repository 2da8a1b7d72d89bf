#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include "../figure/figure.hpp"
#include "grid.hpp"
#include "side_by_side.hpp"
#include "wrap.hpp"

#include <functional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace boardmark::report {

/// The name of a section, set off from what stands above.
struct Heading {
    std::string text;
    bool folded = false;      ///< a page unfolds its section when asked to, and on paper
    bool page_only = false;   ///< of drawings, which text leaves out
    bool whole_width = false; ///< on a sheet of two columns over both
    bool screen_only = false; ///< left out where one sheet is printed
};

/// The verdict of a result in counts and names, which lead to the checks that they name.
struct Headline {
    std::string counts;
    std::vector<core::NamedVerdict> named;
    core::VerdictState state;
    std::string scope = {}; ///< of the check lists that it speaks of
};

/// A check as it is told.
struct CheckRow {
    core::Verdict verdict;
    std::string id;
    std::string title;
    std::function<std::string()> told; ///< found when it is shown: what holds is mostly counted
    std::size_t checks = 1;            ///< that are told alike, of several mixes or parts
};

/// Checks below each other.
struct CheckList {
    std::vector<CheckRow> rows;
    std::string scope = {};
    bool folded = false; ///< their count alone, until all are asked for
};

/// Text that breaks over lines. Indents that begin with "  - " make it an item of a list.
struct Paragraph {
    std::string text;
    Indent indent;
    std::optional<core::Verdict> verdict = {}; ///< gives it a colour; the words carry the meaning
    bool text_only = false;                    ///< speaks of a plot that a page draws
};

/// Text that stands as it is, with its line ends: a line chart, an empty line.
struct Verbatim {
    std::string text;
    bool text_only = false; ///< a plot that a page draws
};

/// Rows that text has beside its plot.
struct PageTable {
    Grid grid;
};

/// A part drawn to scale: an SVG that holds no braces, and what it shows in words.
struct Drawing {
    std::string svg;
    std::string caption;
};

/// Drawings that are made only where they are shown; what they are made from must live until then.
struct Drawings {
    std::function<std::vector<Drawing>()> drawn;
};

class Flow;

/// Figures that are made only on a page; what they are made from must live until then.
struct Figures {
    std::function<Flow()> made;
};

using Block = std::variant<Heading, Headline, Paragraph, CheckList, Verbatim, Grid, SideBySide,
                           PageTable, Figure, Figures, Drawings>;

/// A result as what stands one below the other. Text and HTML are two ways to write it down, so
/// that nothing can stand in one and not in the other but for figures and drawings, which text
/// leaves out.
class Flow {
public:
    Flow() = default;
    Flow(Block block) { blocks_.push_back(std::move(block)); } // a list of one would copy it
    Flow(Grid grid)
        : Flow(Block{std::move(grid)}) {}
    Flow(std::string verbatim)
        : Flow(Block{Verbatim{std::move(verbatim)}}) {}
    Flow(const char* verbatim)
        : Flow(std::string{verbatim}) {}

    Flow& operator+=(Flow other) {
        for (Block& block : other.blocks_) {
            blocks_.push_back(std::move(block));
        }
        return *this;
    }

    const std::vector<Block>& blocks() const { return blocks_; }

private:
    std::vector<Block> blocks_;
};

inline Flow operator+(Flow first, Flow second) {
    first += std::move(second);
    return first;
}

/// Of a point in a list.
inline const Indent list_item{.first = "  - ", .other = "    "};

/// A paragraph, broken where the page ends.
inline Flow paragraph(std::string text, Indent indent) {
    return Block{Paragraph{std::move(text), std::move(indent)}};
}

/// "FAILS", "watch": the verdict of a row.
std::string printed_verdict(core::Verdict verdict);

/// "22 hold", "1 holds"
std::string held_text(const CheckList& list);

/// The flow as text, no line wider than the style says.
std::string written(const Flow& flow, const TextStyle& style);

} // namespace boardmark::report

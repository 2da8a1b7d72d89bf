// The header of a table of mixes: which keys a column may write into a base mix.

#include "input/mix/table_columns.hpp"

#include "mix_text.hpp"
#include "tree.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark;
using boardmark::test::changed;

namespace {

struct Header {
    test::Tree base = test::tree_of(
        changed(test::with_dose("8 fl oz/cwt"), "  cement: {kind: portland cement}\n",
                "  cement: {kind: portland cement}\n  no. 2 stone: {kind: coarse aggregate}\n"));
    input::Diagnostics faults;
    std::optional<std::vector<input::TableColumn>> columns;

    explicit Header(const std::vector<std::string>& headings) {
        std::vector<input::Node> cells;
        for (const std::string& heading : headings) {
            input::Node cell = base.root.entries.front().key;
            cell.scalar = heading;
            cells.push_back(std::move(cell));
        }
        columns = input::table_columns(cells, base.root, faults);
    }
};

} // namespace

TEST_CASE("a heading is a key of the base mix and the unit of its cells") {
    struct Row {
        const char* heading;
        std::vector<std::string> names;
        const char* unit;
    };
    for (const Row& row : {
             Row{"requirements.strength [psi]", {"requirements", "strength"}, "psi"},
             Row{"  title ", {"title"}, ""},
             Row{"selections.w_cm []", {"selections", "w_cm"}, ""},
             Row{"mixture.binder.cement [%]", {"mixture", "binder", "cement"}, "%"},
             Row{"mixture.admixtures.reducer [mL/100 kg]",
                 {"mixture", "admixtures", "reducer"},
                 "mL/100 kg"},
             Row{"materials.cement.price [USD/t]", {"materials", "cement", "price"}, "USD/t"},
             // A name of the user's may have points; the longest that the file has is meant.
             Row{"materials.no. 2 stone.absorption [%]",
                 {"materials", "no. 2 stone", "absorption"},
                 "%"},
         }) {
        INFO(row.heading);
        const Header header{{row.heading}};
        INFO(input::render(header.faults));
        REQUIRE(header.columns);
        CHECK(header.columns->front().names == row.names);
        CHECK(header.columns->front().unit == row.unit);
    }
}

TEST_CASE("headings that are refused") {
    struct Row {
        std::vector<std::string> headings;
        const char* fault;
        const char* advice;
    };
    const char* all_keys = "'boardmark help keys' lists all keys";
    const char* as_in_file = "write the cells as they would stand in the file";
    for (const Row& row : {
             Row{{" "},
                 "the column has no name",
                 "write a key of the mix file, as 'requirements.strength [psi]'"},
             Row{{"a.b.c.d.e.f.g.h.i"}, "'a.b.c.d.e.f.g.h.i' is not a key of a mix file", all_keys},
             Row{{"selections"},
                 "'selections' holds keys, not a value",
                 "name one of the keys below it"},
             Row{{"requirements.slump.mm"},
                 "'requirements.slump.mm' is not a key of a mix file",
                 all_keys},
             Row{{"materials.reducer.water_reduction.4 fl oz/cwt [%]"},
                 "the base mix writes 'materials.reducer.water_reduction' in one word, not by its "
                 "keys",
                 "write it there with keys and values"},
             // One number would be a curve without its doses or ages.
             Row{{"materials.reducer.water_reduction [%]"},
                 "'materials.reducer.water_reduction' takes no unit in its heading",
                 as_in_file},
             Row{{"requirements.strength_curve [psi]"},
                 "'requirements.strength_curve' takes no unit in its heading",
                 as_in_file},
             Row{{"title [m]"}, "'title' takes no unit in its heading", as_in_file},
             Row{{"mixture.fine.gravel [%]"},
                 "the base mix has no 'gravel' under 'mixture.fine'",
                 "write it there; a share or a dose may be 0"},
             Row{{"title", "title"}, "'title' is written by two columns", "delete one"},
             Row{{"mixture.binder.cement [%]", "mixture.binder"},
                 "'mixture.binder' is written by two columns",
                 "delete one"},
             Row{{"title;reporting"},
                 "the columns are separated by semicolons",
                 "save the file with commas between the cells"},
         }) {
        INFO(row.headings.front());
        const Header header{row.headings};
        CHECK_FALSE(header.columns);
        REQUIRE(header.faults.size() == 1);
        CHECK(header.faults.front().message == row.fault);
        CHECK(header.faults.front().advice == row.advice);
    }
}

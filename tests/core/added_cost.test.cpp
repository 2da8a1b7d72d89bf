#include <boardmark/core/wall/added_cost.hpp>

#include "walls.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

namespace {

using namespace boardmark::core;
using Catch::Matchers::WithinAbs;

/// Ten square metres that show, twenty stainless ties, forty metres of boards 0.1 m wide.
struct Terrace {
    Wall wall = boardmark::test::wall_of(boardmark::test::run_of(5, 2, 250));
    WallQuantities quantities{};
    BoardOrder boards{};

    Terrace() {
        wall.boards = Boards{.face_width_mm = 100,
                             .thickness_mm = 20,
                             .course_mm = 100,
                             .stock_m = {4},
                             .saw_cut_mm = 3};
        wall.ties = Ties{.kind = TieKind::stainless_steel, .across_mm = 600, .up_mm = 600};
        wall.prices = WallPrices{.currency = "EUR", .item = {}};
        quantities.total.shown_m2 = 10;
        quantities.total.ties = 20;
        quantities.total.tie_holes = 20;
        quantities.order = {.net_m3 = 2.5, .waste_percent = 0, .exact_m3 = 2.5, .order_m3 = 2.5};
        boards.length_m = 40;
        boards.lined_m = 100;
    }

    Terrace& with(const std::string& key, double low, double likely, double high) {
        wall.prices->item[key] = {low, likely, high, true};
        return *this;
    }
    AddedCost cost() const { return *added_cost({wall, quantities, boards}); }
};

const CostItem* item_of(const AddedCost& added, const std::string& price) {
    const auto found = std::ranges::find(added.items, price, &CostItem::price);
    return found == added.items.end() ? nullptr : &*found;
}

} // namespace

TEST_CASE("added cost by hand: boards and backing, less the plain panels") {
    const AddedCost added = Terrace{}
                                .with("board_stock", 5, 6, 8)
                                .with("backing_panels", 40, 50, 60)
                                .with("plain_panels", 45, 55, 70)
                                .cost();
    // 40 m of boards; 10 m2 of backing less 10 m2 of plain panels.
    CHECK_THAT(added.total.low, WithinAbs(40 * 5 + 10 * 40 - 10 * 70, 1e-9));
    CHECK_THAT(added.total.likely, WithinAbs(40 * 6 + 10 * 50 - 10 * 55, 1e-9));
    CHECK_THAT(added.total.high, WithinAbs(40 * 8 + 10 * 60 - 10 * 45, 1e-9));
    CHECK(added.most_moving == "plain_panels"); // 250 against 200 and 120
}

TEST_CASE("a price that the wall calls for and the file lacks makes the added cost at least") {
    const AddedCost added = Terrace{}.with("board_stock", 5, 6, 8).cost();
    CHECK(std::ranges::count(added.missing, "board_fixing") == 1);
    CHECK(std::ranges::count(added.missing, "backing_panels") == 1);
    // Without bars, openings, embedments or a mock-up their prices are not missed.
    for (const char* key : {"face_bars", "opening_labour", "embedment", "mockup", "form_hire"}) {
        INFO(key);
        CHECK(std::ranges::count(added.missing, key) == 0);
    }
}

TEST_CASE("one side of a difference alone is not counted") {
    const AddedCost added = Terrace{}.with("concrete", 150, 160, 170).cost();
    CHECK(added.items.empty());
    CHECK(std::ranges::count(added.missing, "ordinary_concrete") == 1);
    const AddedCost ties =
        Terrace{}.with("stainless_steel_tie", 6, 7, 9).with("mild_steel_tie", 1, 1.5, 2).cost();
    CHECK_THAT(ties.total.likely, WithinAbs(20 * (7 - 1.5), 1e-9));
    CHECK_THAT(ties.total.low, WithinAbs(20 * (6 - 2), 1e-9));
}

TEST_CASE(
    "the reducer less the binder it saves counts where the concrete's price does not hold it") {
    Terrace terrace;
    const AddedCost alone =
        *added_cost({terrace.wall, terrace.quantities, terrace.boards, false, {}, 12.0});
    REQUIRE(item_of(alone, "reducer"));
    CHECK_THAT(alone.total.likely, WithinAbs(2.5 * 12, 1e-9)); // 2.5 m3 at 12 EUR
    CHECK_FALSE(alone.reducer_in_concrete_per_m3);

    terrace.with("concrete", 150, 160, 170).with("ordinary_concrete", 130, 140, 150);
    const AddedCost priced =
        *added_cost({terrace.wall, terrace.quantities, terrace.boards, false, {}, 12.0});
    CHECK(item_of(priced, "reducer") == nullptr);
    CHECK(priced.reducer_in_concrete_per_m3 == 12.0);
    CHECK_THAT(priced.total.likely, WithinAbs(2.5 * 20, 1e-9));
}

TEST_CASE("a mock-up that fails is in the high figure only") {
    Terrace terrace;
    terrace.wall.mockup = Mockup{};
    const AddedCost added = terrace.with("mockup", 2000, 2500, 3000).cost();
    const CostItem& mockup = *item_of(added, "mockup");
    CHECK(mockup.money.low == 2000);
    CHECK(mockup.money.likely == 2500);
    CHECK(mockup.money.high == 6000);
}

TEST_CASE("a higher price of what is added never lowers the added cost") {
    const char* keys[] = {"board_stock",    "board_fixing", "joint_tape", "layout_drawings",
                          "slower_placing", "curing",       "repairs"};
    Terrace terrace;
    for (const char* key : keys) {
        terrace.with(key, 1, 2, 3);
    }
    const AddedCost before = terrace.cost();
    for (const char* key : keys) {
        Terrace dearer = terrace;
        const AddedCost after = dearer.with(key, 2, 3, 4).cost();
        INFO(key);
        CHECK(after.total.low > before.total.low);
        CHECK(after.total.likely > before.total.likely);
        CHECK(after.total.high > before.total.high);
    }
}

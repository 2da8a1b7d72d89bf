#include <boardmark/core/wall/board_order.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "lined_pieces.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace boardmark::core {
namespace {

int whole_boards(double count) {
    const double nearest = std::round(count);
    return static_cast<int>(same(count, nearest) ? nearest : std::ceil(count));
}

/// Longest first; lengths within a tenth of a millimetre are one.
std::vector<Pieces> together(std::vector<Pieces> pieces) {
    std::ranges::stable_sort(pieces, std::greater{}, &Pieces::length_m);
    std::vector<Pieces> merged;
    for (const Pieces& piece : pieces) {
        if (!merged.empty() && merged.back().length_m - piece.length_m < 1e-4) {
            merged.back().count += piece.count;
        } else {
            merged.push_back(piece);
        }
    }
    return merged;
}

void buy(const Boards& boards, BoardOrder& order) {
    for (const double stock_m : boards.stock_m) {
        int cut = 0;
        for (const CutBoard& board : order.plan.boards) {
            cut += board.stock_m == stock_m ? board.count : 0;
        }
        const int bought = whole_boards(cut / (1 - boards.spoiled_percent / 100));
        if (cut > 0) {
            order.boards.push_back({stock_m, cut, bought});
        }
        order.length_m += bought * stock_m;
        order.count += bought;
    }
    if (order.length_m > 0) {
        order.cut_waste_percent = 100 * (1 - order.plan.needed_m / order.plan.bought_m);
        order.waste_percent = 100 * (1 - order.plan.needed_m / order.length_m);
    }
}

void say(const char* what, double value, Measure measure, Phrase reason, Worksheet& worksheet) {
    worksheet.steps.push_back(
        {.quantity = what,
         .value = value,
         .measure = measure,
         .provenance = Provenance::computed,
         .reason = std::move(reason),
         .source = {"common practice, no source", Confidence::common_practice}});
}

void say_rules(const Boards& boards, BoardOrder& order) {
    int lining = 0;
    for (const Pieces& piece : order.pieces) {
        lining += piece.count;
    }
    say("board_pieces", lining, Measure::count,
        {"each course of each face that shows, broken at contraction joints and where an opening "
         "through the wall takes its whole height; one board where a stock length reaches, else "
         "equal ones shifted by a quarter, to either side in turn; boards run on behind niches",
         {}},
        order.worksheet);
    say("boards", order.count, Measure::count,
        {"each piece lines {uses} forms, so 1 in {uses} is cut, rounded up for each length; "
         "{spoiled} of the boards bought are spoiled",
         {quantity("uses", {static_cast<double>(boards.uses), Measure::count}),
          quantity("spoiled", {boards.spoiled_percent, Measure::percent})}},
        order.worksheet);
}

} // namespace

BoardOrder board_order(const Wall& wall, const JointStations& joints) {
    BoardOrder order;
    if (!wall.boards) {
        return order;
    }
    order.pieces = together(lined_pieces(wall, joints));
    std::vector<Pieces> cut_once = order.pieces;
    for (Pieces& piece : cut_once) {
        order.lined_m += piece.count * piece.length_m;
        piece.count = (piece.count + wall.boards->uses - 1) / wall.boards->uses;
    }
    order.plan = cut(std::move(cut_once), wall.boards->stock_m, wall.boards->saw_cut_mm);
    buy(*wall.boards, order);
    say_rules(*wall.boards, order);
    return order;
}

} // namespace boardmark::core

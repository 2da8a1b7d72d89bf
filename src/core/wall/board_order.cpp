#include <boardmark/core/wall/board_order.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "lined_faces.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace boardmark::core {
namespace {

int whole_boards(double count) {
    const double nearest = std::round(count);
    return static_cast<int>(same(count, nearest) ? nearest : std::ceil(count));
}

constexpr double one_length_m = 1e-4; ///< lengths closer than this are cut as one

/// Longest first.
std::vector<Pieces> together(std::vector<Pieces> pieces) {
    std::ranges::stable_sort(pieces, std::greater{}, &Pieces::length_m);
    std::vector<Pieces> merged;
    for (const Pieces& piece : pieces) {
        if (!merged.empty() && merged.back().length_m - piece.length_m < one_length_m) {
            merged.back().count += piece.count;
        } else {
            merged.push_back(piece);
        }
    }
    return merged;
}

std::vector<Pieces> pieces_of(const std::vector<LinedFace>& faces) {
    std::vector<Pieces> pieces;
    for (const LinedFace& face : faces) {
        for (const LaidBoard& board : face.boards) {
            pieces.push_back({board.length_m, 1});
        }
    }
    return pieces;
}

/// The cut pieces of one length, as the cutting list numbers them.
struct NumberedPieces {
    double length_m;
    int before;                  ///< pieces in the list before the first of these
    std::vector<double> stock_m; ///< that each is cut from
    std::size_t next = 0;        ///< to be laid
};

/// Longest first, and which stock each piece is cut from.
std::vector<NumberedPieces> cutting_list(const std::vector<Pieces>& cut_once,
                                         const CuttingPlan& plan) {
    std::vector<NumberedPieces> list;
    int before = 0;
    for (const Pieces& piece : cut_once) {
        list.push_back({piece.length_m, before, {}});
        before += piece.count;
    }
    for (const CutBoard& board : plan.boards) {
        for (const Pieces& piece : board.pieces) {
            const auto of_length =
                std::ranges::partition_point(list, [&](const NumberedPieces& pieces) {
                    return above(pieces.length_m, piece.length_m);
                });
            of_length->stock_m.insert(of_length->stock_m.end(),
                                      static_cast<std::size_t>(board.count * piece.count),
                                      board.stock_m);
        }
    }
    return list;
}

/// Says of each board that is laid which piece it is. A piece comes again on another form only when
/// all of its length have been laid, so that it seldom meets itself on one face.
void number_boards(const std::vector<Pieces>& cut_once, BoardOrder& order) {
    auto list = cutting_list(cut_once, order.plan);
    for (LinedFace& face : order.faces) {
        for (LaidBoard& board : face.boards) {
            // The list is longest first, and a length is cut to the longest of those that are one.
            const auto pieces =
                std::ranges::partition_point(list, [&](const NumberedPieces& numbered) {
                    return numbered.length_m - board.length_m >= one_length_m;
                });
            const std::size_t place = pieces->next++ % pieces->stock_m.size();
            board.piece = pieces->before + static_cast<int>(place) + 1;
            board.cut_from_m = pieces->stock_m[place];
        }
    }
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
         "equal ones shifted by a quarter to one side, to the other and not at all in turn; boards "
         "run on behind niches",
         {}},
        order.worksheet);
    say("boards", order.count, Measure::count,
        {"each piece lines {uses} forms, so 1 in {uses} is cut, rounded up for each length; "
         "{spoiled} of the boards bought are spoiled",
         {quantity("uses", {static_cast<double>(boards.uses), Measure::count}),
          percent_of("spoiled", boards.spoiled_percent)}},
        order.worksheet);
    if (boards.uses > 1) {
        order.worksheet.cautions.push_back(
            {"boards are bought for forms that stand one after another; a face that is formed at "
             "once needs all of its boards at once, however often each could be used again",
             {}});
    }
    if (order.plan.parts > 1) {
        order.worksheet.cautions.push_back(
            {"{lengths} different lengths of board are too many for one cutting plan: {parts} "
             "parts "
             "of them are planned each by itself, and a plan of all might buy less",
             {quantity("lengths", {static_cast<double>(order.pieces.size()), Measure::count}),
              quantity("parts", {static_cast<double>(order.plan.parts), Measure::count})}});
    }
}

} // namespace

BoardOrder board_order(const Wall& wall, const JointStations& joints) {
    BoardOrder order;
    if (!wall.boards) {
        return order;
    }
    order.faces = lined_faces(wall, joints);
    order.pieces = together(pieces_of(order.faces));
    std::vector<Pieces> cut_once = order.pieces;
    for (Pieces& piece : cut_once) {
        order.lined_m += piece.count * piece.length_m;
        piece.count = (piece.count + wall.boards->uses - 1) / wall.boards->uses;
    }
    order.plan = cut(cut_once, wall.boards->stock_m, wall.boards->saw_cut_mm);
    number_boards(cut_once, order);
    buy(*wall.boards, order);
    say_rules(*wall.boards, order);
    return order;
}

} // namespace boardmark::core

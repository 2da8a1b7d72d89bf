#include <boardmark/core/wall/lined_face.hpp>

namespace boardmark::core {

std::string_view name_of(Face face) {
    switch (face) {
    case Face::front:
        return "front";
    case Face::right:
        return "right";
    case Face::back:
        return "back";
    case Face::left:
        return "left";
    case Face::underside:
        return "underside";
    case Face::end:
        break;
    }
    return "end";
}

void mirror(double length_m, std::vector<LaidBoard>& boards) {
    for (LaidBoard& board : boards) {
        board.x_m = length_m - board.x_m - (board.stands ? board.width_m : board.length_m);
    }
}

} // namespace boardmark::core

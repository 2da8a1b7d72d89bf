#include "checks.hpp"

namespace boardmark::core {

Checks check_finish(const CheckContext& context) {
    if (!context.requirements.board_marked) {
        return {};
    }
    return {{.id = "finish",
             .verdict = Verdict::not_checked,
             .requirement = "board-marked",
             .message = {"this version holds no rules for the board-marked face: judge paste, "
                         "fines and constancy on the mock-up panel",
                         {}}}};
}

} // namespace boardmark::core

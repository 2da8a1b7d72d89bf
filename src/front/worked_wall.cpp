#include <boardmark/front/worked_wall.hpp>

namespace boardmark {

std::string WorkedWall::text(bool explain) const {
    return report::text(result(), {.system = record_.wall->system, .explain = explain});
}

std::string WorkedWall::json() const {
    return report::json(result());
}

std::string WorkedWall::csv() const {
    return report::csv(result(), record_.wall->system);
}

std::string WorkedWall::html() const {
    return report::html(result(), {.system = record_.wall->system});
}

} // namespace boardmark

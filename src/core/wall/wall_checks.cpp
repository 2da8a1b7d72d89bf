#include "wall_checks.hpp"

#include "../basis/phrases.hpp"

namespace boardmark::core {

Check of_wall(const std::string& wall, Check check) {
    check.message.text = "{wall}: " + check.message.text;
    check.message.arguments.push_back(word("wall", wall));
    check.part = wall;
    return check;
}

} // namespace boardmark::core

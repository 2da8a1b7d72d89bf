// As if a report read a file.
#include <boardmark/input/gate/diagnostic.hpp>

std::string renders() {
    return boardmark::input::render({});
}

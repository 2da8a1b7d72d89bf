// As if a file of core read a mix file.
#include <boardmark/input/mix/read_mix.hpp>

bool reads() {
    return boardmark::input::read_mix("", "", {}).mix.has_value();
}

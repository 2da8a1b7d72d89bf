// As if a file of core read a mix file.
#include <boardmark/input/mix/read_mix.hpp>

bool reads(const boardmark::input::ReadOptions& options) {
    return boardmark::input::read_mix("", "", options).mix.has_value();
}

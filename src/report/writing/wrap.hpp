#pragma once

#include <boardmark/text/wrap.hpp>

namespace boardmark::report {

using text::Indent;
using text::lines_of;
using text::padded_left;
using text::padded_right;
using text::shown_width;
using text::wrapped;

} // namespace boardmark::report

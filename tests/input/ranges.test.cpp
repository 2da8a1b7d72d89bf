// The ranges of every key, kept a second time in ranges.list: what is possible, and what is hardly
// true beyond. They are common practice, no source; a figure that slips in the tables of the fields
// is found here.

#include "input/fields/fields.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <iterator>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <utility>

using namespace boardmark::input;

namespace {

using Lines = std::set<std::string>;

void add(Lines& lines, const std::string& of, const Range& range) {
    if (std::isfinite(range.low) || std::isfinite(range.high)) {
        lines.insert(fmt::format("{}: {}{} to {}", of, range.low_itself ? "" : "above ", range.low,
                                 range.high));
    }
}

void add(Lines& lines, const std::string& of, const Value& value) {
    add(lines, of, value.range);
    add(lines, of + ", other dimension", value.second_range);
    add(lines, of + ", usually", value.usual);
    add(lines, of + ", other dimension, usually", value.second_usual);
    if (std::isfinite(value.suspicious_below)) {
        lines.insert(fmt::format("{}, percent or fraction below {}", of, value.suspicious_below));
    }
}

Lines lines_of(std::string_view file, std::span<const Field> fields) {
    Lines lines;
    for (const Field& field : fields) {
        const std::string key = fmt::format("{} {}", file, field.path);
        add(lines, key, field.value);
        add(lines, key + ", left column", field.key);
        if (field.whole) {
            add(lines, key + ", one for all", *field.whole);
        }
    }
    return lines;
}

Lines kept() {
    std::ifstream list{BOARDMARK_SOURCE "/tests/input/ranges.list"};
    Lines lines;
    for (std::string line; std::getline(list, line);) {
        lines.insert(line);
    }
    return lines;
}

} // namespace

TEST_CASE("the range of each key is the one that is kept beside") {
    Lines told;
    for (const auto& [file, fields] :
         {std::pair{"mix", mix_fields()}, std::pair{"materials", yard_fields()},
          std::pair{"trial", trial_fields()}, std::pair{"results", strength_fields()},
          std::pair{"wall", wall_fields()}}) {
        told.merge(lines_of(file, fields));
    }
    const Lines expected = kept();
    REQUIRE(expected.size() > 200);
    Lines only_told;
    Lines only_kept;
    std::ranges::set_difference(told, expected, std::inserter(only_told, only_told.end()));
    std::ranges::set_difference(expected, told, std::inserter(only_kept, only_kept.end()));
    CHECK(only_told == Lines{});
    CHECK(only_kept == Lines{});
}

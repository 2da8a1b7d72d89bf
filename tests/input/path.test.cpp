// Places of keys, and whether the table of fields fits into them.

#include "input/gate/path.hpp"

#include "input/fields/fields.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace boardmark::input;

TEST_CASE("a path grows and shrinks by one name") {
    const Path stone{"materials", "stone"};
    const Path kind = stone.below("kind");
    CHECK(dotted(kind) == "materials.stone.kind");
    CHECK(kind.parent() == stone);
    CHECK_FALSE(kind == stone);
    CHECK(kind.back() == "kind");
    CHECK(Path{}.empty());
    CHECK(dotted({"", "kind"}) == ".kind");
}

TEST_CASE("a path has room for every key and the left column of its table") {
    for (const auto fields :
         {mix_fields(), yard_fields(), trial_fields(), strength_fields(), wall_fields()}) {
        for (const Field& field : fields) {
            INFO(field.path);
            const auto names = static_cast<std::size_t>(std::ranges::count(field.path, '.')) + 1;
            CHECK(names + 1 <= Path::longest);
        }
    }
}

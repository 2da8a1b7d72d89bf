// What the readers of the sections share: telling a missing key, finding a material by its name.

#include "input/mix/mix_context.hpp"

#include "mix_text.hpp"
#include "tree.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark;
using namespace boardmark::input;
using boardmark::test::faults_of;
using boardmark::test::tree_of;

namespace {

const std::string two_materials = "title: Quay\n"
                                  "materials:\n"
                                  "  stone: {kind: coarse aggregate, absorption: 0.5 %}\n"
                                  "  brick: {kind: bricks}\n";

struct Opened {
    boardmark::test::Tree tree = tree_of(two_materials);
    Diagnostics of_reading;
    Document document{tree.root, mix_fields(), of_reading};
    ReadOptions options = boardmark::test::read_options(Purpose::batch);
    Diagnostics faults;
    MixContext context{{tree.root, document, mix_fields(), faults}, options};
    Materials materials{
        {"stone", core::Material{.name = "stone", .kind = core::Kind::coarse_aggregate}}};

    /// A name as it would stand in the mixture.
    Parsed name(const std::string& text) const {
        Parsed name;
        name.node = &tree.root.entries.at(0).key;
        name.text = text;
        return name;
    }
};

} // namespace

TEST_CASE("a missing key is told at its section or at the top of the file") {
    const Opened opened;
    opened.context.missing({"materials", "stone"}, "moisture", "measure it", "add it");
    opened.context.missing({}, "reporting", "", "add it");
    CHECK(faults_of(opened.faults) ==
          std::vector<std::string>{"3:3 materials.stone has no 'moisture'; measure it",
                                   "1:1 the file has no 'reporting'"});
    CHECK(opened.faults.at(0).underlined == 5); // the word "stone"
}

TEST_CASE("the advice to add a key is its example") {
    const Opened opened;
    CHECK(opened.context.add_example({"requirements", "slump"}) == "add for example 'slump: 4 in'");
    CHECK(opened.context.add_example({"materials", "any name", "moisture"}) ==
          "add for example 'moisture: 6.0 %'");
}

TEST_CASE("materials are found by their whole name") {
    const auto [name, found, fault, advice] =
        GENERATE(table<std::string, bool, std::string, std::string>({
            {"stone", true, "", ""},
            {"stoen", false, "1:1 'stoen' is not among the materials", "did you mean 'stone'?"},
            {"gravel", false, "1:1 'gravel' is not among the materials",
             "describe it under 'materials'"},
            {"brick", false, "", ""}, // its own fault has been told
        }));
    INFO(name);
    const Opened opened;
    const core::Material* material =
        find_material(opened.context, opened.materials, opened.name(name));
    CHECK((material != nullptr) == found);
    REQUIRE(opened.faults.size() == (fault.empty() ? 0 : 1));
    if (!fault.empty()) {
        CHECK(faults_of(opened.faults) == std::vector<std::string>{fault});
        CHECK(opened.faults.at(0).advice == advice);
    }
}

TEST_CASE("figures of an aggregate are demanded unless they are the usual ones") {
    const Opened opened;
    core::Material stone = opened.materials.at("stone");
    demand_aggregate_figures(opened.context, stone); // it has its absorption
    CHECK(faults_of(opened.faults) ==
          std::vector<std::string>{
              "3:3 materials.stone has no 'relative_density'; the aggregate test report has it"});
    stone.aggregate.typical = true;
    demand_aggregate_figures(opened.context, stone);
    CHECK(opened.faults.size() == 1);
}

TEST_CASE("the advice for a missing moisture names the option as well") {
    const Opened opened;
    demand_batch_figures(opened.context, opened.materials.at("stone"));
    REQUIRE(opened.faults.size() == 1);
    CHECK(opened.faults[0].advice ==
          "measure it and add for example 'moisture: 6.0 %', or give '--moisture stone=6.0%'");
}

TEST_CASE("a dose keeps its basis") {
    Parsed parsed;
    parsed.number = 0.8;
    parsed.dimension = units::Dimension::percentage;
    CHECK(dose_of(parsed).basis == core::DoseBasis::percent);
    CHECK(dose_of(parsed).amount == 0.8);
    parsed.dimension = units::Dimension::dose;
    CHECK(dose_of(parsed).basis == core::DoseBasis::volume);
}

// Where the reader tells what the door of core finds.

#include "input/mix/told_faults.hpp"

#include "mix_text.hpp"
#include "tree.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark;
using boardmark::test::changed;
using core::Field;
using Told = std::vector<std::string>;

namespace {

/// A file of which only the places of its sections count.
struct Opened {
    explicit Opened(const std::string& text)
        : tree{test::tree_of(text)} {}

    test::Tree tree;
    input::Diagnostics of_reading;
    input::Document document{tree.root, input::mix_fields(), of_reading};
    input::ReadOptions options = test::read_options(input::Purpose::batch);
    input::Diagnostics faults;
    input::MixContext context{{tree.root, document, input::mix_fields(), faults}, options};
};

Told told_of(const std::string& text, Field field, const std::string& material = "") {
    const Opened opened{text};
    tell_remaining_faults(opened.context, {{field, core::Problem::impossible, material, "wrong"}});
    return test::faults_of(opened.faults);
}

} // namespace

TEST_CASE("what the door refuses stands at its section, as near as the file has one") {
    const std::string mix = "title: Quay\n"
                            "requirements: {slump: 4 in}\n"
                            "materials: {stone: {kind: coarse aggregate}}\n"
                            "mixture: {binder: {cement: 100 %}}\n"
                            "selections: {w_cm: 0.45}\n"
                            "supply: {minimum_load: 3 yd3}\n";
    const std::string submitted = "title: Quay\n"
                                  "proportions: {water: 300 kg}\n";
    struct Row {
        std::string text;
        Field field;
        const char* material;
        const char* fault;
    };
    for (const Row& row : {
             Row{mix, Field::relative_density, "stone", "3:13 wrong"},
             Row{mix, Field::slump, "", "2:1 wrong"},
             Row{mix, Field::selected_w_cm, "", "5:1 wrong"},
             Row{mix, Field::minimum_load, "", "6:1 wrong"},
             Row{mix, Field::binder, "", "4:1 wrong"},
             // A material by a name that the file does not have: by the field.
             Row{mix, Field::relative_density, "gravel", "4:1 wrong"},
             Row{submitted, Field::submitted_air, "", "2:1 wrong"},
             // No such section: at the top of the file.
             Row{submitted, Field::slump, "", "1:1 wrong"},
             Row{"title: Quay\n", Field::binder, "", "1:1 wrong"},
         }) {
        INFO(row.text << core::name_of(row.field) << ' ' << row.material);
        CHECK(told_of(row.text, row.field, row.material) == Told{row.fault});
    }
}

TEST_CASE("a figure that the calculation misses is told at its material, once, with its source") {
    const std::string sound = test::sound_mix;
    struct Row {
        std::string text;
        Told faults;
    };
    const std::string no_modulus = changed(sound, "    fineness_modulus: 2.8\n", "");
    const std::string dosed = test::with_dose("8 fl oz/cwt", "solids: 35 %");
    const std::string before = "  slump: 4 in\n  slump_before_reducer: ";
    for (const Row& row : {
             Row{changed(sound, "    nominal_max_size: 3/4 in\n", ""),
                 {"9:3 materials.stone has no 'nominal_max_size'; the water table needs it"}},
             Row{changed(sound, "    dry_rodded_density: 100 lb/ft3\n", ""),
                 {"9:3 materials.stone has no 'dry_rodded_density'; the aggregate test report has "
                  "it"}},
             Row{changed(sound, "    relative_density: 2.68\n", ""),
                 {"9:3 materials.stone has no 'relative_density'; the aggregate test report has "
                  "it"}},
             Row{changed(sound, "    absorption: 0.7 %\n", ""),
                 {"15:3 materials.sand has no 'absorption'; the aggregate test report has it"}},
             Row{no_modulus,
                 {"15:3 materials.sand has no 'fineness_modulus'; the sieve analysis of the sand "
                  "has it"}},
             // What stands there and is wrong is told there alone.
             Row{changed(sound, "fineness_modulus: 2.8", "fineness_modulus: 28"),
                 {"19:23 materials.sand.fineness_modulus: 28 is out of range (1 to 5)"}},
             Row{dosed,
                 {"20:3 materials.reducer has no 'water_reduction'; the product data sheet or "
                  "the supplier has it"}},
             // A reducer for flow needs no reduction; whether it is for flow is open where that
             // slump is wrong.
             Row{changed(dosed, "  slump: 4 in\n", before + "2 in\n"), {}},
             Row{changed(dosed, "  slump: 4 in\n", before + "two inches\n"),
                 {"7:25 requirements.slump_before_reducer: 'two inches' does not begin with a "
                  "number"}},
         }) {
        INFO(row.text);
        CHECK(test::faults_in(row.text) == row.faults);
    }
}

// A file of one's own code with one slip in it: what is told. The code is
// examples/harbour-annex.yaml; the form of its tables is that of data/, so what is wrong follows
// from the form alone.

#include <boardmark/boardmark.hpp>

#include <catch2/catch.hpp>

#include <fstream>

using namespace boardmark;
using Catch::Matchers::Contains;

namespace {

std::string example_text(const std::string& name) {
    std::ifstream file{std::string{BOARDMARK_SOURCE} + "/examples/" + name, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, {}};
}

/// The example that names the code, read with that text as the code.
Opened<WorkedMix> read_by(const std::string& code) {
    const auto load =
        [&](const std::string& name) -> std::variant<std::string, input::LoadFailure> {
        return name == "harbour-annex.yaml" ? code : example_text(name);
    };
    return read(example_text("quay-wall-by-annex.yaml"), "mix.yaml", Purpose::check, load);
}

struct Slip {
    std::string from; ///< stands in the code once
    std::string to;
    std::string told;
};

std::string slipped(const Slip& slip) {
    std::string code = example_text("harbour-annex.yaml");
    const auto at = code.find(slip.from);
    REQUIRE(at != std::string::npos);
    REQUIRE(code.find(slip.from, at + 1) == std::string::npos);
    return code.replace(at, slip.from.size(), slip.to);
}

const std::string air_columns = "columns: {what: nominal maximum size, both: [8 mm, 16 mm, 32 mm]}";
const std::string bars = "{name: bars, steel: bars, cells: [0.40]}";
const std::string xf4 = "      - {name: XF4, category: XF, salt: any, meaning: frost and salt, "
                        "strength_class: C30/37, cells: [0.50, 320, ~]}\n";
const std::string air_row = "      - {name: XF4, cells: [5.5, 4.5, 4.0]}\n";
const std::string ash_row =
    "      - {name: fly_ash, standard: EN 450, cells: [0.4, 0.33, 0.25, ~, ~]}\n";
const std::string of_print = "source: {place: Table 9, confidence: read, how: from the print}";

} // namespace

TEST_CASE("a slip in a code file is told at its place") {
    const Slip slip = GENERATE(
        // what a value may be
        Slip{"meaning: frost and salt", "meaning: [frost, salt]",
             "meaning: expected a text, found a list"},
        Slip{"meaning: frost and salt", "meaning: \"\"", "meaning: expected a text"},
        Slip{"source: {place: Table 4, confidence: read, how: typed from the print and read again}",
             "source: Table 4", "source: expected keys and values"},
        Slip{"columns: [{name: most}]\n", "columns: most\n", "chloride: 'columns' is not a list"},
        Slip{bars, "bars", "chloride: a row is a single value"},
        Slip{"cells: [0.40]", "cells: 0.40", "row 'bars' has no cells"},
        Slip{", cells: [0.40]", "", "row 'bars' has no cells"},
        Slip{"    rows:\n      - " + bars + "\n", "    rows: []\n", "chloride has no rows"},
        Slip{"    rows:\n      - " + bars + "\n", "    rows: bars\n", "chloride has no rows"},
        Slip{"    rows:\n      - " + bars + "\n", "", "chloride has no rows"},
        // keys twice or unknown
        Slip{"edition: \"2027\"", "edition: \"2027\", edition: \"2026\"", "given a second time"},
        Slip{air_columns, air_columns + "\n    colour: red", "air has no key 'colour'"},
        Slip{air_columns, air_columns + "\n    titel: air", "did you mean 'title'?"},
        Slip{"place: Table 4,", "place: Table 4, page: 12,", "source has no key 'page'"},
        // columns
        Slip{"[{name: us}, {name: si}]", "[{name: us}]", "air-rules has no column 'si'"},
        Slip{air_columns, "columns: {what: nominal maximum size}",
             "its columns are sizes of stone"},
        Slip{air_columns, "columns: {what: nominal maximum size, both: 8 mm}",
             "its columns are sizes of stone"},
        Slip{"both: [8 mm, 16 mm, 32 mm]", "both: [8 mm, wide, 32 mm]", "'wide' is not a figure"},
        // rows that others need
        Slip{"{name: tolerance, cited", "{name: slack, cited", "air-rules has no row 'tolerance'"},
        Slip{"cells: [5.5, 4.5, 4.0]", "cells: [5.5, -4.5, 4.0]", "no figure where it needs one"},
        Slip{"meaning: frost and salt,", "meaning: frost and salt, beside: XS9,",
             "'XS9' is no class"},
        Slip{"{name: fly_ash, standard: EN 450,", "{name: fly_ash, standard: EN 450, low_k_in: XA,",
             "'XA' is no category"},
        Slip{"barred_in: XF4", "barred_in: XF9", "'XF9' is no class"},
        Slip{"category: XF, salt: any, meaning: frost", "salt: any, meaning: frost",
             "add a row {name: X, group: category"},
        Slip{"cells: [0.50, 320, ~]", "cells: [1.60, 320, ~]", "impossible max_w_cm"},
        Slip{"cells: [0.50, 320, ~]", "cells: [0.50, 0, ~]", "impossible min_cement"},
        Slip{xf4, xf4 + "      - {name: XF3, group: plain concrete, cells: [0.5, 300, ~]}\n",
             "row 'XF3' of plain concrete does not follow its class"},
        // tables that this code does not have
        Slip{
            "  chloride:\n",
            "  strength-class:\n    " + of_print +
                "\n    columns: [{name: cylinder, unit: MPa}, {name: cube, unit: MPa}]\n    rows:\n"
                "      - {name: C30/37, cells: [~, ~]}\n  chloride:\n",
            "strength class 'C30/37' names no strength"},
        Slip{"  chloride:\n",
             "  least-cement:\n    " + of_print +
                 "\n    columns: [{name: above}, {name: most}]\n    rows:\n"
                 "      - {name: glass, cells: [20, 30]}\n  chloride:\n",
             "'glass' is not an addition that may count"},
        Slip{"  chloride:\n",
             "  supplementary:\n    " + of_print +
                 "\n    columns: [{name: most}]\n    rows:\n"
                 "      - {name: glass, class: XF9, cells: [20]}\n  chloride:\n",
             "'glass' is not an addition that is capped"},
        Slip{"  chloride:\n",
             "  site:\n    " + of_print +
                 "\n    columns: [{name: order}]\n    rows:\n"
                 "      - {name: tide, group: XS, class: XS3, cells: [1]}\n  chloride:\n",
             "gives neither 'reason' nor 'missing'"},
        // what stands there twice
        Slip{"{name: min_cement_with_additions, unit: kg/m3}", "{name: min_strength_us, unit: psi}",
             "row 'XC4' has its strength as a class and as a figure"},
        Slip{bars, bars + "\n      - {name: more, steel: bars, cells: [0.60]}",
             "chloride: a limit with bars stands twice"},
        Slip{air_row, air_row + air_row, "air: row 'XF4' stands twice"},
        Slip{ash_row, ash_row + ash_row, "additions: row 'fly_ash' stands twice"},
        Slip{xf4, xf4 + "      - {name: XF, group: category, subject: frost, cells: [~, ~, ~]}\n",
             "exposure: category 'XF' stands twice"},
        Slip{xf4, xf4 + "      - {name: annex, group: code, cells: [~, ~, ~]}\n",
             "exposure: a row of the code stands twice"},
        Slip{"  chloride:\n",
             "  cement-most:\n    " + of_print +
                 "\n    columns: [{name: most, unit: kg/m3}]\n    rows:\n"
                 "      - {name: plain, cells: [450]}\n"
                 "      - {name: reinforced, cells: [300]}\n  chloride:\n",
             "cement-most: its one row stands twice"},
        Slip{"  chloride:\n",
             "  cement-by-size:\n    " + of_print + "\n    unit: kg/m3\n    " + air_columns +
                 "\n    rows:\n      - {name: added, cells: [10, 0, 0]}\n"
                 "      - {name: XS3, cells: [50, 40, 0]}\n  chloride:\n",
             "cement-by-size: its one row stands twice"},
        // a k of which a part is missing
        Slip{"standard: EN 450, cells: [0.4, 0.33, 0.25, ~, ~]",
             "standard: EN 450, cells: [0.4, 0.33, 0.25, 0.2, ~]",
             "row 'fly_ash' has only a part of low_k"},
        Slip{"standard: EN 450, cells: [0.4, 0.33, 0.25, ~, ~]",
             "standard: EN 450, low_k_in: XC, cells: [0.4, 0.33, 0.25, ~, 0.45]",
             "row 'fly_ash' has only a part of low_k"});
    INFO(slip.to);
    const auto opened = read_by(slipped(slip));
    CHECK_FALSE(opened);
    CHECK_THAT(opened.told(), Contains(slip.told));
    CHECK_THAT(opened.told(), Contains("harbour-annex.yaml:"));
}

TEST_CASE("tables are keys and values") {
    CHECK_THAT(read_by("boardmark: 1\ncode: Annex\ntables: none\n").told(),
               Contains("'tables' is missing"));
}

TEST_CASE("a row of a code may have a source of its own") {
    const auto opened = read_by(slipped({bars,
                                         "{name: bars, steel: bars, source: {work: Harbour letter, "
                                         "place: page 2, confidence: from memory, how: recalled}, "
                                         "cells: [0.40]}",
                                         ""}));
    REQUIRE(opened);
    CHECK_THAT(opened.value().text(true), Contains("Harbour letter page 2"));
}

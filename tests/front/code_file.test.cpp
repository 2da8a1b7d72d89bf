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
        Slip{"cells: [5.5, 4.5, 4.0]", "cells: [5.5, -4.5, 4.0]",
             "'-4.5' is outside of 0.5 to 15 %"},
        Slip{"cells: [5.5, 4.5, 4.0]", "cells: [5.5, ~, 4.0]", "no figure where it needs one"},
        Slip{"meaning: frost and salt,", "meaning: frost and salt, beside: XS9,",
             "'XS9' is no class"},
        Slip{"{name: fly_ash, standard: EN 450,", "{name: fly_ash, standard: EN 450, low_k_in: XA,",
             "'XA' is no category"},
        Slip{"barred_in: XF4", "barred_in: XF9", "'XF9' is no class"},
        Slip{"category: XF, salt: any, meaning: frost", "salt: any, meaning: frost",
             "add a row {name: X, group: category"},
        Slip{"cells: [0.50, 320, ~]", "cells: [1.60, 320, ~]", "'1.60' is outside of 0.2 to 1.5"},
        Slip{"cells: [0.50, 320, ~]", "cells: [0.50, 0, ~]", "'0' is outside of 50 to 1000 kg/m3"},
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
                 "\n    unit: kg/m3\n    columns: [{name: above}, {name: most}]\n    rows:\n"
                 "      - {name: glass, cells: [20, 30]}\n  chloride:\n",
             "least-cement has no row 'glass'"},
        Slip{"  chloride:\n",
             "  supplementary:\n    " + of_print +
                 "\n    unit: \"%\"\n    columns: [{name: most}]\n    rows:\n"
                 "      - {name: glass, class: XF9, cells: [20]}\n  chloride:\n",
             "supplementary has no row 'glass'"},
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
        Slip{air_row, air_row + air_row, "row 'XF4' stands twice"},
        Slip{ash_row, ash_row + ash_row, "row 'fly_ash' stands twice"},
        Slip{xf4, xf4 + "      - {name: XF, group: category, subject: frost, cells: [~, ~, ~]}\n",
             "row 'XF' stands twice"},
        Slip{xf4, xf4 + "      - {name: annex, group: code, cells: [~, ~, ~]}\n",
             "the code has a second row of group code"},
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

TEST_CASE("a figure of a code file is what its column holds") {
    const std::string ash = "cells: [0.4, 0.33, 0.25, ~, ~]";
    const Slip slip = GENERATE_COPY(
        Slip{ash, "cells: [40, 0.33, 0.25, ~, ~]", "'40' is outside of 0 to 4"},
        Slip{ash, "cells: [0.4, 33, 0.25, ~, ~]", "'33' is outside of 0 to 5"},
        Slip{ash, "cells: [400 %, 33 %, 501 %, ~, ~]", "'501 %' is outside of 0 to 5"},
        Slip{ash, "cells: [0.4 MPa, 0.33, 0.25, ~, ~]", "a ratio (a bare number, %) is expected"},
        Slip{ash, "cells: [0.4, 0.33, 0.25, 0.2, 45]", "'45' is outside of 0.2 to 1.5"},
        Slip{"{name: max_w_cm}", "{name: max_w_cm, unit: kg/m3}",
             "max_w_cm: 'kg/m3' is a mass per volume (lb/ft3, lb/yd3, kg/m3); a ratio"},
        Slip{"{name: min_cement, unit: kg/m3}", "{name: min_cement, unit: lb}",
             "min_cement: 'lb' is a mass (lb, kg); a mass per volume"},
        Slip{"{name: min_cement, unit: kg/m3}", "{name: min_cement}", "'280' has no unit"},
        Slip{"cells: [0.50, 320, ~]", "cells: [0.50, 564 lb, ~]", "'564 lb' is a mass"},
        Slip{"both: [8 mm, 16 mm, 32 mm]", "both: [8 kg, 16 kg, 32 kg]", "a length"},
        Slip{"both: [8 mm, 16 mm, 32 mm]", "both: [8, 16, 32]", "'8' has no unit; a length"},
        Slip{"both: [8 mm, 16 mm, 32 mm]", "both: [8 mm, ~, 32 mm]", "a column has no size"},
        Slip{"cells: [0.40]", "cells: [0.8 kg/m3]", "a percentage (%) is expected"},
        Slip{"chloride_of: cement", "chloride_of: concrete", "a mass per volume"},
        Slip{"{name: tolerance, cited: Harbour annex 2027 Table 2, cells: [0.5 %, 0.5 %]}",
             "{name: tolerance, cited: Harbour annex 2027 Table 2, cells: [0.5 MPa, 0.5 %]}",
             "a percentage (%) is expected"},
        Slip{"{name: below, cells: [0 %, 0 %]}", "{name: none_from_cube, cells: [50 %, 50 %]}",
             "a stress (psi, MPa) is expected"},
        Slip{"[{name: us}, {name: si}]", "[{name: us}, {name: si}, {name: si}]", "stands twice"});
    INFO(slip.to);
    const auto opened = read_by(slipped(slip));
    CHECK_FALSE(opened);
    CHECK_THAT(opened.told(), Contains(slip.told));
}

TEST_CASE("a word of a code file is one that is known for it") {
    const std::string site = "  site:\n    " + of_print +
                             "\n    columns: [{name: order}]\n    rows:\n      - {name: one, ";
    const std::string end = ", cells: [1]}\n  chloride:\n";
    const std::string soil = "  soil-sulfate:\n    " + of_print +
                             "\n    columns: [{name: from, unit: \"%\"}]\n    rows:\n";
    const Slip slip = GENERATE_COPY(
        Slip{"classes: any number", "classes: any", "classes: 'any' is no word"},
        Slip{"additions: by k", "additions: by K", "did you mean 'by k'?"},
        Slip{"additions: by k, ", "", "does not say 'additions: by k'"},
        Slip{"chloride_of: cement, ", "", "does not say of what mass"},
        Slip{"chloride_of: cement", "chloride_of: binder", "'binder' is no word"},
        Slip{", chloride: acid-soluble", "", "'chloride: acid-soluble' or 'water-soluble'"},
        Slip{"chloride: acid-soluble", "chloride: acid soluble", "did you mean 'acid-soluble'?"},
        Slip{"meaning: frost and salt", "meaning: \"frost and {salt}\"", "holds '{' or '}'"},
        Slip{"  chloride:\n",
             site + "group: XS, class: XS3, sea: spray, reason: \"so {sulfate}\"" + end,
             "tells {sulfate} and does not take the soil's class"},
        Slip{xf4, xf4 + "      - {name: XF1, category: XF, meaning: frost, cells: [0.5, 300, ~]}\n",
             "class 'XF1' is of frost and has no row in 'air'"},
        Slip{"meaning: frost and salt,",
             "meaning: frost and salt, beside_cement: pozzolan or slag,",
             "class 'XF4' has 'beside_cement' and no 'cements'"},
        Slip{"steel: bars, ", "", "row 'bars' has no 'steel'"},
        Slip{"edition: \"2027\"", "strength_age: 12 weeks", "no age in whole days"},
        Slip{"edition: \"2027\"", "strength_age: 5.6e1 d", "no age in whole days"},
        Slip{", step: exposure_freezing", "", "category 'XF' has no 'step'"},
        Slip{"step: exposure_freezing", "step: exposure_frost", "'exposure_frost' is no word"},
        Slip{"{name: below, cells", "{name: reduction, cells", "no row 'reduction_above_strength'"},
        Slip{"{name: below, cells", "{name: lowest, cells", "air-rules has no row 'lowest'"},
        Slip{"{name: below, cells", "{name: above, cells", "row 'above' stands twice"},
        Slip{"{name: below, cells", "{name: below, group: XF, cells", "a row has no key 'group'"},
        Slip{"  chloride:\n", site + "group: XS, class: XS3, sea: yes, reason: sea" + end,
             "known here: open, no, spray, tidal"},
        Slip{"  chloride:\n", site + "group: XS, class: XS3, sea: spray or yes, reason: sea" + end,
             "'yes' is no word"},
        Slip{"  chloride:\n", site + "group: XS, class: XC4, sea: spray, reason: sea" + end,
             "'XC4' is no class of the category 'XS'"},
        Slip{"  chloride:\n", site + "group: XS, class: XS3, soil_sulfate: more, reason: s" + end,
             "add a table 'soil-sulfate'"},
        Slip{"  chloride:\n", site + "group: XS, class: soil, reason: s" + end,
             "takes the soil's class and does not ask for it"},
        Slip{"  chloride:\n",
             site + "group: XS, class: XS3, sea: tidal, reason: sea, cells: [1]}\n" +
                 "      - {name: none, group: XS, asks: none, reason: no sea" + end,
             "asks no class of a site of which nothing is stated"},
        Slip{"  chloride:\n",
             soil + "      - {name: XS3, bound: itself, cells: [0.1]}\n  chloride:\n",
             "does not begin where"},
        Slip{"  chloride:\n", soil + "      - {name: XS3, cells: [0]}\n  chloride:\n",
             "has no 'bound'"},
        Slip{"  chloride:\n", soil + "      - {name: S1, bound: itself, cells: [0]}\n  chloride:\n",
             "'S1' is no class"});
    INFO(slip.to);
    const auto opened = read_by(slipped(slip));
    CHECK_FALSE(opened);
    CHECK_THAT(opened.told(), Contains(slip.told));
}

TEST_CASE("a class of frost may ask no air where its code file says so") {
    CHECK(read_by(slipped({xf4,
                           xf4 + "      - {name: XF1, category: XF, asks: no air, meaning: frost, "
                                 "cells: [0.5, 300, ~]}\n",
                           ""})));
}

TEST_CASE("what one category asks of a site is none of another's") {
    const std::string site =
        "  site:\n    " + of_print +
        "\n    columns: [{name: order}]\n    rows:\n"
        "      - {name: tide, group: XS, class: XS3, sea: tidal, reason: the "
        "sea, cells: [1]}\n"
        "      - {name: tide, group: XS, class: XS3, sea: spray, reason: its "
        "spray, cells: [2]}\n"
        "      - {name: open air, group: XC, asks: none, reason: stated by the "
        "class alone, cells: [1]}\n  chloride:\n";
    CHECK(read_by(slipped({"  chloride:\n", site, ""})));
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

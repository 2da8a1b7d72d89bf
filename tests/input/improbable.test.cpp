// Figures that are possible each by itself but hardly true: what is asked back, and how it stands
// in a result.

#include <boardmark/input/values/improbable.hpp>

#include "mix_text.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark;
using boardmark::test::changed;
using boardmark::test::sound_mix;

TEST_CASE("a warning is a caution with its advice, once, and a brace in it stands for itself") {
    const auto told_as = [](input::Severity severity, const char* message, const char* advice) {
        input::Diagnostic diagnostic;
        diagnostic.severity = severity;
        diagnostic.message = message;
        diagnostic.advice = advice;
        return diagnostic;
    };
    const input::Diagnostics told{told_as(input::Severity::warning, "slump of {pit}", "check it"),
                                  told_as(input::Severity::error, "wrong", ""),
                                  told_as(input::Severity::warning, "cold", ""),
                                  told_as(input::Severity::warning, "cold", "")};
    std::vector<core::Phrase> cautions{{"of the method", {}}};
    input::add_improbable_figures(told, cautions);
    std::vector<std::string> texts;
    for (const core::Phrase& caution : cautions) {
        texts.push_back(caution.text);
    }
    CHECK(texts == std::vector<std::string>{"slump of {{pit}}; check it", "cold", "of the method"});
}

TEST_CASE("densities and absorptions that no stone, or hardly any, has") {
    // Common practice, no source: aggregates of 2.2 to 3.05, rodded voids of 30 to 50 %, of none
    // below 20 %; dense rock above 2.5 absorbs up to 3 %. A lightweight aggregate has 2.0 at most
    // (EN 206, from memory).
    struct Row {
        const char* density;
        const char* more;   ///< of the stone
        const char* rodded; ///< voids by hand from its oven-dry density
        std::vector<std::string> faults;
    };
    const char* usual = "100 lb/ft3"; // 1602 kg/m3, 40 % of voids in 2.67
    const std::string light = "12:23 materials.stone.relative_density: ";
    const std::string of_two_states = "14:29 materials.stone.relative_density_basis: oven-dry ";
    const auto starts = [](const std::vector<std::string>& told,
                           const std::vector<std::string>& is) {
        return std::ranges::equal(told, is, [](const std::string& one, const std::string& begin) {
            return one.starts_with(begin);
        });
    };
    for (const Row& row : {
             Row{"2.68", "0.5 %", usual, {}},
             Row{"3.2", "0.5 %", "120 lb/ft3", {light + "3.2 is unusual for coarse aggregate"}},
             Row{"1.9", "0.5 %", "70 lb/ft3", {light + "1.9 is that of a lightweight aggregate"}},
             // Oven-dry 1.95 with 5 % of water are 2.05 saturated: light, but no lightweight
             // aggregate.
             Row{"1.95",
                 "5 %\n    relative_density_basis: oven-dry",
                 "70 lb/ft3",
                 {light + "1.95 is unusual for coarse aggregate", of_two_states + "1.95 is given"}},
             Row{"1.95",
                 "1 %\n    relative_density_basis: oven-dry",
                 "70 lb/ft3",
                 {light + "1.95 is that of a lightweight aggregate",
                  of_two_states + "1.95 is given"}},
             // 2.68 / 1.005 = 2.667: 1800 kg/m3 leave 32.5 %, 1900 28.8 %, 2250 15.6 %, 2700 none.
             Row{"2.68", "0.5 %", "1800 kg/m3", {}},
             Row{"2.68",
                 "0.5 %",
                 "1900 kg/m3",
                 {"14:25 materials.stone.dry_rodded_density: 1900 kg/m3 leaves 29 % of voids"}},
             Row{"2.68",
                 "0.5 %",
                 "2250 kg/m3",
                 {"14:25 materials.stone.dry_rodded_density: 2250 kg/m3 leaves 16 % of voids"}},
             Row{"2.68", "3 %", usual, {}},
             Row{"2.68",
                 "4 %",
                 usual,
                 {"13:17 materials.stone.absorption: 4 % is unusual for an aggregate of relative "
                  "density 2.68"}},
             Row{"2.45", "4 %", "90 lb/ft3", {}},
             // 2.45 oven-dry with 4 % are 2.55 saturated.
             Row{"2.45",
                 "4 %\n    relative_density_basis: oven-dry",
                 "90 lb/ft3",
                 {"13:17 materials.stone.absorption: 4 % is unusual for an aggregate of relative "
                  "density 2.55",
                  "14:29 materials.stone.relative_density_basis: oven-dry 2.45 is given while sand "
                  "is "
                  "2.64"}},
         }) {
        const std::string text =
            changed(changed(changed(sound_mix, "relative_density: 2.68",
                                    std::string{"relative_density: "} + row.density),
                            "absorption: 0.5 %", std::string{"absorption: "} + row.more),
                    "100 lb/ft3", row.rodded);
        INFO(text);
        const auto faults = test::faults_in(text);
        CAPTURE(faults);
        CHECK(starts(faults, row.faults));
    }
}

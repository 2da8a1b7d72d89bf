#include <boardmark/core/checks/check_title.hpp>
#include <boardmark/text/utf8.hpp>

#include "report/printed.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

using namespace boardmark;
using core::UnitSystem;
using report::TextStyle;
using test::Printed;

namespace {

constexpr std::size_t page = 100;

std::string repeated(const std::string& text, int times) {
    std::string result;
    for (int i = 0; i < times; ++i) {
        result += text;
    }
    return result;
}

/// Names that break tables: long, wide, steering the terminal, without a place to break. Each gets
/// a letter more, which makes it unique.
std::string a_hostile_name() {
    return GENERATE(as<std::string>{}, "sand", "white quartz san", std::string(79, 'x'),
                    repeated("砂", 79), repeated("e\xCC\x81", 40), repeated("\xE2\x80\xAE", 79),
                    repeated("\x1B[31m", 16), repeated("long name ", 8), "a\nb\tc\rd",
                    "\xFF\xFE\x80", repeated("😀", 40), "{value}", "%s%n", " ");
}

std::string widest_line(const std::string& text) {
    std::string widest;
    for (const std::string& line : test::lines(text)) {
        if (text::display_width(line) > text::display_width(widest)) {
            widest = line;
        }
    }
    return widest;
}

void check_page(const std::string& text) {
    CHECK(text::first_invalid_byte(text) == std::nullopt);
    CHECK(text.find('\x1B') == std::string::npos);
    CHECK(text.find('\t') == std::string::npos);
    CHECK(text.find('\r') == std::string::npos);
    CHECK(text.find("\xE2\x80\xAE") == std::string::npos);
    CHECK(text.ends_with('\n'));
    CHECK(text.find(" \n") == std::string::npos);
    const std::string widest = widest_line(text);
    INFO("'" << widest << "'");
    CHECK(text::display_width(widest) <= page);
}

} // namespace

TEST_CASE("the worksheet fits the page and is harmless whatever the names are") {
    const std::string name = a_hostile_name();
    const auto system = GENERATE(UnitSystem::us, UnitSystem::si);
    const bool explain = GENERATE(false, true);
    INFO("name '" << text::printable(name) << "'");
    for (const std::string* yaml : {&test::terrace, &test::faulty_wall}) {
        check_page(Printed{*yaml}.rename(name, name).text({.system = system, .explain = explain}));
    }
    check_page(Printed{test::submittal, input::Purpose::check}
                   .rename(name, name)
                   .text({.system = system, .explain = explain}));
}

TEST_CASE("the batch ticket fits the page and is harmless whatever the names are") {
    const std::string name = a_hostile_name();
    const auto system = GENERATE(UnitSystem::us, UnitSystem::si);
    INFO("name '" << text::printable(name) << "'");
    check_page(
        Printed{test::terrace}.rename(name, name).batch_text({.system = system, .explain = true}));
}

TEST_CASE("a title without a place to break fits the page") {
    const std::string title =
        GENERATE(as<std::string>{}, std::string(200, 'T'), repeated("砂", 200));
    Printed printed{test::terrace};
    check_page(printed.rename("m", title).text({.system = UnitSystem::us}));
    check_page(printed.batch_text({.system = UnitSystem::us}));
}

TEST_CASE("the verdict stands in words without colour") {
    const std::string good = Printed{test::terrace}.text({.system = UnitSystem::us, .all = true});
    CHECK(good.find("holds        Water/cement limit (w_cm.exposure): ") != std::string::npos);
    CHECK(good.find("not checked  finish") == std::string::npos);
    CHECK(good.find("FAILS") == std::string::npos);
    CHECK(good.find("DO NOT USE") == std::string::npos);

    const std::string bad = Printed{test::faulty_wall}.text({.system = UnitSystem::si});
    std::string unbroken = bad;
    std::ranges::replace(unbroken, '\n', ' ');
    CHECK(unbroken.find("DO NOT USE AS IT IS") != std::string::npos);
    for (const char* row :
         {"FAILS        Specified strength for the exposure (strength.exposure): ",
          "FAILS        Air for the exposure (air.exposure): ",
          "FAILS        Fly ash limit (scm.fly_ash): ",
          "FAILS        Stone between the forms (size.form): ",
          "watch        Water/cement limit (w_cm.exposure): ",
          "not checked  Stone between the bars (size.bars): "}) {
        INFO(row);
        CHECK(bad.find(row) != std::string::npos);
    }
}

TEST_CASE("the headline counts and names what fails, is watched and is open") {
    const Printed bad{test::faulty_wall};
    const std::string page_text = bad.text({.system = UnitSystem::us});
    const auto begin = page_text.find(" fail; ");
    REQUIRE(begin != std::string::npos);
    const auto line = page_text.rfind('\n', begin) + 1;
    std::string verdict = page_text.substr(line, page_text.find("\nStrength: ", line) - line);
    std::ranges::replace(verdict, '\n', ' ');
    std::size_t failing = 0;
    std::size_t held = 0;
    for (const core::Check& check : bad.result().checks) {
        INFO(check.id << " in: " << verdict);
        failing += check.verdict == core::Verdict::fails;
        held += check.verdict == core::Verdict::holds;
        const bool named = verdict.find(core::title_of(check.id)) != std::string::npos;
        CHECK(named == (check.verdict != core::Verdict::holds));
    }
    CHECK(failing >= 2);
    CHECK(verdict.starts_with(std::to_string(failing) + " fail; "));
    CHECK(verdict.find(", " + std::to_string(held) + " hold. DO NOT USE AS IT IS. Fail: ") !=
          std::string::npos);
}

TEST_CASE("the answer stands first, then what is not settled, then the steps") {
    const std::string text =
        Printed{test::faulty_wall}.text({.system = UnitSystem::si, .explain = true, .all = true});
    std::size_t place = 0;
    for (const char* part :
         {"Faulty wall\n", " fail; ", "\nINGREDIENTS", "\nTOTALS", "\nCHECKS\n", "\n  FAILS ",
          "\n  watch ", "\n  not checked ", "\n  holds ", "\nASKED\n", "\nSELECTED, step by step\n",
          "\nREASONS\n", "\nLIMITS", "\nCAUTIONS\n"}) {
        INFO(part);
        const std::size_t found = text.find(part, place);
        REQUIRE(found != std::string::npos);
        place = found;
    }
}

TEST_CASE("what holds is one line until all is asked for") {
    const Printed good{test::terrace};
    const auto held =
        std::ranges::count(good.result().checks, core::Verdict::holds, &core::Check::verdict);
    const std::string text = good.text({.system = UnitSystem::us});
    CHECK(text.find("\n  " + std::to_string(held) + " hold (--all lists them)\n") !=
          std::string::npos);
    CHECK(text.find("\n  holds ") == std::string::npos);
    const std::string all = good.text({.system = UnitSystem::us, .all = true});
    CHECK(all.find("--all") == std::string::npos);
    std::ptrdiff_t rows = 0;
    for (std::size_t at = 0; (at = all.find("\n  holds ", at)) != std::string::npos; ++at) {
        ++rows;
    }
    CHECK(rows == held);
}

TEST_CASE("a text names the files that it was made from") {
    const Printed printed{test::terrace};
    report::MixResult result = printed.result();
    CHECK(report::text(result, {.system = UnitSystem::us}).find("File") == std::string::npos);
    result.inputs = {{"walls/quay.yaml", std::string(64, 'a')}, {"-", std::string(64, 'b')}};
    CHECK(report::text(result, {.system = UnitSystem::us})
              .starts_with("Terrace\nFiles: walls/quay.yaml, standard input\n"));
}

TEST_CASE("colours add nothing but their sequences") {
    const Printed bad{test::faulty_wall};
    const std::string plain = bad.text({.system = UnitSystem::si, .explain = true});
    std::string coloured = bad.text({.system = UnitSystem::si, .explain = true, .colour = true});
    CHECK(coloured != plain);
    for (const std::string sequence : {"\x1B[32m", "\x1B[1;31m", "\x1B[33m", "\x1B[0m"}) {
        for (std::size_t at; (at = coloured.find(sequence)) != std::string::npos;) {
            coloured.erase(at, sequence.size());
        }
    }
    CHECK(coloured == plain);
}

TEST_CASE("the mixed units of the trade stand in each report") {
    const std::string us = Printed{test::terrace}.text({.system = UnitSystem::us});
    for (const char* word : {"cementitious materials", " gal", "lb/yd3", "psi", "fl oz", " in",
                             "lb/ft3", "1 yd3", "ft3"}) {
        INFO(word);
        CHECK(us.find(word) != std::string::npos);
    }
    for (const char* word : {"kg", "MPa", " mm", "m3 "}) {
        INFO(word);
        CHECK(us.find(word) == std::string::npos);
    }
    const std::string si = Printed{test::terrace}.text({.system = UnitSystem::si});
    for (const char* word : {"kg/m3", "MPa", " mm", "1 m3", " L"}) {
        INFO(word);
        CHECK(si.find(word) != std::string::npos);
    }
    for (const char* word : {" lb", "psi", " gal", "fl oz", "yd3", "ft3"}) {
        INFO(word);
        CHECK(si.find(word) == std::string::npos);
    }
}

TEST_CASE("the reasons stand only where they are asked for and cover every step") {
    const Printed printed{test::terrace};
    const std::string text = printed.text({.system = UnitSystem::us, .explain = true});
    CHECK(printed.text({.system = UnitSystem::us}).find("REASONS") == std::string::npos);
    REQUIRE(text.find("REASONS") != std::string::npos);
    std::size_t reasons = 0;
    for (std::size_t at = 0; (at = text.find("\n      reason: ", at)) != std::string::npos; ++at) {
        ++reasons;
    }
    CHECK(reasons == printed.result().proportions.worksheet.steps.size());
}

TEST_CASE("words of the library do not reach the reader of a report") {
    // `binder` is a key; US text says cementitious materials.
    const std::string text =
        Printed{test::faulty_wall}.text({.system = UnitSystem::us, .explain = true});
    for (const std::string& line : test::lines(text)) {
        INFO(line);
        CHECK(line.find("w_cm =") == std::string::npos);
        CHECK(line.find(" binder ") == std::string::npos);
    }
}

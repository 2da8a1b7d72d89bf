// Laws of reading and writing: what is written can be read again, and fits.

#include <boardmark/report/batch/batch_report.hpp>
#include <boardmark/report/mix/mix_report.hpp>
#include <boardmark/text/closest.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>
#include <boardmark/units/rounding.hpp>

#include "laws/mixes.hpp"
#include <boardmark/text/wrap.hpp>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>

using namespace boardmark;
using namespace boardmark::test;

namespace {

const units::Unit& any_unit() {
    const auto all = units::all_units();
    return all[static_cast<std::size_t>(
        *rc::gen::inRange(0, static_cast<int>(all.size())).as("unit"))];
}

report::MixResult result_of(const core::Mix& mix, const core::Proportions& proportions,
                            const std::vector<core::Check>& checks) {
    return {.command = "proportion",
            .title = mix.title,
            .requirements = mix.requirements,
            .proportions = proportions,
            .checks = checks};
}

} // namespace

TEST_CASE("an amount comes back from the inside unit of every unit") {
    holds([] {
        const units::Unit& unit = any_unit();
        const double amount = between(-1e6, 1e6, "amount");
        demand_same(unit.from_inside(unit.to_inside(amount)) + 2e6, amount + 2e6, 1e-14,
                    std::string{unit.spelling});
    });
}

TEST_CASE("a unit keeps the order of amounts") {
    holds([] {
        const units::Unit& unit = any_unit();
        const double one = between(-1e3, 1e3, "amount");
        const double other = between(-1e3, 1e3, "amount");
        RC_ASSERT((unit.to_inside(one) < unit.to_inside(other)) == (one < other));
    });
}

TEST_CASE("a quantity that is written with all its digits is read as it was") {
    holds([] {
        const units::Unit& unit = any_unit();
        const double amount = between(-1e4, 1e4, "amount");
        const std::string blank = perhaps("a blank before the unit") ? " " : "";
        const auto reading =
            units::read_quantity(fmt::format("{:.17g}{}{}", amount, blank, unit.spelling));
        RC_ASSERT(std::holds_alternative<units::Quantity>(reading));
        RC_ASSERT(std::get<units::Quantity>(reading).amount == amount);
        RC_ASSERT(std::get<units::Quantity>(reading).unit == &unit);
    });
}

TEST_CASE("a mixed number is its whole and its fraction") {
    holds([] {
        const int whole = *rc::gen::inRange(1, 100).as("whole");
        const int numerator = *rc::gen::inRange(0, 100).as("numerator");
        const int denominator = *rc::gen::inRange(1, 100).as("denominator");
        const std::string between_them = perhaps("a hyphen") ? "-" : " ";
        const auto reading = units::read_number(
            fmt::format("{}{}{}/{}", whole, between_them, numerator, denominator));
        RC_ASSERT(std::holds_alternative<double>(reading));
        demand_same(std::get<double>(reading), whole + double(numerator) / denominator, 1e-15,
                    "mixed number");
    });
}

TEST_CASE("inches as the trade writes them are read back within half a sixteenth") {
    holds([] {
        const double inches = between(-200, 200, "inches");
        const auto reading = units::read_number(units::inch_fraction(inches));
        RC_ASSERT(std::holds_alternative<double>(reading));
        demand_at_most(std::abs(std::get<double>(reading) - inches), 1.0 / 32, "distance");
    });
}

TEST_CASE("rounding moves by half a step at most and a rounded amount stays") {
    holds([] {
        const double step = one_of<double>({0.001, 0.01, 0.1, 0.25, 0.5, 1, 5, 10}, "step");
        const double amount = between(-10000, 10000, "amount");
        const double once = units::nearest({.amount = amount, .step = step});
        demand_at_most(std::abs(once - amount), step / 2, "distance");
        demand_same(units::nearest({.amount = once, .step = step}), once, 1e-12, "rounded twice");
        demand_same(units::nearest({.amount = -amount, .step = step}), -once, 1e-12, "mirrored");
    });
}

TEST_CASE("any bytes made printable are valid and steer nothing") {
    holds([] {
        const auto bytes = *rc::gen::string<std::string>();
        const std::string shown = text::printable(bytes);
        RC_ASSERT(!text::first_invalid_byte(shown));
        RC_ASSERT(!text::first_control_character(shown));
        RC_ASSERT(shown.find('\n') == std::string::npos);
        RC_ASSERT(text::printable(shown) == shown);
        RC_ASSERT(text::display_width(shown) <= 2 * text::count_characters(shown));
    });
}

TEST_CASE("a text that is valid stays valid with more behind it") {
    holds([] {
        const auto bytes = *rc::gen::string<std::string>();
        const auto more = *rc::gen::string<std::string>();
        if (const auto at = text::first_invalid_byte(bytes)) {
            RC_ASSERT(*at < bytes.size());
            RC_ASSERT(!text::first_invalid_byte(bytes.substr(0, *at)));
        } else {
            const auto behind = text::first_invalid_byte(more);
            const auto whole = text::first_invalid_byte(bytes + more);
            RC_ASSERT(whole == (behind ? std::optional{bytes.size() + *behind} : std::nullopt));
        }
    });
}

TEST_CASE("wrapped words are the same words in lines that fit") {
    holds([] {
        const auto words = *rc::gen::container<std::vector<std::string>>(
            rc::gen::nonEmpty(rc::gen::container<std::string>(rc::gen::inRange('a', 'z'))));
        const auto width = static_cast<std::size_t>(*rc::gen::inRange(110, 200).as("width"));
        std::string joined;
        for (const std::string& word : words) {
            joined += (joined.empty() ? "" : " ") + word;
        }
        std::string again;
        for (const std::string& line : text::lines_of(joined, width)) {
            RC_ASSERT(line.size() <= width);
            again += (again.empty() ? "" : " ") + line;
        }
        RC_ASSERT(again == joined);
    });
}

TEST_CASE("a slip of one letter in a longer word is found again") {
    holds([] {
        constexpr std::array<std::string_view, 4> keys{"nominal_max_size", "dry_rodded_density",
                                                       "fineness_modulus", "relative_density"};
        const std::string_view meant =
            keys[static_cast<std::size_t>(*rc::gen::inRange(0, 4).as("word"))];
        std::string mistyped{meant};
        const auto at = static_cast<std::size_t>(
            *rc::gen::inRange(0, static_cast<int>(meant.size()) - 1).as("place"));
        switch (*rc::gen::inRange(0, 4).as("slip")) {
        case 0:
            mistyped.erase(at, 1);
            break;
        case 1:
            mistyped.insert(at, 1, 'q');
            break;
        case 2:
            mistyped[at] = 'q';
            break;
        default:
            std::swap(mistyped[at], mistyped[at + 1]);
            break;
        }
        RC_ASSERT(text::closest(mistyped, keys) == std::optional{meant});
    });
}

TEST_CASE("the JSON of any mix is valid and says again what was found") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const auto checks = core::assess(entered(mix), proportions, tables_of(mix.system));
        const auto json = nlohmann::json::parse(report::json(result_of(mix, proportions, checks)));
        RC_ASSERT(json["totals"]["w_cm"].get<double>() == proportions.totals.w_cm);
        RC_ASSERT(json["checks"].size() == checks.size());
        RC_ASSERT(json["steps"].size() == proportions.worksheet.steps.size());
        for (const auto& row : json["ingredients"]) {
            RC_ASSERT(row["kg_m3"].is_number());
            RC_ASSERT(row["volume_m3"].is_number());
        }
        for (std::size_t i = 0; i < proportions.worksheet.steps.size(); ++i) {
            RC_ASSERT(json["steps"][i]["value"].is_number() ==
                      proportions.worksheet.steps[i].value.has_value());
        }
    });
}

TEST_CASE("the worksheet of any mix fits the page and says nothing about what is no number") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const auto checks = core::assess(entered(mix), proportions, tables_of(mix.system));
        const std::string page =
            report::text(result_of(mix, proportions, checks),
                         {.system = any_system(), .explain = perhaps("explain")});
        RC_ASSERT(page.find("nan") == std::string::npos);
        RC_ASSERT(page.find(" inf ") == std::string::npos);
        RC_ASSERT(page.find('{') == std::string::npos);
        std::size_t at = 0;
        while (at < page.size()) {
            const std::size_t end = page.find('\n', at);
            RC_ASSERT(end != std::string::npos);
            RC_ASSERT(text::display_width(page.substr(at, end - at)) <= 100);
            at = end + 1;
        }
    });
}

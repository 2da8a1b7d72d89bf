// The figures of a mix are looked at without its JSON being made; none of the JSON's may be missed.

#include "report/mix/mix_figures.hpp"

#include "report/printed.hpp"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <functional>
#include <limits>
#include <regex>
#include <stdexcept>
#include <vector>

using namespace boardmark;
using Catch::Matchers::Contains;
using test::Printed;
using Json = nlohmann::json;

namespace {

void collect(const Json& json, std::vector<double>& figures) {
    if (json.is_number_float()) {
        figures.push_back(json.get<double>());
    }
    if (json.is_structured()) {
        for (const Json& member : json) {
            collect(member, figures);
        }
    }
}

std::vector<double> figures_of_json(const std::string& text) {
    std::vector<double> figures;
    collect(Json::parse(text), figures);
    std::ranges::sort(figures);
    return figures;
}

/// Of the page that the engine on a phone makes without the JSON before it.
bool shows_what_is_not_finite(const Printed& printed, core::UnitSystem system) {
    try {
        const std::string page = report::html(printed.result(), {.system = system});
        return std::regex_search(page, std::regex{R"(\b(nan|inf)\b)"});
    } catch (const std::logic_error&) {
        return false;
    }
}

} // namespace

TEST_CASE("every figure of the JSON is looked at") {
    const auto [yaml, purpose] = GENERATE(
        table<std::string, input::Purpose>({{test::terrace, input::Purpose::proportion},
                                            {test::faulty_wall, input::Purpose::proportion},
                                            {test::submittal, input::Purpose::check}}));
    const Printed printed{yaml, purpose};
    std::vector<double> looked_at;
    report::MixFigures{[&](double figure) { looked_at.push_back(figure); }}.of(printed.result());
    std::ranges::sort(looked_at);
    const auto told = figures_of_json(printed.json());
    REQUIRE(told.size() > 20);
    CHECK(std::ranges::includes(looked_at, told));
    CHECK(report::all_finite(printed.result()));
}

TEST_CASE("one figure that is not finite is enough, the JSON names it, no page shows it") {
    const double wrong =
        GENERATE(std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
                 -std::numeric_limits<double>::infinity());
    const auto [place, put] =
        GENERATE_COPY(table<std::string, std::function<void(core::Proportions&)>>(
            {{"selection.w_cm", [=](auto& mix) { mix.selection.w_cm = wrong; }},
             {"selection.coarse_volume", [=](auto& mix) { mix.selection.coarse_volume = wrong; }},
             {"selection.mixture_temperature_c",
              [=](auto& mix) { mix.temperature = core::MixtureTemperature{.mixed_c = wrong}; }},
             {"ingredients.0.kg_m3", [=](auto& mix) { mix.ingredients[0].kg_m3 = wrong; }},
             {"ingredients.1.volume_m3", [=](auto& mix) { mix.ingredients[1].volume_m3 = wrong; }},
             {"totals.paste_percent", [=](auto& mix) { mix.totals.paste_percent = wrong; }},
             {"steps.0.value", [=](auto& mix) { mix.worksheet.steps[0].value = wrong; }}}));
    INFO(place);
    Printed printed{test::terrace};
    put(printed.proportions());
    CHECK_FALSE(report::all_finite(printed.result()));
    CHECK_THROWS_WITH(printed.json(), Contains("not finite"));
    for (const auto system : {core::UnitSystem::us, core::UnitSystem::si}) {
        CHECK_FALSE(shows_what_is_not_finite(printed, system));
    }
}

TEST_CASE("a figure that only a sentence tells counts as well") {
    Printed printed{test::terrace};
    printed.proportions().worksheet.cautions.push_back(
        {"{figure}",
         {{"figure",
           core::Quantity{std::numeric_limits<double>::infinity(), core::Measure::percent}}}});
    CHECK_FALSE(report::all_finite(printed.result()));
}

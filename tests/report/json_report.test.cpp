#include <boardmark/text/utf8.hpp>

#include "report/printed.hpp"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

using namespace boardmark;
using test::Printed;
using Json = nlohmann::ordered_json;
using Keys = std::vector<std::string>;

namespace {

Json parsed(const std::string& text) {
    return Json::parse(text);
}

Keys keys_of(const Json& object) {
    Keys keys;
    for (const auto& [key, value] : object.items()) {
        keys.push_back(key);
    }
    return keys;
}

/// Those of the promised keys, in the order in which they were written.
Keys listed(const Json& object, const Keys& promised) {
    Keys keys;
    for (const std::string& key : keys_of(object)) {
        if (std::ranges::count(promised, key) > 0) {
            keys.push_back(key);
        }
    }
    return keys;
}

/// Calls for every null in a document with the dotted path to it, list positions left out.
void for_each_null(const Json& json, const std::string& path,
                   const std::function<void(const std::string&)>& visit) {
    if (json.is_null()) {
        visit(path);
    } else if (json.is_object()) {
        for (const auto& [key, value] : json.items()) {
            for_each_null(value, path + "." + key, visit);
        }
    } else if (json.is_array()) {
        for (const Json& value : json) {
            for_each_null(value, path, visit);
        }
    }
}

// The keys that readers of the JSON are promised, in their order. Further keys may stand between.
const Keys top{"boardmark",   "command", "title",  "method", "selection",
               "ingredients", "totals",  "checks", "steps",  "cautions"};
const Keys selection{"specified_strength_mpa",
                     "required_average_strength_mpa",
                     "slump_mm",
                     "nominal_max_size_mm",
                     "air_percent",
                     "w_cm",
                     "w_cm_by_strength",
                     "w_cm_by_exposure",
                     "w_cm_governed_by",
                     "table_water_kg_m3",
                     "water_reduction_percent",
                     "water_kg_m3",
                     "binder_kg_m3",
                     "coarse_volume",
                     "fineness_modulus"};
const Keys ingredient{"name", "role", "kg_m3", "dry_kg_m3", "volume_m3"};
const Keys totals{"fresh_density_kg_m3", "volume_m3",     "water_kg_m3", "binder_kg_m3", "w_cm",
                  "paste_percent",       "mortar_percent"};
const Keys check{"id", "verdict", "value", "limit", "unit", "requirement", "source", "message"};
const Keys step{"quantity", "value", "unit", "reason", "source", "marked"};

} // namespace

TEST_CASE("the object has the promised keys in their order") {
    const std::string yaml = GENERATE(as<std::string>{}, test::terrace, test::faulty_wall);
    const Json json = parsed(Printed{yaml}.json());
    CHECK(listed(json, top) == top);
    CHECK(keys_of(json).front() == "boardmark");
    CHECK(json["boardmark"] == 1);
    CHECK(json["command"] == "proportion");
    CHECK(json["method"] == "ACI 211.1-91");
    CHECK(listed(json["selection"], selection) == selection);
    CHECK(listed(json["totals"], totals) == totals);
    for (const Json& row : json["ingredients"]) {
        CHECK(listed(row, ingredient) == ingredient);
    }
    REQUIRE_FALSE(json["checks"].empty());
    for (const Json& row : json["checks"]) {
        CHECK(listed(row, check) == check);
    }
    REQUIRE_FALSE(json["steps"].empty());
    for (const Json& row : json["steps"]) {
        CHECK(listed(row, step) == step);
    }
    for (const Json& caution : json["cautions"]) {
        CHECK(caution.is_string());
    }
}

TEST_CASE("the words of verdicts and roles and governors and marks are the promised ones") {
    const std::string yaml = GENERATE(as<std::string>{}, test::terrace, test::faulty_wall);
    const Json json = parsed(Printed{yaml}.json());
    const auto among = [](const Json& word, const Keys& words) {
        INFO(word);
        CHECK(std::ranges::count(words, word.get<std::string>()) == 1);
    };
    among(json["selection"]["w_cm_governed_by"],
          {"strength", "exposure", "minimum binder", "given"});
    for (const Json& row : json["checks"]) {
        among(row["verdict"], {"holds", "fails", "watch", "not checked"});
    }
    for (const Json& row : json["ingredients"]) {
        among(row["role"], {"water", "binder", "coarse", "fine", "admixture", "air"});
    }
    for (const Json& row : json["steps"]) {
        for (const Json& mark : row["marked"]) {
            among(mark,
                  {"given", "interpolated", "continued", "typical", "from memory", "estimate"});
        }
    }
}

TEST_CASE("what does not exist is null and nothing else is") {
    struct Row {
        std::string yaml;
        input::Purpose purpose;
        Keys absent; ///< nulls outside the checks
    };
    // Water, admixtures and air are never dry; a submittal has no method and selects nothing. No
    // temperature is stated.
    const Row row =
        GENERATE(Row{test::terrace,
                     input::Purpose::proportion,
                     {".selection.mixture_temperature_c", ".ingredients.dry_kg_m3"}},
                 Row{test::faulty_wall,
                     input::Purpose::proportion,
                     {".selection.mixture_temperature_c", ".ingredients.dry_kg_m3"}},
                 Row{test::submittal,
                     input::Purpose::check,
                     {".method", ".selection.w_cm_by_exposure", ".selection.table_water_kg_m3",
                      ".selection.water_reduction_percent", ".selection.coarse_volume",
                      ".selection.fineness_modulus", ".selection.mixture_temperature_c",
                      ".ingredients.dry_kg_m3", ".ingredients.volume_m3", ".totals.volume_m3",
                      ".totals.paste_percent", ".totals.mortar_percent"}});
    const Json json = parsed(Printed{row.yaml, row.purpose}.json());
    Keys found;
    for_each_null(json, "", [&](const std::string& path) {
        if (!path.starts_with(".checks") && std::ranges::count(found, path) == 0) {
            found.push_back(path);
        }
    });
    CHECK(found == row.absent);
}

TEST_CASE("a check that was not run has neither value nor limit and the others have a value") {
    const std::string yaml = GENERATE(as<std::string>{}, test::terrace, test::faulty_wall);
    const Json checks = parsed(Printed{yaml}.json())["checks"];
    for (const Json& row : checks) {
        INFO(row);
        if (row["verdict"] == "not checked") {
            CHECK(row["value"].is_null());
            CHECK(row["limit"].is_null());
        }
        CHECK_FALSE(row["message"].get<std::string>().empty());
        CHECK_FALSE(row["unit"].get<std::string>().empty());
    }
}

TEST_CASE("a limit that is a range is a pair from low to high") {
    const Json json = parsed(Printed{test::terrace}.json());
    bool seen = false;
    for (const Json& row : json["checks"]) {
        if (row["id"] == "air.exposure") {
            // F2 at 3/4 in asks 6.0 %, delivered within 1.5 points: ACI 318-19 19.3.3
            CHECK(row["limit"] == Json::array({4.5, 7.5}));
            seen = true;
        }
    }
    CHECK(seen);
}

TEST_CASE("no number is nan or infinite even where the input figures are odd") {
    Printed printed{test::terrace};
    printed.proportions().selection.w_cm_by_strength = std::nullopt;
    const std::string text = printed.json();
    for (const char* word : {"nan", "NaN", "inf", "Infinity"}) {
        INFO(word);
        CHECK(text.find(": " + std::string{word}) == std::string::npos);
    }
    CHECK(parsed(text)["selection"]["w_cm_by_strength"].is_null());
}

TEST_CASE("any name comes back from the JSON as it was") {
    const std::string name =
        GENERATE(as<std::string>{}, "sand", "\"quoted\"", "back\\slash", "a\nb", "\x1B[31m",
                 "\xE2\x80\xAE", "砂利", "😀", "</script>", "{value}");
    INFO(name);
    Printed printed{test::terrace};
    printed.rename(name, "title of " + name);
    const Json json = parsed(printed.json());
    CHECK(json["title"] == "title of " + name);
    CHECK(json["ingredients"][1]["name"] == name + "a");
    CHECK(parsed(printed.batch_json())["ingredients"][1]["name"] == name + "a");
}

TEST_CASE("numbers are written unrounded") {
    const Printed printed{test::terrace};
    const Json json = parsed(printed.json());
    const core::Proportions& proportions = printed.result().proportions;
    REQUIRE(json["ingredients"].size() == proportions.ingredients.size());
    for (std::size_t i = 0; i < proportions.ingredients.size(); ++i) {
        CHECK(json["ingredients"][i]["kg_m3"].get<double>() == proportions.ingredients[i].kg_m3);
        CHECK(json["ingredients"][i]["volume_m3"].get<double>() ==
              *proportions.ingredients[i].volume_m3);
    }
    CHECK(json["totals"]["w_cm"].get<double>() == proportions.totals.w_cm);
}

TEST_CASE("a batch has the promised keys in their order") {
    const Json json = parsed(Printed{test::terrace}.batch_json());
    const Keys keys{"boardmark",     "command", "title",   "volume_m3", "ingredients",
                    "free_water_kg", "w_cm",    "mass_kg", "checks",    "cautions"};
    CHECK(listed(json, keys) == keys);
    CHECK(json["command"] == "batch");
    const Keys item{"name", "role", "kg", "litres"};
    for (const Json& row : json["ingredients"]) {
        INFO(row);
        CHECK(listed(row, item) == item);
        const bool liquid = row["role"] == "water" || row["role"] == "admixture";
        CHECK(row["litres"].is_number() == liquid);
        CHECK(row["role"] != "air");
    }
}

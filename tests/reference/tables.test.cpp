#include <boardmark/reference/tables.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <vector>

using namespace boardmark;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;

namespace {

UnitSystem either_system() {
    return GENERATE(UnitSystem::us, UnitSystem::si);
}

const char* name_of(UnitSystem system) {
    return system == UnitSystem::us ? "us" : "si";
}

void check_size_row(const core::SizeRow& row, const std::string& what) {
    INFO(what);
    CHECK_FALSE(row.source.citation.empty());
    REQUIRE(row.sizes_mm.size() == row.values.size());
    CHECK(row.sizes_mm.size() >= 7);
    CHECK(std::ranges::is_sorted(row.sizes_mm, std::less_equal{}));
    CHECK(std::ranges::none_of(row.sizes_mm, [](double size) { return std::isnan(size); }));
    CHECK(std::ranges::count_if(row.values, [](double value) { return std::isnan(value); }) <= 1);
}

/// Values that are there fall from each size to the next larger one.
void check_falling(const core::SizeRow& row, const std::string& what) {
    INFO(what);
    double before = 1e9;
    for (const double value : row.values) {
        if (!std::isnan(value)) {
            CHECK(value <= before);
            before = value;
        }
    }
}

} // namespace

TEST_CASE("the tables of a system say which system they are of") {
    const UnitSystem system = either_system();
    CHECK(reference::tables(system).system == system);
}

TEST_CASE("the density of water is the one that the handbooks of the system print") {
    // 62.4 lb/ft3 × 16.018463373960138 kg/m3, and 1000 kg/m3: ACI 211.1-91
    CHECK_THAT(reference::tables(UnitSystem::us).water_density_kg_m3,
               WithinAbs(999.552114535110, 1e-9));
    CHECK(reference::tables(UnitSystem::si).water_density_kg_m3 == 1000);
}

TEST_CASE("the water table has three bands for each kind of concrete and less for larger stone") {
    const UnitSystem system = either_system();
    INFO(name_of(system));
    const core::MethodTables method = reference::tables(system).method;
    for (const auto* bands : {&method.water_plain, &method.water_air_entrained}) {
        REQUIRE(bands->size() == 3);
        for (std::size_t i = 0; i < bands->size(); ++i) {
            const core::SlumpBand& band = (*bands)[i];
            CHECK(band.low_mm < band.high_mm);
            check_size_row(band.water_kg_m3, "water");
            check_falling(band.water_kg_m3, "water");
            if (i == 0) {
                continue;
            }
            const core::SlumpBand& lower = (*bands)[i - 1];
            CHECK(lower.high_mm < band.low_mm);
            for (std::size_t size = 0; size < band.water_kg_m3.values.size(); ++size) {
                CHECK_FALSE(band.water_kg_m3.values[size] <= lower.water_kg_m3.values[size]);
            }
        }
    }
}

TEST_CASE("air-entrained concrete needs less water in every cell") {
    const UnitSystem system = either_system();
    INFO(name_of(system));
    const core::MethodTables method = reference::tables(system).method;
    for (std::size_t band = 0; band < method.water_plain.size(); ++band) {
        const auto& plain = method.water_plain[band].water_kg_m3.values;
        const auto& entrained = method.water_air_entrained[band].water_kg_m3.values;
        for (std::size_t size = 0; size < plain.size(); ++size) {
            CHECK_FALSE(entrained[size] >= plain[size]);
            CHECK(std::isnan(entrained[size]) == std::isnan(plain[size]));
        }
    }
}

TEST_CASE("the ratio falls as strength rises and air takes some of it") {
    const UnitSystem system = either_system();
    INFO(name_of(system));
    const auto rows = reference::tables(system).method.strength;
    REQUIRE(rows.size() >= 6);
    double plain = 1;
    double entrained = 1;
    bool continued = false;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        INFO("strength " << rows[i].strength_mpa);
        CHECK((i == 0 || rows[i].strength_mpa >= rows[i - 1].strength_mpa));
        CHECK((rows[i].w_cm_plain || rows[i].w_cm_air_entrained));
        CHECK_FALSE(rows[i].source.citation.empty());
        // What another work continues stands behind the method's own rows.
        CHECK((rows[i].continues || !continued));
        continued = rows[i].continues;
        if (rows[i].w_cm_plain) {
            CHECK(*rows[i].w_cm_plain < plain);
            plain = *rows[i].w_cm_plain;
        }
        if (rows[i].w_cm_air_entrained) {
            CHECK(*rows[i].w_cm_air_entrained < entrained);
            entrained = *rows[i].w_cm_air_entrained;
        }
        if (rows[i].w_cm_plain && rows[i].w_cm_air_entrained) {
            CHECK(*rows[i].w_cm_air_entrained < *rows[i].w_cm_plain);
        }
    }
}

TEST_CASE("the bulk volume falls by 0.01 for each 0.1 of fineness modulus and rises with size") {
    // ACI 211.1-91 Table 6.3.6 is exactly linear in the modulus.
    const UnitSystem system = either_system();
    INFO(name_of(system));
    const core::BulkVolumeTable table = reference::tables(system).method.bulk_volume;
    REQUIRE(table.fineness_moduli.size() == 4);
    REQUIRE(table.columns.size() == 4);
    CHECK(table.lowest_continued == 2.3);
    CHECK(table.highest_continued == 3.1);
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        check_size_row(table.columns[i], "bulk volume");
        CHECK(std::ranges::is_sorted(table.columns[i].values, std::less_equal{}));
        if (i == 0) {
            continue;
        }
        CHECK_THAT(table.fineness_moduli[i] - table.fineness_moduli[i - 1], WithinAbs(0.2, 1e-12));
        for (std::size_t size = 0; size < table.columns[i].values.size(); ++size) {
            CHECK_THAT(table.columns[i - 1].values[size] - table.columns[i].values[size],
                       WithinAbs(0.02, 1e-12));
        }
    }
}

TEST_CASE("air and fresh density stand for every size of the water table") {
    const UnitSystem system = either_system();
    INFO(name_of(system));
    const core::MethodTables method = reference::tables(system).method;
    const auto& sizes = method.water_plain.front().water_kg_m3.sizes_mm;
    check_size_row(method.entrapped_air_percent, "entrapped air");
    check_falling(method.entrapped_air_percent, "entrapped air");
    check_size_row(method.fresh_density_plain_kg_m3, "fresh density");
    check_size_row(method.fresh_density_air_entrained_kg_m3, "fresh density with air");
    CHECK(method.entrapped_air_percent.sizes_mm == sizes);
    CHECK(method.fresh_density_plain_kg_m3.sizes_mm == sizes);
    CHECK(method.fresh_density_air_entrained_kg_m3.sizes_mm == sizes);
    for (const core::SizeRow& column : method.bulk_volume.columns) {
        CHECK(column.sizes_mm == sizes);
    }
    CHECK(method.air_entrained_margin_percent == 1); // 1 point, the project's rule
}

TEST_CASE("the slump of reinforced walls is recommended in both systems") {
    // ACI 211.1-91 Table 6.3.1: 1 to 4 in, 25 to 100 mm
    const auto [system, low_mm, high_mm] = GENERATE(table<UnitSystem, double, double>(
        {{UnitSystem::us, 25.4, 101.6}, {UnitSystem::si, 25, 100}}));
    const auto slumps = reference::tables(system).method.slump;
    const auto walls = std::ranges::find(slumps, "beams and reinforced walls",
                                         &core::SlumpRecommendation::construction);
    REQUIRE(walls != slumps.end());
    CHECK_THAT(walls->low_mm, WithinAbs(low_mm, 1e-9));
    CHECK_THAT(walls->high_mm, WithinAbs(high_mm, 1e-9));
    for (const core::SlumpRecommendation& row : slumps) {
        CHECK(row.low_mm < row.high_mm);
        CHECK_FALSE(row.source.citation.empty());
    }
}

TEST_CASE("the sieves of the fineness modulus double from one to the next") {
    // CRD-C 104: 0.150 mm to 75 mm; the openings as named, so 1.18 and 2.36, 9.5 and 19
    const auto sieves = reference::tables(UnitSystem::si).method.fineness_sieves_mm;
    CHECK(sieves == std::vector<double>{0.150, 0.300, 0.600, 1.18, 2.36, 4.75, 9.5, 19, 37.5, 75});
    CHECK(reference::tables(UnitSystem::us).method.fineness_sieves_mm == sieves);
}

TEST_CASE("every class of ACI 318-19 Table 19.3.1.1 is there with its limits") {
    const UnitSystem system = either_system();
    INFO(name_of(system));
    const core::CodeTables code = reference::tables(system).code;
    CHECK(code.name == "ACI 318-19");
    std::vector<std::string> names;
    for (const core::ExposureClass& exposure : code.classes) {
        INFO(exposure.name);
        names.push_back(exposure.name);
        CHECK_FALSE(exposure.meaning.empty());
        CHECK_FALSE(exposure.limits.source.citation.empty());
        CHECK(exposure.limits.min_strength_mpa >= 17);
        CHECK(exposure.limits.min_strength_twin_mpa >= 17);
        // Zero classes ask no ratio; twins of a strength differ by the rounding of the print.
        if (exposure.name.back() == '0') {
            CHECK_FALSE(exposure.limits.max_w_cm);
        }
        CHECK(std::abs(exposure.limits.min_strength_mpa - exposure.limits.min_strength_twin_mpa) <
              0.6);
        CHECK(exposure.chloride_percent.has_value() == exposure.name.starts_with('C'));
    }
    CHECK(names == std::vector<std::string>{"F0", "F1", "F2", "F3", "S0", "S1", "S2", "S3", "W0",
                                            "W1", "W2", "C0", "C1", "C2"});
}

TEST_CASE("a severer class of a category never allows more") {
    const UnitSystem system = either_system();
    const core::CodeTables code = reference::tables(system).code;
    for (std::size_t i = 1; i < code.classes.size(); ++i) {
        const core::ExposureClass& milder = code.classes[i - 1];
        const core::ExposureClass& severer = code.classes[i];
        if (milder.category != severer.category) {
            continue;
        }
        INFO(name_of(system) << " " << milder.name << " " << severer.name);
        CHECK(severer.limits.max_w_cm.value_or(1) <= milder.limits.max_w_cm.value_or(1));
        CHECK(severer.limits.min_strength_mpa >= milder.limits.min_strength_mpa);
        CHECK(severer.chloride_percent.value_or(0) <= milder.chloride_percent.value_or(1));
    }
}

TEST_CASE("plain concrete and pozzolans have their own limits in F3 and S3 alone") {
    for (const core::ExposureClass& exposure : reference::tables(UnitSystem::us).code->classes) {
        INFO(exposure.name);
        CHECK(exposure.plain_limits.has_value() == (exposure.name == "F3"));
        CHECK(exposure.pozzolanic_limits.has_value() == (exposure.name == "S3"));
        CHECK(exposure.sulfate_cements.empty() ==
              (!exposure.name.starts_with('S') || exposure.name == "S0"));
        for (const std::string& cement : exposure.sulfate_cements) {
            CHECK(cement.starts_with("C"));
            CHECK(cement.find(' ') != std::string::npos);
        }
    }
}

TEST_CASE("air is demanded in F1 to F3 and in no other class") {
    const UnitSystem system = either_system();
    INFO(name_of(system));
    const core::CodeTables code = reference::tables(system).code;
    const core::AirRules& air = code.air;
    std::set<std::string> classes;
    for (const core::ExposureClass& exposure : code.classes) {
        if (exposure.air_percent) {
            classes.insert(exposure.name);
            check_size_row(*exposure.air_percent, exposure.name);
            check_falling(*exposure.air_percent, exposure.name);
        }
    }
    CHECK(classes == std::set<std::string>{"F1", "F2", "F3"});
    CHECK(air.tolerance_percent == 1.5);
    CHECK(air.reduction_percent == 1);
    CHECK_FALSE(air.reduction_in_other_editions.empty());
}

TEST_CASE("the caps under deicers apply to F3 and no part may exceed the whole") {
    // ACI 318-19 Table 26.4.2.2(b)
    const std::map<core::Addition, double> printed{{core::Addition::fly_ash, 25},
                                                   {core::Addition::slag_cement, 50},
                                                   {core::Addition::silica_fume, 10},
                                                   {core::Addition::total, 50},
                                                   {core::Addition::ash_and_fume, 35}};
    const core::CodeTables code = reference::tables(UnitSystem::us).code;
    for (const core::ExposureClass& exposure : code.classes) {
        INFO(exposure.name);
        CHECK(exposure.caps.size() == (exposure.name == "F3" ? printed.size() : 0));
        for (const core::Cap& cap : exposure.caps) {
            CHECK(cap.percent == printed.at(cap.addition));
            CHECK_FALSE(cap.source.citation.empty());
            const bool whole = cap.addition == core::Addition::total;
            CHECK((!whole || cap.source.confidence == core::Confidence::from_memory));
        }
    }
}

TEST_CASE("every code names its edition, and each class its meaning and the source of its limits") {
    for (const std::string& name : reference::codes()) {
        const core::CodeTables code = *reference::code(name, either_system());
        INFO(name);
        CHECK(code.name == name);
        CHECK_FALSE(code.edition.empty());
        CHECK_FALSE(code.strength_rule.empty());
        REQUIRE_FALSE(code.categories.empty());
        for (std::size_t category = 0; category < code.categories.size(); ++category) {
            INFO(code.categories[category].name);
            CHECK(std::ranges::count(code.classes, category, &core::ExposureClass::category) > 0);
        }
        for (const core::ExposureClass& exposure : code.classes) {
            INFO(exposure.name);
            CHECK_FALSE(exposure.meaning.empty());
            CHECK(exposure.limits.source.citation.starts_with(name));
        }
    }
}

TEST_CASE("a code that is not known here is none of those that are") {
    CHECK_FALSE(reference::code("ACI 318-20", either_system()));
    CHECK_FALSE(reference::code("aci 318-19", either_system()));
    CHECK(reference::code("", either_system())->name == reference::codes().front());
}

TEST_CASE("every row from a site to a class can hold and says why") {
    const std::string name = GENERATE(from_range(reference::codes()));
    INFO(name);
    const core::CodeTables code = *reference::code(name, UnitSystem::us);
    if (!code.site->is_known()) {
        return; // the code leads from no site to its classes
    }
    REQUIRE(code.site->of_category.size() == code.categories.size());
    for (std::size_t category = 0; category < code.categories.size(); ++category) {
        INFO(code.categories[category].name);
        const auto& rows = code.site->of_category[category];
        REQUIRE_FALSE(rows.empty());
        CHECK(rows.back().conditions.empty()); // some row holds for every site
        CHECK((code.several_of_category || !rows.back().asks_none)); // nothing is ruled out unasked
        for (const core::SiteRule& row : rows) {
            INFO(row.class_name << ": " << row.reason << row.missing);
            CHECK(row.reason.empty() != row.missing.empty());
            for (const core::SiteCondition& condition : row.conditions) {
                CHECK(condition.values != 0);
            }
            if (!row.class_name.empty()) {
                const core::ExposureClass* named = code.find_class(row.class_name);
                REQUIRE(named);
                CHECK(named->category == category);
            }
        }
    }
}

TEST_CASE("the factor on the standard deviation falls to one at thirty tests") {
    const UnitSystem system = either_system();
    INFO(name_of(system));
    const core::AverageStrengthRules rules = reference::tables(system).code->average_strength;
    REQUIRE(rules.factors.size() == 4);
    CHECK(rules.factors.front().tests == 15);
    CHECK(rules.factors.back().tests == 30);
    CHECK(rules.factors.back().factor == 1);
    for (std::size_t i = 1; i < rules.factors.size(); ++i) {
        CHECK(rules.factors[i].tests > rules.factors[i - 1].tests);
        CHECK(rules.factors[i].factor < rules.factors[i - 1].factor);
    }
    CHECK(rules.no_record_low_step_mpa < rules.step_mpa);
    CHECK(rules.no_record_low_margin_mpa < rules.no_record_middle_margin_mpa);
    CHECK_THAT(rules.oldest_record_d, WithinAbs(730.5, 1e-9)); // 24 × 30.4375 d
    CHECK_FALSE(rules.with_records.citation.empty());
    CHECK_FALSE(rules.without_records.citation.empty());
    CHECK(rules.without_records_above_step.confidence == core::Confidence::from_memory);
}

TEST_CASE("every material but an aggregate has a usual relative density") {
    const UnitSystem system = either_system();
    const core::PracticeTables practice = reference::tables(system).practice;
    for (const core::KindName& kind : core::all_kinds()) {
        INFO(name_of(system) << " " << kind.name);
        const bool aggregate = kind.role == core::Role::coarse || kind.role == core::Role::fine;
        const auto found = practice.relative_density.find(kind.kind);
        REQUIRE((found != practice.relative_density.end()) == !aggregate);
        if (!aggregate) {
            CHECK(found->second.value > 1);
            CHECK(found->second.value < 6);
            CHECK_FALSE(found->second.source.citation.empty());
        }
    }
}

TEST_CASE("every water reducer and nothing else has a standard's least reduction") {
    const core::PracticeTables practice = reference::tables(UnitSystem::us).practice;
    for (const core::KindName& kind : core::all_kinds()) {
        INFO(kind.name);
        CHECK(practice.standard_water_reduction_percent.contains(std::string{kind.name}) ==
              core::reduces_water(kind.kind));
    }
}

TEST_CASE("the advisory figures are there and in order") {
    const UnitSystem system = either_system();
    INFO(name_of(system));
    const core::PracticeTables practice = reference::tables(system).practice;
    CHECK(practice.lowest_sand_share_percent.value < practice.highest_sand_share_percent.value);
    CHECK(practice.strength_governs_margin.value == 0.03);
    CHECK(practice.drinking_water_chloride_percent.value == 0.025); // 250 mg/L
    for (const core::TypicalFigure* figure :
         {&practice.aggregate.relative_density, &practice.aggregate.absorption_percent,
          &practice.aggregate.dry_rodded_density_kg_m3, &practice.aggregate.fineness_modulus,
          &practice.heat_watch_kg_m3, &practice.formula_slump_mm}) {
        CHECK(figure->value > 0);
        CHECK_FALSE(figure->source.citation.empty());
    }
    // 660 lb/yd3 and 390 kg/m3; 7 in and 175 mm
    const bool us = system == UnitSystem::us;
    CHECK_THAT(practice.heat_watch_kg_m3.value, WithinAbs(us ? 391.562438030137 : 390, 1e-9));
    CHECK_THAT(practice.formula_slump_mm.value, WithinAbs(us ? 177.8 : 175, 1e-9));
}

TEST_CASE("the codes known are those of the tables") {
    CHECK(reference::codes() == std::vector<std::string>{"ACI 318-19", "ACI 318-25", "ACI 318-14",
                                                         "ACI 318-11", "EN 206", "IS 456",
                                                         "CSA A23.1", "AS 3600"});
    CHECK(reference::vocabulary().code_named("", UnitSystem::si).name == "ACI 318-19");
}

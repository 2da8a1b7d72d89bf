#pragma once

#include <boardmark/core/basis/size_row.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/method/british_tables.hpp>
#include <boardmark/core/method/indian_tables.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// Mixing water of one slump band.
struct SlumpBand {
    double low_mm;
    double high_mm;
    SizeRow water_kg_m3;
};

/// A row of the strength table: the ratio for an average strength.
struct StrengthRow {
    double strength_mpa;
    std::optional<double> w_cm_plain;
    std::optional<double> w_cm_air_entrained;
    bool continues; ///< a row of another work that carries on where the method's table ends
    Source source;
};

/// Bulk volume of coarse aggregate by size and fineness modulus of the sand.
struct BulkVolumeTable {
    std::vector<double> fineness_moduli; ///< increasing
    std::vector<SizeRow> columns;        ///< one for each fineness modulus
    double lowest_continued;             ///< the line may be continued down to this modulus
    double highest_continued;            ///< and up to this one
};

/// Slump that the method recommends for a kind of construction, consolidated by vibration.
struct SlumpRecommendation {
    std::string construction;
    double low_mm;
    double high_mm;
    Source source;
};

/// Tables of the proportioning method in one system of units. Those of ACI 211.1 are always there:
/// what every mix is held against (usual air, density, slump) stands in them.
struct MethodTables {
    std::string name;                           ///< with its edition: "ACI 211.1-91"
    std::string procedure;                      ///< "absolute volume"
    std::string finds;                          ///< how: "the stone by its dry-rodded volume"
    std::string strength_of;                    ///< "cubes" or "cylinders"
    Source absolute_volume;                     ///< what is left of the volume is fine aggregate
    std::vector<SlumpBand> water_plain;         ///< increasing bands
    std::vector<SlumpBand> water_air_entrained; ///< increasing bands
    SizeRow entrapped_air_percent;
    double air_entrained_margin_percent; ///< air this far above the entrapped means air-entrained
    std::vector<StrengthRow> strength;   ///< increasing strength
    BulkVolumeTable bulk_volume;
    SizeRow fresh_density_plain_kg_m3;
    SizeRow fresh_density_air_entrained_kg_m3;
    std::vector<SlumpRecommendation> slump;
    std::vector<double> fineness_sieves_mm; ///< the series of the fineness modulus, increasing
    Source fineness_source;
    std::optional<IndianTables> indian = {};   ///< where the method is of IS 10262
    std::optional<BritishTables> british = {}; ///< where it is of BRE
};

} // namespace boardmark::core

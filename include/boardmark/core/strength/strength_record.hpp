#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/strength/strength_line.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

enum class SpecimenShape { cylinder, cube };

/// What the specimens of a record are. Cylinders and cubes of one concrete do not show one
/// strength: no value is ever converted from one to the other.
struct SpecimenSize {
    SpecimenShape shape;
    double width_mm;  ///< diameter or edge
    double height_mm; ///< of a cube its edge
};

/// Whose rules judge the tests.
enum class AcceptanceCode { aci_318, en_206 };

/// What is judged by EN 206: the producer's conformity, or on site that a delivery belongs to it.
enum class Assessment { conformity, identity };

/// Why a batch was cast. Only production is judged; trials serve the line.
enum class BatchPurpose { production, trial };

/// A batch of concrete from which specimens were made.
struct CastBatch {
    std::string name;
    BatchPurpose purpose = BatchPurpose::production;
    std::optional<int> cast = {}; ///< days since 1970-01-01
    std::optional<double> w_cm = {};
    std::optional<double> air_percent = {};
};

/// A specimen that was crushed.
struct CrushedSpecimen {
    std::string name;
    std::size_t batch; ///< place among the batches
    double age_d;
    double strength_mpa;
};

/// A core that was drilled from the concrete of a low test.
struct DrilledCore {
    std::string name;
    std::size_t batch; ///< whose test was low, place among the batches
    double diameter_mm;
    double length_mm;                ///< as tested, with its caps
    double strength_mpa;             ///< load over section, as crushed: no factor is in it
    std::optional<int> drilled = {}; ///< days since 1970-01-01
    std::optional<double> bagged_after_h = {};
    std::optional<int> last_wetted = {};
    std::optional<int> tested = {};
};

/// Strength results of one class of concrete.
struct StrengthRecord {
    std::string title;
    UnitSystem system;
    AcceptanceCode code;
    Assessment assessment = Assessment::conformity;
    double specified_mpa;            ///< by the kind of specimen that the record holds
    std::string code_name = {};      ///< as the file states it, "EN 206"
    std::string strength_class = {}; ///< "C30/37"; empty under ACI
    double strength_age_d = 28;
    SpecimenSize specimen;
    std::vector<CastBatch> batches;             ///< in order of casting
    std::vector<CrushedSpecimen> specimens;     ///< in any order
    std::vector<DrilledCore> cores = {};        ///< in the order of the file
    std::optional<double> nominal_size_mm = {}; ///< of the stone, for the cores' diameter
};

/// The record with the specimens that were crushed within a tolerance of an age taken as of it.
StrengthRecord at_nominal_age(StrengthRecord record, double age_d, double tolerance_d);

/// A strength test: the mean of the specimens of one batch at one age.
struct StrengthTest {
    CastBatch batch;
    double age_d;
    std::vector<CrushedSpecimen> specimens; ///< in the order of the record
    double mean_mpa;
    double range_mpa; ///< highest less lowest
};

/// Places of batches: production by date of casting where all of it is dated, else as it stands;
/// then the trials.
std::vector<std::size_t> order_of_casting(const std::vector<CastBatch>& batches);

/// The tests of a record: production by batch in order of casting, then the trials; each batch by
/// age.
std::vector<StrengthTest> tests_of(const StrengthRecord& record);

/// The tests at an age of batches that state their ratio: what a line goes through.
std::vector<StrengthTest> tests_of_line(const std::vector<StrengthTest>& tests, double age_d);

/// Their points.
std::vector<LinePoint> line_points(const std::vector<StrengthTest>& tests, double age_d);

} // namespace boardmark::core

#pragma once

// What the tests of the record share: a folder that goes away, rows, the failure of a call.

#include <boardmark/record/record.hpp>

#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

namespace boardmark::test {

namespace fs = std::filesystem;

/// A folder of its own for one test.
class Place {
public:
    Place() {
        std::string name = (fs::temp_directory_path() / "boardmark-record-XXXXXX").string();
        folder_ = mkdtemp(name.data());
    }
    ~Place() { fs::remove_all(folder_); }
    Place(const Place&) = delete;
    Place& operator=(const Place&) = delete;

    std::string file(const std::string& name) const { return (folder_ / name).string(); }

private:
    fs::path folder_;
};

inline void write(const std::string& path, const std::string& text) {
    std::ofstream{path, std::ios::binary} << text;
}

inline std::string bytes_of(const std::string& path) {
    if (fs::is_directory(path)) {
        return "a directory";
    }
    std::ifstream stream{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{stream}, {}};
}

/// A trial of the quay's bench.
inline core::RecordedTrial trial(const std::string& batch, const std::string& date) {
    return {.batch = batch,
            .date = date,
            .mix = "quay-wall.yaml",
            .title = "Quay terrace, bench",
            .density_kg_m3 = 2292.25,
            .yield_m3 = 0.0424,
            .relative_yield = 1.002,
            .w_cm = 0.403,
            .slump_mm = 76.2,
            .target_slump_mm = 101.6,
            .air_percent = 6.4,
            .target_air_percent = 6,
            .gravimetric_air_percent = 6.1,
            .temperature_c = 20,
            .remark = "pumped"};
}

inline core::RecordedSpecimen specimen(const std::string& name, const std::string& batch) {
    return {.specimen = name,
            .batch = batch,
            .date = "2026-03-02",
            .mix = "quay-wall.yaml",
            .age_d = 28,
            .strength_mpa = 41.3,
            .specified_strength_mpa = 34.4737864657,
            .w_cm = {},
            .shape = "cylinder",
            .remark = ""};
}

inline record::Addition addition_of(std::vector<core::RecordedTrial> trials,
                                    std::vector<core::RecordedSpecimen> specimens = {}) {
    return {.file = "march.csv",
            .kind = "csv",
            .reporting = core::UnitSystem::us,
            .trials = std::move(trials),
            .specimens = std::move(specimens)};
}

/// The failure that a call must end with.
template <class Call>
record::Failure failure_of(Call call) {
    try {
        call();
    } catch (const record::Failure& failure) {
        return failure;
    }
    FAIL("no failure");
    return {};
}

} // namespace boardmark::test

#include <boardmark/core/strength/line_evidence.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

std::optional<double> mean_air_percent(const std::vector<StrengthTest>& tests) {
    double sum = 0;
    for (const StrengthTest& test : tests) {
        if (!test.batch.air_percent) {
            return std::nullopt;
        }
        sum += *test.batch.air_percent;
    }
    return tests.empty() ? std::nullopt : std::optional{sum / double(tests.size())};
}

std::optional<int> newest_cast(const std::vector<StrengthTest>& tests) {
    std::optional<int> newest;
    for (const StrengthTest& test : tests) {
        newest = std::max(newest, test.batch.cast);
    }
    return newest;
}

} // namespace

bool is_large(const SpecimenSize& specimen, const AciAcceptance& rules) {
    return !below(specimen.width_mm, rules.large_diameter_mm);
}

int least_specimens(const StrengthRecord& record, const StrengthTables& tables) {
    if (record.code != AcceptanceCode::aci_318) {
        return 1;
    }
    return is_large(record.specimen, tables.aci) ? tables.aci.large_specimens
                                                 : tables.aci.small_specimens;
}

bool is_of_few(const StrengthTest& test, int least) {
    return static_cast<int>(test.specimens.size()) < least;
}

std::vector<std::string> batches_of_few(const std::vector<StrengthTest>& tests, int least) {
    std::vector<std::string> names;
    for (const StrengthTest& test : tests) {
        if (is_of_few(test, least)) {
            names.push_back(test.batch.name);
        }
    }
    return names;
}

LineEvidence evidence_of_line(const std::vector<StrengthTest>& tests, double age_d, int least) {
    const auto of_line = tests_of_line(tests, age_d);
    return {mean_air_percent(of_line), batches_of_few(of_line, least), newest_cast(of_line)};
}

} // namespace boardmark::core

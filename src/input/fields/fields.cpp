#include "fields.hpp"

#include "paper_fields.hpp"

#include <vector>

namespace boardmark::input {
namespace {

constexpr std::string_view reserved[] = {
    "volume", "water", "air", "water_includes_admixtures", "water_temperature", "ice"};

std::vector<Field> joined(std::span<const Field> first, std::span<const Field> second) {
    std::vector<Field> all(first.begin(), first.end());
    all.insert(all.end(), second.begin(), second.end());
    return all;
}

} // namespace

std::span<const Field> mix_fields() {
    static const std::vector<Field> fields = joined(joined(file_fields(), material_fields()),
                                                    joined(job_fields(), dated_paper_fields()));
    return fields;
}

FieldTables mix_field_tables() {
    return FieldTables{
        std::array{file_fields(), material_fields(), job_fields(), dated_paper_fields()}};
}

std::span<const Field> yard_fields() {
    constexpr std::size_t heading =
        2; // 'boardmark' and 'title' stand in a file of materials as well
    static const std::vector<Field> fields =
        joined(file_fields().first(heading), material_fields());
    return fields;
}

std::span<const std::string_view> reserved_names() {
    return reserved;
}

} // namespace boardmark::input

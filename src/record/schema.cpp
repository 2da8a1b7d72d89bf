#include "schema.hpp"

#include <array>

namespace boardmark::record {
namespace {

// Dates are ISO 8601 text, so that they sort as they are. STRICT: a number never becomes a text.
constexpr std::string_view form_1 = R"sql(
CREATE TABLE files (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    kind TEXT NOT NULL,
    reporting TEXT NOT NULL CHECK (reporting IN ('us', 'si')),
    UNIQUE (name, kind)
) STRICT;
CREATE TABLE trials (
    id INTEGER PRIMARY KEY,
    file INTEGER NOT NULL REFERENCES files (id),
    batch TEXT NOT NULL UNIQUE,
    date TEXT NOT NULL CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    mix TEXT NOT NULL,
    title TEXT NOT NULL,
    density_kg_m3 REAL,
    yield_m3 REAL,
    relative_yield REAL,
    w_cm REAL,
    slump_mm REAL,
    target_slump_mm REAL,
    air_percent REAL,
    target_air_percent REAL,
    gravimetric_air_percent REAL
) STRICT;
CREATE TABLE specimens (
    id INTEGER PRIMARY KEY,
    file INTEGER NOT NULL REFERENCES files (id),
    specimen TEXT NOT NULL UNIQUE,
    batch TEXT NOT NULL,
    date TEXT NOT NULL CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    mix TEXT NOT NULL,
    age_d REAL NOT NULL,
    strength_mpa REAL NOT NULL,
    specified_strength_mpa REAL,
    w_cm REAL,
    shape TEXT NOT NULL
) STRICT;
)sql";

// The temperature of the concrete and remarks.
constexpr std::string_view form_2 = R"sql(
ALTER TABLE trials ADD COLUMN temperature_c REAL;
ALTER TABLE trials ADD COLUMN remark TEXT NOT NULL DEFAULT '';
ALTER TABLE specimens ADD COLUMN remark TEXT NOT NULL DEFAULT '';
)sql";

constexpr std::array all{form_1, form_2};

} // namespace

std::span<const std::string_view> migrations() {
    return all;
}

} // namespace boardmark::record

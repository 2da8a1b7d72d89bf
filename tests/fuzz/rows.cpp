// Rows of a record from CSV.

#include <boardmark/input/csv/read_rows.hpp>
#include <boardmark/input/gate/diagnostic.hpp>

#include "target.hpp"

#include <cstdint>

using namespace boardmark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const auto reading =
        input::read_rows(std::string(reinterpret_cast<const char*>(bytes), size), "rows.csv");
    fuzz::demand_text(input::render(reading.diagnostics));
    return 0;
}

// A mix file: read, worked through, written in every form; a batch where it can be ordered.

#include <boardmark/boardmark.hpp>

#include "target.hpp"

#include <cstdint>

using namespace boardmark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(bytes), size);
    const auto opened = read(text, "mix.yaml", Purpose::check, fuzz::example_files());
    fuzz::demand_text(opened.told());
    if (opened) {
        fuzz::demand_outputs(opened.value());
        fuzz::demand_text(opened.value().batch(1).told());
    }
    return 0;
}

// A trial file: read with its mix, yield and next trial found, written in every form.

#include <boardmark/boardmark.hpp>

#include "target.hpp"

#include <cstdint>

using namespace boardmark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(bytes), size);
    const auto opened = read_trial(text, "trial.yaml", fuzz::example_files());
    fuzz::demand_text(opened.told());
    if (opened) {
        fuzz::demand_outputs(opened.value());
    }
    return 0;
}

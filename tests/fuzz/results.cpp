// A file of strength results, with the CSV of its specimens: the bytes up to the first NUL are the
// results, what follows is the file that they may name 'fuzzed.csv'.

#include <boardmark/boardmark.hpp>

#include "target.hpp"

#include <cstdint>

using namespace boardmark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string both(reinterpret_cast<const char*>(bytes), size);
    const std::size_t end = both.find('\0');
    const std::string table = end == std::string::npos ? "" : both.substr(end + 1);
    const input::Loader examples = fuzz::example_files();
    const input::Loader load = [&](const std::string& name) {
        return name == "fuzzed.csv" ? std::variant<std::string, input::LoadFailure>{table}
                                    : examples(name);
    };
    constexpr int a_day = 20600; // 2026-05-27
    const auto opened = read_results(both.substr(0, end), "results.yaml", load, a_day);
    fuzz::demand_text(opened.told());
    if (opened) {
        fuzz::demand_outputs(opened.value());
    }
    return 0;
}

// Runs a target on kept inputs and on damaged copies of them, without libFuzzer: each file of the
// folders that are named, then with bytes dropped, doubled, flipped and cut as a seed says.

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size);

namespace {

void run(const std::string& bytes) {
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
}

std::string damaged(std::string bytes, std::mt19937& random) {
    const auto below = [&](std::size_t size) { return random() % (size + 1); };
    for (auto changes = 1 + below(3); changes > 0; --changes) {
        const std::size_t at = below(bytes.size());
        const std::size_t length = std::min(below(12), bytes.size() - at);
        switch (random() % 4) {
        case 0:
            bytes.erase(at, length);
            break;
        case 1:
            bytes.insert(below(bytes.size()), bytes.substr(at, length));
            break;
        case 2:
            bytes.insert(at, 1, static_cast<char>(random()));
            break;
        default:
            bytes.resize(random() % 20 == 0 ? at : bytes.size());
            break;
        }
    }
    return bytes;
}

} // namespace

int main(int count, char** words) {
    if (count < 4) {
        std::fputs("usage: replay SEED|fresh COPIES FOLDER...\n", stderr);
        return 2;
    }
    const std::string word = words[1];
    const auto seed = word == "fresh" ? std::random_device{}()
                                      : static_cast<std::uint32_t>(std::stoul(word));
    std::fprintf(stderr, "seed %u draws these copies again\n", seed); // told before anything ends it
    std::mt19937 random{seed};
    const long copies = std::strtol(words[2], nullptr, 10);
    std::size_t inputs = 0;
    for (int folder = 3; folder < count; ++folder) {
        for (const auto& entry : std::filesystem::recursive_directory_iterator{words[folder]}) {
            if (!entry.is_regular_file()) {
                continue;
            }
            std::ifstream file{entry.path(), std::ios::binary};
            const std::string bytes{std::istreambuf_iterator<char>{file}, {}};
            run(bytes);
            for (long copy = 0; copy < copies; ++copy) {
                run(damaged(bytes, random));
            }
            ++inputs;
        }
    }
    std::printf("%zu inputs and %ld damaged copies of each\n", inputs, copies);
    return inputs == 0 ? 1 : 0;
}

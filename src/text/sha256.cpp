#include <boardmark/text/sha256.hpp>

#include <algorithm>
#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>

namespace boardmark::text {
namespace {

using Word = std::uint32_t;

constexpr std::size_t block_size = 64;

// FIPS 180-4, 4.2.2: cube roots of the first sixty-four primes, the first 32 bits of the fractions.
constexpr std::array<Word, 64> round_constants{
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

// 5.3.3: square roots of the first eight primes, likewise.
constexpr std::array<Word, 8> first_state{0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                                          0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};

Word byte_at(std::string_view block, std::size_t place) {
    return static_cast<unsigned char>(block[place]);
}

std::array<Word, 64> schedule_of(std::string_view block) {
    std::array<Word, 64> words{};
    for (std::size_t t = 0; t < 16; ++t) {
        words[t] = byte_at(block, 4 * t) << 24 | byte_at(block, 4 * t + 1) << 16 |
                   byte_at(block, 4 * t + 2) << 8 | byte_at(block, 4 * t + 3);
    }
    for (std::size_t t = 16; t < 64; ++t) {
        const Word early = words[t - 15];
        const Word late = words[t - 2];
        words[t] = words[t - 16] + words[t - 7] +
                   (std::rotr(early, 7) ^ std::rotr(early, 18) ^ early >> 3) +
                   (std::rotr(late, 17) ^ std::rotr(late, 19) ^ late >> 10);
    }
    return words;
}

/// 6.2.2.
void take(std::string_view block, std::array<Word, 8>& state) {
    const auto words = schedule_of(block);
    auto [a, b, c, d, e, f, g, h] = state;
    for (std::size_t t = 0; t < 64; ++t) {
        const Word first = h + (std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25)) +
                           ((e & f) ^ (~e & g)) + round_constants[t] + words[t];
        const Word second =
            (std::rotr(a, 2) ^ std::rotr(a, 13) ^ std::rotr(a, 22)) + ((a & b) ^ (a & c) ^ (b & c));
        h = g;
        g = f;
        f = e;
        e = d + first;
        d = c;
        c = b;
        b = a;
        a = first + second;
    }
    const std::array<Word, 8> added{a, b, c, d, e, f, g, h};
    std::ranges::transform(state, added, state.begin(),
                           [](Word before, Word more) { return before + more; });
}

/// 5.1.1: what follows the last whole block, with the length in bits.
std::string ending_of(std::string_view bytes) {
    std::string ending{bytes.substr(bytes.size() / block_size * block_size)};
    ending += '\x80';
    while (ending.size() % block_size != block_size - 8) {
        ending += '\0';
    }
    const std::uint64_t bits = 8 * static_cast<std::uint64_t>(bytes.size());
    for (int shift = 56; shift >= 0; shift -= 8) {
        ending += static_cast<char>(bits >> shift & 0xff);
    }
    return ending;
}

} // namespace

std::string sha256(std::string_view bytes) {
    auto state = first_state;
    const std::string ending = ending_of(bytes);
    for (; bytes.size() >= block_size; bytes.remove_prefix(block_size)) {
        take(bytes.substr(0, block_size), state);
    }
    for (std::string_view left = ending; !left.empty(); left.remove_prefix(block_size)) {
        take(left.substr(0, block_size), state);
    }
    constexpr std::string_view digits = "0123456789abcdef";
    std::string written;
    for (const Word word : state) {
        for (int shift = 28; shift >= 0; shift -= 4) {
            written += digits[word >> shift & 0xf];
        }
    }
    return written;
}

} // namespace boardmark::text

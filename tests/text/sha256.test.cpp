#include <boardmark/text/sha256.hpp>

#include <catch2/catch.hpp>

#include <string>

using boardmark::text::sha256;

// NIST, examples of SHA-256 with FIPS 180-4: one block, two blocks; the empty text and the million
// letters from the same work's test vectors. Agree with coreutils' sha256sum.
TEST_CASE("SHA-256 of the published examples") {
    CHECK(sha256("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    CHECK(sha256("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(sha256(std::string(1'000'000, 'a')) ==
          "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

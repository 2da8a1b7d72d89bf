#include "carried_page.hpp"

#ifdef BOARDMARK_PAGE

// A megabyte goes into the program as it lies on disk; as an array it would take a compiler
// minutes.
asm(".section .rodata\n"
    "boardmark_page_begin: .incbin \"" BOARDMARK_PAGE "\"\n"
    "boardmark_page_end: .byte 0\n"
    ".previous\n"
    ".global boardmark_page_begin, boardmark_page_end\n"
    ".hidden boardmark_page_begin, boardmark_page_end\n");

extern "C" {
extern const char boardmark_page_begin[];
extern const char boardmark_page_end[];
}

namespace boardmark::commands {

std::string_view carried_page() {
    return {boardmark_page_begin, boardmark_page_end};
}

} // namespace boardmark::commands

#else

namespace boardmark::commands {

std::string_view carried_page() {
    return {};
}

} // namespace boardmark::commands

#endif

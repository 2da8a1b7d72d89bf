/* Unpacks the engine in the page: a module of 6 kB for the sake of 300. LZMA by its public-domain
   decoder; in and out lie behind the module's own data. */

#include <LzmaDec.h>

extern unsigned char __heap_base;

enum { header_size = 13 }; /* properties and size, as `xz --format=lzma` writes them */

static void* allocate(void* unused, size_t bytes) {
    static unsigned char place[1 << 16];
    (void)unused;
    return bytes <= sizeof place ? place : 0;
}

static void release(void* unused, void* place) {
    (void)unused;
    (void)place;
}

/* Where the packed bytes are to be put. */
unsigned char* packed_at(void) {
    return &__heap_base;
}

/* Unpacks to the address given; the count of bytes there, 0 where they do not make sense. */
size_t unpack(size_t packed_bytes, unsigned char* unpacked, size_t most_bytes) {
    static ISzAlloc memory = {allocate, release};
    ELzmaStatus status;
    SizeT written = most_bytes;
    SizeT read = packed_bytes - header_size;
    const Byte* packed = packed_at();
    const SRes result = LzmaDecode(unpacked, &written, packed + header_size, &read, packed, LZMA_PROPS_SIZE,
                                   LZMA_FINISH_ANY, &status, &memory);
    return result == SZ_OK ? written : 0;
}

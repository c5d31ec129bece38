/* sha256_blocks.h - the part of SHA-256 that works on whole blocks, by the processor's own
 * instructions where it has them. Private to src/type. */
#ifndef MAYDECK_SHA256_BLOCKS_H
#define MAYDECK_SHA256_BLOCKS_H

#include <stddef.h>
#include <stdint.h>

#define SHA256_BLOCK 64
#define SHA256_WORDS 8

/* FIPS 180-4 section 4.2.2. */
extern const uint32_t sha256_constants[SHA256_BLOCK];

/* Adds `count` blocks to the hash. */
typedef void sha256_blocks(uint32_t hash[SHA256_WORDS], const unsigned char *bytes, size_t count);

/* As the standard writes it; and by the instructions that x86 processors may have for it, NULL
 * where this one has none. Both give the same. */
sha256_blocks sha256_blocks_plain;
sha256_blocks *sha256_blocks_fast(void);

#endif

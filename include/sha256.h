/* sha256.h - SHA-256 (FIPS 180-4) of bytes in memory (room: type). It pins the font files
 * and the program's own texts; no library used here has
 * one. */
#ifndef MAYDECK_SHA256_H
#define MAYDECK_SHA256_H

#include <stddef.h>

/* 64 hexadecimal digits and a NUL. */
#define SHA256_TEXT 65

/* Writes the sum of `length` bytes as lower-case hexadecimal digits. */
void sha256_text(const unsigned char *bytes, size_t length, char out[SHA256_TEXT]);

#endif

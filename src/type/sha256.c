/* sha256.c - SHA-256 as FIPS 180-4 defines it (room: type). It works on bytes
 * in memory and never reads a file; names follow the standard's letters. */
#include "sha256.h"

#include <stdint.h>
#include <string.h>

#define BLOCK 64
#define WORDS 8

/* FIPS 180-4 section 4.2.2. */
static const uint32_t round_constant[BLOCK] = {
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4,
    0xab1c5ed5, 0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe,
    0x9bdc06a7, 0xc19bf174, 0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f,
    0x4a7484aa, 0x5cb0a9dc, 0x76f988da, 0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7,
    0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967, 0x27b70a85, 0x2e1b2138, 0x4d2c6dfc,
    0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85, 0xa2bfe8a1, 0xa81a664b,
    0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070, 0x19a4c116,
    0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7,
    0xc67178f2,
};

/* FIPS 180-4 section 5.3.3. */
static const uint32_t initial_hash[WORDS] = {
    0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
    0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19,
};

static uint32_t rotate(uint32_t word, unsigned bits)
{
    return (word >> bits) | (word << (32 - bits));
}

static void schedule_fill(uint32_t schedule[BLOCK], const unsigned char *block)
{
    for (size_t t = 0; t < 16; t++) {
        const unsigned char *at = block + 4 * t;
        schedule[t] = (uint32_t)at[0] << 24 | (uint32_t)at[1] << 16 | (uint32_t)at[2] << 8 | at[3];
    }
    for (size_t t = 16; t < BLOCK; t++) {
        uint32_t near = schedule[t - 2], far = schedule[t - 15];
        uint32_t sigma1 = rotate(near, 17) ^ rotate(near, 19) ^ (near >> 10);
        uint32_t sigma0 = rotate(far, 7) ^ rotate(far, 18) ^ (far >> 3);
        schedule[t] = sigma1 + schedule[t - 7] + sigma0 + schedule[t - 16];
    }
}

static void block_add(uint32_t hash[WORDS], const unsigned char *block)
{
    uint32_t schedule[BLOCK];
    uint32_t a = hash[0], b = hash[1], c = hash[2], d = hash[3];
    uint32_t e = hash[4], f = hash[5], g = hash[6], h = hash[7];

    schedule_fill(schedule, block);
    for (size_t t = 0; t < BLOCK; t++) {
        uint32_t sum1 = rotate(e, 6) ^ rotate(e, 11) ^ rotate(e, 25);
        uint32_t choice = (e & f) ^ (~e & g);
        uint32_t first = h + sum1 + choice + round_constant[t] + schedule[t];
        uint32_t sum0 = rotate(a, 2) ^ rotate(a, 13) ^ rotate(a, 22);
        uint32_t majority = (a & b) ^ (a & c) ^ (b & c);
        h = g, g = f, f = e, e = d + first;
        d = c, c = b, b = a, a = first + sum0 + majority;
    }
    hash[0] += a, hash[1] += b, hash[2] += c, hash[3] += d;
    hash[4] += e, hash[5] += f, hash[6] += g, hash[7] += h;
}

/* The rest of the message, a one bit, zeros, and the length in bits. */
static void tail_add(uint32_t hash[WORDS], const unsigned char *rest, size_t count,
                     uint64_t length)
{
    unsigned char tail[2 * BLOCK] = {0};
    size_t padded = count < BLOCK - 8 ? BLOCK : 2 * BLOCK;

    memcpy(tail, rest, count);
    tail[count] = 0x80;
    for (size_t i = 0; i < 8; i++)
        tail[padded - 1 - i] = (unsigned char)(length * 8 >> (8 * i));
    for (size_t at = 0; at < padded; at += BLOCK)
        block_add(hash, tail + at);
}

void sha256_text(const unsigned char *bytes, size_t length, char out[SHA256_TEXT])
{
    static const char digits[] = "0123456789abcdef";
    uint32_t hash[WORDS];
    size_t whole = length - length % BLOCK;

    memcpy(hash, initial_hash, sizeof hash);
    for (size_t at = 0; at < whole; at += BLOCK)
        block_add(hash, bytes + at);
    tail_add(hash, bytes + whole, length - whole, length);
    for (size_t i = 0; i + 1 < SHA256_TEXT; i++)
        out[i] = digits[hash[i / 8] >> (28 - 4 * (i % 8)) & 15];
    out[SHA256_TEXT - 1] = '\0';
}

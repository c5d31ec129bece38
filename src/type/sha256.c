/* sha256.c - SHA-256 as FIPS 180-4 defines it (room: type). It works on bytes
 * in memory and never reads a file; names follow the standard's letters. */
#include "sha256.h"

#include <string.h>

#include "sha256_blocks.h"

const uint32_t sha256_constants[SHA256_BLOCK] = {
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
static const uint32_t initial_hash[SHA256_WORDS] = {
    0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
    0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19,
};

static uint32_t rotate(uint32_t word, unsigned bits)
{
    return (word >> bits) | (word << (32 - bits));
}

/* The letters of the standard, a to h, as they stand before a round. What each round moves on by
 * one is not moved: the next round takes them by other names. */
struct letters { uint32_t a, b, c, d, e, f, g, h; };

/* d and h are the two that a round makes anew. `choice` and `majority` as in the standard, with
 * fewer steps. */
static inline void round_of(uint32_t a, uint32_t b, uint32_t c, uint32_t *d, uint32_t e,
                            uint32_t f, uint32_t g, uint32_t *h, uint32_t added)
{
    uint32_t sum1 = rotate(e ^ rotate(e ^ rotate(e, 14), 5), 6);
    uint32_t choice = g ^ (e & (f ^ g));
    uint32_t first = *h + added + choice + sum1;
    uint32_t sum0 = rotate(a ^ rotate(a ^ rotate(a, 9), 11), 2);
    uint32_t majority = (a & b) | (c & (a | b));
    *d += first;
    *h = first + sum0 + majority;
}

static inline void eight_rounds(struct letters *s, const uint32_t *words,
                                const uint32_t *constants)
{
    uint32_t a = s->a, b = s->b, c = s->c, d = s->d, e = s->e, f = s->f, g = s->g, h = s->h;

    round_of(a, b, c, &d, e, f, g, &h, words[0] + constants[0]);
    round_of(h, a, b, &c, d, e, f, &g, words[1] + constants[1]);
    round_of(g, h, a, &b, c, d, e, &f, words[2] + constants[2]);
    round_of(f, g, h, &a, b, c, d, &e, words[3] + constants[3]);
    round_of(e, f, g, &h, a, b, c, &d, words[4] + constants[4]);
    round_of(d, e, f, &g, h, a, b, &c, words[5] + constants[5]);
    round_of(c, d, e, &f, g, h, a, &b, words[6] + constants[6]);
    round_of(b, c, d, &e, f, g, h, &a, words[7] + constants[7]);
    *s = (struct letters){a, b, c, d, e, f, g, h};
}

static uint32_t word_of(const unsigned char *at)
{
    return (uint32_t)at[0] << 24 | (uint32_t)at[1] << 16 | (uint32_t)at[2] << 8 | at[3];
}

/* The schedule from word 16 on. */
static inline uint32_t scheduled(const uint32_t *schedule, size_t t)
{
    uint32_t near = schedule[t - 2], far = schedule[t - 15];
    uint32_t sigma1 = rotate(near, 17) ^ rotate(near, 19) ^ (near >> 10);
    uint32_t sigma0 = rotate(far, 7) ^ rotate(far, 18) ^ (far >> 3);

    return sigma1 + schedule[t - 7] + sigma0 + schedule[t - 16];
}

static void block_add(uint32_t hash[SHA256_WORDS], const unsigned char *block)
{
    uint32_t schedule[SHA256_BLOCK];
    struct letters s = {hash[0], hash[1], hash[2], hash[3], hash[4], hash[5], hash[6], hash[7]};

    for (size_t t = 0; t < 16; t++)
        schedule[t] = word_of(block + 4 * t);
    for (size_t t = 16; t < SHA256_BLOCK; t += 2) {
        schedule[t] = scheduled(schedule, t);
        schedule[t + 1] = scheduled(schedule, t + 1);
    }
    for (size_t t = 0; t < SHA256_BLOCK; t += 8)
        eight_rounds(&s, schedule + t, sha256_constants + t);
    hash[0] += s.a, hash[1] += s.b, hash[2] += s.c, hash[3] += s.d;
    hash[4] += s.e, hash[5] += s.f, hash[6] += s.g, hash[7] += s.h;
}

void sha256_blocks_plain(uint32_t hash[SHA256_WORDS], const unsigned char *bytes, size_t count)
{
    for (; count > 0; count--, bytes += SHA256_BLOCK)
        block_add(hash, bytes);
}

/* The rest of the message, a one bit, zeros, and the length in bits. */
static void tail_add(sha256_blocks *add, uint32_t hash[SHA256_WORDS], const unsigned char *rest,
                     size_t count, uint64_t length)
{
    unsigned char tail[2 * SHA256_BLOCK] = {0};
    size_t padded = count < SHA256_BLOCK - 8 ? SHA256_BLOCK : 2 * SHA256_BLOCK;

    memcpy(tail, rest, count);
    tail[count] = 0x80;
    for (size_t i = 0; i < 8; i++)
        tail[padded - 1 - i] = (unsigned char)(length * 8 >> (8 * i));
    add(hash, tail, padded / SHA256_BLOCK);
}

void sha256_text(const unsigned char *bytes, size_t length, char out[SHA256_TEXT])
{
    static const char digits[] = "0123456789abcdef";
    sha256_blocks *fast = sha256_blocks_fast(), *add = fast == NULL ? sha256_blocks_plain : fast;
    uint32_t hash[SHA256_WORDS];
    size_t whole = length - length % SHA256_BLOCK;

    memcpy(hash, initial_hash, sizeof hash);
    add(hash, bytes, whole / SHA256_BLOCK);
    tail_add(add, hash, bytes + whole, length - whole, length);
    for (size_t i = 0; i + 1 < SHA256_TEXT; i++)
        out[i] = digits[hash[i / 8] >> (28 - 4 * (i % 8)) & 15];
    out[SHA256_TEXT - 1] = '\0';
}

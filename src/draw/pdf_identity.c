/* pdf_identity.c - the identity of a document, which follows from all its other bytes (room:
 * draw). It tells files apart; it guards nothing. */
#include <string.h>

#include "pdf_private.h"
#include "promise.h"
#include "sha256.h"

#define ID_BYTES 16
#define LANES 4
#define LANE_FACTOR UINT64_C(0x9E3779B97F4A7C15)

void identity_reserve(HPDF_Doc document)
{
    static HPDF_BYTE zeros[ID_BYTES];
    HPDF_Array pair = HPDF_Array_New(document->mmgr);

    for (int i = 0; pair != NULL && i < 2; i++)
        HPDF_Array_Add(pair, HPDF_Binary_New(document->mmgr, zeros, ID_BYTES));
    HPDF_Dict_Add(document->trailer, "ID", pair);
}

/* Where the last `key` begins in the bytes, or NULL. */
static unsigned char *bytes_find_last(unsigned char *at, size_t length, const char *key)
{
    size_t size = strlen(key);

    for (size_t i = length < size ? 0 : length - size + 1; i > 0; i--)
        if (memcmp(at + i - 1, key, size) == 0)
            return at + i - 1;
    return NULL;
}

/* Eight bytes as a number that is the same on every machine. */
static uint64_t word_at(const unsigned char *at)
{
    return (uint64_t)at[0] | (uint64_t)at[1] << 8 | (uint64_t)at[2] << 16 |
           (uint64_t)at[3] << 24 | (uint64_t)at[4] << 32 | (uint64_t)at[5] << 40 |
           (uint64_t)at[6] << 48 | (uint64_t)at[7] << 56;
}

/* A number of all bytes, in lanes of their own. */
static void lanes_fill(const unsigned char *at, size_t length, uint64_t lanes[LANES])
{
    unsigned char rest[8 * LANES] = {0};
    size_t whole = length - length % sizeof rest;

    for (size_t i = 0; i < LANES; i++)
        lanes[i] = BYTES_HASH_START + i;
    for (size_t from = 0; from <= whole; from += sizeof rest) {
        if (from == whole)
            memcpy(rest, at + whole, length - whole);
        const unsigned char *words = from == whole ? rest : at + from;
        for (size_t i = 0; i < LANES; i++) {
            lanes[i] = (lanes[i] ^ word_at(words + 8 * i)) * LANE_FACTOR;
            lanes[i] ^= lanes[i] >> 32;
        }
    }
}

static void identity_make(const unsigned char *at, size_t length, char sum[SHA256_TEXT])
{
    uint64_t lanes[LANES + 1];
    unsigned char bytes[sizeof lanes];

    lanes_fill(at, length, lanes);
    lanes[LANES] = length;
    for (size_t i = 0; i < sizeof bytes; i++)
        bytes[i] = (unsigned char)(lanes[i / 8] >> (8 * (i % 8)) & 0xFF);
    sha256_text(bytes, sizeof bytes, sum);
}

/* Writes the identity over the zeros that keep its place in the trailer. */
bool identity_put(unsigned char *at, size_t length, struct problems *problems)
{
    static const char zeros[] = "<00000000000000000000000000000000>";
    char sum[SHA256_TEXT];

    identity_make(at, length, sum);
    for (int i = 0; i < 2; i++) {
        unsigned char *place = bytes_find_last(at, length, zeros);
        if (place == NULL) {
            problem_add(problems, SEVERITY_FAILURE, (struct place){0}, NULL,
                        "the PDF library wrote no place for the document's identity");
            return false;
        }
        promise(place + 1 + 2 * ID_BYTES <= at + length);
        memcpy(place + 1, sum, 2 * ID_BYTES);
    }
    return true;
}


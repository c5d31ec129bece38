/* baudot.c - the modified Baudot code in which beacons carry letters and figures
 * (room: radio). C/S T.001 Table A3. Never guesses: a code that is none stays so. */
#include "beacon_parts.h"

enum { BAUDOT_BITS = 6, BAUDOT_CODES = 64 };

/* By code; '.' is none. */
static const char baudot_characters[BAUDOT_CODES + 1] =
    ".5.9......4.80..3....6./-2..71...T.O HNM.LRGIPCVEZDBSYFXAWJ.UQK.";

char baudot_character(uint64_t code)
{
    char character = code < BAUDOT_CODES ? baudot_characters[code] : '.';
    return character == '.' ? '\0' : character;
}

size_t baudot_read(const char *digits, size_t first, size_t count, char *out)
{
    size_t wrong = 0;
    for (size_t i = 0; i < count; i++) {
        size_t at = first + i * BAUDOT_BITS;
        char character = baudot_character(beacon_bits(digits, at, at + BAUDOT_BITS - 1));
        if (character == '\0' && wrong == 0)
            wrong = i + 1;
        out[i] = character == '\0' ? '?' : character;
    }
    out[count] = '\0';
    return wrong;
}

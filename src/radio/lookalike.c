/* lookalike.c - letters of other alphabets that the eye takes for A to Z, and signs of
 * double width (room: radio). Never replaces one: it only tells what it may be
 * mistaken for. */
#include "administrations.h"

static const struct { uint32_t code_point; char latin; } lookalikes[] = {
    /* Greek capitals */
    {0x0391, 'A'}, {0x0392, 'B'}, {0x0395, 'E'}, {0x0396, 'Z'}, {0x0397, 'H'}, {0x0399, 'I'},
    {0x039A, 'K'}, {0x039C, 'M'}, {0x039D, 'N'}, {0x039F, 'O'}, {0x03A1, 'P'}, {0x03A4, 'T'},
    {0x03A5, 'Y'}, {0x03A7, 'X'},
    /* Cyrillic capitals */
    {0x0410, 'A'}, {0x0412, 'B'}, {0x0415, 'E'}, {0x041A, 'K'}, {0x041C, 'M'}, {0x041D, 'H'},
    {0x041E, 'O'}, {0x0420, 'P'}, {0x0421, 'C'}, {0x0422, 'T'}, {0x0423, 'Y'}, {0x0425, 'X'},
    {0x0405, 'S'}, {0x0406, 'I'}, {0x0408, 'J'}, {0x0417, '3'},
};

/* Signs of double width lie as far from ASCII as these two. */
enum { FULL_WIDTH_ZERO = 0xFF10, FULL_WIDTH_A = 0xFF21 };

char latin_lookalike(uint32_t code_point)
{
    for (size_t i = 0; i < sizeof lookalikes / sizeof lookalikes[0]; i++)
        if (lookalikes[i].code_point == code_point)
            return lookalikes[i].latin;
    if (code_point >= FULL_WIDTH_ZERO && code_point < FULL_WIDTH_ZERO + 10)
        return (char)('0' + (code_point - FULL_WIDTH_ZERO));
    if (code_point >= FULL_WIDTH_A && code_point < FULL_WIDTH_A + 26)
        return (char)('A' + (code_point - FULL_WIDTH_A));
    return 0;
}

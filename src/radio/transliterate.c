/* transliterate.c - a Latin spelling to propose for a name (room: radio).
 *
 * Tables after ICAO Doc 9303-3 (Latin, Cyrillic) and ISO 843 (Greek), letter by
 * letter; other Latin letters lose their marks (utf8proc). Context rules such as
 * Greek digraphs are left to people, and nothing here is ever printed on a card. */
#include "identity.h"

#include <string.h>
#include <utf8proc.h>

#include "text.h"
#include "utf8.h"

static const struct { uint32_t code_point; const char *latin; } letters[] = {
    /* Latin letters that do not just lose a mark */
    {0x00C4, "AE"}, {0x00C5, "AA"}, {0x00C6, "AE"}, {0x00D6, "OE"}, {0x00D8, "OE"},
    {0x0152, "OE"}, {0x00DC, "UE"}, {0x00DF, "SS"}, {0x1E9E, "SS"}, {0x0110, "D"},
    {0x00D0, "D"}, {0x0141, "L"}, {0x0131, "I"}, {0x00DE, "TH"}, {0x2019, "'"},
    /* Greek capitals */
    {0x0391, "A"}, {0x0392, "V"}, {0x0393, "G"}, {0x0394, "D"}, {0x0395, "E"}, {0x0396, "Z"},
    {0x0397, "I"}, {0x0398, "TH"}, {0x0399, "I"}, {0x039A, "K"}, {0x039B, "L"}, {0x039C, "M"},
    {0x039D, "N"}, {0x039E, "X"}, {0x039F, "O"}, {0x03A0, "P"}, {0x03A1, "R"}, {0x03A3, "S"},
    {0x03A4, "T"}, {0x03A5, "Y"}, {0x03A6, "F"}, {0x03A7, "CH"}, {0x03A8, "PS"}, {0x03A9, "O"},
    /* Cyrillic capitals */
    {0x0410, "A"}, {0x0411, "B"}, {0x0412, "V"}, {0x0413, "G"}, {0x0414, "D"}, {0x0415, "E"},
    {0x0401, "E"}, {0x0416, "ZH"}, {0x0417, "Z"}, {0x0418, "I"}, {0x0419, "I"}, {0x041A, "K"},
    {0x041B, "L"}, {0x041C, "M"}, {0x041D, "N"}, {0x041E, "O"}, {0x041F, "P"}, {0x0420, "R"},
    {0x0421, "S"}, {0x0422, "T"}, {0x0423, "U"}, {0x0424, "F"}, {0x0425, "KH"}, {0x0426, "TS"},
    {0x0427, "CH"}, {0x0428, "SH"}, {0x0429, "SHCH"}, {0x042A, "IE"}, {0x042B, "Y"},
    {0x042C, ""}, {0x042D, "E"}, {0x042E, "IU"}, {0x042F, "IA"},
    /* Serbian and Montenegrin */
    {0x0402, "D"}, {0x0408, "J"}, {0x0409, "LJ"}, {0x040A, "NJ"}, {0x040B, "C"}, {0x040F, "DZ"},
};

static const char *letter_find(uint32_t code_point)
{
    for (size_t i = 0; i < sizeof letters / sizeof letters[0]; i++)
        if (letters[i].code_point == code_point)
            return letters[i].latin;
    return NULL;
}

static bool is_plain(uint32_t code_point)
{
    return code_point > 0 && code_point < 0x80 && (strchr(" -'.&", (int)code_point) != NULL
        || (code_point >= 'A' && code_point <= 'Z') || (code_point >= '0' && code_point <= '9'));
}

/* The letter without its marks; 0 when it has none to lose. */
static uint32_t letter_without_marks(uint32_t code_point)
{
    utf8proc_int32_t parts[8];
    int boundary = 0;
    utf8proc_ssize_t count = utf8proc_decompose_char((utf8proc_int32_t)code_point, parts, 8,
                                                     UTF8PROC_DECOMPOSE, &boundary);
    if (count < 2 || count > 8)
        return 0;
    for (utf8proc_ssize_t i = 1; i < count; i++)
        if (utf8proc_category(parts[i]) != UTF8PROC_CATEGORY_MN)
            return 0;
    return (uint32_t)parts[0];
}

static bool add_letter(struct text_builder *out, uint32_t code_point)
{
    const char *latin = letter_find(code_point);
    if (latin == NULL && !is_plain(code_point)) {
        code_point = letter_without_marks(code_point);
        latin = letter_find(code_point);
    }
    if (latin == NULL && !is_plain(code_point))
        return false;
    text_add(out, latin != NULL ? latin : (char[]){(char)code_point, '\0'});
    return true;
}

const char *name_transliterate(struct arena *arena, const char *name)
{
    const char *upper = text_upper(arena, text_nfc(arena, name));
    struct text_builder out = text_builder_in(arena);
    size_t length = strlen(upper), index = 0;
    uint32_t code_point;
    while (index < length)
        if (!utf8_next(upper, length, &index, &code_point) || !add_letter(&out, code_point))
            return NULL;
    return out.at;
}

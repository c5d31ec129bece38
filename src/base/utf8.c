/* utf8.c - reading UTF-8 one code point at a time (room: base). Decoding and
 * classes are utf8proc's; what is refused is decided here. Never changes a
 * text. */
#include "utf8.h"

#include <string.h>

#include <utf8proc.h>

bool utf8_next(const char *bytes, size_t length, size_t *index, uint32_t *code_point)
{
    if (*index >= length)
        return false;
    if ((unsigned char)bytes[*index] < 0x80) {  /* most texts are nothing else */
        *code_point = (unsigned char)bytes[(*index)++];
        return true;
    }
    size_t left = length - *index;
    utf8proc_int32_t value;
    utf8proc_ssize_t taken =
        utf8proc_iterate((const utf8proc_uint8_t *)bytes + *index,
                         left > 4 ? 4 : (utf8proc_ssize_t)left, &value);

    if (taken <= 0)
        return false;
    *index += (size_t)taken;
    *code_point = (uint32_t)value;
    return true;
}

size_t utf8_first_invalid(const char *bytes, size_t length)
{
    size_t index = 0;
    uint32_t code_point;

    while (utf8_next(bytes, length, &index, &code_point))
        ;
    return index;
}

struct refused_range {
    uint32_t first, last;
    const char *why;
};

static const char direction_why[] = "an invisible character that turns the direction of writing";
static const char width_why[] = "an invisible character";
static const char stroke_why[] =
    "a mark laid over the letter before it, which then reads as struck out";

/* What the classes below do not tell, or tell less plainly. */
static const struct refused_range refused_ranges[] = {
    {.first = 0x0334, .last = 0x0338, .why = stroke_why},
    {.first = 0x034F, .last = 0x034F, .why = width_why},
    {.first = 0x0488, .last = 0x0489, .why = stroke_why},
    {.first = 0x061C, .last = 0x061C, .why = direction_why},
    {.first = 0x115F, .last = 0x1160, .why = width_why},
    {.first = 0x200B, .last = 0x200D, .why = width_why},
    {.first = 0x200E, .last = 0x200F, .why = direction_why},
    {.first = 0x202A, .last = 0x202E, .why = direction_why},
    {.first = 0x2060, .last = 0x2060, .why = width_why},
    {.first = 0x2066, .last = 0x2069, .why = direction_why},
    {.first = 0x20D0, .last = 0x20F0, .why = stroke_why},
    {.first = 0x3164, .last = 0x3164, .why = width_why},
    {.first = 0xFE00, .last = 0xFE0F, .why = width_why},
    {.first = 0xFEFF, .last = 0xFEFF, .why = "an invisible byte order mark"},
    {.first = 0xFFA0, .last = 0xFFA0, .why = width_why},
    {.first = 0xFFFD, .last = 0xFFFD, .why = "the mark of a character that was lost before"},
};

static const char *const refused_classes[UTF8PROC_CATEGORY_CO + 1] = {
    [UTF8PROC_CATEGORY_CN] = "not assigned to any character",
    [UTF8PROC_CATEGORY_CC] = "a control character",
    [UTF8PROC_CATEGORY_CF] = width_why,
    [UTF8PROC_CATEGORY_CS] = "half of a character",
    [UTF8PROC_CATEGORY_CO] = "a private character that means nothing elsewhere",
    [UTF8PROC_CATEGORY_ZL] = "an invisible line break",
    [UTF8PROC_CATEGORY_ZP] = "an invisible line break",
};

const char *utf8_refusal(uint32_t code_point)
{
    if (code_point >= ' ' && code_point <= '~')
        return NULL;
    for (size_t i = 0; i < sizeof refused_ranges / sizeof refused_ranges[0]; i++)
        if (code_point >= refused_ranges[i].first && code_point <= refused_ranges[i].last)
            return refused_ranges[i].why;
    if (code_point > 0x10FFFF)
        return refused_classes[UTF8PROC_CATEGORY_CN];
    const char *why = refused_classes[utf8proc_category((utf8proc_int32_t)code_point)];
    if (why == NULL && code_point > 0xFFFF)
        why = "a character (such as an emoji) that the cards' typefaces lack";
    return why;
}

const char *utf8_text_refusal(const char *text)
{
    size_t length = strlen(text);
    uint32_t code_point;

    for (size_t index = 0; index < length;) {
        if (!utf8_next(text, length, &index, &code_point))
            return "bytes that are no UTF-8";
        if (utf8_refusal(code_point) != NULL)
            return utf8_refusal(code_point);
    }
    return NULL;
}

bool utf8_is_letter(uint32_t code_point)
{
    utf8proc_category_t category = utf8proc_category((utf8proc_int32_t)code_point);
    return category >= UTF8PROC_CATEGORY_LU && category <= UTF8PROC_CATEGORY_ME;
}

static bool is_quotation_mark(utf8proc_category_t category)
{
    return category == UTF8PROC_CATEGORY_PI || category == UTF8PROC_CATEGORY_PF;
}

bool utf8_leans_on(uint32_t code_point)
{
    utf8proc_category_t category = utf8proc_category((utf8proc_int32_t)code_point);
    bool spanish = code_point == 0xA1 || code_point == 0xBF;
    return spanish || category == UTF8PROC_CATEGORY_PS || is_quotation_mark(category);
}

bool utf8_leans_back(uint32_t code_point)
{
    utf8proc_category_t category = utf8proc_category((utf8proc_int32_t)code_point);
    return category == UTF8PROC_CATEGORY_PE || category == UTF8PROC_CATEGORY_PO ||
           is_quotation_mark(category);
}

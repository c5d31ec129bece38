/* mmsi.c - nine digits taken apart: whose they are, and what went wrong if they are
 * not nine digits (room: radio). Structure: Rec. ITU-R M.585. Never repairs one: a
 * wrong digit sends the rescuers after another boat. */
#include "identity.h"

#include <string.h>

#include "text.h"
#include "utf8.h"

#define NO_BREAK_SPACE 0xA0
#define FIRST_WIDE_DIGIT 0xFF10
#define LAST_WIDE_DIGIT 0xFF19

static bool is_mmsi_digit(uint32_t code_point) { return code_point >= '0' && code_point <= '9'; }

static bool is_mmsi_space(uint32_t code_point)
{
    return code_point == ' ' || code_point == NO_BREAK_SPACE;
}

/* ---- damage ---- */

/* What each sign among digits tells; the first row that fits a character counts. */
static const struct { const char *signs; enum mmsi_fault fault; } telling_signs[] = {
    {.signs = "_", .fault = MMSI_UNDERSCORE},
    {.signs = ",.'", .fault = MMSI_SEPARATED},
    {.signs = "Oo", .fault = MMSI_LETTER_O},
    {.signs = "lI|", .fault = MMSI_LETTER_L},
};

/* MMSI_SOUND for a digit or space. */
static enum mmsi_fault mmsi_character_fault(uint32_t code_point)
{
    if (is_mmsi_digit(code_point) || is_mmsi_space(code_point))
        return MMSI_SOUND;
    if (code_point >= FIRST_WIDE_DIGIT && code_point <= LAST_WIDE_DIGIT)
        return MMSI_WIDE_DIGIT;
    for (size_t i = 0; i < sizeof telling_signs / sizeof telling_signs[0]; i++)
        if (code_point > 0 && code_point < 0x80 &&
            strchr(telling_signs[i].signs, (int)code_point) != NULL)
            return telling_signs[i].fault;
    return MMSI_NO_DIGIT;
}

/* True when the text is of these signs alone, and not empty. */
static bool is_made_of(const char *text, const char *signs)
{
    return text[0] != '\0' && strspn(text, signs) == strlen(text);
}

/* Somebody's word for having none. */
static bool is_words(const char *text)
{
    bool letters = false;
    for (; *text != '\0'; text++) {
        bool letter = (*text >= 'A' && *text <= 'Z') || (*text >= 'a' && *text <= 'z');
        letters = letters || letter;
        if (!letter && strchr(" _-/.?", *text) == NULL)
            return false;
    }
    return letters;
}

static bool is_exponent(const char *text)
{
    return is_mmsi_digit((unsigned char)text[0]) && strpbrk(text, "Ee") != NULL &&
           is_made_of(text, "0123456789.,+-Ee");
}

static bool ends_in_fraction(const char *text)
{
    size_t length = strlen(text);
    size_t zeros = 0;
    while (zeros < length && text[length - 1 - zeros] == '0')
        zeros++;
    return zeros > 0 && zeros < 3 && length > zeros + 1 &&
           (text[length - 1 - zeros] == '.' || text[length - 1 - zeros] == ',');
}

static bool is_kept_as_text(const char *text)
{
    return text[0] == '\'' && is_made_of(text + 1, "0123456789 ");
}

/* Damage that only the whole text shows. */
static const struct { bool (*found)(const char *text); enum mmsi_fault fault; } damages[] = {
    {.found = is_words, .fault = MMSI_WORDS},
    {.found = is_exponent, .fault = MMSI_EXPONENT},
    {.found = ends_in_fraction, .fault = MMSI_DECIMAL},
    {.found = is_kept_as_text, .fault = MMSI_APOSTROPHE},
};

static void mmsi_fault_set(struct mmsi *mmsi, enum mmsi_fault fault, size_t at, uint32_t code_point)
{
    if (mmsi->fault != MMSI_SOUND && mmsi->fault <= fault)
        return;
    mmsi->fault = fault;
    mmsi->at = at;
    mmsi->code_point = code_point;
}

/* Digits are counted and kept, the rest told. */
static void mmsi_character_take(struct mmsi *mmsi, size_t at, uint32_t code_point)
{
    if (is_mmsi_digit(code_point)) {
        if (mmsi->digit_count < MMSI_DIGITS)
            mmsi->digits[mmsi->digit_count] = (char)code_point;
        mmsi->digit_count++;
        return;
    }
    enum mmsi_fault fault = mmsi_character_fault(code_point);
    if (fault != MMSI_SOUND)
        mmsi_fault_set(mmsi, fault, at, code_point);
}

static void mmsi_characters_take(const char *text, struct mmsi *mmsi)
{
    size_t length = strlen(text), index = 0;
    bool after_space = true;
    for (size_t at = 1; index < length; at++) {
        uint32_t code_point = 0xFFFD;
        if (!utf8_next(text, length, &index, &code_point))
            index++;
        mmsi_character_take(mmsi, at, code_point);
        if (is_mmsi_space(code_point) && (after_space || index == length))
            mmsi_fault_set(mmsi, MMSI_SPACES, at, code_point);
        after_space = is_mmsi_space(code_point);
    }
    for (size_t i = 0; i < sizeof damages / sizeof damages[0]; i++)
        if (damages[i].found(text))
            mmsi_fault_set(mmsi, damages[i].fault, 0, 0);
}

/* ---- form ---- */

#define NO_MID (-1)

/* The longer beginnings first; what none of them fits is a ship's. */
static const struct { const char *start; enum mmsi_form form; int mid_at; } forms[] = {
    {.start = "00", .form = MMSI_COAST, .mid_at = 2},
    {.start = "0", .form = MMSI_GROUP, .mid_at = 1},
    {.start = "111", .form = MMSI_AIRCRAFT, .mid_at = 3},
    {.start = "1", .form = MMSI_UNASSIGNED, .mid_at = NO_MID},
    {.start = "8", .form = MMSI_HANDHELD, .mid_at = 1},
    {.start = "970", .form = MMSI_AIS_SART, .mid_at = NO_MID},
    {.start = "972", .form = MMSI_MAN_OVERBOARD, .mid_at = NO_MID},
    {.start = "974", .form = MMSI_EPIRB_AIS, .mid_at = NO_MID},
    {.start = "979", .form = MMSI_AUTONOMOUS, .mid_at = NO_MID},
    {.start = "98", .form = MMSI_TENDER, .mid_at = 2},
    {.start = "99", .form = MMSI_AID, .mid_at = 2},
    {.start = "9", .form = MMSI_UNASSIGNED, .mid_at = NO_MID},
    {.start = "", .form = MMSI_SHIP, .mid_at = 0},
};

static void form_read(struct mmsi *mmsi)
{
    size_t row = 0;
    while (!text_begins(mmsi->digits, forms[row].start))
        row++;
    mmsi->form = forms[row].form;
    if (forms[row].mid_at == NO_MID)
        return;
    memcpy(mmsi->mid, mmsi->digits + forms[row].mid_at, MID_DIGITS);
    mmsi->administration = mid_find(mmsi->mid);
}

bool mmsi_decode(const char *text, struct mmsi *mmsi)
{
    *mmsi = (struct mmsi){.fault = MMSI_SOUND, .form = MMSI_UNASSIGNED};
    mmsi_characters_take(text, mmsi);
    if (mmsi->digit_count != MMSI_DIGITS && (mmsi->fault == MMSI_SOUND ||
                                             mmsi->fault == MMSI_SPACES))
        *mmsi = (struct mmsi){.fault = MMSI_LENGTH, .form = MMSI_UNASSIGNED,
                              .digit_count = mmsi->digit_count};
    if (mmsi->fault != MMSI_SOUND) {
        memset(mmsi->digits, 0, sizeof mmsi->digits);
        return false;
    }
    form_read(mmsi);
    return true;
}

bool mmsi_decode_as(const char *text, enum mmsi_form wanted, struct mmsi *mmsi)
{
    if (!mmsi_decode(text, mmsi))
        return false;
    if (mmsi->form != wanted)
        mmsi->fault = MMSI_OTHER_FORM;
    return mmsi->form == wanted;
}

bool mmsi_looks_made_up(const struct mmsi *mmsi)
{
    const char *tail = mmsi->digits + MID_DIGITS;
    if (mmsi->digits[0] == '\0')
        return false;
    return strspn(tail, (char[]){tail[0], '\0'}) == strlen(tail) || text_equal(tail, "123456");
}

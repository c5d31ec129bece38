/* beacon.c - reads a beacon's hexadecimal identity as people write it, takes it out
 * of a whole message, and hands it to its generation (room: radio).
 * Never repairs a digit: another digit is another ship. */
#include "beacon.h"

#include <assert.h>
#include <string.h>

#include "beacon_parts.h"
#include "utf8.h"

enum {
    SHORT_MESSAGE_DIGITS = 22,   /* bits 25-112 */
    LONG_MESSAGE_DIGITS = 30,    /* bits 25-144 */
    FRAMED_MESSAGE_DIGITS = 36,  /* bits 1-144 */
    FRAME_DIGITS = FRAMED_MESSAGE_DIGITS - LONG_MESSAGE_DIGITS,
    NO_BEACON_SIGN = 0xFFFD
};

static_assert(BEACON_FAULT_COUNT <= 32, "the faults are a set of 32 bits");

/* ---- the text ---- */

/* Its digits, upper case; those past the longest message are only counted. */
struct digit_list {
    char digits[FRAMED_MESSAGE_DIGITS + 1];
    size_t count;
};

static const struct { char sign, meant; } look_alikes[] = {
    {'O', '0'}, {'I', '1'}, {'L', '1'}, {'S', '5'}, {'G', '6'}, {'Z', '2'},
};

static char upper(uint32_t code_point)
{
    if (code_point >= 'a' && code_point <= 'z')
        return (char)(code_point - 'a' + 'A');
    return code_point < 0x80 ? (char)code_point : '\0';
}

static bool is_hex_digit(char c)
{
    return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'F');
}

static void sign_refuse(struct beacon *beacon, uint32_t code_point, size_t at)
{
    beacon->sign = code_point;
    for (size_t i = 0; i < sizeof look_alikes / sizeof look_alikes[0]; i++)
        if (look_alikes[i].sign == upper(code_point)) {
            beacon->meant = look_alikes[i].meant;
            beacon_fault_add_at(beacon, BEACON_FAULT_LOOK_ALIKE, at);
            return;
        }
    beacon_fault_add_at(beacon, BEACON_FAULT_SIGN, at);
}

static void digit_keep(struct digit_list *list, char digit)
{
    if (list->count < FRAMED_MESSAGE_DIGITS)
        list->digits[list->count] = digit;
    list->count++;
}

/* False, with a fault, at the first thing that does not belong there. */
static bool beacon_digits_read(const char *text, struct beacon *beacon, struct digit_list *list)
{
    size_t length = strlen(text), index = 0;
    bool space_refused = true;
    for (size_t at = 1; index < length; at++) {
        uint32_t code_point = NO_BEACON_SIGN;
        if (utf8_next(text, length, &index, &code_point) && code_point == ' ') {
            if (space_refused || index == length) {
                beacon_fault_add_at(beacon, BEACON_FAULT_SPACE, at);
                return false;
            }
            space_refused = true;
        } else if (is_hex_digit(upper(code_point))) {
            digit_keep(list, upper(code_point));
            space_refused = false;
        } else {
            sign_refuse(beacon, code_point, at);
            return false;
        }
    }
    return true;
}

/* ---- whole messages ---- */

static const char *const frames[] = {"FFFE2F", "FFFED0" /* of a self-test */};

static bool frame_known(const char *digits)
{
    for (size_t i = 0; i < sizeof frames / sizeof frames[0]; i++)
        if (strncmp(digits, frames[i], FRAME_DIGITS) == 0)
            return true;
    return false;
}

/* The 21 check bits 86-106 of bits 25-85 (C/S T.001, the first error-correcting
 * field): what is left of them divided by the generator polynomial. */
static bool check_bits_fit(const char *message)
{
    static const uint64_t generator = 0x26D9E3;   /* 1001101101100111100011 */
    enum { DATA_BITS = 61, CHECK_BITS = 21 };
    uint64_t left = 0;
    for (size_t bit = 1; bit <= DATA_BITS + CHECK_BITS; bit++) {
        left = left << 1 | beacon_bits(message, bit, bit);
        if ((left >> CHECK_BITS & 1) != 0)
            left ^= generator;
    }
    return left == 0;
}

/* Bit 25 tells whether the message is a long one; a receiver shows a short one either as
 * it is or filled up with zeros to the digits of a long one. */
static bool length_fits(const char *message, size_t digits)
{
    if (beacon_bits(message, 1, 1) != 0)
        return digits == LONG_MESSAGE_DIGITS;
    return strspn(message + SHORT_MESSAGE_DIGITS, "0") == digits - SHORT_MESSAGE_DIGITS;
}

static void message_take(struct beacon *beacon, const struct digit_list *list)
{
    size_t frame = list->count == FRAMED_MESSAGE_DIGITS ? FRAME_DIGITS : 0;
    const char *message = list->digits + frame;
    beacon_fault_add(beacon, BEACON_FAULT_WHOLE_MESSAGE);
    if ((frame > 0 && !frame_known(list->digits)) || !length_fits(message, list->count - frame))
        beacon_fault_add(beacon, BEACON_FAULT_FRAME);
    if (!check_bits_fit(message))
        beacon_fault_add(beacon, BEACON_FAULT_CHECK_BITS);
    memset(beacon->digits, '0', BEACON_SHORT_DIGITS);
    beacon_bits_set(beacon->digits, 1, 60, beacon_bits(message, 2, 61));
}

/* False, with a fault, when there are too few or too many. */
static bool identity_take(struct beacon *beacon, const struct digit_list *list)
{
    beacon->generation = BEACON_FIRST_GENERATION;
    switch (list->count) {
    case BEACON_LONG_DIGITS:
        beacon->generation = BEACON_SECOND_GENERATION;
        memcpy(beacon->digits, list->digits, BEACON_LONG_DIGITS);
        return true;
    case BEACON_SHORT_DIGITS:
        memcpy(beacon->digits, list->digits, BEACON_SHORT_DIGITS);
        return true;
    case SHORT_MESSAGE_DIGITS:
    case LONG_MESSAGE_DIGITS:
    case FRAMED_MESSAGE_DIGITS:
        message_take(beacon, list);
        return true;
    default:
        beacon_fault_add(beacon, BEACON_FAULT_LENGTH);
        return false;
    }
}

/* ---- what follows ---- */

static void kind_judge(struct beacon *beacon)
{
    switch (beacon->kind) {
    case BEACON_KIND_NOT_TOLD:
    case BEACON_EPIRB_FLOAT_FREE:
    case BEACON_EPIRB_NOT_FLOAT_FREE:
    case BEACON_EPIRB:
    case BEACON_NATIONAL:
        break;
    case BEACON_PLB:
        beacon_fault_add(beacon, BEACON_FAULT_PLB);
        break;
    case BEACON_ELT:
        beacon_fault_add(beacon, BEACON_FAULT_AVIATION);
        break;
    case BEACON_SHIP_SECURITY:
        beacon_fault_add(beacon, BEACON_FAULT_SHIP_SECURITY);
        break;
    case BEACON_TEST:
        beacon_fault_add(beacon, BEACON_FAULT_TEST);
        break;
    case BEACON_ORBITOGRAPHY:
        beacon_fault_add(beacon, BEACON_FAULT_ORBITOGRAPHY);
        break;
    }
}

static void identity_read(struct beacon *beacon)
{
    memcpy(beacon->identity, beacon->digits, sizeof beacon->identity);
    if (beacon->generation == BEACON_SECOND_GENERATION) {
        beacon_second_read(beacon);
    } else {
        beacon_country_take(beacon, beacon_message_bits(beacon, 27, 36));
        if (beacon_message_bits(beacon, 26, 26) != 0)
            beacon_user_read(beacon);
        else
            beacon_location_read(beacon);
    }
    kind_judge(beacon);
}

struct beacon beacon_decode(const char *text)
{
    struct beacon beacon = {.outcome = BEACON_UNREADABLE};
    struct digit_list list = {.count = 0};
    bool read = beacon_digits_read(text, &beacon, &list);
    beacon.digit_count = list.count;
    if (!read || !identity_take(&beacon, &list))
        return beacon;
    identity_read(&beacon);
    beacon.outcome = beacon.faults == 0 ? BEACON_SOUND : BEACON_FAULTY;
    return beacon;
}

bool beacon_has(const struct beacon *beacon, enum beacon_fault fault)
{
    return (beacon->faults >> fault & 1U) != 0;
}

bool beacon_decodable(const struct beacon *beacon)
{
    const uint32_t decoded = UINT32_MAX << BEACON_FAULT_DEVICE_IDENTITY;
    return beacon->outcome != BEACON_UNREADABLE && (beacon->faults & ~decoded) == 0;
}

/* fuzz_codes.c - any text as the identity of a beacon, as a check code that was read off a card,
 * and as what the register keeps packed. */
#include "fuzz.h"

#include <string.h>

#include "beacon.h"
#include "capacity.h"
#include "register.h"
#include "sha256.h"
#include "text.h"

static bool is_hexadecimal(const char *text, size_t length)
{
    return strlen(text) == length && strspn(text, "0123456789ABCDEF") == length;
}

static void beacon_sound_check(const struct fuzz *fuzz, const struct beacon *beacon)
{
    bool is_long = beacon->generation == BEACON_SECOND_GENERATION &&
                   !beacon_has(beacon, BEACON_FAULT_SHORT_FORM);
    CHECK(is_hexadecimal(beacon->digits, is_long ? BEACON_LONG_DIGITS : BEACON_SHORT_DIGITS));
    CHECK(strlen(beacon->identity) == strlen(beacon->digits));
    CHECK(is_hexadecimal(beacon->identity, strlen(beacon->digits)));
    CHECK(text_is_shown(beacon_words(beacon, fuzz->arena)));
    CHECK((beacon->outcome == BEACON_SOUND) == (beacon->faults == 0));
    CHECK(beacon->country < 1024 && strlen(beacon->mmsi) <= 9 && strlen(beacon->call_sign) <= 7);
    struct beacon again = beacon_decode(beacon_grouped(beacon, fuzz->arena));
    CHECK(again.outcome != BEACON_UNREADABLE && text_equal(again.identity, beacon->identity));
    CHECK(beacon->outcome != BEACON_SOUND || again.outcome == BEACON_SOUND);
    CHECK(beacon->outcome != BEACON_SOUND || beacon_decodable(beacon));
}

static void beacon_check(const struct fuzz *fuzz)
{
    const struct beacon beacon = beacon_decode(fuzz->bytes);
    if (beacon.outcome == BEACON_UNREADABLE) {
        CHECK(beacon.faults != 0 && !beacon_decodable(&beacon));
        CHECK(beacon_words(&beacon, fuzz->arena) == NULL);
    } else {
        beacon_sound_check(fuzz, &beacon);
    }
    (void)beacon_against(&beacon, "238123456", "QTAB2", administration_find("HR"));
}

/* One sign of a code that is another is never the same code; the program says mistyped. */
static void slip_check(const struct fuzz *fuzz, const char *code)
{
    static const char signs[] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    char *slipped = arena_copy(fuzz->arena, code, strlen(code));
    const char *read = NULL, *wrong = NULL;
    size_t at = fuzz_choice(fuzz, 9);
    char sign = signs[fuzz_choice(fuzz, 32 * 31) / 31];
    if (code[at] == '-' || code[at] == sign)
        return;
    slipped[at] = sign;
    CHECK(code_read(slipped, fuzz->arena, &read, &wrong) != CODE_SOUND);
}

static void check_code_check(const struct fuzz *fuzz)
{
    const char *code = check_code_of((const unsigned char *)fuzz->bytes, fuzz->length, fuzz->arena);
    const char *read = NULL, *wrong = NULL;
    CHECK(code_read(code, fuzz->arena, &read, &wrong) == CODE_SOUND && text_equal(read, code));
    slip_check(fuzz, code);
    switch (code_read(fuzz->bytes, fuzz->arena, &read, &wrong)) {
    case CODE_SOUND:
        CHECK(code_read(read, fuzz->arena, &code, &wrong) == CODE_SOUND);
        CHECK(text_equal(code, read));
        break;
    case CODE_MISTYPED:
        CHECK(strlen(read) == 9);
        break;
    case CODE_NO_CODE:
        CHECK(!text_empty(wrong));
        break;
    }
}

/* Packing takes most of the time: of some inputs. */
enum { PACKED_ONE_IN = 16 };

static void packed_check(const struct fuzz *fuzz)
{
    const char *packed = content_pack(fuzz->bytes, fuzz->arena);
    CHECK(text_equal(content_unpack(packed, fuzz->arena), fuzz->bytes));
    const char *unpacked = content_unpack(fuzz->bytes, fuzz->arena);
    if (unpacked != NULL)
        CHECK(text_equal(content_unpack(content_pack(unpacked, fuzz->arena), fuzz->arena),
                         unpacked));
}

static void codes_one(struct fuzz *fuzz)
{
    char sum[SHA256_TEXT];
    struct fire_rating rating;
    beacon_check(fuzz);
    check_code_check(fuzz);
    if (fuzz_choice(fuzz, PACKED_ONE_IN) == 0)
        packed_check(fuzz);
    sha256_text((const unsigned char *)fuzz->bytes, fuzz->length, sum);
    CHECK(strlen(sum) == SHA256_TEXT - 1);
    (void)fire_rating_parse(fuzz->bytes, &rating);
}

const struct harness harness = {NULL, codes_one, false};

/* fuzz_identities.c - any text as an MMSI, a call sign and a name: what is sound can be said and
 * spelled, what is not is told. */
#include "fuzz.h"

#include <string.h>

#include "identity.h"
#include "radio.h"
#include "text.h"

static void mmsi_check(const struct fuzz *fuzz)
{
    struct mmsi mmsi;
    bool sound = mmsi_decode(fuzz->bytes, &mmsi);
    const char *words = mmsi_fault_words(&mmsi, fuzz->arena);
    CHECK(sound == (mmsi.fault == MMSI_SOUND) && sound == (words == NULL));
    CHECK(sound == (strlen(mmsi.digits) == MMSI_DIGITS) || !sound);
    if (!sound) {
        CHECK(text_is_shown(words));
        return;
    }
    struct mmsi again;
    const char *threes = mmsi_in_threes(fuzz->arena, mmsi.digits);
    CHECK(mmsi_decode(threes, &again) && text_equal(again.digits, mmsi.digits));
    CHECK(again.form == mmsi.form && strlen(mmsi_spelled(fuzz->arena, mmsi.digits)) > 9);
    CHECK(mmsi_form_words(mmsi.form) != NULL);
    (void)mmsi_looks_made_up(&mmsi);
    CHECK(mmsi_decode_as(fuzz->bytes, MMSI_SHIP, &again) == (mmsi.form == MMSI_SHIP));
}

static void call_sign_check(const struct fuzz *fuzz)
{
    struct call_sign sign;
    bool sound = call_sign_decode(fuzz->bytes, &sign);
    const char *words = call_sign_fault_words(&sign, fuzz->arena);
    CHECK(sound == (sign.fault == CALL_SIGN_SOUND) && sound == (words == NULL));
    if (!sound) {
        CHECK(text_is_shown(words));
        return;
    }
    CHECK(fuzz->length >= CALL_SIGN_SHORTEST && strlen(fuzz->bytes) <= CALL_SIGN_LONGEST);
    CHECK(spell(fuzz->arena, fuzz->bytes, &(uint32_t){0}) != NULL);
    CHECK((sign.series == SERIES_ALLOCATED) ==
          (sign.holder != NULL && sign.other_holder == NULL));
}

static void name_check(const struct fuzz *fuzz)
{
    struct name name, again;
    uint32_t bad = 0;
    bool sound = name_decode(fuzz->bytes, fuzz->arena, &name);
    const char *words = name_fault_words(&name, fuzz->arena);
    CHECK(sound == (name.fault == NAME_SOUND) && sound == (words == NULL));
    CHECK(sound == (name.spoken != NULL) && sound == (name.spelled != NULL));
    if (sound) {
        CHECK(name_decode(name.spoken, fuzz->arena, &again));
        CHECK(text_equal(again.spoken, name.spoken));
    } else {
        CHECK(text_is_shown(words) && text_is_shown(name_remedy(&name, fuzz->arena)));
    }
    if (name.proposal != NULL)
        CHECK(name_decode(name.proposal, fuzz->arena, &again));
    if (name.other_proposal != NULL)
        CHECK(name_decode(name.other_proposal, fuzz->arena, &again));
    (void)spell(fuzz->arena, fuzz->bytes, &bad);
}

static void identities_one(struct fuzz *fuzz)
{
    (void)mid_find(fuzz->bytes);
    (void)administration_find(fuzz->bytes);
    mmsi_check(fuzz);
    call_sign_check(fuzz);
    if (text_code_points(fuzz->bytes) >= 0)
        name_check(fuzz);
}

const struct harness harness = {NULL, identities_one, false};

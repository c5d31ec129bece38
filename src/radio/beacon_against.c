/* beacon_against.c - does a beacon's identity agree with the ship's papers (room:
 * radio). C/S T.001 A1.2.3: an MMSI-coded beacon carries the MMSI's own MID; others
 * any of their country's. Never compares what one of them does not tell. */
#include "beacon.h"

#include <string.h>

#include "text.h"


static bool administrations_differ(const struct administration *a, const struct administration *b)
{
    return a != NULL && b != NULL && !text_equal(a->administration, b->administration);
}

static unsigned mmsi_against(const struct beacon *beacon, const char *mmsi_digits)
{
    unsigned set = 0;
    if (!text_equal(beacon->mmsi + MID_DIGITS, mmsi_digits + MID_DIGITS))
        set |= BEACON_OTHER_MMSI;
    if (strncmp(beacon->mmsi, mmsi_digits, MID_DIGITS) != 0)
        set |= BEACON_OTHER_MID;
    return set;
}

unsigned beacon_against(const struct beacon *beacon, const char *mmsi_digits,
                        const char *call_sign, const struct administration *flag)
{
    bool mmsi_given = !text_empty(mmsi_digits) && strlen(mmsi_digits) > MID_DIGITS;
    unsigned set = 0;
    if (!beacon_decodable(beacon))
        return 0;
    if (beacon->call_sign[0] != '\0' && !text_empty(call_sign)
        && !text_equal(beacon->call_sign, call_sign))
        set |= BEACON_OTHER_CALL_SIGN;
    if (beacon->coding == BEACON_CODED_MMSI && mmsi_given)
        return set | mmsi_against(beacon, mmsi_digits);
    if (mmsi_given && administrations_differ(beacon->administration, mid_find(mmsi_digits)))
        set |= BEACON_OTHER_COUNTRY_MMSI;
    if (administrations_differ(beacon->administration, flag))
        set |= BEACON_OTHER_COUNTRY_FLAG;
    return set;
}

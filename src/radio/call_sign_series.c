/* call_sign_series.c - whose series a call sign is from (room: radio).
 *
 * Source: the ITU's table of international call sign series (RR Appendix 42), as
 * of RADIO_TABLES_DATED; its gaps were checked against the published list of what
 * is unallocated (4N, E8, E9, H5, J9, T9, Z4 to Z7, Z9, all of Q and others).
 * Never says whether a call sign was really issued. */
#include "administrations.h"

#include <string.h>

#include "text.h"

/* First and last of the series, and the ISO code of its holder. Where the third
 * character is a digit it counts as A. */
static const struct { const char first[4], last[4]; const char *iso; } series[] = {
    {"AAA", "ALZ", "US"}, {"AMA", "AOZ", "ES"}, {"APA", "ASZ", "PK"}, {"ATA", "AWZ", "IN"},
    {"AXA", "AXZ", "AU"}, {"AYA", "AZZ", "AR"}, {"A2A", "A2Z", "BW"}, {"A3A", "A3Z", "TO"},
    {"A4A", "A4Z", "OM"}, {"A5A", "A5Z", "BT"}, {"A6A", "A6Z", "AE"}, {"A7A", "A7Z", "QA"},
    {"A8A", "A8Z", "LR"}, {"A9A", "A9Z", "BH"},
    {"BAA", "BZZ", "CN"},
    {"CAA", "CEZ", "CL"}, {"CFA", "CKZ", "CA"}, {"CLA", "CMZ", "CU"}, {"CNA", "CNZ", "MA"},
    {"COA", "COZ", "CU"}, {"CPA", "CPZ", "BO"}, {"CQA", "CUZ", "PT"}, {"CVA", "CXZ", "UY"},
    {"CYA", "CZZ", "CA"}, {"C2A", "C2Z", "NR"}, {"C3A", "C3Z", "AD"}, {"C4A", "C4Z", "CY"},
    {"C5A", "C5Z", "GM"}, {"C6A", "C6Z", "BS"}, {"C7A", "C7Z", "WMO"}, {"C8A", "C9Z", "MZ"},
    {"DAA", "DRZ", "DE"}, {"DSA", "DTZ", "KR"}, {"DUA", "DZZ", "PH"}, {"D2A", "D3Z", "AO"},
    {"D4A", "D4Z", "CV"}, {"D5A", "D5Z", "LR"}, {"D6A", "D6Z", "KM"}, {"D7A", "D9Z", "KR"},
    {"EAA", "EHZ", "ES"}, {"EIA", "EJZ", "IE"}, {"EKA", "EKZ", "AM"}, {"ELA", "ELZ", "LR"},
    {"EMA", "EOZ", "UA"}, {"EPA", "EQZ", "IR"}, {"ERA", "ERZ", "MD"}, {"ESA", "ESZ", "EE"},
    {"ETA", "ETZ", "ET"}, {"EUA", "EWZ", "BY"}, {"EXA", "EXZ", "KG"}, {"EYA", "EYZ", "TJ"},
    {"EZA", "EZZ", "TM"}, {"E2A", "E2Z", "TH"}, {"E3A", "E3Z", "ER"}, {"E4A", "E4Z", "PS"},
    {"E5A", "E5Z", "CK"}, {"E6A", "E6Z", "NU"}, {"E7A", "E7Z", "BA"},
    {"FAA", "FZZ", "FR"},
    {"GAA", "GZZ", "GB"},
    {"HAA", "HAZ", "HU"}, {"HBA", "HBZ", "CH"}, {"HCA", "HDZ", "EC"}, {"HEA", "HEZ", "CH"},
    {"HFA", "HFZ", "PL"}, {"HGA", "HGZ", "HU"}, {"HHA", "HHZ", "HT"}, {"HIA", "HIZ", "DO"},
    {"HJA", "HKZ", "CO"}, {"HLA", "HLZ", "KR"}, {"HMA", "HMZ", "KP"}, {"HNA", "HNZ", "IQ"},
    {"HOA", "HPZ", "PA"}, {"HQA", "HRZ", "HN"}, {"HSA", "HSZ", "TH"}, {"HTA", "HTZ", "NI"},
    {"HUA", "HUZ", "SV"}, {"HVA", "HVZ", "VA"}, {"HWA", "HYZ", "FR"}, {"HZA", "HZZ", "SA"},
    {"H2A", "H2Z", "CY"}, {"H3A", "H3Z", "PA"}, {"H4A", "H4Z", "SB"}, {"H6A", "H7Z", "NI"},
    {"H8A", "H9Z", "PA"},
    {"IAA", "IZZ", "IT"},
    {"JAA", "JSZ", "JP"}, {"JTA", "JVZ", "MN"}, {"JWA", "JXZ", "NO"}, {"JYA", "JYZ", "JO"},
    {"JZA", "JZZ", "ID"}, {"J2A", "J2Z", "DJ"}, {"J3A", "J3Z", "GD"}, {"J4A", "J4Z", "GR"},
    {"J5A", "J5Z", "GW"}, {"J6A", "J6Z", "LC"}, {"J7A", "J7Z", "DM"}, {"J8A", "J8Z", "VC"},
    {"KAA", "KZZ", "US"},
    {"LAA", "LNZ", "NO"}, {"LOA", "LWZ", "AR"}, {"LXA", "LXZ", "LU"}, {"LYA", "LYZ", "LT"},
    {"LZA", "LZZ", "BG"}, {"L2A", "L9Z", "AR"},
    {"MAA", "MZZ", "GB"},
    {"NAA", "NZZ", "US"},
    {"OAA", "OCZ", "PE"}, {"ODA", "ODZ", "LB"}, {"OEA", "OEZ", "AT"}, {"OFA", "OJZ", "FI"},
    {"OKA", "OLZ", "CZ"}, {"OMA", "OMZ", "SK"}, {"ONA", "OTZ", "BE"}, {"OUA", "OZZ", "DK"},
    {"PAA", "PIZ", "NL"}, {"PJA", "PJZ", "NL"}, {"PKA", "POZ", "ID"}, {"PPA", "PYZ", "BR"},
    {"PZA", "PZZ", "SR"}, {"P2A", "P2Z", "PG"}, {"P3A", "P3Z", "CY"}, {"P4A", "P4Z", "AW"},
    {"P5A", "P9Z", "KP"},
    {"RAA", "RZZ", "RU"},
    {"SAA", "SMZ", "SE"}, {"SNA", "SRZ", "PL"}, {"SSA", "SSM", "EG"}, {"SSN", "SSZ", "SD"},
    {"STA", "STZ", "SD"}, {"SUA", "SUZ", "EG"}, {"SVA", "SZZ", "GR"}, {"S2A", "S3Z", "BD"},
    {"S5A", "S5Z", "SI"}, {"S6A", "S6Z", "SG"}, {"S7A", "S7Z", "SC"}, {"S8A", "S8Z", "ZA"},
    {"S9A", "S9Z", "ST"},
    {"TAA", "TCZ", "TR"}, {"TDA", "TDZ", "GT"}, {"TEA", "TEZ", "CR"}, {"TFA", "TFZ", "IS"},
    {"TGA", "TGZ", "GT"}, {"THA", "THZ", "FR"}, {"TIA", "TIZ", "CR"}, {"TJA", "TJZ", "CM"},
    {"TKA", "TKZ", "FR"}, {"TLA", "TLZ", "CF"}, {"TMA", "TMZ", "FR"}, {"TNA", "TNZ", "CG"},
    {"TOA", "TQZ", "FR"}, {"TRA", "TRZ", "GA"}, {"TSA", "TSZ", "TN"}, {"TTA", "TTZ", "TD"},
    {"TUA", "TUZ", "CI"}, {"TVA", "TXZ", "FR"}, {"TYA", "TYZ", "BJ"}, {"TZA", "TZZ", "ML"},
    {"T2A", "T2Z", "TV"}, {"T3A", "T3Z", "KI"}, {"T4A", "T4Z", "CU"}, {"T5A", "T5Z", "SO"},
    {"T6A", "T6Z", "AF"}, {"T7A", "T7Z", "SM"}, {"T8A", "T8Z", "PW"},
    {"UAA", "UIZ", "RU"}, {"UJA", "UMZ", "UZ"}, {"UNA", "UQZ", "KZ"}, {"URA", "UZZ", "UA"},
    {"VAA", "VGZ", "CA"}, {"VHA", "VNZ", "AU"}, {"VOA", "VOZ", "CA"}, {"VPA", "VQZ", "GB"},
    {"VRA", "VRZ", "HK"}, {"VSA", "VSZ", "GB"}, {"VTA", "VWZ", "IN"}, {"VXA", "VYZ", "CA"},
    {"VZA", "VZZ", "AU"}, {"V2A", "V2Z", "AG"}, {"V3A", "V3Z", "BZ"}, {"V4A", "V4Z", "KN"},
    {"V5A", "V5Z", "NA"}, {"V6A", "V6Z", "FM"}, {"V7A", "V7Z", "MH"}, {"V8A", "V8Z", "BN"},
    {"WAA", "WZZ", "US"},
    {"XAA", "XIZ", "MX"}, {"XJA", "XOZ", "CA"}, {"XPA", "XPZ", "DK"}, {"XQA", "XRZ", "CL"},
    {"XSA", "XSZ", "CN"}, {"XTA", "XTZ", "BF"}, {"XUA", "XUZ", "KH"}, {"XVA", "XVZ", "VN"},
    {"XWA", "XWZ", "LA"}, {"XXA", "XXZ", "MO"}, {"XYA", "XZZ", "MM"},
    {"YAA", "YAZ", "AF"}, {"YBA", "YHZ", "ID"}, {"YIA", "YIZ", "IQ"}, {"YJA", "YJZ", "VU"},
    {"YKA", "YKZ", "SY"}, {"YLA", "YLZ", "LV"}, {"YMA", "YMZ", "TR"}, {"YNA", "YNZ", "NI"},
    {"YOA", "YRZ", "RO"}, {"YSA", "YSZ", "SV"}, {"YTA", "YUZ", "RS"}, {"YVA", "YYZ", "VE"},
    {"Y2A", "Y9Z", "DE"},
    {"ZAA", "ZAZ", "AL"}, {"ZBA", "ZJZ", "GB"}, {"ZKA", "ZMZ", "NZ"}, {"ZNA", "ZOZ", "GB"},
    {"ZPA", "ZPZ", "PY"}, {"ZQA", "ZQZ", "GB"}, {"ZRA", "ZUZ", "ZA"}, {"ZVA", "ZZZ", "BR"},
    {"Z2A", "Z2Z", "ZW"}, {"Z3A", "Z3Z", "MK"}, {"Z8A", "Z8Z", "SS"},
    {"2AA", "2ZZ", "GB"},
    {"3AA", "3AZ", "MC"}, {"3BA", "3BZ", "MU"}, {"3CA", "3CZ", "GQ"}, {"3DA", "3DM", "SZ"},
    {"3DN", "3DZ", "FJ"}, {"3EA", "3FZ", "PA"}, {"3GA", "3GZ", "CL"}, {"3HA", "3UZ", "CN"},
    {"3VA", "3VZ", "TN"}, {"3WA", "3WZ", "VN"}, {"3XA", "3XZ", "GN"}, {"3YA", "3YZ", "NO"},
    {"3ZA", "3ZZ", "PL"},
    {"4AA", "4CZ", "MX"}, {"4DA", "4IZ", "PH"}, {"4JA", "4KZ", "AZ"}, {"4LA", "4LZ", "GE"},
    {"4MA", "4MZ", "VE"}, {"4OA", "4OZ", "ME"}, {"4PA", "4SZ", "LK"}, {"4TA", "4TZ", "PE"},
    {"4UA", "4UZ", "UNO"}, {"4VA", "4VZ", "HT"}, {"4WA", "4WZ", "TL"}, {"4XA", "4XZ", "IL"},
    {"4YA", "4YZ", "ICAO"}, {"4ZA", "4ZZ", "IL"},
    {"5AA", "5AZ", "LY"}, {"5BA", "5BZ", "CY"}, {"5CA", "5GZ", "MA"}, {"5HA", "5IZ", "TZ"},
    {"5JA", "5KZ", "CO"}, {"5LA", "5MZ", "LR"}, {"5NA", "5OZ", "NG"}, {"5PA", "5QZ", "DK"},
    {"5RA", "5SZ", "MG"}, {"5TA", "5TZ", "MR"}, {"5UA", "5UZ", "NE"}, {"5VA", "5VZ", "TG"},
    {"5WA", "5WZ", "WS"}, {"5XA", "5XZ", "UG"}, {"5YA", "5ZZ", "KE"},
    {"6AA", "6BZ", "EG"}, {"6CA", "6CZ", "SY"}, {"6DA", "6JZ", "MX"}, {"6KA", "6NZ", "KR"},
    {"6OA", "6OZ", "SO"}, {"6PA", "6SZ", "PK"}, {"6TA", "6UZ", "SD"}, {"6VA", "6WZ", "SN"},
    {"6XA", "6XZ", "MG"}, {"6YA", "6YZ", "JM"}, {"6ZA", "6ZZ", "LR"},
    {"7AA", "7IZ", "ID"}, {"7JA", "7NZ", "JP"}, {"7OA", "7OZ", "YE"}, {"7PA", "7PZ", "LS"},
    {"7QA", "7QZ", "MW"}, {"7RA", "7RZ", "DZ"}, {"7SA", "7SZ", "SE"}, {"7TA", "7YZ", "DZ"},
    {"7ZA", "7ZZ", "SA"},
    {"8AA", "8IZ", "ID"}, {"8JA", "8NZ", "JP"}, {"8OA", "8OZ", "BW"}, {"8PA", "8PZ", "BB"},
    {"8QA", "8QZ", "MV"}, {"8RA", "8RZ", "GY"}, {"8SA", "8SZ", "SE"}, {"8TA", "8YZ", "IN"},
    {"8ZA", "8ZZ", "SA"},
    {"9AA", "9AZ", "HR"}, {"9BA", "9DZ", "IR"}, {"9EA", "9FZ", "ET"}, {"9GA", "9GZ", "GH"},
    {"9HA", "9HZ", "MT"}, {"9IA", "9JZ", "ZM"}, {"9KA", "9KZ", "KW"}, {"9LA", "9LZ", "SL"},
    {"9MA", "9MZ", "MY"}, {"9NA", "9NZ", "NP"}, {"9OA", "9TZ", "CD"}, {"9UA", "9UZ", "BI"},
    {"9VA", "9VZ", "SG"}, {"9WA", "9WZ", "MY"}, {"9XA", "9XZ", "RW"}, {"9YA", "9ZZ", "TT"},
};

/* Series that are one character's: here the first alone tells the holder (19.50.1). */
static const struct { char first; const char *iso; } single_series[] = {
    {'B', "CN"}, {'F', "FR"}, {'G', "GB"}, {'I', "IT"}, {'K', "US"}, {'M', "GB"},
    {'N', "US"}, {'R', "RU"}, {'W', "US"}, {'2', "GB"},
};

/* Series parted between two holders by the third character, a letter. */
static const struct { const char *start, *first, *second; } halved_series[] = {
    {.start = "SS", .first = "EG", .second = "SD"},
    {.start = "3D", .first = "SZ", .second = "FJ"},
};

static const char *single_holder(char first)
{
    for (size_t i = 0; i < sizeof single_series / sizeof single_series[0]; i++)
        if (single_series[i].first == first)
            return single_series[i].iso;
    return NULL;
}

/* True, and both holders, where only a letter in third place would tell which. */
static bool is_halved(const char *call_sign, const struct administration **holder,
                      const struct administration **other)
{
    for (size_t i = 0; i < sizeof halved_series / sizeof halved_series[0]; i++)
        if (is_digit(call_sign[2]) && strncmp(call_sign, halved_series[i].start, 2) == 0) {
            *holder = administration_find(halved_series[i].first);
            *other = administration_find(halved_series[i].second);
            return true;
        }
    return false;
}

static bool is_impossible(const char *call_sign)
{
    char first = call_sign[0], second = call_sign[1];
    if (first == '0' || first == '1' || (is_digit(first) && is_digit(second)))
        return true;
    return (second == '0' || second == '1') && single_holder(first) == NULL;
}

static const char *holder_of(const char *call_sign)
{
    char key[4] = {call_sign[0], call_sign[1], is_digit(call_sign[2]) ? 'A' : call_sign[2], '\0'};
    for (size_t i = 0; i < sizeof series / sizeof series[0]; i++)
        if (strcmp(key, series[i].first) >= 0 && strcmp(key, series[i].last) <= 0)
            return series[i].iso;
    return single_holder(call_sign[0]);
}

enum series_kind call_sign_series(const char *call_sign, const struct administration **holder,
                                  const struct administration **other)
{
    *holder = NULL;
    *other = NULL;
    if (strlen(call_sign) < 3)
        return SERIES_UNALLOCATED;
    if (is_impossible(call_sign))
        return SERIES_IMPOSSIBLE;
    if (is_halved(call_sign, holder, other))
        return SERIES_HALVED;
    const char *iso = holder_of(call_sign);
    *holder = iso != NULL ? administration_find(iso) : NULL;
    return *holder != NULL ? SERIES_ALLOCATED : SERIES_UNALLOCATED;
}

const struct administration *call_sign_find(const char *call_sign)
{
    const struct administration *holder, *other;
    return call_sign_series(call_sign, &holder, &other) == SERIES_ALLOCATED ? holder : NULL;
}

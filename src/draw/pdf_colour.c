/* pdf_colour.c - which colours the numbers of a document mean (room: draw): sRGB, told by an
 * output intent with a profile of the kind that ICC.1:2010 calls three-component matrix-based.
 * The profile is made here from the numbers of IEC 61966-2-1, so that no file has to be shipped. */
#include "pdf_private.h"

#include "promise.h"

#define PROFILE_NAME "sRGB"
#define PROFILE_RIGHTS "No rights reserved"
#define HEADER_LENGTH 128
#define TAG_ENTRY 12               /* bytes of a tag in the table */
#define TAG_COUNT 10
#define PROFILE_MOST 1024

/* Bytes being written, numbers with the high byte first. */
struct profile {
    unsigned char at[PROFILE_MOST];
    uint32_t length;
};

static void u16_add(struct profile *profile, uint32_t number)
{
    promise(profile->length + 2 <= PROFILE_MOST);
    profile->at[profile->length++] = (unsigned char)(number >> 8 & 0xFF);
    profile->at[profile->length++] = (unsigned char)(number & 0xFF);
}

static void u32_add(struct profile *profile, uint32_t number)
{
    u16_add(profile, number >> 16);
    u16_add(profile, number & 0xFFFF);
}

/* Four letters. */
static void name_add(struct profile *profile, const char *name)
{
    u16_add(profile, (uint32_t)(unsigned char)name[0] << 8 | (unsigned char)name[1]);
    u16_add(profile, (uint32_t)(unsigned char)name[2] << 8 | (unsigned char)name[3]);
}

static void zeros_add(struct profile *profile, int words)
{
    for (int i = 0; i < words; i++)
        u32_add(profile, 0);
}

/* ---- the values of the tags; numbers are in 65536ths ---- */

static const int32_t d50[] = {63190, 65536, 54061};
static const int32_t red[] = {28576, 14581, 912}, green[] = {25239, 46983, 6361},
                     blue[] = {9375, 3972, 46787};

/* From the white of sRGB, D65, to that of profiles, D50: Bradford. */
static const int32_t adaptation[] = {68674, 1502, -3291, 1939, 64912, -1119, -606, 988, 49262};

/* Gamma, then a, b, c and d: (ax + b)^gamma from d on, cx below it. */
static const int32_t curve[] = {157286, 62119, 3417, 5072, 2651};
#define CURVE_TYPE 3

static void numbers_add(struct profile *profile, const char *type, const int32_t *numbers,
                        size_t count)
{
    name_add(profile, type);
    u32_add(profile, 0);
    for (size_t i = 0; i < count; i++)
        u32_add(profile, (uint32_t)numbers[i]);
}

static void curve_add(struct profile *profile)
{
    name_add(profile, "para");
    u32_add(profile, 0);
    u32_add(profile, (uint32_t)CURVE_TYPE << 16);
    for (size_t i = 0; i < sizeof curve / sizeof *curve; i++)
        u32_add(profile, (uint32_t)curve[i]);
}

/* One text, in English, as UTF-16; to a multiple of four bytes. */
static void words_of_profile_add(struct profile *profile, const char *words, size_t length)
{
    name_add(profile, "mluc");
    u32_add(profile, 0);
    u32_add(profile, 1);
    u32_add(profile, TAG_ENTRY);
    name_add(profile, "enUS");
    u32_add(profile, (uint32_t)length * 2);
    u32_add(profile, 28);
    for (size_t i = 0; i < length; i++)
        u16_add(profile, (unsigned char)words[i]);
    if (length % 2 != 0)
        u16_add(profile, 0);
}

/* ---- the profile ---- */

/* A display profile of version 4.2 without a day, a maker or a sum of its own. */
static void header_add(struct profile *profile)
{
    u32_add(profile, 0);                        /* its length: when it is known */
    u32_add(profile, 0);
    u32_add(profile, 0x04200000);
    name_add(profile, "mntr");
    name_add(profile, "RGB ");
    name_add(profile, "XYZ ");
    zeros_add(profile, 3);
    name_add(profile, "acsp");
    zeros_add(profile, 7);
    for (size_t i = 0; i < 3; i++)
        u32_add(profile, (uint32_t)d50[i]);
    zeros_add(profile, 12);
    promise(profile->length == HEADER_LENGTH);
}

static void number_put(struct profile *profile, uint32_t at, uint32_t number)
{
    struct profile part = {.length = 0};

    u32_add(&part, number);
    for (uint32_t i = 0; i < part.length; i++)
        profile->at[at + i] = part.at[i];
}

/* Writes what stands from `from` to the end into the table as the next tag of that name. */
static void tag_put(struct profile *profile, uint32_t *entry, const char *name, uint32_t from)
{
    struct profile letters = {.length = 0};

    name_add(&letters, name);
    for (uint32_t i = 0; i < letters.length; i++)
        profile->at[*entry + i] = letters.at[i];
    number_put(profile, *entry + 4, from);
    number_put(profile, *entry + 8, profile->length - from);
    *entry += TAG_ENTRY;
}

static void colours_of_profile_add(struct profile *profile, uint32_t *entry)
{
    static const struct { const char *name; const int32_t *numbers; } points[] = {
        {"wtpt", d50}, {"rXYZ", red}, {"gXYZ", green}, {"bXYZ", blue}};
    static const char *const curves[] = {"rTRC", "gTRC", "bTRC"};
    uint32_t from;

    for (size_t i = 0; i < sizeof points / sizeof *points; i++) {
        from = profile->length;
        numbers_add(profile, "XYZ ", points[i].numbers, 3);
        tag_put(profile, entry, points[i].name, from);
    }
    from = profile->length;
    numbers_add(profile, "sf32", adaptation, sizeof adaptation / sizeof *adaptation);
    tag_put(profile, entry, "chad", from);
    from = profile->length;
    curve_add(profile);
    for (size_t i = 0; i < sizeof curves / sizeof *curves; i++)
        tag_put(profile, entry, curves[i], from);
}

static void profile_make(struct profile *profile)
{
    uint32_t entry = HEADER_LENGTH + 4, from;

    header_add(profile);
    u32_add(profile, TAG_COUNT);
    zeros_add(profile, TAG_COUNT * TAG_ENTRY / 4);
    from = profile->length;
    words_of_profile_add(profile, PROFILE_NAME, sizeof PROFILE_NAME - 1);
    tag_put(profile, &entry, "desc", from);
    from = profile->length;
    words_of_profile_add(profile, PROFILE_RIGHTS, sizeof PROFILE_RIGHTS - 1);
    tag_put(profile, &entry, "cprt", from);
    colours_of_profile_add(profile, &entry);
    promise(entry == HEADER_LENGTH + 4 + TAG_COUNT * TAG_ENTRY);
    number_put(profile, 0, profile->length);
}

/* The subtype is the one for documents that name their colours by a profile; it claims nothing
 * else of the document. */
void colours_add(struct pdf_file *file)
{
    HPDF_Doc document = file->document;
    struct profile *profile = arena_alloc(file->arena, sizeof *profile);
    HPDF_Array intents = HPDF_Array_New(document->mmgr);
    HPDF_Dict intent = HPDF_Dict_New(document->mmgr);

    profile_make(profile);
    HPDF_Dict stream = stream_new(file, profile->at, profile->length);
    if (intents == NULL || intent == NULL || stream == NULL)
        return;
    HPDF_Dict_AddNumber(stream, "N", 3);
    HPDF_Dict_AddName(intent, "Type", "OutputIntent");
    HPDF_Dict_AddName(intent, "S", "GTS_PDFA1");
    HPDF_Dict_Add(intent, "OutputConditionIdentifier",
                  HPDF_String_New(document->mmgr, PROFILE_NAME, NULL));
    HPDF_Dict_Add(intent, "Info", HPDF_String_New(document->mmgr, PROFILE_NAME, NULL));
    HPDF_Dict_Add(intent, "DestOutputProfile", stream);
    HPDF_Array_Add(intents, intent);
    HPDF_Dict_Add(document->catalog, "OutputIntents", intents);
}

/* pdf_look.c - looks whether a PDF is whole (room: draw). Of what is told anyhow, that a byte of
 * it is another, only the sum of the file knows. */
#include "pdf_look.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "look.h"
#include "packing.h"
#include "text.h"

enum { ENTRY_LENGTH = 20, PLACE_DIGITS = 10 };
#define OBJECTS_MOST ((size_t)1 << 22)

/* A file that is being looked at: where its objects begin, and which number each has. */
struct looking {
    struct bytes pdf;
    struct arena *arena;
    size_t table;                  /* byte of the table of objects */
    size_t *places;                /* of each object by its number; 0: there is none */
    size_t count, room;
    size_t *sorted;                /* the same in their order in the file, and the table last */
    size_t sorted_count;
    struct pdf_look look;
};

/* Always false; the first thing that is wrong is told. */
static bool look_refuse(struct looking *looking, const char *wrong)
{
    if (looking->look.wrong == NULL)
        looking->look.wrong = wrong;
    return false;
}

/* ---- bytes ---- */

bool bytes_stand_at(struct bytes bytes, size_t at, const char *word)
{
    size_t length = strlen(word);
    return at <= bytes.length && length <= bytes.length - at &&
           memcmp(bytes.at + at, word, length) == 0;
}

size_t bytes_find(struct bytes bytes, size_t from, size_t to, const char *word)
{
    size_t length = strlen(word);
    while (from < to && length <= to - from) {
        const unsigned char *found = memchr(bytes.at + from, word[0], to - from);
        if (found == NULL)
            break;
        from = (size_t)(found - bytes.at);
        if (length <= to - from && memcmp(found, word, length) == 0)
            return from;
        from++;
    }
    return BYTES_NOWHERE;
}

static bool is_blank(unsigned char byte)
{
    return byte == ' ' || byte == '\n' || byte == '\r' || byte == '\t' || byte == '\0' ||
           byte == '\f';
}

static size_t blanks_skip(struct bytes bytes, size_t at)
{
    while (at < bytes.length && is_blank(bytes.at[at]))
        at++;
    return at;
}

/* Reads a number and moves behind it; false: there is none. */
static bool number_read(struct bytes bytes, size_t *at, size_t *number)
{
    size_t begin = *at;
    *number = 0;
    while (*at < bytes.length && is_digit((char)bytes.at[*at]) && *at - begin < PLACE_DIGITS)
        *number = 10 * *number + (size_t)(bytes.at[(*at)++] - '0');
    return *at > begin;
}

/* "12 0 obj": its number, and where its content begins. */
static bool object_head(struct bytes bytes, size_t at, size_t *number, size_t *content)
{
    size_t generation;
    if (!number_read(bytes, &at, number))
        return false;
    at = blanks_skip(bytes, at);
    if (!number_read(bytes, &at, &generation))
        return false;
    at = blanks_skip(bytes, at);
    *content = at + strlen("obj");
    return bytes_stand_at(bytes, at, "obj");
}

/* ---- head and end ---- */

static bool ends_look(struct looking *looking)
{
    struct bytes pdf = looking->pdf;
    size_t end = pdf.length, at;
    if (!bytes_stand_at(pdf, 0, "%PDF-"))
        return look_refuse(looking, pdf.length == 0 ? "it is empty" : "it does not begin as a PDF");
    while (end > 0 && is_blank(pdf.at[end - 1]))
        end--;
    if (end < strlen("%%EOF") || !bytes_stand_at(pdf, end - strlen("%%EOF"), "%%EOF"))
        return look_refuse(looking, "its end is missing");
    at = end - strlen("%%EOF");
    while (at > 0 && is_blank(pdf.at[at - 1]))
        at--;
    while (at > 0 && is_digit((char)pdf.at[at - 1]))
        at--;
    size_t number = at, begin = at;
    if (!number_read(pdf, &number, &looking->table) || looking->table >= begin)
        return look_refuse(looking, "its end does not lead to the table of its objects");
    while (begin > 0 && is_blank(pdf.at[begin - 1]))
        begin--;
    return (begin >= strlen("startxref") &&
            bytes_stand_at(pdf, begin - strlen("startxref"), "startxref")) ||
           look_refuse(looking, "its end does not lead to the table of its objects");
}

/* ---- the table of objects ---- */

/* "0000012345 00000 n" of object `number`. */
static bool entry_take(struct looking *looking, size_t at, size_t number)
{
    size_t place, generation, begin = at;
    bool good = at + ENTRY_LENGTH <= looking->pdf.length &&
                number_read(looking->pdf, &at, &place) && at == begin + PLACE_DIGITS &&
                number_read(looking->pdf, &(size_t){at + 1}, &generation);
    unsigned char kind = good ? looking->pdf.at[begin + ENTRY_LENGTH - 3] : '\0';
    if (!good || (kind != 'n' && kind != 'f') || number >= OBJECTS_MOST)
        return look_refuse(looking, "the table of its objects is damaged");
    if (kind == 'n')
        looking->places[number] = place;
    return true;
}

/* Room is doubled, so that many small sections take no more than one. */
static void places_grow(struct looking *looking, size_t count)
{
    if (count > looking->room) {
        looking->room = count > 2 * looking->room ? count : 2 * looking->room;
        size_t *places = arena_array(looking->arena, looking->room, sizeof *places);
        for (size_t i = 0; i < looking->count; i++)
            places[i] = looking->places[i];
        looking->places = places;
    }
    looking->count = count > looking->count ? count : looking->count;
}

/* One section: the first number, how many, and so many entries. */
static bool section_take(struct looking *looking, size_t *at)
{
    size_t first, count;
    bool good = number_read(looking->pdf, at, &first);
    *at = blanks_skip(looking->pdf, *at);
    good = good && number_read(looking->pdf, at, &count);
    *at = blanks_skip(looking->pdf, *at);
    if (!good || count > (looking->pdf.length - *at) / ENTRY_LENGTH || first >= OBJECTS_MOST ||
        first + count > OBJECTS_MOST)
        return look_refuse(looking, "the table of its objects is damaged");
    places_grow(looking, first + count);
    for (size_t i = 0; i < count; i++, *at += ENTRY_LENGTH)
        if (!entry_take(looking, *at, first + i))
            return false;
    return true;
}

static bool table_look(struct looking *looking)
{
    size_t at = blanks_skip(looking->pdf, looking->table + strlen("xref")), sections = 0;
    while (at < looking->pdf.length && is_digit((char)looking->pdf.at[at])) {
        if (!section_take(looking, &at))
            return false;
        at = blanks_skip(looking->pdf, at);
        sections++;
    }
    return (sections > 0 && bytes_stand_at(looking->pdf, at, "trailer") &&
            bytes_find(looking->pdf, at, looking->pdf.length, "/Root") != BYTES_NOWHERE) ||
           look_refuse(looking, "the table of its objects is damaged");
}

/* ---- objects ---- */

static int offsets_compare(const void *a, const void *b)
{
    size_t first = *(const size_t *)a, second = *(const size_t *)b;
    return first < second ? -1 : first > second;
}

static void places_sort(struct looking *looking)
{
    looking->sorted = arena_array(looking->arena, looking->count + 1, sizeof *looking->sorted);
    for (size_t i = 0; i < looking->count; i++)
        if (looking->places[i] != 0)
            looking->sorted[looking->sorted_count++] = looking->places[i];
    qsort(looking->sorted, looking->sorted_count, sizeof *looking->sorted, offsets_compare);
    looking->sorted[looking->sorted_count] = looking->table;
}

/* The value of /Length between the two; where it stands in an object of its own, that one's. */
static bool stream_length(const struct looking *looking, size_t from, size_t to, size_t *length)
{
    size_t at = from, generation, number, content;
    do {
        at = bytes_find(looking->pdf, at, to, "/Length");
        if (at == BYTES_NOWHERE)
            return false;
        at += strlen("/Length");
    } while (at < to && !is_blank(looking->pdf.at[at]));
    at = blanks_skip(looking->pdf, at);
    if (!number_read(looking->pdf, &at, length))
        return false;
    at = blanks_skip(looking->pdf, at);
    if (!number_read(looking->pdf, &at, &generation))
        return true;
    at = blanks_skip(looking->pdf, at);
    if (!bytes_stand_at(looking->pdf, at, "R"))
        return true;
    if (*length >= looking->count || looking->places[*length] == 0 ||
        !object_head(looking->pdf, looking->places[*length], &number, &content))
        return false;
    content = blanks_skip(looking->pdf, content);
    return number_read(looking->pdf, &content, length);
}

static bool unpacks(struct bytes packed)
{
    unsigned char out[1 << 12];
    z_stream stream = {.next_in = packed.at, .avail_in = (uInt)packed.length};
    int result = packed.length > UINT32_MAX ? Z_DATA_ERROR : inflateInit(&stream);
    if (result != Z_OK)
        return false;
    while (result == Z_OK) {
        stream.next_out = out;
        stream.avail_out = sizeof out;
        result = inflate(&stream, Z_NO_FLUSH);
    }
    inflateEnd(&stream);
    return result == Z_STREAM_END;
}

/* The word that ends the dictionary of a stream; BYTES_NOWHERE: the object is none. */
static size_t stream_word(struct bytes pdf, size_t from, size_t to)
{
    for (size_t at = from; (at = bytes_find(pdf, at, to, ">>")) != BYTES_NOWHERE; at += 2) {
        size_t word = blanks_skip(pdf, at + 2);
        if (bytes_stand_at(pdf, word, "stream"))
            return word;
    }
    return BYTES_NOWHERE;
}

/* `*behind`: the byte behind what is packed in it. */
static bool stream_look(struct looking *looking, size_t begin, size_t word, size_t end,
                        size_t *behind)
{
    struct bytes pdf = looking->pdf;
    size_t at = word + strlen("stream"), length;
    at += bytes_stand_at(pdf, at, "\r\n") ? 2 : 1;
    if (!stream_length(looking, begin, word, &length) || at > end || length > end - at)
        return look_refuse(looking, "a stream in it is shorter than it says");
    if (!bytes_stand_at(pdf, blanks_skip(pdf, at + length), "endstream"))
        return look_refuse(looking, "a stream in it is longer than it says");
    *behind = at + length;
    size_t filter = bytes_find(pdf, begin, word, "/Filter");
    /* of a page that is left blank nothing is packed at all */
    bool packed = length > 0 && filter != BYTES_NOWHERE &&
                  bytes_find(pdf, filter, word, "/FlateDecode") != BYTES_NOWHERE;
    return !packed || unpacks((struct bytes){pdf.at + at, length}) ||
           look_refuse(looking, "a stream in it cannot be unpacked");
}

/* One object, up to the one that follows it. */
static bool object_look(struct looking *looking, size_t begin, size_t end)
{
    struct bytes pdf = looking->pdf;
    size_t number, content;
    if (end > pdf.length || !object_head(pdf, begin, &number, &content) ||
        number >= looking->count || looking->places[number] != begin)
        return look_refuse(looking, "the table of its objects does not lead to them");
    size_t word = stream_word(pdf, content, end), behind = content;
    size_t page = bytes_find(pdf, content, word == BYTES_NOWHERE ? end : word, "/Type /Page");
    if (word != BYTES_NOWHERE && !stream_look(looking, content, word, end, &behind))
        return false;
    if (bytes_find(pdf, behind, end, "endobj") == BYTES_NOWHERE)
        return look_refuse(looking, "an object in it does not end");
    if (page != BYTES_NOWHERE && !bytes_stand_at(pdf, page, "/Type /Pages") &&
        !bytes_stand_at(pdf, page, "/Type /PageLabel"))
        looking->look.pages++;
    return true;
}

struct pdf_look pdf_look(struct bytes pdf, struct arena *arena)
{
    struct looking looking = {.pdf = pdf, .arena = arena};
    said_look(pdf, &looking.look, arena);
    if (!ends_look(&looking))
        return looking.look;
    size_t number, content;
    if (!bytes_stand_at(pdf, looking.table, "xref")) {
        if (!object_head(pdf, looking.table, &number, &content))
            look_refuse(&looking, "its end does not lead to the table of its objects");
        return looking.look;
    }
    if (!table_look(&looking))
        return looking.look;
    places_sort(&looking);
    for (size_t i = 0; i < looking.sorted_count; i++)
        if (!object_look(&looking, looking.sorted[i], looking.sorted[i + 1]))
            break;
    return looking.look;
}

/* pdf_whole.c - is a PDF whole? Its table of objects is read as a reader of PDFs would: each entry
 * must stand where the object begins, and each object have its end. */
#include "fuzz.h"

#include <string.h>

struct pdf {
    const char *at;
    size_t length;
};

static bool stands_at(const struct pdf *pdf, size_t at, const char *word)
{
    size_t length = strlen(word);
    return at <= pdf->length && pdf->length - at >= length &&
           memcmp(pdf->at + at, word, length) == 0;
}

/* The last place of the word; the length of all where it stands nowhere. */
static size_t last_of(const struct pdf *pdf, const char *word)
{
    for (size_t i = pdf->length; i-- > 0;)
        if (stands_at(pdf, i, word))
            return i;
    return pdf->length;
}

static size_t next_of(const struct pdf *pdf, size_t from, size_t to, const char *word)
{
    for (size_t i = from; i < to; i++)
        if (stands_at(pdf, i, word))
            return i;
    return pdf->length;
}

/* The number there, past spaces and line ends; *at moves behind it. */
static bool number_at(const struct pdf *pdf, size_t *at, size_t *number)
{
    while (*at < pdf->length && strchr(" \r\n", pdf->at[*at]) != NULL && pdf->at[*at] != '\0')
        (*at)++;
    size_t start = *at;
    for (*number = 0; *at < pdf->length && pdf->at[*at] >= '0' && pdf->at[*at] <= '9'; (*at)++)
        *number = *number * 10 + (size_t)(pdf->at[*at] - '0');
    return *at > start && *at - start < 12;
}

/* "12 0 obj" there, and its end before `limit`. */
static bool object_at(const struct pdf *pdf, size_t at, size_t index, size_t limit)
{
    size_t number, generation;
    return number_at(pdf, &at, &number) && number == index && number_at(pdf, &at, &generation) &&
           stands_at(pdf, at, " obj") && next_of(pdf, at, limit, "endobj") < limit;
}

/* The rows of the table at `at`: offset, generation, n or f. */
static const char *table_fault(const struct pdf *pdf, size_t table)
{
    size_t at = table + strlen("xref"), first, count, offset, generation;
    if (!number_at(pdf, &at, &first) || !number_at(pdf, &at, &count) || first != 0 || count < 2)
        return "the table of objects has no head";
    for (size_t i = 0; i < count; i++) {
        if (!number_at(pdf, &at, &offset) || !number_at(pdf, &at, &generation))
            return "the table of objects is cut";
        if (stands_at(pdf, at, " n") && (offset >= table || !object_at(pdf, offset, i, table)))
            return "an object does not stand where the table has it";
        if (!stands_at(pdf, at, " n") && !stands_at(pdf, at, " f"))
            return "an entry is of no kind";
        at += 2;
    }
    return next_of(pdf, at, pdf->length, "trailer") == pdf->length ? "there is no trailer" : NULL;
}

const char *pdf_fault(const unsigned char *bytes, size_t length)
{
    const struct pdf pdf = {(const char *)bytes, length};
    size_t start = last_of(&pdf, "startxref"), table, end = last_of(&pdf, "%%EOF");
    if (!stands_at(&pdf, 0, "%PDF-1."))
        return "it does not begin as a PDF";
    if (start == length || end == length || length - end > 7 || end < start)
        return "it does not end as a PDF";
    start += strlen("startxref");
    if (!number_at(&pdf, &start, &table) || !stands_at(&pdf, table, "xref"))
        return "the table of objects does not stand where its end says";
    return table_fault(&pdf, table);
}

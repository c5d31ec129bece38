/* authorities_read.c - the sources that steps, cautions and nevers stand on
 * (room: procedure). Never judges whether a source says what a card says: people
 * do, and write down how far they read. */
#include "procedure_room.h"

#include "text.h"

enum { TAG_LIMIT = 14 };   /* characters: printed small beside a caution */

struct authority_file {
    struct entries_value sources;       /* struct authority */
};

const char *const source_status_words[] = {SOURCE_STATUS_LIST(CHOICE_WORD) NULL};
const char *const source_grade_words[] = {SOURCE_GRADE_LIST(CHOICE_WORD) NULL};

static const struct field authority_rows[] = {
    ROW(struct authority, key, FIELD_TEXT, .required = true, .about = "how procedures name it"),
    ROW(struct authority, issuer, FIELD_TEXT, .required = true, .about = "who issued it"),
    ROW(struct authority, id, FIELD_TEXT, .required = true, .about = "its number or name"),
    ROW(struct authority, title, FIELD_TEXT, .required = true, .about = "what it is about"),
    ROW(struct authority, tag, FIELD_TEXT, .required = true, .about = "printed on the card"),
    ROW(struct authority, read, FIELD_DATE, .required = true, .about = "when it was read"),
    ROW(struct authority, status, FIELD_CHOICE, .required = true, .choices = source_status_words,
        .about = "whether it is still in force"),
    ROW(struct authority, grade, FIELD_CHOICE, .required = true,
        .choices = source_grade_words,
        .about = "VA read in full, VB the passage, VC no authority"),
};
static const struct field_table authority_table = TABLE("a source", authority_rows);

static const struct field authority_file_rows[] = {
    ROW(struct authority_file, sources, FIELD_ENTRIES, .required = true,
        ENTRIES_OF(struct authority, .table = &authority_table), .about = "the list"),
};
static const struct field_table authority_file_table = TABLE("a file of sources",
                                                             authority_file_rows);

const struct field_table *authority_file_fields(void)
{
    return &authority_file_table;
}

static void tag_length_check(const struct text_value *tag, struct problems *problems)
{
    long length = tag->text == NULL ? 0 : text_code_points(tag->text);
    if (length > TAG_LIMIT)
        problem_add(problems, SEVERITY_ERROR, tag->place, "shorten it: it is printed on the card",
                    "tag is %ld characters long, at most %d fit", length, TAG_LIMIT);
}

static void key_unique_check(const struct authority *rows, size_t index,
                             struct problems *problems)
{
    for (size_t i = 0; rows[index].key.text != NULL && i < index; i++)
        if (text_equal(rows[i].key.text, rows[index].key.text)) {
            problem_add(problems, SEVERITY_ERROR, rows[index].key.place,
                        "give each source a key of its own",
                        "source %s is given twice (first on line %d)", rows[index].key.text,
                        rows[i].key.place.line);
            return;
        }
}

const struct authorities *authorities_read(const struct source *source, struct arena *arena,
                                           struct problems *all)
{
    struct problems *problems = problems_part(all);
    struct authority_file file = {0};
    section_read(yaml_tree_read(source, arena, problems), &authority_file_table, &file, arena,
                 problems);
    const struct authority *rows = file.sources.items;
    for (size_t i = 0; i < file.sources.count; i++) {
        tag_length_check(&rows[i].tag, problems);
        key_unique_check(rows, i, problems);
    }
    struct authorities *authorities = arena_alloc(arena, sizeof *authorities);
    authorities->rows = rows;
    authorities->count = file.sources.count;
    return problems_settle(all, problems) ? authorities : NULL;
}

const struct authority *authority_find(const struct authorities *authorities, const char *key)
{
    for (size_t i = 0; i < authorities->count; i++)
        if (text_equal(authorities->rows[i].key.text, key))
            return &authorities->rows[i];
    return NULL;
}

/* pseudo_case.c - the program's own files and records in a second language. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <stdio.h>

#include "pseudo_case.h"
#include "source.h"
#include "text.h"

/* What pseudo.awk makes of a file; `name` is what the file is called in messages. */
static const struct source *pseudo_source(struct card_case *card_case, const char *options,
                                          const char *file, const char *name)
{
    struct text_builder made = text_builder_in(card_case->arena);
    char piece[4096];
    FILE *awk = popen(text_format(card_case->arena, "LC_ALL=C awk -v language=qps %s "
                                  "-f tests/pseudo.awk %s", options, file), "r");
    assert_non_null(awk);
    for (size_t length; (length = fread(piece, 1, sizeof piece, awk)) > 0;)
        text_add_bytes(&made, piece, length);
    assert_int_equal(pclose(awk), 0);
    assert_true(made.length > 0);
    return source_from(card_case->arena, name, made.at, made.length);
}

/* A file of words or texts, by its name. */
static const struct source *pseudo_texts(struct card_case *card_case, const char *name)
{
    return pseudo_source(card_case, "",
                         text_format(card_case->arena, "procedures/words/en/%s", name),
                         text_format(card_case->arena, "procedures/words/qps/%s", name));
}

const struct words *pseudo_words(struct card_case *card_case)
{
    const struct words *words = words_read(pseudo_texts(card_case, "words.yaml"), "qps",
                                           card_case->arena, card_case->problems);
    if (words == NULL)
        fail_msg("%s", case_problems_text(card_case));
    return words;
}

static const struct source *own_source(struct card_case *card_case, const char *folder,
                                       const char *name)
{
    struct source *source = NULL;
    const char *file = text_format(card_case->arena, "%s%s", folder, name);
    assert_int_equal(source_read(card_case->arena, file, 1 << 20, &source), SOURCE_READ);
    return source;
}

static const struct procedure *in_both(struct card_case *card_case, const char *key)
{
    const char *name = text_format(card_case->arena, "%s.yaml", key);
    const struct procedure_text_file texts[] = {
        {"en", own_source(card_case, "procedures/words/en/", name)},
        {"qps", pseudo_texts(card_case, name)}};
    const struct procedure_files files = {
        .logic = own_source(card_case, "procedures/", name), .texts = texts, .text_count = 2};
    const struct procedure *procedure = procedure_read(&files, card_case->authorities,
                                                       card_case->arena, card_case->problems);
    if (procedure == NULL)
        fail_msg("%s", case_problems_text(card_case));
    return procedure;
}

void pseudo_procedures(struct card_case *card_case)
{
    size_t count = card_case->procedures.count;
    const struct procedure **rows = arena_array(card_case->arena, count, sizeof *rows);
    for (size_t i = 0; i < count; i++)
        rows[i] = in_both(card_case, card_case->procedures.rows[i]->key.text);
    card_case->procedures = (struct procedure_set){rows, count};
}

void pseudo_boat(struct card_case *card_case, const char *file)
{
    bool sound = false;
    card_case->boat = boat_read(pseudo_source(card_case, "-v record=1", file, file), "boat",
                                card_case->arena, card_case->problems, &sound);
    if (!sound)
        fail_msg("%s", case_problems_text(card_case));
}

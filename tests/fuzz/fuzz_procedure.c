/* fuzz_procedure.c - any bytes as the two files of a procedure, its logic and its texts: what is
 * sound stands among the program's own, and boats are composed with it. */
#include "fuzz.h"

#include "approval.h"
#include "fingerprint.h"
#include "prove.h"
#include "text.h"

static void procedure_open_own(void)
{
    own_open(OWN_TEXTS | OWN_BOATS);
}

/* In the place of the one of its key, if there is one, else by its number. */
static struct procedure_set set_with(const struct fuzz *fuzz, const struct procedure *procedure)
{
    const struct procedure **rows = arena_array(fuzz->arena, own.procedures.count + 1,
                                                sizeof *rows);
    bool put = false;
    size_t count = 0;
    for (size_t i = 0; i < own.procedures.count; i++) {
        const struct procedure *row = own.procedures.rows[i];
        bool same = text_equal(row->key.text, procedure->key.text) ||
                    row->number.milli == procedure->number.milli;
        if (!put && (same || row->number.milli > procedure->number.milli)) {
            rows[count++] = procedure;
            put = true;
        }
        if (!same)
            rows[count++] = row;
    }
    if (!put)
        rows[count++] = procedure;
    return (struct procedure_set){rows, count};
}

/* It composes, or a card is held back, and that was told. */
static void procedure_use(const struct fuzz *fuzz, const struct procedure_set *set)
{
    struct compose_input input = own_input(own.boats[fuzz_choice(fuzz, 3)]);
    input.procedures = set;
    const struct sheet_set *sheets = compose_set(&input, fuzz->arena, fuzz->problems);
    CHECK(sheets != NULL);
    sheets = hazards_judge(&input, sheets, fuzz->arena, fuzz->problems);
    set_check(fuzz, &input, sheets);
}

static void procedure_one(struct fuzz *fuzz)
{
    static const char *const names[] = {"logic.yaml", "words/en/logic.yaml"};
    const struct source *sources[2];
    fuzz_two(fuzz, names, sources);
    const struct procedure_text_file texts = {"en", sources[1]};
    const struct procedure_files files = {.logic = sources[0], .texts = &texts, .text_count = 1};
    const struct procedure *procedure = procedure_read(&files, own.authorities, fuzz->arena,
                                                       fuzz->problems);
    sound_check(fuzz, procedure != NULL);
    if (procedure == NULL)
        return;
    CHECK(procedure_fingerprint(procedure, own.authorities, own.words, fuzz->arena) != NULL);
    struct procedure_set set = set_with(fuzz, procedure);
    bool sound = procedure_set_check(&set, fuzz->arena, fuzz->problems);
    sound_check(fuzz, sound);
    if (sound)
        procedure_use(fuzz, &set);
}

const struct harness harness = {procedure_open_own, procedure_one, true};

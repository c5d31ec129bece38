/* print_inputs.c - what the pages of a boat are made of, and whether they were printed already
 * (room: app). It trusts no date of a file: bytes are held against sums. */
#include "print_inputs.h"

#include <inttypes.h>
#include <stdlib.h>
#include <string.h>

#include "pdf_look.h"
#include "printed_put.h"
#include "register_file.h"
#include "sha256.h"

#define RUN_NAME_LIMIT ((size_t)256 * 1024 * 1024)

/* ---- sums ---- */

static const char *bytes_sum(const char *bytes, size_t length, struct arena *arena)
{
    char sum[SHA256_TEXT];
    sha256_text((const unsigned char *)bytes, length, sum);
    return arena_copy(arena, sum, strlen(sum));
}

/* What pages of every boat follow from. */
static struct text_builder inputs_of_all(const struct print_run *run, struct arena *arena)
{
    const struct options *options = run->options;
    struct text_builder all = text_builder_in(arena);
    text_add_format(&all, "%s %s\n%s\n%s\n", MAYDECK_VERSION, MAYDECK_SOURCES,
                    draw_libraries(arena), date_text(arena, options->today));
    if (options->pages_by.length > 0)
        text_add_bytes(&all, options->pages_by.at, options->pages_by.length);
    text_add_bytes(&all, run->fleet->inputs->at, run->fleet->inputs->length);
    return all;
}

const char *inputs_sum(const struct print_run *run, const struct boat_job *boat)
{
    struct text_builder all = inputs_of_all(run, boat->arena);
    text_add(&all, record_sum(boat));
    return bytes_sum(all.at, all.length, boat->arena);
}

void run_name(struct print_run *run)
{
    const struct fleet *fleet = run->fleet;
    struct arena *own = arena_new(RUN_NAME_LIMIT);
    struct text_builder all = inputs_of_all(run, own);
    for (size_t i = 0; i < fleet->boat_count; i++)
        text_add_format(&all, "%s %016" PRIx64 "\n", fleet->boats[i].key, fleet->boats[i].hash);
    const char *sum = bytes_sum(all.at, all.length, own);
    memcpy(run->id, sum, sizeof run->id - 1);
    arena_free(own);
}

/* ---- rows of the list ---- */

static int listed_compare(const void *left, const void *right)
{
    const struct printed_row *const *a = left, *const *b = right;
    int boats = strcmp((*a)->boat, (*b)->boat);
    return boats != 0 ? boats : (*a > *b) - (*a < *b);
}

struct printed_by_boat printed_by_boat(const struct printed_list *list, struct arena *arena)
{
    struct printed_by_boat by = {.list = list};
    while (printed_at(list, by.count) != NULL)
        by.count++;
    by.rows = arena_array(arena, by.count, sizeof *by.rows);
    for (size_t i = 0; i < by.count; i++)
        by.rows[i] = printed_at(list, i);
    if (by.count > 0)
        qsort(by.rows, by.count, sizeof *by.rows, listed_compare);
    return by;
}

static size_t first_of_boat(const struct printed_by_boat *by, const char *boat)
{
    size_t low = 0, high = by->count;
    while (low < high) {
        size_t middle = low + (high - low) / 2;
        if (strcmp(by->rows[middle]->boat, boat) < 0)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

/* ---- do her files stand? ---- */

/* The last of hers that was made of that; NULL: none was. */
static const struct printed_row *row_of_inputs(const struct printed_by_boat *by, const char *boat,
                                               const char *inputs)
{
    const struct printed_row *found = NULL;
    for (size_t i = first_of_boat(by, boat);
         i < by->count && text_equal(by->rows[i]->boat, boat); i++)
        if (by->rows[i]->inputs != NULL && text_equal(by->rows[i]->inputs, inputs))
            found = by->rows[i];
    return found;
}

/* Is the file what that row says, and no later run's? */
static bool file_stands(const struct print_run *run, const struct printed_row *row,
                        struct arena *arena)
{
    char sum[SHA256_TEXT];
    struct source *source = NULL;
    const char *path = text_format(arena, "%s/%s", run->options->output, row->file);
    const struct printed_row *last = printed_find(run->listed.list, row->file);
    if (last == NULL || !text_equal(last->run, row->run) || !row->complete ||
        source_read(arena, path, row->bytes, &source) != SOURCE_READ ||
        source->length != row->bytes)
        return false;
    sha256_text((const unsigned char *)source->bytes, source->length, sum);
    return text_equal(sum, row->sum);
}

/* Was that written with the other, of one boat? */
static bool is_of_run(const struct printed_row *row, const struct printed_row *other)
{
    return text_equal(row->boat, other->boat) && text_equal(row->run, other->run);
}

/* All files that the run wrote of her, none missing. */
static bool all_stand(const struct print_run *run, const struct printed_row *one,
                      struct arena *arena)
{
    size_t count = 0;
    for (size_t i = first_of_boat(&run->listed, one->boat);
         i < run->listed.count && text_equal(run->listed.rows[i]->boat, one->boat); i++) {
        const struct printed_row *row = run->listed.rows[i];
        if (is_of_run(row, one) && !file_stands(run, row, arena))
            return false;
        count += is_of_run(row, one) ? 1 : 0;
    }
    return count == one->files;
}

/* Are all cards of that file in the register, as a print on that paper? */
static bool file_recorded(const struct print_run *run, const struct printed_row *row,
                          const struct register_rows *hers, struct arena *arena)
{
    struct source *source = NULL;
    const char *path = text_format(arena, "%s/%s", run->options->output, row->file);
    if (source_read(arena, path, row->bytes, &source) != SOURCE_READ)
        return false;
    struct bytes bytes = {(const unsigned char *)source->bytes, source->length};
    struct pdf_look look = pdf_look(bytes, arena);
    for (size_t i = 0; i < look.code_count; i++) {
        const struct register_row card = {.boat = row->boat, .card = look.codes[i].card,
                                          .language = row->language};
        const struct register_row *last = print_last(hers, &card, row->paper);
        if (last == NULL || !text_equal(last->code, look.codes[i].code))
            return false;
    }
    return look.wrong == NULL && (look.code_count > 0 || row->cards == 0);
}

static bool is_specimen(const struct boat_job *boat)
{
    struct boat_job look = *boat;
    look.problems = problems_new(boat->arena);
    boat_open(&look);
    return look.boat != NULL && look.boat->facts.specimen.answer == ANSWER_YES;
}

/* Would printing her again add nothing to the register? */
static bool all_recorded(const struct print_run *run, const struct printed_row *one,
                         const struct boat_job *boat)
{
    if (run->options->draft || (!run->registered && is_specimen(boat)))
        return true;
    const struct register_rows *hers = run->fleet->boats[boat->index].prints;
    if (hers == NULL)
        return false;
    for (size_t i = first_of_boat(&run->listed, one->boat);
         i < run->listed.count && text_equal(run->listed.rows[i]->boat, one->boat); i++)
        if (is_of_run(run->listed.rows[i], one) &&
            !file_recorded(run, run->listed.rows[i], hers, boat->arena))
            return false;
    return true;
}

static void standing_tell(const struct print_run *run, const struct printed_row *row,
                          struct print_made *made, struct arena *arena)
{
    const char *told = "";
    if (!run->options->quiet)
        told = text_format(arena, "%s/%s: unchanged since it was printed; --again prints it anew\n",
                           run->options->output, row->file);
    struct print_event *event = print_event_add(made, PRINT_FILE, told);
    event->file = (struct print_file){.name = row->file, .language = row->language,
                                      .paper = row->paper, .rows = ""};
}

bool files_stand(const struct print_run *run, struct boat_job *boat, struct print_made *made)
{
    const struct options *options = run->options;
    const struct fleet *fleet = run->fleet;
    if (options->again || run->listed.list == NULL || !fleet->ready)
        return false;
    boat->source = boat_source(boat);
    if (boat->source == NULL ||
        problems_reach(fleet->boats[boat->index].problems, SEVERITY_SILENCED) ||
        !identities_own(fleet->identities, boat->key, boat->source, problems_new(boat->arena)))
        return false;
    const char *inputs = inputs_sum(run, boat);
    const struct printed_row *last = row_of_inputs(&run->listed, boat->key, inputs);
    if (last == NULL)
        return false;
    if (!all_stand(run, last, boat->arena) || !all_recorded(run, last, boat))
        return false;
    for (size_t i = first_of_boat(&run->listed, boat->key);
         i < run->listed.count && text_equal(run->listed.rows[i]->boat, boat->key); i++)
        if (is_of_run(run->listed.rows[i], last))
            standing_tell(run, run->listed.rows[i], made, boat->arena);
    made->stands = true;
    made->record = NULL;
    made->inputs = inputs;
    made->deficiencies = last->deficiencies;
    return true;
}

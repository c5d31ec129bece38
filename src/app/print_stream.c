/* print_stream.c - one PDF on standard output (room: app). What is to be told goes to standard
 * error, so that nothing but the PDF goes there. */
#include "print_stream.h"

#include "print_pages.h"
#include "register_file.h"

#include <stdio.h>
#include <string.h>

struct streaming {
    const struct options *options;
    const struct fleet *fleet;
    struct bytes bytes;            /* of the PDF; none: not made */
    size_t files;                  /* that print into a folder would give */
};

bool print_is_stream(const struct options *options)
{
    return text_equal(options->output, STREAM_NAME);
}

static bool stream_refuse(const struct fleet *fleet, const char *remedy, const char *what)
{
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE, remedy, "%s", what);
    return false;
}

static bool one_boat(const struct fleet *fleet)
{
    return fleet->boat_count == 1 ||
           stream_refuse(fleet, "name one with --boat, or a folder with -o",
                         text_format(fleet->arena, "-o - is one file, and this base has %zu boats",
                                     fleet->boat_count));
}

/* ---- the one file ---- */

/* Cards that are asked for by name are a file each. */
static size_t files_of(const struct options *options, const struct chosen *chosen)
{
    size_t files = 0;
    for (size_t i = 0; i < chosen->count; i += chosen_of_sheet(chosen, i))
        files++;
    return options->cards.count > 0 ? files : files > 0 ? 1 : 0;
}

static void sheets_stream(void *of, struct sheets *sheets)
{
    struct streaming *streaming = of;
    const struct set_kind *kind = &sheets->boat->job->kinds[sheets->part.kind];
    struct chosen chosen = pages_choose(sheets);
    struct bytes bytes;
    streaming->files += files_of(streaming->options, &chosen);
    if (chosen.count == 0 || streaming->files > 1)
        return;
    const char *title = streaming->options->cards.count > 0
                            ? chosen.sheets[0]->name
                            : words_get(sheets->input.words, kind->title);
    struct document document = chosen_document(sheets, &chosen, title);
    if (pdf_make(&document, streaming->fleet->faces, sheets->boat->arena, &bytes,
                 sheets->boat->problems))
        streaming->bytes = (struct bytes){
            (const unsigned char *)arena_copy(streaming->fleet->arena, (const char *)bytes.at,
                                              bytes.length),
            bytes.length};
}

/* That nothing keeps a note of it. */
static void unlisted_tell(const struct streaming *streaming)
{
    const struct options *options = streaming->options;
    const struct fleet *fleet = streaming->fleet;
    if (streaming->bytes.length == 0 || options->draft ||
        !is_plain_file(register_path(options, fleet->arena)))
        return;
    problem_add(fleet->problems, SEVERITY_NOTE, NO_PLACE,
                "print into a folder what is to hang on board",
                "the register has no row of what goes to standard output");
}

enum exit_status print_stream(const struct options *options, const struct fleet *fleet)
{
    static const struct job_use use = {.last = STEP_PROVE, .sheets = sheets_stream};
    struct streaming streaming = {.options = options, .fleet = fleet};
    if (one_boat(fleet)) {
        struct job job = job_of(options, fleet);
        job.asked_only = options->cards.count > 0;
        job_run(&job, &use, &streaming);
    }
    if (streaming.files > 1)
        stream_refuse(fleet, "name one card with --card, or a folder with -o",
                      text_format(fleet->arena, "-o - is one file, and these cards are %zu",
                                  streaming.files));
    unlisted_tell(&streaming);
    enum exit_status status = report_of_cards(fleet);
    if (status <= EXIT_FOUND && streaming.bytes.length > 0)
        fwrite(streaming.bytes.at, 1, streaming.bytes.length, stdout);
    return status;
}

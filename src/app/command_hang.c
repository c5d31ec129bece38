/* command_hang.c - recording which cards hang on board, and which were taken down (room: app). Only
 * a print that says what the record says today may be hung without a word. */
#include "print_list.h"
#include "register_file.h"
#include "told.h"
#include "utf8.h"

#include <string.h>

/* The cards that were asked for, as they would be printed today. */
struct hanging {
    const struct options *options;
    const struct fleet *fleet;
    struct arena *arena;           /* of the fleet */
    struct register_row *rows;
    size_t count, room;
    size_t *hung, *hung_before;    /* of each boat of the fleet */
    bool refused;                  /* a card was named that is none */
};

/* ---- what was asked for ---- */

enum { WORDS_LONGEST = 100 };

/* NULL: all its characters may be written. */
static const char *characters_wrong(const char *text)
{
    size_t length = strlen(text);
    for (size_t at = 0; at < length;) {
        uint32_t code_point;
        if ((unsigned char)text[at] < ' ' || text[at] == 0x7F)
            return "it holds a control character";
        if (!utf8_next(text, length, &at, &code_point))
            return "it is no UTF-8";
        if (utf8_refusal(code_point) != NULL)
            return utf8_refusal(code_point);
    }
    return NULL;
}

/* A text that becomes a cell: a few words, and nothing that a spreadsheet would reckon with. */
static bool words_sound(const struct fleet *fleet, const char *option, const char *text)
{
    const char *wrong = characters_wrong(text);
    if (text_empty(text) || text[strspn(text, " -")] == '\0')
        wrong = "it says nothing";
    else if (strchr("=+-@#", text[0]) != NULL)
        wrong = "a spreadsheet would take it for a formula";
    else if (wrong == NULL && text_code_points(text) > WORDS_LONGEST)
        wrong = "it is longer than 100 characters";
    if (wrong != NULL)
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    "write a few words that begin with a letter or a figure",
                    "--%s cannot be written down: %s", option, wrong);
    return wrong == NULL;
}

static bool option_given(const struct fleet *fleet, const char *option, const char *text,
                         const char *remedy)
{
    if (text != NULL)
        return words_sound(fleet, option, text);
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE, remedy, "--%s is missing", option);
    return false;
}

static bool hang_asked(const struct options *options, const struct fleet *fleet)
{
    bool boats = options->boats.count > 0;
    if (!boats)
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    "name the boat, such as --boat tern", "--boat is missing");
    bool by = option_given(fleet, "by", options->by,
                           options->down ? "tell who took them down, such as --by AB"
                                         : "tell who hung them, such as --by AB");
    bool place = options->down && options->place == NULL;
    return (place || option_given(fleet, "place", options->place,
                                  "tell where they hang, such as --place \"chart table\"")) &&
           by && boats;
}

/* ---- hanging ---- */

/* "tern: 7 FLOODING" */
static const char *card_told(const struct register_row *row, struct arena *arena)
{
    return text_format(arena, "%s: %s", row->boat, row->name);
}

static const char *print_command(const struct hanging *hanging, const struct register_row *row)
{
    return text_format(hanging->arena, "print it and hang that: maydeck print %s --boat %s "
                       "--card %s%s%s", hanging->options->base, row->boat, row->card,
                       hanging->options->languages.count > 0 ? " --lang " : "",
                       hanging->options->languages.count > 0 ? row->language : "");
}

/* What the run has to say of her: what composing found is left to `check`. */
static struct problems *boat_problems(const struct boat_job *boat)
{
    return boat->job->fleet->boats[boat->index].problems;
}

static void held_tell(const struct sheets *sheets, const struct sheet *sheet)
{
    const struct problem *reason = held_reason(sheets, sheet);
    problem_add(boat_problems(sheets->boat), SEVERITY_ERROR,
                reason == NULL ? sheet->origin : reason->place,
                "see `maydeck check`; record what it lacks, then print it",
                "%s: %s is held back and cannot be hung%s%s", sheets->boat->key, sheet->name,
                reason == NULL ? "" : ": ", reason == NULL ? "" : reason->what);
}

static struct register_row row_hung(const struct hanging *hanging, const struct sheets *sheets,
                                    const struct sheet *sheet)
{
    const struct options *options = hanging->options;
    struct arena *arena = sheets->boat->arena;
    struct register_row row = row_of_sheet(&sheets->input, sheet, arena);
    row.event = EVENT_HUNG;
    row.date = options->today;
    row.place = options->place;
    row.by = options->by;
    row.program = MAYDECK_VERSION;
    row.paper = sheets->boat->job->papers[sheets->part.paper].key;
    if (options->checked)
        row.content = content_pack(register_content(&sheets->input, sheet, arena), arena);
    return row_copy(&row, hanging->arena);
}

static void sheets_hang(void *run, struct sheets *sheets)
{
    struct hanging *hanging = run;
    hanging->refused = hanging->refused || !sheets->asked_exist;
    for (size_t i = 0; i < sheets->set->count; i++) {
        const struct sheet *sheet = sheets->set->sheets[i];
        if (!card_wanted(hanging->options, sheet) || !sheet_is_registered(sheet))
            continue;
        if (sheet->held) {
            held_tell(sheets, sheet);
            continue;
        }
        hanging->rows = arena_grow(hanging->arena, hanging->rows, hanging->count,
                                   &hanging->room, sizeof *hanging->rows);
        hanging->rows[hanging->count++] = row_hung(hanging, sheets, sheet);
    }
}

/* Why the register has no print of the card as it is today. */
static void unprinted_tell(const struct hanging *hanging, const struct register_rows *there,
                           const struct register_row *row)
{
    struct problems *problems = hanging->fleet->problems;
    const struct register_row *last = print_last(there, row, NULL);
    const char *card = card_told(row, hanging->arena);
    const char *command = print_command(hanging, row);
    if (last == NULL)
        problem_add(problems, SEVERITY_ERROR, NO_PLACE, command,
                    "%s: no print of it is in the register", card);
    else if (!text_equal(last->code, row->code))
        problem_add(problems, SEVERITY_ERROR, NO_PLACE, command,
                    "%s: its last print is old: it has code %s, and the record gives %s now", card,
                    last->code, row->code);
    else if (!same_print(last, row))
        problem_add(problems, SEVERITY_ERROR, NO_PLACE, command,
                    "%s: its last print is old: its foot says \"%s\", and would say \"%s\" now",
                    card, last->dates, row->dates);
    else
        problem_add(problems, SEVERITY_ERROR, NO_PLACE, command,
                    "%s: its last print is on %s, not on the paper that was named", card,
                    last->paper);
}

/* The same print, at that place already, and not taken down. */
static bool hangs_there(const struct register_rows *there, const struct register_row *row)
{
    for (size_t i = 0; i < there->count; i++)
        if (hangs_still(there, i) && same_print(&there->rows[i], row) &&
            text_equal(there->rows[i].paper, row->paper) &&
            same_place(there->rows[i].place, row->place))
            return true;
    return false;
}

/* Index of the row's boat among those of the fleet. */
static size_t boat_index(const struct hanging *hanging, const struct register_row *row)
{
    size_t index = 0;
    while (!text_equal(hanging->fleet->boats[index].key, row->boat))
        index++;
    return index;
}

static void hung_choose(void *of, const struct register_rows *there, struct text_builder *lines)
{
    struct hanging *hanging = of;
    const char *paper = choice_word(paper_words, hanging->options->paper);
    for (size_t i = 0; i < hanging->count; i++) {
        struct register_row row = hanging->rows[i];
        const struct register_row *print = print_of(there, &row, paper);
        if (print == NULL && !hanging->options->checked) {
            unprinted_tell(hanging, there, &row);
            continue;
        }
        row.paper = print != NULL ? print->paper : row.paper;
        if (content_of(there, &row) != NULL)
            row.content = REGISTER_NOTHING;
        bool before = hangs_there(there, &row);
        if (!before)
            register_row_add(&row, lines);
        (before ? hanging->hung_before : hanging->hung)[boat_index(hanging, &row)]++;
    }
}

static void hung_told(const struct hanging *hanging, size_t index)
{
    const struct options *options = hanging->options;
    const char *key = hanging->fleet->boats[index].key;
    size_t hung = hanging->hung[index], before = hanging->hung_before[index];
    if (hung > 0)
        told_lines("%s: %zu card%s recorded: %s, by %s, %s\n", key, hung, hung == 1 ? "" : "s",
                   options->place, options->by, date_text(hanging->arena, options->today));
    if (before > 0)
        told_lines("%s: %zu card%s recorded so already\n", key, before,
                   before == 1 ? " was" : "s were");
    if (hung + before == 0)
        told_lines("%s: nothing was recorded\n", key);
}

/* What composing found is for `check` to tell, unless it stopped her cards. */
static void hang_end(void *run, struct boat_job *boat)
{
    (void)run;
    if (boat->parts_made > 0)
        boat->problems = problems_from(boat->problems, SEVERITY_USE, boat->arena);
}

/* All in one piece. */
static void hung_record(struct hanging *hanging)
{
    const struct fleet *fleet = hanging->fleet;
    const struct register_telling telling = {fleet->arena, fleet->problems, fleet->problems};
    const char *path = register_path(hanging->options, fleet->arena);
    hanging->hung = arena_array(fleet->arena, fleet->boat_count, sizeof *hanging->hung);
    hanging->hung_before = arena_array(fleet->arena, fleet->boat_count,
                                       sizeof *hanging->hung_before);
    if (hanging->count > 0 &&
        !register_change(path, APPEND_MAKE, hung_choose, hanging, &telling))
        return;
    for (size_t i = 0; i < fleet->boat_count; i++)
        hung_told(hanging, i);
}

/* ---- taking down ---- */

struct taking_down {
    const struct options *options;
    const struct fleet *fleet;
    const char *boat;
    size_t count;
};

static bool down_wanted(const struct taking_down *down, const struct register_row *row)
{
    const struct options *options = down->options;
    return text_equal(row->boat, down->boat) &&
           (options->cards.count == 0 || names_hold(&options->cards, row->card)) &&
           (options->languages.count == 0 || names_hold(&options->languages, row->language)) &&
           (options->paper == PAPER_NONE ||
            text_equal(row->paper, choice_word(paper_words, options->paper))) &&
           (options->place == NULL || same_place(options->place, row->place));
}

static void down_choose(void *of, const struct register_rows *there, struct text_builder *lines)
{
    struct taking_down *down = of;
    for (size_t i = 0; i < there->count; i++) {
        struct register_row row = there->rows[i];
        if (!hangs_still(there, i) || !down_wanted(down, &row))
            continue;
        row.event = EVENT_TAKEN_DOWN;
        row.date = down->options->today;
        row.by = down->options->by;
        row.program = MAYDECK_VERSION;
        row.content = REGISTER_NOTHING;
        register_row_add(&row, lines);
        down->count++;
    }
}

static void boat_take_down(struct taking_down *down)
{
    const struct fleet *fleet = down->fleet;
    const struct register_telling telling = {fleet->arena, fleet->problems, fleet->problems};
    const char *path = register_path(down->options, fleet->arena);
    down->count = 0;
    if (!register_change(path, APPEND_IF_THERE, down_choose, down, &telling))
        return;
    if (down->count > 0)
        told_lines("%s: %zu card%s taken down, by %s, %s\n", down->boat, down->count,
                   down->count == 1 ? "" : "s", down->options->by,
                   date_text(fleet->arena, down->options->today));
    else
        problem_add(fleet->problems, SEVERITY_ERROR, NO_PLACE,
                    "see with `maydeck renew` what hangs, and where",
                    "%s: by the register no such card hangs", down->boat);
}

/* Of boats and cards that the base may have no more: the register alone is asked. */
static enum exit_status take_down(const struct options *options, struct fleet *fleet)
{
    struct taking_down down = {.options = options, .fleet = fleet};
    if (!is_folder(options->base))
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    "name the folder that holds base.yaml and boats/", "%s is not a folder",
                    options->base);
    for (size_t i = 0; is_folder(options->base) && i < options->boats.count; i++) {
        down.boat = options->boats.at[i];
        boat_take_down(&down);
    }
    return report(fleet, SEVERITY_HELD);
}

/* ---- the command ---- */

static void boats_hang(const struct options *options, struct fleet *fleet)
{
    static const struct job_use use = {.last = STEP_COMPOSE, .sheets = sheets_hang,
                                       .end = hang_end};
    struct hanging hanging = {.options = options, .fleet = fleet, .arena = fleet->arena};
    struct job job = job_of(options, fleet);
    job_run(&job, &use, &hanging);
    if (!hanging.refused)
        hung_record(&hanging);
}

enum exit_status command_hang(const struct options *options)
{
    struct fleet fleet;
    enum exit_status status;
    if (options->down) {
        bool begun = fleet_begin(0, &fleet) == OWN_FILES_SOUND && hang_asked(options, &fleet);
        status = begun ? take_down(options, &fleet) : report(&fleet, SEVERITY_HELD);
    } else {
        if (fleet_open(options, NEED_TEXTS, &fleet) && hang_asked(options, &fleet))
            boats_hang(options, &fleet);
        status = report_of_cards(&fleet);
    }
    fleet_close(&fleet);
    return status;
}

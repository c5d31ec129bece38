/* verify_print.c - what was found of printed files, in words and as JSON (room: app). Judges
 * nothing. */
#include "verify.h"

#include "findings.h"
#include "pdf_look.h"
#include "told.h"
#include "utf8.h"

#include <string.h>

#define VERIFY_FORMAT "maydeck-verify-1"

/* ---- in words ---- */

/* The name with what a terminal might obey as \xNN. */
static const char *name_told(const char *name, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    size_t length = strlen(name);
    text_add(&out, "");
    for (size_t at = 0, next = 0; at < length; at = next) {
        uint32_t code_point;
        bool sound = utf8_next(name, length, &next, &code_point);
        next += sound ? 0 : 1;
        sound = sound && utf8_refusal(code_point) == NULL;
        for (size_t i = at; i < next; i++)
            if (sound)
                text_add_bytes(&out, name + i, 1);
            else
                text_add_format(&out, "\\x%02X", (unsigned char)name[i]);
    }
    return out.at;
}

/* What is told behind the name; %s: why it is so. */
static const char *const state_tellings[] = {
    [VERIFIED_AS_LISTED] = "whole and as listed",
    [VERIFIED_OLDER_ROW] = "whole, and as it was before a print that was stopped: print it again",
    [VERIFIED_OTHER] = "NOT AS LISTED: whole, but other than what was printed",
    [VERIFIED_UNLISTED] = "NOT LISTED: whole, but no print of this folder tells of it",
    [VERIFIED_DAMAGED] = "DAMAGED",
    [VERIFIED_MISSING] = "MISSING: it is listed and not there",
    [VERIFIED_UNREAD] = "NOT READ",
    [VERIFIED_LEFT_OVER] = "LEFT OVER by a print that was stopped; the next one takes it away",
};

static const char *const record_tellings[] = {
    [RECORD_SAME] = "; her file is the one that it was printed of",
    [RECORD_CHANGED] = "; HER FILE HAS CHANGED SINCE: print it again",
    [RECORD_GONE] = "; THE BASE HAS NO SUCH BOAT",
    [RECORD_NOT_COMPARED] = "",
};

static void listed_tell(const struct verifying *verifying, const struct verified_file *file,
                     struct text_builder *out)
{
    const struct printed_row *row = file->row;
    bool so = file->state == VERIFIED_AS_LISTED || file->state == VERIFIED_OLDER_ROW;
    text_add_format(out, "    %s%s, %s, %s", so ? "" : "listed: ",
                    name_told(row->boat, out->arena), row->language, row->paper);
    if (row->of_cards > 0)
        text_add_format(out, ", %zu of %zu cards%s", row->cards, row->of_cards,
                        row->complete ? "" : ", SOME HELD BACK");
    text_add_format(out, "; printed %s by version %s in %s run %s%s\n",
                    date_text(out->arena, row->date), row->version,
                    text_equal(row->run, verifying->last_run) ? "the last" : "an older", row->run,
                    record_tellings[file->record]);
}

/* What it says itself, where no row does. */
static void said_tell(const struct verified_file *file, struct text_builder *out)
{
    text_add_format(out, "    it says itself: \"%s\", %s, %zu page%s%s\n",
                    file->title == NULL ? "" : file->title,
                    file->language == NULL ? "no language" : file->language, file->pages,
                    file->pages == 1 ? "" : "s",
                    file->ours ? "" : "; not made by this program");
}

static void codes_tell(const struct verified_file *file, struct text_builder *out)
{
    const struct pdf_code *codes = file->codes.at;
    struct line_fill fill = line_fill_begin(out, 4, "    codes: ");
    for (size_t i = 0; i < file->codes.count; i++)
        line_fill_add(&fill, text_format(out->arena, "%s %s", codes[i].card, codes[i].code));
    line_fill_end(&fill);
}

static void file_tell(const struct verifying *verifying, const struct verified_file *file,
                      struct text_builder *out)
{
    text_add_format(out, "%s/%s: %s%s%s\n", verifying->folder, name_told(file->file, out->arena),
                    state_tellings[file->state], file->wrong == NULL ? "" : ": ",
                    file->wrong == NULL ? "" : file->wrong);
    if (file->row != NULL)
        listed_tell(verifying, file, out);
    else if (file->state < VERIFIED_MISSING)
        said_tell(file, out);
    if (file->codes.count > 0)
        codes_tell(file, out);
}

static size_t good_count(const struct verifying *verifying)
{
    size_t good = 0;
    for (size_t i = 0; i < verifying->count; i++)
        good += verified_good(&verifying->files[i]) ? 1 : 0;
    return good;
}

static size_t same_count(const struct verifying *verifying)
{
    size_t same = 0;
    for (size_t i = 0; i < verifying->count; i++)
        same += verifying->files[i].record == RECORD_SAME ? 1 : 0;
    return same;
}

static void sum_tell(const struct verifying *verifying, struct text_builder *out)
{
    size_t good = good_count(verifying);
    if (!verifying->listed)
        text_add_format(out, "%s: there is no list " PRINTED_NAME " of what was printed here\n",
                        verifying->folder);
    if (verifying->claimed)
        text_add_format(out, "%s: ANOTHER PRINT IS AT WORK HERE: verify again when it has ended\n",
                        verifying->folder);
    text_add_format(out, "%zu of %zu file%s whole and as listed", good, verifying->count,
                    verifying->count == 1 ? "" : "s");
    if (verifying->options->base != NULL)
        text_add_format(out, "; %zu printed of what %s records now", same_count(verifying),
                        verifying->options->base);
    text_add(out, "\n");
}

void verify_print(const struct verifying *verifying)
{
    struct text_builder out = text_builder_in(verifying->arena);
    for (size_t i = 0; i < verifying->count; i++)
        file_tell(verifying, &verifying->files[i], &out);
    sum_tell(verifying, &out);
    told_print(&out);
}

/* ---- as JSON ---- */

#define AT(member) offsetof(struct pdf_code, member)
static const struct json_member code_members[] = {
    {"code", JSON_TEXT, AT(code), NULL, NULL, NULL},
    {"card", JSON_TEXT, AT(card), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape code_shape = {"code", sizeof(struct pdf_code), code_members,
                                             sizeof code_members / sizeof *code_members};

/* A row with its date as a text. */
struct row_object {
    const char *boat, *language, *paper, *sum, *record, *inputs, *version, *date, *run;
    size_t bytes, cards, of_cards, deficiencies;
    bool complete;
};

#define AT(member) offsetof(struct row_object, member)
static const struct json_member row_members[] = {
    {"boat", JSON_TEXT, AT(boat), NULL, NULL, NULL},
    {"language", JSON_TEXT, AT(language), NULL, NULL, NULL},
    {"paper", JSON_TEXT, AT(paper), NULL, NULL, NULL},
    {"cards", JSON_COUNT, AT(cards), NULL, NULL, NULL},
    {"of_cards", JSON_COUNT, AT(of_cards), NULL, NULL, NULL},
    {"complete", JSON_FLAG, AT(complete), NULL, NULL, NULL},
    {"deficiencies", JSON_COUNT, AT(deficiencies), NULL, NULL, NULL},
    {"date", JSON_TEXT, AT(date), NULL, NULL, NULL},
    {"version", JSON_TEXT, AT(version), NULL, NULL, NULL},
    {"run", JSON_TEXT, AT(run), NULL, NULL, NULL},
    {"sha256", JSON_TEXT, AT(sum), NULL, NULL, NULL},
    {"bytes", JSON_COUNT, AT(bytes), NULL, NULL, NULL},
    {"record", JSON_TEXT_OR_NULL, AT(record), NULL, NULL, NULL},
    {"inputs", JSON_TEXT_OR_NULL, AT(inputs), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape row_shape = {"row", sizeof(struct row_object), row_members,
                                            sizeof row_members / sizeof *row_members};

struct file_object {
    struct verified_file file;
    const struct row_object *row;
};

#define AT(member) offsetof(struct file_object, member)
static const struct json_member file_members[] = {
    {"file", JSON_TEXT, AT(file.file), NULL, NULL, NULL},
    {"state", JSON_TEXT, AT(file.state_word), NULL, NULL, NULL},
    {"wrong", JSON_TEXT_OR_NULL, AT(file.wrong), NULL, NULL, NULL},
    {"record", JSON_TEXT, AT(file.record_word), NULL, NULL, NULL},
    {"last_run", JSON_FLAG, AT(file.last_run), NULL, NULL, NULL},
    {"ours", JSON_FLAG, AT(file.ours), NULL, NULL, NULL},
    {"title", JSON_TEXT_OR_NULL, AT(file.title), NULL, NULL, NULL},
    {"language", JSON_TEXT_OR_NULL, AT(file.language), NULL, NULL, NULL},
    {"pages", JSON_COUNT, AT(file.pages), NULL, NULL, NULL},
    {"listed", JSON_OBJECT_OR_NULL, AT(row), &row_shape, NULL, NULL},
    {"codes", JSON_LIST, AT(file.codes), &code_shape, NULL, NULL},
};
#undef AT
static const struct json_shape file_shape = {"file", sizeof(struct file_object), file_members,
                                             sizeof file_members / sizeof *file_members};

struct verify_object {
    const char *format, *folder, *list, *last_run;
    bool claimed;
    size_t good;
    struct json_list files;
};

#define AT(member) offsetof(struct verify_object, member)
static const struct json_member verify_members[] = {
    {"format", JSON_TEXT, AT(format), NULL, NULL, NULL},
    {"folder", JSON_TEXT, AT(folder), NULL, NULL, NULL},
    {"list", JSON_TEXT, AT(list), NULL, NULL, NULL},
    {"last_run", JSON_TEXT_OR_NULL, AT(last_run), NULL, NULL, NULL},
    {"print_at_work", JSON_FLAG, AT(claimed), NULL, NULL, NULL},
    {"good", JSON_COUNT, AT(good), NULL, NULL, NULL},
    {"files", JSON_LIST, AT(files), &file_shape, NULL, NULL},
};
#undef AT
static const struct json_shape verify_shape = {"verify", sizeof(struct verify_object),
                                               verify_members,
                                               sizeof verify_members / sizeof *verify_members};

static const struct row_object *row_object_of(const struct printed_row *row, struct arena *arena)
{
    if (row == NULL)
        return NULL;
    struct row_object *object = arena_alloc(arena, sizeof *object);
    *object = (struct row_object){
        .boat = row->boat, .language = row->language, .paper = row->paper, .sum = row->sum,
        .record = row->record, .inputs = row->inputs, .version = row->version,
        .date = date_text(arena, row->date), .run = row->run, .bytes = row->bytes,
        .cards = row->cards, .of_cards = row->of_cards, .deficiencies = row->deficiencies,
        .complete = row->complete};
    return object;
}

void verify_json(const struct verifying *verifying)
{
    struct file_object *files = arena_array(verifying->arena, verifying->count, sizeof *files);
    for (size_t i = 0; i < verifying->count; i++) {
        files[i].file = verifying->files[i];
        files[i].file.state_word = choice_word(verified_words, files[i].file.state);
        files[i].file.record_word = choice_word(record_now_words, files[i].file.record);
        files[i].row = row_object_of(files[i].file.row, verifying->arena);
    }
    const struct verify_object whole = {
        .format = VERIFY_FORMAT, .folder = verifying->folder,
        .list = !verifying->listed ? "none" : verifying->list_whole ? "whole" : "damaged",
        .last_run = verifying->last_run, .claimed = verifying->claimed,
        .good = good_count(verifying), .files = {files, verifying->count}};
    json_print(&verify_shape, &whole, verifying->arena);
}

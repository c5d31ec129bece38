/* trial.c - the one oracle: exit 0 means a complete, whole, told set; any other exit says so with a
 * remedy, tears nothing, and the next run puts all right. */
#define _GNU_SOURCE
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/mount.h>

#include "text.h"
#include "trial.h"

#define KILLED (128 + SIGKILL)
#define TERMINATED (128 + SIGTERM)

/* What a killed run tore of the list is kept under that name by the next. */
#define DAMAGED_LIST "printed.csv.damaged-"

static const struct trouble no_trouble;

void subject_know(const struct bench *bench, struct subject *subject)
{
    if (subject->known)
        return;
    tree_lay(bench->work, &bench->before, bench->arena);
    struct ended ended = run_whole(bench, subject->words, &no_trouble, bench->arena);
    subject->known = true;
    subject->status = ended.status;
    subject->out = ended.out;
    subject->err = ended.err;
    subject->after = tree_read(bench->work, bench->arena);
    for (int caller = 0; caller < CALLER_COUNT; caller++)
        for (int call = 0; call < CALL_COUNT; call++)
            subject->seen[caller][call] = bench->page->seen[caller][call];
    if (ended.status > 1) {
        fprintf(stderr, "torture: %s ends with %d without a fault: %s\n", subject->words,
                ended.status, ended.err);
        exit(2);
    }
}

static const char *bytes_or_none(const struct tree_file *file)
{
    return file == NULL ? "" : file->bytes;
}

/* ---- files ---- */

static bool is_leftover(const char *path)
{
    const char *slash = strrchr(path, '/');

    return strncmp(slash == NULL ? path : slash + 1, ".maydeck-", strlen(".maydeck-")) == 0;
}

/* A boat's file as it was, beside the changed one. */
static bool is_kept(const struct bench *bench, const struct tree_file *there)
{
    const char *end = there == NULL ? NULL : strstr(there->path, ".before-");

    for (size_t i = 0; end != NULL && i < bench->before.count; i++)
        if (strncmp(bench->before.files[i].path, there->path, (size_t)(end - there->path)) == 0 &&
            same_files(&bench->before.files[i], there))
            return true;
    return false;
}

static bool ends_so(const char *path, const char *end)
{
    size_t length = strlen(path);

    return length >= strlen(end) && strcmp(path + length - strlen(end), end) == 0;
}

/* A file is as before or as after, a table perhaps without a boat that is told of; the list of
 * prints is for `verify` to judge. */
static const char *file_wrong(const struct bench *bench, const struct subject *subject,
                              const struct tree *now, const char *path, bool killed,
                              struct arena *arena)
{
    const struct tree_file *there = tree_find(now, path);
    const struct tree_file *before = tree_find(&bench->before, path);
    const struct tree_file *after = tree_find(&subject->after, path);
    const char *wrong = NULL;

    if (is_leftover(path) || ends_so(path, "printed.csv") ||
        is_kept(bench, there) || (killed && strstr(path, DAMAGED_LIST) != NULL))
        return NULL;
    if (ends_so(path, "register.csv"))
        wrong = register_wrong(bytes_or_none(there), bytes_or_none(before), bytes_or_none(after),
                               killed);
    else if (!same_files(there, before) && !same_files(there, after) &&
             !(ends_so(path, "other.csv") && is_whole_table(bytes_or_none(there))))
        wrong = there == NULL ? "gone" : before || after ? "torn" : "of nothing";
    return wrong == NULL ? NULL : text_format(arena, "%s: %s", path, wrong);
}

static const char *files_wrong(const struct bench *bench, const struct subject *subject,
                               const struct tree *now, bool killed, struct arena *arena)
{
    const struct tree *all[] = {now, &bench->before, &subject->after};
    const char *wrong = NULL;

    for (size_t i = 0; i < sizeof all / sizeof *all; i++)
        for (size_t k = 0; wrong == NULL && k < all[i]->count; k++)
            wrong = file_wrong(bench, subject, now, all[i]->files[k].path, killed, arena);
    return wrong;
}

/* A row stands before its file has its name. Of a file that was never there it is true that it is
 * missing: a run that was killed or refused is known by it. */
static bool is_foretold(const struct bench *bench, const char *line, struct arena *arena)
{
    const char *end = strstr(line, ": MISSING");

    const char *path = end == NULL ? NULL : arena_copy(arena, line, (size_t)(end - line));

    return path != NULL && tree_find(&bench->before, path) == NULL;
}

/* What `verify` says of the folder of cards, as a reader would ask it. After the next run all
 * that is listed is there: that is seen by the files. */
static const char *verify_wrong(const struct bench *bench, struct arena *arena)
{
    static const char *const bad[] = {": DAMAGED", ": NOT AS LISTED", ": NOT LISTED", ": NOT READ",
                                      ": MISSING"};
    struct ended ended = run_whole(bench, "verify out", &no_trouble, arena);

    for (const char *at = ended.out; *at != '\0'; at = line_next(at)) {
        const char *line = arena_copy(arena, at, (size_t)(line_next(at) - at));
        for (size_t i = 0; i < sizeof bad / sizeof *bad; i++)
            if (strstr(line, bad[i]) != NULL && !is_foretold(bench, line, arena))
                return text_format(arena, "verify says: %s", line);
    }
    return ended.status > 1 ? text_format(arena, "verify ends with %d: %s", ended.status, ended.err)
                            : NULL;
}

/* Of a list of prints file, sum and length: which run it was, and how much that printed, is another
 * thing when two runs made the set. */
static const char *files_listed(const struct tree_file *list, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);

    text_add(&out, "");
    for (const char *at = bytes_or_none(list); *at != '\0'; at = line_next(at)) {
        const char *end = at;
        for (int columns = 0; columns < 3 && *end != '\0'; columns++)
            end += strcspn(end, ",") + 1;
        text_add_bytes(&out, at, (size_t)(end - at));
        text_add(&out, "\n");
    }
    return out.at;
}

/* Lists may have their rows in another order after a second run. */
static const char *next_differs(const struct bench *bench, const struct subject *subject,
                                const struct tree *now, struct arena *arena)
{
    for (size_t i = 0; i < now->count + subject->after.count; i++) {
        const char *path = i < now->count ? now->files[i].path
                                          : subject->after.files[i - now->count].path;
        const struct tree_file *there = tree_find(now, path);
        const struct tree_file *after = tree_find(&subject->after, path);
        const char *wrong = NULL;
        if (ends_so(path, "register.csv"))
            wrong = register_wrong(bytes_or_none(there), bytes_or_none(after),
                                   bytes_or_none(after), false);
        else if (ends_so(path, "printed.csv"))
            wrong = register_wrong(files_listed(there, arena), files_listed(after, arena),
                                   files_listed(after, arena), false);
        else if (!same_files(there, after) && !is_kept(bench, there) &&
                 strstr(path, DAMAGED_LIST) == NULL)
            wrong = there == NULL ? "is missing" : after == NULL ? "is left" : "is another";
        if (wrong != NULL)
            return text_format(arena, "after the next run %s %s", path, wrong);
    }
    return NULL;
}

/* What is there already is refused as wrong use. */
static const char *next_run(const struct bench *bench, const struct subject *subject,
                            struct arena *arena)
{
    const char *words = subject->again == NULL ? subject->words : subject->again;
    int most = subject->again == NULL ? 1 : 2;

    for (const char *at = words; *at != '\0'; at += strspn(at, ";")) {
        const char *one = arena_copy(arena, at, strcspn(at, ";"));
        struct ended next = run_whole(bench, one, &no_trouble, arena);
        if (next.status > most)
            return text_format(arena, "the next run ends with %d: %s", next.status, next.err);
        at += strlen(one);
    }
    return NULL;
}

const char *folder_wrong(const struct bench *bench, const struct subject *subject, bool killed,
                         struct arena *arena)
{
    struct tree now = tree_read(bench->work, arena);
    const char *wrong = NULL;

    if (tree_differs(&now, &bench->before) == NULL || tree_differs(&now, &subject->after) == NULL)
        return NULL;
    wrong = files_wrong(bench, subject, &now, killed, arena);
    if (wrong == NULL)
        wrong = verify_wrong(bench, arena);
    if (wrong != NULL)
        return wrong;
    wrong = next_run(bench, subject, arena);
    if (wrong != NULL)
        return wrong;
    struct tree then = tree_read(bench->work, arena);
    wrong = next_differs(bench, subject, &then, arena);
    return wrong != NULL ? wrong : verify_wrong(bench, arena);
}

/* ---- what is told ---- */

/* Files of boats that are not as after: each is named by its boat, unless no file is. */
static const char *unnamed_find(const struct bench *bench, const struct subject *subject,
                                const struct ended *ended, struct arena *arena)
{
    struct tree now = tree_read(bench->work, arena);
    const char *unnamed = NULL;
    bool any = false;

    for (size_t i = 0; i < subject->after.count; i++) {
        const struct tree_file *after = &subject->after.files[i];
        const struct tree_file *there = tree_find(&now, after->path);
        const char *name = strrchr(after->path, '/');
        if (!ends_so(after->path, ".pdf") || name == NULL ||
            same_files(after, tree_find(&bench->before, after->path)))
            continue;
        any = any || same_files(after, there);
        const char *boat = arena_copy(arena, name + 1, strcspn(name + 1, "-."));
        if (!same_files(after, there) && strstr(ended->err, boat) == NULL &&
            strstr(ended->out, boat) == NULL)
            unnamed = boat;
    }
    return any ? unnamed : NULL;
}

/* Is there such a problem, which a run without a fault does not tell, and behind it how to mend
 * it? */
static bool tells_anew(const char *said, const char *known, const char *severity,
                       struct arena *arena)
{
    for (const char *at = said; *at != '\0'; at = line_next(at)) {
        const char *line = arena_copy(arena, at, (size_t)(line_next(at) - at));
        if (strstr(line, severity) != NULL && strstr(known, line) == NULL &&
            strstr(at, "\n  remedy: ") != NULL)
            return true;
    }
    return false;
}

/* What a run said on standard error that one without a fault does not say. */
static const char *said_anew(const struct subject *subject, const struct ended *ended,
                             struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);

    text_add(&out, "");
    for (const char *at = ended->err; *at != '\0'; at = line_next(at)) {
        const char *line = arena_copy(arena, at, (size_t)(line_next(at) - at));
        if (strstr(subject->err, line) == NULL)
            text_add(&out, line);
    }
    return out.at;
}

/* What cannot be told is told by the exit status alone. */
static bool is_told(const struct subject *subject, const struct ended *ended,
                    const struct trouble *trouble, struct arena *arena)
{
    return tells_anew(ended->err, subject->err, ": failure: ", arena) ||
           tells_anew(ended->err, subject->err, ": error: ", arena) ||
           (trouble->order.at > 0 && trouble->order.call == CALL_write_err) ||
           (trouble->closed >> 2 & 1) != 0 ||
           strstr(ended->out, "ANOTHER PRINT IS AT WORK") != NULL;   /* verify tells there */
}

/* Of a run that did not end as it does without a fault. */
static const char *refusal_wrong(const struct bench *bench, const struct subject *subject,
                                 const struct trouble *trouble, const struct ended *ended,
                                 struct arena *arena)
{
    const char *said = said_anew(subject, ended, arena);

    if (ended->status > 3 || ended->status == 0)
        return text_format(arena, "it ended with %d: %s", ended->status, said);
    if (!is_told(subject, ended, trouble, arena))
        return text_format(arena, "status %d and no remedy: %s", ended->status, said);
    const char *boat = unnamed_find(bench, subject, ended, arena);
    if (boat != NULL)
        return text_format(arena, "status %d, and %s is not named: %s", ended->status, boat, said);
    return folder_wrong(bench, subject, false, arena);
}

static bool is_by_order(const struct trouble *trouble, int status)
{
    return (status == KILLED && (trouble->kill_us > 0 || trouble->order.error == FAULT_KILL)) ||
           (status == TERMINATED && trouble->order.error == FAULT_TERM);
}

/* Under a limit the system may not even load it: then it made no call. */
static bool is_begun(const struct bench *bench)
{
    long calls = 0;

    for (int caller = 0; caller < CALLER_COUNT; caller++)
        for (int call = 0; call < CALL_COUNT; call++)
            calls += bench->page->seen[caller][call];
    return calls > 0;
}

/* Did it say all that it says without a fault? What cannot be heard is not said. */
static bool is_said(const struct subject *subject, const struct trouble *trouble,
                    const struct ended *ended)
{
    bool deaf = trouble->output != NULL || (trouble->closed >> 1 & 1) != 0;
    bool err_closed = (trouble->closed >> 2 & 1) != 0;

    return strcmp(deaf ? "" : ended->out, subject->out) == 0 &&
           (!err_closed || *subject->err == '\0');
}

enum outcome trial_run(const struct bench *bench, struct subject *subject,
                       const struct trouble *trouble, const char **wrong, struct arena *arena)
{
    subject_know(bench, subject);
    tree_lay(bench->work, &bench->before, arena);
    struct ended ended = run_whole(bench, subject->words, trouble, arena);
    bool struck = bench->page->struck > 0;
    if (trouble->full && mount(NULL, bench->work, NULL, MS_REMOUNT, "size=64m") != 0)
        give_up("cannot make room in", bench->work);
    proof_spoil(bench, subject, &ended, arena);
    struct tree now = tree_read(bench->work, arena);
    const char *differs = tree_differs(&now, &subject->after);
    bool same = ended.status == subject->status && differs == NULL &&
                is_said(subject, trouble, &ended);

    *wrong = NULL;
    if (!is_begun(bench) && !trouble->limited && trouble->kill_us == 0)
        give_up("cannot begin", bench->program);
    if (!is_begun(bench) && trouble->limited)
        return OUTCOME_MISSED;
    if (ended.hung)
        *wrong = "it did not end";
    else if (same)
        return trouble->order.at > 0 && !struck ? OUTCOME_MISSED : OUTCOME_WHOLE;
    else if (is_by_order(trouble, ended.status))
        *wrong = folder_wrong(bench, subject, true, arena);
    else if (ended.status == subject->status)
        *wrong = text_format(arena, "it ended with %d as without a fault, and %s is another: %s",
                             ended.status, differs ? differs : "what it said",
                             said_anew(subject, &ended, arena));
    else
        *wrong = refusal_wrong(bench, subject, trouble, &ended, arena);
    return *wrong == NULL ? OUTCOME_TOLD : OUTCOME_LOST;
}

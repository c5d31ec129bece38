/* test_drafts.c - files that get their names later, and folders that one run has for itself. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <dirent.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include "drafts.h"

static struct arena *arena;
static struct problems *problems;
static char folder[64];

static int setup(void **state)
{
    (void)state;
    arena = arena_new(1u << 20);
    problems = problems_new(arena);
    snprintf(folder, sizeof folder, "/tmp/maydeck_drafts_XXXXXX");
    return mkdtemp(folder) == NULL;
}

static const char *path_of(const char *name)
{
    return text_format(arena, "%s/%s", folder, name);
}

static int teardown(void **state)
{
    DIR *stream = opendir(folder);
    const struct dirent *entry;

    (void)state;
    while (stream != NULL && (entry = readdir(stream)) != NULL)
        if (strcmp(entry->d_name, ".") != 0 && strcmp(entry->d_name, "..") != 0 &&
            unlink(path_of(entry->d_name)) != 0)
            rmdir(path_of(entry->d_name));
    if (stream != NULL)
        closedir(stream);
    rmdir(folder);
    arena_free(arena);
    return 0;
}

static void content_expect(const char *name, const char *content)
{
    char read_back[64] = {0};
    FILE *file = fopen(path_of(name), "rb");

    assert_non_null(file);
    size_t length = fread(read_back, 1, sizeof read_back - 1, file);
    assert_int_equal(fclose(file), 0);
    assert_int_equal(length, strlen(content));
    assert_string_equal(read_back, content);
}

static void content_make(const char *name, const char *content)
{
    FILE *file = fopen(path_of(name), "wb");

    assert_non_null(file);
    assert_true(fputs(content, file) >= 0);
    assert_int_equal(fclose(file), 0);
}

static bool stands(const char *name)
{
    struct stat status;

    return lstat(path_of(name), &status) == 0;
}

static struct file_draft draft_of(const char *name, const char *text)
{
    struct file_draft draft;

    assert_true(file_draft_write(folder, name,
                                 (struct bytes){(const unsigned char *)text, strlen(text)}, arena,
                                 problems, &draft));
    assert_int_equal(draft.state, DRAFT_WAITING);
    return draft;
}

/* Exactly one problem of this severity, which says `what`. */
static void told_expect(enum severity severity, const char *what)
{
    size_t count;
    const struct problem *all = problems_sorted(problems, &count);

    assert_int_equal(count, 1);
    assert_int_equal(all[0].severity, severity);
    assert_non_null(strstr(all[0].what, what));
    assert_false(text_empty(all[0].remedy));
}

static void a_name_cannot_be_foretold(void **state)
{
    char names[50][UNFORETOLD_TEXT];

    (void)state;
    for (size_t i = 0; i < 50; i++) {
        assert_true(unforetold_make(names[i]));
        assert_int_equal(strlen(names[i]), UNFORETOLD_TEXT - 1);
        assert_int_equal(strspn(names[i], "0123456789abcdef"), UNFORETOLD_TEXT - 1);
        for (size_t j = 0; j < i; j++)
            assert_string_not_equal(names[i], names[j]);
    }
}

static void drafts_get_their_names_when_committed(void **state)
{
    struct file_draft drafts[3];
    size_t committed = 9;

    (void)state;
    content_make("a.pdf", "old");
    drafts[0] = draft_of("a.pdf", "new");
    drafts[1] = (struct file_draft){.state = DRAFT_NONE};
    drafts[2] = draft_of("b.pdf", "");
    content_expect("a.pdf", "old");
    content_expect(drafts[0].temporary, "new");
    assert_false(stands("b.pdf"));
    assert_int_equal(drafts[0].bytes, 3);
    assert_string_equal(drafts[0].sum,
                        "11507a0e2f5e69d5dfa40a62a1bd7b6ee57e6bcd85c67c9b8431b36fff21c437");
    assert_true(file_drafts_commit(folder, drafts, 3, arena, problems, &committed));
    assert_int_equal(committed, 2);
    content_expect("a.pdf", "new");
    content_expect("b.pdf", "");
    assert_false(stands(drafts[0].temporary));
    assert_int_equal(drafts[0].state, DRAFT_PLACED);
    assert_int_equal(drafts[1].state, DRAFT_NONE);
    assert_int_equal(drafts[2].state, DRAFT_PLACED);
    assert_false(problems_reach(problems, SEVERITY_NOTE));
}

/* What lies under the temporary name is no longer what was written: never renamed, and left. */
static void one_that_was_swapped_stops_no_other(void **state)
{
    struct file_draft drafts[2] = {draft_of("a.pdf", "first"), draft_of("b.pdf", "second")};
    size_t committed;

    (void)state;
    assert_int_equal(rename(path_of(drafts[0].temporary), path_of("aside")), 0);
    content_make(drafts[0].temporary, "forged");
    assert_false(file_drafts_commit(folder, drafts, 2, arena, problems, &committed));
    assert_int_equal(committed, 1);
    assert_false(stands("a.pdf"));
    content_expect(drafts[0].temporary, "forged");
    content_expect("b.pdf", "second");
    assert_int_equal(drafts[0].state, DRAFT_NONE);
    told_expect(SEVERITY_FAILURE, "a.pdf");
}

static void one_that_was_cut_is_not_placed(void **state)
{
    struct file_draft draft = draft_of("a.pdf", "whole");
    size_t committed;

    (void)state;
    assert_int_equal(truncate(path_of(draft.temporary), 2), 0);
    assert_false(file_drafts_commit(folder, &draft, 1, arena, problems, &committed));
    assert_int_equal(committed, 0);
    assert_false(stands("a.pdf"));
    assert_false(stands(draft.temporary));
    told_expect(SEVERITY_FAILURE, "a.pdf");
}

static void what_is_no_file_is_not_replaced(void **state)
{
    struct file_draft draft = draft_of("a.pdf", "whole"), refused;
    size_t committed;

    (void)state;
    assert_int_equal(mkdir(path_of("a.pdf"), 0700), 0);
    assert_false(file_drafts_commit(folder, &draft, 1, arena, problems, &committed));
    assert_false(stands(draft.temporary));
    told_expect(SEVERITY_FAILURE, "not a regular file");
    assert_false(file_draft_write(folder, "a.pdf", (struct bytes){NULL, 0}, arena, problems,
                                  &refused));
    assert_int_equal(refused.state, DRAFT_NONE);
}

static void names_that_cannot_be_are_refused(void **state)
{
    char longest[300];
    struct file_draft draft;
    const struct bytes none = {NULL, 0};

    (void)state;
    memset(longest, 'x', sizeof longest - 1);
    longest[sizeof longest - 1] = '\0';
    assert_false(file_draft_write(folder, "../a", none, arena, problems, &draft));
    assert_false(file_draft_write(folder, "", none, arena, problems, &draft));
    assert_int_equal(problems_count(problems, SEVERITY_USE), 2);
    assert_false(file_draft_write(folder, longest, none, arena, problems, &draft));
    assert_int_equal(problems_count(problems, SEVERITY_FAILURE), 1);
    assert_int_equal(draft.state, DRAFT_NONE);
}

static void dropped_drafts_are_gone(void **state)
{
    struct file_draft drafts[2] = {draft_of("a.pdf", "one"), draft_of("b.pdf", "two")};
    char other[sizeof drafts[1].temporary];

    (void)state;
    memcpy(other, drafts[1].temporary, sizeof other);
    assert_int_equal(rename(path_of(other), path_of("aside")), 0);
    content_make(other, "another's");
    file_drafts_drop(folder, drafts, 2, arena);
    assert_false(stands(drafts[0].temporary));
    assert_false(stands("a.pdf"));
    content_expect(other, "another's");
    assert_int_equal(drafts[0].state, DRAFT_NONE);
}

/* In a child: memory runs out while drafts wait. */
static void exhaustion_removes_what_is_guarded(void **state)
{
    int status = 0;
    pid_t child = fork();

    (void)state;
    assert_true(child >= 0);
    if (child == 0) {
        struct file_draft drafts[2] = {draft_of("a.pdf", "one"), draft_of("b.pdf", "two")};
        size_t count = 2;
        file_drafts_guard(folder, drafts, &count);
        if (dup2(open("/dev/null", O_WRONLY), STDERR_FILENO) < 0)
            _exit(9);
        arena_alloc(arena, 1u << 21);
        _exit(8);
    }
    assert_int_equal(waitpid(child, &status, 0), child);
    assert_true(WIFEXITED(status));
    assert_int_equal(WEXITSTATUS(status), 3);
    DIR *stream = opendir(folder);
    size_t count = 0;
    assert_non_null(stream);
    while (readdir(stream) != NULL)
        count++;
    assert_int_equal(closedir(stream), 0);
    assert_int_equal(count, 2);   /* . and .. */
}

/* ---- a folder for one run ---- */

static void a_claimed_folder_is_refused(void **state)
{
    int first, second = 7;

    (void)state;
    assert_true(folder_claim(folder, arena, problems, &first));
    assert_true(first >= 0);
    assert_false(folder_claim(folder, arena, problems, &second));
    assert_int_equal(second, -1);
    told_expect(SEVERITY_FAILURE, "another print is at work in");
    folder_release(first);
    assert_true(folder_claim(folder, arena, problems, &second));
    assert_true(second >= 0);
    folder_release(second);
}

/* A worker ends and its parent keeps the claim; the parent is gone and a worker keeps it. */
static void a_claim_goes_over_to_who_is_forked(void **state)
{
    int hold, other, stay[2], status;
    char byte = 0;

    (void)state;
    assert_true(folder_claim(folder, arena, problems, &hold));
    assert_int_equal(pipe(stay), 0);
    pid_t ended = fork();
    if (ended == 0)
        _exit(0);
    assert_int_equal(waitpid(ended, &status, 0), ended);
    assert_false(folder_claim(folder, arena, problems, &other));
    pid_t worker = fork();
    if (worker == 0) {
        close(stay[1]);
        _exit(read(stay[0], &byte, 1) == 0 ? 0 : 1);
    }
    close(stay[0]);
    folder_release(hold);
    assert_false(folder_claim(folder, arena, problems, &other));
    close(stay[1]);
    assert_int_equal(waitpid(worker, &status, 0), worker);
    assert_int_equal(WEXITSTATUS(status), 0);
    assert_true(folder_claim(folder, arena, problems, &other));
    folder_release(other);
}

/* A draft that no process has open is swept by nobody while its folder is claimed, and by the next
 * run that claims it when its own run was killed. */
static void drafts_of_a_run_at_work_are_not_swept(void **state)
{
    int hold;
    struct file_draft draft;

    (void)state;
    assert_true(folder_claim(folder, arena, problems, &hold));
    draft = draft_of("a.pdf", "waits");
    folder_sweep(folder, arena);
    content_expect(draft.temporary, "waits");
    folder_release(hold);
    content_make("tern.pdf", "whole");
    assert_true(folder_claim(folder, arena, problems, &hold));
    assert_false(stands(draft.temporary));
    content_expect("tern.pdf", "whole");
    folder_release(hold);
}

/* A folder that cannot be opened for a lock is no reason to refuse: who writes into it is told. */
static void where_nothing_can_be_locked_the_run_goes_on(void **state)
{
    int hold = 7;

    (void)state;
    assert_true(folder_claim(path_of("none"), arena, problems, &hold));
    assert_int_equal(hold, -1);
    folder_release(hold);
    assert_false(problems_reach(problems, SEVERITY_NOTE));
}

#define EACH(test) cmocka_unit_test_setup_teardown(test, setup, teardown)

int main(void)
{
    const struct CMUnitTest tests[] = {
        EACH(a_name_cannot_be_foretold),
        EACH(drafts_get_their_names_when_committed),
        EACH(one_that_was_swapped_stops_no_other),
        EACH(one_that_was_cut_is_not_placed),
        EACH(what_is_no_file_is_not_replaced),
        EACH(names_that_cannot_be_are_refused),
        EACH(dropped_drafts_are_gone),
        EACH(exhaustion_removes_what_is_guarded),
        EACH(a_claimed_folder_is_refused),
        EACH(a_claim_goes_over_to_who_is_forked),
        EACH(drafts_of_a_run_at_work_are_not_swept),
        EACH(where_nothing_can_be_locked_the_run_goes_on),
    };

    return cmocka_run_group_tests_name("drafts", tests, NULL, NULL) != 0;
}

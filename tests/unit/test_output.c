/* test_output.c - folders made ready and files put whole. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <dirent.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include "draw.h"

static struct arena *arena;
static char folder[64];

static int setup(void **state)
{
    (void)state;
    arena = arena_new(1u << 20);
    snprintf(folder, sizeof folder, "/tmp/maydeck_output_XXXXXX");
    return mkdtemp(folder) == NULL;
}

static const char *path_of(const char *name)
{
    return text_format(arena, "%s/%s", folder, name);
}

static int teardown(void **state)
{
    DIR *open_folder = opendir(folder);
    struct dirent *entry;

    (void)state;
    while (open_folder != NULL && (entry = readdir(open_folder)) != NULL)
        if (strcmp(entry->d_name, ".") != 0 && strcmp(entry->d_name, "..") != 0) {
            unlink(path_of(entry->d_name));
            rmdir(path_of(entry->d_name));
        }
    if (open_folder != NULL)
        closedir(open_folder);
    rmdir(folder);
    arena_free(arena);
    return 0;
}

static struct bytes bytes_of(const char *text)
{
    return (struct bytes){(const unsigned char *)text, strlen(text)};
}

static void content_expect(const char *name, const char *content)
{
    char read_back[4096] = {0};
    FILE *file = fopen(path_of(name), "rb");

    assert_non_null(file);
    size_t length = fread(read_back, 1, sizeof read_back - 1, file);
    assert_int_equal(fclose(file), 0);
    assert_int_equal(length, strlen(content));
    assert_string_equal(read_back, content);
}

static void file_make(const char *name, const char *content)
{
    FILE *file = fopen(path_of(name), "wb");

    assert_non_null(file);
    assert_true(fputs(content, file) >= 0);
    assert_int_equal(fclose(file), 0);
}

static bool exists(const char *name)
{
    struct stat status;

    return lstat(path_of(name), &status) == 0;
}

/* Puts a file and expects exactly one problem of this severity that says `what`. */
static void refusal_expect(const char *into, const char *name, enum severity severity,
                           const char *what)
{
    struct problems *problems = problems_new(arena);
    size_t count;

    assert_false(file_put(into, name, bytes_of("new"), arena, problems));
    const struct problem *all = problems_sorted(problems, &count);
    assert_int_equal(count, 1);
    assert_int_equal(all[0].severity, severity);
    if (strstr(all[0].what, what) == NULL)
        fail_msg("\"%s\" does not say \"%s\"", all[0].what, what);
    if (text_empty(all[0].remedy))
        fail_msg("\"%s\" has no remedy", all[0].what);
}

/* Temporary files that lie in the folder. */
static size_t temporaries_count(void)
{
    DIR *open_folder = opendir(folder);
    const struct dirent *entry;
    size_t count = 0;

    assert_non_null(open_folder);
    while ((entry = readdir(open_folder)) != NULL)
        count += text_ends(entry->d_name, ".tmp") ? 1 : 0;
    assert_int_equal(closedir(open_folder), 0);
    return count;
}

static void folder_is_made_or_taken(void **state)
{
    struct problems *problems = problems_new(arena);

    (void)state;
    assert_true(folder_ready(path_of("cards"), arena, problems));
    assert_true(exists("cards"));
    assert_true(folder_ready(path_of("cards"), arena, problems));
    assert_int_equal(symlink("cards", path_of("link")), 0);
    assert_true(folder_ready(path_of("link"), arena, problems));
    assert_true(folder_ready(path_of("no//such/as/this/"), arena, problems));
    assert_int_equal(rmdir(path_of("no/such/as/this")), 0);
    assert_int_equal(rmdir(path_of("no/such/as")), 0);
    assert_int_equal(rmdir(path_of("no/such")), 0);
    assert_false(problems_reach(problems, SEVERITY_NOTE));
}

static void folder_that_is_none_is_refused(void **state)
{
    struct problems *problems = problems_new(arena);

    (void)state;
    file_make("file", "old");
    assert_false(folder_ready(path_of("file"), arena, problems));
    assert_false(folder_ready("/dev/null", arena, problems));
    assert_int_equal(problems_count(problems, SEVERITY_USE), 2);
    assert_false(folder_ready(path_of("file/below"), arena, problems));
    assert_false(folder_ready("", arena, problems));
    assert_int_equal(problems_count(problems, SEVERITY_USE), 3);   /* the file is told once */
    assert_false(folder_ready("/proc/none/such", arena, problems));
    assert_int_equal(problems_count(problems, SEVERITY_FAILURE), 1);
    content_expect("file", "old");
}

static void file_appears_and_is_replaced(void **state)
{
    struct problems *problems = problems_new(arena);

    (void)state;
    assert_true(file_put(folder, "a.pdf", bytes_of("one"), arena, problems));
    content_expect("a.pdf", "one");
    assert_true(file_put(folder, "a.pdf", bytes_of("second"), arena, problems));
    content_expect("a.pdf", "second");
    assert_true(file_put(folder, "empty.pdf", bytes_of(""), arena, problems));
    content_expect("empty.pdf", "");
    assert_int_equal(temporaries_count(), 0);
    assert_false(problems_reach(problems, SEVERITY_NOTE));
}

static void large_file_is_whole(void **state)
{
    struct problems *problems = problems_new(arena);
    size_t length = 700000;
    unsigned char *content = arena_alloc(arena, length);
    struct stat status;

    (void)state;
    memset(content, 'x', length);
    assert_true(file_put(folder, "b", (struct bytes){content, length}, arena, problems));
    assert_int_equal(stat(path_of("b"), &status), 0);
    assert_int_equal(status.st_size, length);
}

/* What stands under a temporary name is another's: it is neither written over nor renamed. */
static void what_others_planted_is_left_alone(void **state)
{
    struct problems *problems = problems_new(arena);
    const char *process = text_format(arena, ".maydeck-%ld-0.tmp", (long)getpid());

    (void)state;
    file_make("other", "keep");
    assert_int_equal(symlink("other", path_of(process)), 0);
    assert_true(file_put(folder, "c", bytes_of("whole"), arena, problems));
    content_expect("c", "whole");
    content_expect("other", "keep");
    assert_int_equal(unlink(path_of(process)), 0);
    assert_false(problems_reach(problems, SEVERITY_NOTE));
}

/* In a child: holds the file as a run does that is writing it, until the pipe closes. */
static void holding_child(const char *name, int ready, int stay)
{
    struct flock lock = {.l_type = F_WRLCK, .l_whence = SEEK_SET};
    int file = open(path_of(name), O_WRONLY);
    char byte = 0;

    if (file < 0 || fcntl(file, F_SETLK, &lock) != 0 || write(ready, &byte, 1) != 1)
        _exit(9);
    _exit(read(stay, &byte, 1) == 0 ? 0 : 8);
}

static void only_what_killed_runs_left_is_swept(void **state)
{
    int ready[2], stay[2], status = 0;
    char byte;

    (void)state;
    file_make(".maydeck-7-0.tmp", "stale");
    file_make(".maydeck-8-0.tmp", "live");
    file_make("tern.pdf", "whole");
    file_make("kept", "keep");
    assert_int_equal(symlink("kept", path_of(".maydeck-9-0.tmp")), 0);
    assert_int_equal(pipe(ready), 0);
    assert_int_equal(pipe(stay), 0);
    pid_t child = fork();
    assert_true(child >= 0);
    if (child == 0) {
        close(stay[1]);
        holding_child(".maydeck-8-0.tmp", ready[1], stay[0]);
    }
    assert_int_equal(read(ready[0], &byte, 1), 1);
    folder_sweep(folder, arena);
    assert_false(exists(".maydeck-7-0.tmp"));
    content_expect(".maydeck-8-0.tmp", "live");
    content_expect("tern.pdf", "whole");
    content_expect("kept", "keep");
    close(stay[0]);
    close(stay[1]);
    assert_int_equal(waitpid(child, &status, 0), child);
    assert_true(WIFEXITED(status) && WEXITSTATUS(status) == 0);
    folder_sweep(folder, arena);
    assert_false(exists(".maydeck-8-0.tmp"));
    assert_int_equal(unlink(path_of(".maydeck-9-0.tmp")), 0);   /* a link is never swept */
}

#define CONTENT_LENGTH 50000

/* In a child: sweeps and writes one file again and again, all of one letter. */
static void writing_child(unsigned char letter)
{
    static unsigned char content[CONTENT_LENGTH];
    bool good = true;

    memset(content, letter, sizeof content);
    for (int i = 0; good && i < 60; i++) {
        struct problems *problems = problems_new(arena);
        folder_sweep(folder, arena);
        good = file_put(folder, "k", (struct bytes){content, sizeof content}, arena, problems);
    }
    _exit(good ? 0 : 7);
}

static void whole_expect(void)
{
    static unsigned char content[CONTENT_LENGTH + 1];
    FILE *file = fopen(path_of("k"), "rb");

    if (file == NULL)
        return;      /* not there yet */
    size_t length = fread(content, 1, sizeof content, file);
    assert_int_equal(fclose(file), 0);
    assert_int_equal(length, CONTENT_LENGTH);
    for (size_t i = 1; i < length; i++)
        assert_int_equal(content[i], content[0]);
}

static void two_runs_at_once_never_meet(void **state)
{
    pid_t children[2];
    int left = 2, status = 0;

    (void)state;
    for (int i = 0; i < 2; i++) {
        children[i] = fork();
        assert_true(children[i] >= 0);
        if (children[i] == 0)
            writing_child((unsigned char)('a' + i));
    }
    while (left > 0) {
        whole_expect();
        if (waitpid(-1, &status, WNOHANG) <= 0)
            continue;
        assert_true(WIFEXITED(status));
        assert_int_equal(WEXITSTATUS(status), 0);
        left--;
    }
    whole_expect();
}

static void only_regular_files_are_replaced(void **state)
{
    struct stat status;

    (void)state;
    assert_int_equal(mkdir(path_of("d"), 0700), 0);
    assert_int_equal(symlink("/dev/null", path_of("e")), 0);
    assert_int_equal(mkfifo(path_of("f"), 0600), 0);
    refusal_expect(folder, "d", SEVERITY_FAILURE, "not a regular file");
    refusal_expect(folder, "e", SEVERITY_FAILURE, "not a regular file");
    refusal_expect(folder, "f", SEVERITY_FAILURE, "not a regular file");
    assert_int_equal(lstat(path_of("d"), &status), 0);
    assert_true(S_ISDIR(status.st_mode));
    assert_int_equal(lstat(path_of("e"), &status), 0);
    assert_true(S_ISLNK(status.st_mode));
    assert_int_equal(lstat(path_of("f"), &status), 0);
    assert_true(S_ISFIFO(status.st_mode));
    assert_int_equal(temporaries_count(), 0);
}

static void names_that_leave_the_folder_are_refused(void **state)
{
    (void)state;
    refusal_expect(folder, "../g", SEVERITY_USE, "is not the name of a file");
    refusal_expect(folder, "", SEVERITY_USE, "is not the name of a file");
}

static void absent_folder_is_told(void **state)
{
    (void)state;
    refusal_expect(path_of("nowhere"), "h", SEVERITY_FAILURE, "No such file or directory");
}

/* In a child: the disk ends (a file-size limit) within the file. */
static void full_disk_child(void)
{
    struct rlimit limit = {1000, 1000};
    struct problems *problems = problems_new(arena);
    static unsigned char content[5000];
    bool put;

    signal(SIGXFSZ, SIG_IGN);
    if (setrlimit(RLIMIT_FSIZE, &limit) != 0)
        _exit(9);
    put = file_put(folder, "j", (struct bytes){content, sizeof content}, arena, problems);
    _exit(put ? 8 : problems_count(problems, SEVERITY_FAILURE) == 1 ? 0 : 7);
}

static void full_disk_leaves_the_old_file(void **state)
{
    int status = 0;

    (void)state;
    file_make("j", "old");
    pid_t child = fork();
    assert_true(child >= 0);
    if (child == 0)
        full_disk_child();
    assert_int_equal(waitpid(child, &status, 0), child);
    assert_true(WIFEXITED(status));
    assert_int_equal(WEXITSTATUS(status), 0);
    content_expect("j", "old");
    assert_int_equal(temporaries_count(), 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(folder_is_made_or_taken),
        cmocka_unit_test(folder_that_is_none_is_refused),
        cmocka_unit_test(file_appears_and_is_replaced),
        cmocka_unit_test(large_file_is_whole),
        cmocka_unit_test(what_others_planted_is_left_alone),
        cmocka_unit_test(only_what_killed_runs_left_is_swept),
        cmocka_unit_test(two_runs_at_once_never_meet),
        cmocka_unit_test(only_regular_files_are_replaced),
        cmocka_unit_test(names_that_leave_the_folder_are_refused),
        cmocka_unit_test(absent_folder_is_told),
        cmocka_unit_test(full_disk_leaves_the_old_file),
    };

    return cmocka_run_group_tests_name("output", tests, setup, teardown) != 0;
}

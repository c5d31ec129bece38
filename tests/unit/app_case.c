/* app_case.c - folders and caught output for the tests of the room app. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "app_case.h"
#include "text.h"

/* ---- folders ---- */

const char *case_folder(struct arena *arena)
{
    char path[] = "/tmp/maydeck_app_XXXXXX";
    if (mkdtemp(path) == NULL)
        fail_msg("no folder can be made below /tmp");
    return arena_copy(arena, path, strlen(path));
}

void case_folder_sweep(const char *folder)
{
    struct arena *arena = arena_new((size_t)1024 * 1024);
    DIR *stream = opendir(folder);
    for (struct dirent *entry; stream != NULL && (entry = readdir(stream)) != NULL;) {
        const char *path = text_format(arena, "%s/%s", folder, entry->d_name);
        if (strcmp(entry->d_name, ".") == 0 || strcmp(entry->d_name, "..") == 0)
            continue;
        if (unlink(path) != 0)
            case_folder_sweep(path);
    }
    if (stream != NULL)
        closedir(stream);
    (void)rmdir(folder);
    arena_free(arena);
}

void case_file_make(const char *folder, const char *name, const char *content)
{
    struct arena *arena = arena_new((size_t)1024 * 1024);
    const char *path = text_format(arena, "%s/%s", folder, name);
    for (const char *slash = strchr(path + strlen(folder) + 1, '/'); slash != NULL;
         slash = strchr(slash + 1, '/'))
        (void)mkdir(arena_copy(arena, path, (size_t)(slash - path)), 0777);
    FILE *file = fopen(path, "w");
    assert_non_null(file);
    assert_true(fputs(content, file) >= 0);
    assert_int_equal(fclose(file), 0);
    arena_free(arena);
}

static const char *rest_of(FILE *file, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    char bytes[4096];
    for (size_t got; (got = fread(bytes, 1, sizeof bytes, file)) > 0;)
        text_add_bytes(&out, bytes, got);
    return out.length == 0 ? "" : out.at;
}

const char *case_file_content(struct arena *arena, const char *path)
{
    FILE *file = fopen(path, "r");
    assert_non_null(file);
    const char *content = rest_of(file, arena);
    assert_int_equal(fclose(file), 0);
    return content;
}

/* ---- caught output ---- */

static FILE *caught[2];
static int kept[2];
static const int streams[2] = {STDOUT_FILENO, STDERR_FILENO};

void case_catch_begin(void)
{
    (void)fflush(NULL);
    for (size_t i = 0; i < 2; i++) {
        caught[i] = tmpfile();
        kept[i] = dup(streams[i]);
        assert_non_null(caught[i]);
        assert_true(kept[i] >= 0 && dup2(fileno(caught[i]), streams[i]) >= 0);
    }
}

const char *case_catch_end(struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    (void)fflush(NULL);
    for (size_t i = 0; i < 2; i++) {
        (void)dup2(kept[i], streams[i]);
        close(kept[i]);
        rewind(caught[i]);
        text_add(&out, rest_of(caught[i], arena));
        (void)fclose(caught[i]);
    }
    return out.length == 0 ? "" : out.at;
}

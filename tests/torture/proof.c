/* proof.c - spoils a run after it has ended, to prove that the oracle tells: a failure that claims
 * to be none, one that says nothing, a file that is torn, one that is lost, a row written twice. */
#define _GNU_SOURCE
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "text.h"
#include "trial.h"

#define PDF "out/cicely-flooding.pdf"
#define REGISTER "base/register.csv"

static void bytes_append(const char *path, const char *bytes, size_t length)
{
    int file = open(path, O_WRONLY | O_APPEND | O_CLOEXEC);

    if (file < 0 || write(file, bytes, length) != (ssize_t)length)
        give_up("cannot spoil", path);
    close(file);
}

/* Its last row once more. */
static void row_double(const char *path, struct arena *arena)
{
    size_t length;
    const char *text = file_text(path, arena, &length);
    const char *row = text;

    for (const char *at = text; *at != '\0'; at = strchr(at, '\n') + 1)
        row = at;
    bytes_append(path, row, strlen(row));
}

void proof_spoil(const struct bench *bench, const struct subject *subject, struct ended *ended,
                 struct arena *arena)
{
    const char *proof = getenv("TORTURE_PROOF");
    const char *pdf = text_format(arena, "%s/" PDF, bench->work);

    if (proof == NULL || *proof == '\0')
        return;
    if (strcmp(proof, "claimed") == 0)
        ended->status = subject->status;
    else if (strcmp(proof, "silent") == 0)
        ended->err = "";
    else if (strcmp(proof, "torn") == 0)
        bytes_append(pdf, "%", 1);
    else if (strcmp(proof, "lost") == 0 && unlink(pdf) != 0)
        give_up("cannot remove", pdf);
    else if (strcmp(proof, "twice") == 0)
        row_double(text_format(arena, "%s/" REGISTER, bench->work), arena);
}

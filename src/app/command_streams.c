/* command_streams.c - where a command line asks for standard input or output by "-" (room: app).
 * Reads and writes neither. */
#include "command_reading.h"

#include "print_stream.h"

#include <unistd.h>

static bool stream_is(const char *text)
{
    return text != NULL && text_equal(text, STREAM_NAME);
}

/* What makes files besides the one, or none. */
static const char *option_against(const struct options *options)
{
    const struct { bool given; const char *name; } rows[] = {
        {options->each, "--each"}, {options->proof, "--proof"}, {options->list, "--list"},
        {options->stickers, "--stickers"}, {options->dump, "--dump"}};
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        if (rows[i].given)
            return rows[i].name;
    return NULL;
}

static bool output_sound(struct reading *reading)
{
    const struct options *options = reading->options;
    const char *against = option_against(options);
    if (reading->command->bit != OF_PRINT)
        return refuse(reading, "name a folder; `print` alone writes to standard output",
                      text_format(reading->arena, "%s writes no PDF to standard output",
                                  reading->command->name));
    if (against != NULL)
        return refuse(reading, "leave one of the two out",
                      text_format(reading->arena,
                                  "-o - is one file of cards, and %s asks for something else",
                                  against));
    if (options->boats.count > 1 || options->languages.count > 1)
        return refuse(reading, text_format(reading->arena, "name one %s, or a folder with -o",
                                           options->boats.count > 1 ? "boat" : "language"),
                      "-o - is one file, and there would be several");
    return isatty(STDOUT_FILENO) != 1 ||
           refuse(reading, "send it to a file or a program, such as: > tern.pdf",
                  "standard output is a terminal, which shows no PDF");
}

static bool input_sound(struct reading *reading)
{
    if ((reading->command->bit & OF_GIVEN) == 0)
        return refuse(reading, "name a boat of the base; print, check, why and call take her file "
                      "from there", text_format(reading->arena,
                                                "%s takes no boat from standard input",
                                                reading->command->name));
    if (reading->options->boats.count > 1)
        return refuse(reading, "name it alone: --boat -",
                      "the boat from standard input goes with no other");
    return isatty(STDIN_FILENO) != 1 ||
           refuse(reading, "send the boat's file there, such as: < tern.yaml",
                  "standard input is a terminal");
}

bool streams_sound(struct reading *reading)
{
    struct options *options = reading->options;
    bool given = names_hold(&options->boats, STREAM_NAME);
    if (options->as != NULL && !given)
        return refuse(reading, "write --boat - and send her file to standard input, or leave it "
                      "out", "--as is of the boat from standard input");
    if (reading->command->bit == OF_DUE && stream_is(options->file))
        options->file = NULL;
    if (reading->command->bit == OF_TABLE && stream_is(options->table))
        options->table = NULL;
    return (!given || input_sound(reading)) &&
           (!print_is_stream(options) || output_sound(reading));
}

/* fleet.c - what a run reads before it works on any boat: its own files, the base and which
 * boats there are (room: app). Each part says by itself whether boats can be looked at. */
#include "compose.h"
#include "fleet.h"
#include "sha256.h"

#include <string.h>

struct rules_input rules_input_of(const struct options *options, const struct fleet *fleet,
                                  const struct boat *boat)
{
    bool charter = options->from.year != 0;
    return (struct rules_input){.boat = boat, .base = fleet->base, .today = options->today,
                                .from = charter ? options->from : options->today,
                                .to = charter ? options->to : options->today,
                                .crew = fleet->crew};
}

/* ---- the base ---- */

/* The folder is no base at all; there are errors in what it says; neither. */
enum base_state { BASE_NONE, BASE_WRONG, BASE_SOUND };

/* The folder above that is a base: BASE of BASE/base.yaml and BASE/boats; NULL: none is. */
static const char *base_above(const struct fleet *fleet, const char *path)
{
    const char *folder = path;
    for (int i = 0; i < 2; i++) {
        const char *last = strrchr(folder, '/');
        if (last == NULL || last == folder)
            break;
        folder = text_format(fleet->arena, "%.*s", (int)(last - folder), folder);
        if (is_plain_file(text_format(fleet->arena, "%s/base.yaml", folder)))
            return folder;
    }
    return NULL;
}

static enum base_state no_base(const struct options *options, const struct fleet *fleet,
                               const char *what)
{
    const char *above = base_above(fleet, options->base);
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                above == NULL ? "name the folder that holds base.yaml and boats/"
                              : text_format(fleet->arena, "name the folder that holds base.yaml "
                                            "and boats/: write %s", above),
                "%s", what);
    return BASE_NONE;
}

static enum base_state record_read(struct fleet *fleet, const char *path)
{
    struct file_absent absent = {SEVERITY_USE, "name the folder that holds base.yaml and boats/"};
    bool sound = false;
    const struct source *source = file_read(path, absent, fleet->arena, fleet->problems);
    fleet_input_add(fleet, source);
    if (source != NULL)
        fleet->base = base_read(source, fleet->arena, fleet->base_problems, &sound);
    return fleet->base != NULL && sound ? BASE_SOUND : BASE_WRONG;
}

static enum base_state base_open(const struct options *options, struct fleet *fleet)
{
    const char *path = text_format(fleet->arena, "%s/base.yaml", options->base);
    if (!is_folder(options->base))
        return no_base(options, fleet,
                       text_format(fleet->arena, "%s is not a folder", options->base));
    if (!is_there(path))
        return no_base(options, fleet,
                       text_format(fleet->arena, "%s is not a base: there is no file %s",
                                   options->base, path));
    return record_read(fleet, path);
}

/* What shows when the base is held against the procedures, and by its own checks. */
static bool base_judge(const struct options *options, struct fleet *fleet)
{
    bool cards = true;
    if (fleet->base != NULL && fleet->languages.count > 0)
        cards = base_languages_take(fleet);
    if (fleet->procedures_sound)
        cards = base_procedures_read(options, fleet) && cards;
    if (fleet->base == NULL)
        return false;
    if (fleet->procedures_sound)
        cards = base_cards_check(fleet->base, &fleet->procedures, fleet->arena,
                                 fleet->base_problems) && cards;
    struct rules_input input = rules_input_of(options, fleet, NULL);
    approvables_take(fleet, &input);
    return rules_check_base(&input, fleet->arena, fleet->base_problems) && cards;
}

/* ---- the whole ---- */

void fleet_input_add(const struct fleet *fleet, const struct source *source)
{
    char sum[SHA256_TEXT];
    if (source == NULL)
        return;
    const char *slash = strrchr(source->name, '/');
    sha256_text((const unsigned char *)source->bytes, source->length, sum);
    text_add_format(fleet->inputs, "%s %s\n", sum, slash == NULL ? source->name : slash + 1);
}

bool fleet_open(const struct options *options, unsigned needs, struct fleet *fleet)
{
    enum own_files own = fleet_begin(needs, fleet);
    enum base_state base = base_open(options, fleet);
    fleet->procedures_sound = own == OWN_FILES_SOUND && fleet->procedures.count > 0;
    if (is_folder(options->base))
        base_strays_tell(fleet, options->base);
    bool boats = (needs & NEED_NO_BOATS) == 0;
    bool listed = is_folder(options->base) && (!boats || boats_list(options, fleet));
    bool crew = crew_read(options, fleet);
    bool judged = base_judge(options, fleet);
    bool spoken = fleet->languages.count == 0 || languages_choose(options, fleet);
    bool today = today_sound(options, needs, fleet);
    fleet->ready = own == OWN_FILES_SOUND && base == BASE_SOUND && judged && today;
    if (own == OWN_FILES_BROKEN || base == BASE_NONE || !listed || !crew || !spoken)
        return false;
    if (boats) {
        models_read(options, fleet);
        boats_read(options, needs, fleet);
        if ((needs & NEED_FACES) != 0)
            prints_take(options, fleet);
    }
    return true;
}

void fleet_close(struct fleet *fleet)
{
    faces_close(fleet->faces);
    arena_free(fleet->arena);
}

/* procedure_content.c - sums of what a procedure's files say, and all that its texts stand on
 * (room: procedure). Comments and layout are in no sum. */
#include "procedure_texts.h"

#include "sha256.h"
#include "text.h"

static const char *content_sum(const struct yaml_node *root, struct arena *arena)
{
    struct text_builder content = text_builder_in(arena);
    char *sum = arena_alloc(arena, SHA256_TEXT);
    yaml_content_add(root, &content);
    sha256_text((const unsigned char *)content.at, content.length, sum);
    return sum;
}

void logic_sum_take(struct procedure_reading *reading, const struct yaml_node *root)
{
    reading->procedure->logic_sum = content_sum(root, reading->arena);
}

/* ---- sums of files ---- */

struct files_sum { const struct source *texts; bool made; char sum[SHA256_TEXT]; };
struct files_sums { struct files_sum *of; size_t count; };

static struct files_sums *files_sums_new(const struct procedure_files *files, struct arena *arena)
{
    struct files_sums *sums = arena_alloc(arena, sizeof *sums);
    sums->count = files->text_count;
    sums->of = arena_array(arena, sums->count, sizeof *sums->of);
    for (size_t i = 0; i < sums->count; i++)
        sums->of[i].texts = files->texts[i].source;
    return sums;
}

/* The one that is kept for these texts; one of its own where none is. */
static struct files_sum *files_sum_for(const struct procedure *procedure,
                                       const struct source *texts, struct arena *arena)
{
    const struct files_sums *sums = procedure->files_sums;
    for (size_t i = 0; sums != NULL && i < sums->count; i++)
        if (sums->of[i].texts == texts)
            return &sums->of[i];
    return arena_alloc(arena, sizeof(struct files_sum));
}

const char *procedure_files_sum(const struct procedure *procedure, const char *language,
                                struct arena *arena)
{
    const struct source *texts = text_place_for(&procedure->title, language).source;
    struct files_sum *sum = files_sum_for(procedure, texts, arena);
    if (sum->made)
        return sum->sum;
    struct text_builder all = text_builder_in(arena);
    text_add_bytes(&all, procedure->source->bytes, procedure->source->length);
    if (texts != NULL && texts != procedure->source)
        text_add_bytes(&all, texts->bytes, texts->length);
    sha256_text((const unsigned char *)all.at, all.length, sum->sum);
    sum->made = true;
    return sum->sum;
}

void text_sums_take(struct procedure_reading *reading, const struct texts_at *roots)
{
    const struct procedure_files *files = reading->files;
    struct text_in_language *sums = arena_array(reading->arena, files->text_count + 1,
                                                sizeof *sums);
    size_t count = 0;
    for (size_t i = 0; i < files->text_count; i++)
        if (roots->nodes[i] != NULL)
            sums[count++] = (struct text_in_language){
                files->texts[i].language, content_sum(roots->nodes[i], reading->arena),
                source_whole(files->texts[i].source)};
    reading->procedure->text_sums = sums;
    reading->procedure->files_sums = files_sums_new(files, reading->arena);
}

/* ---- what texts stand on ---- */

static void step_bases(const struct procedure_step *step, basis_visit *visit, void *context)
{
    visit(&step->basis, context);
    for (size_t i = 0; i < step->case_count; i++)
        visit(&step->cases[i].basis, context);
}

static void said_bases(const struct said_list *list, basis_visit *visit, void *context)
{
    for (size_t i = 0; i < list->count; i++)
        visit(&list->items[i].basis, context);
}

static void warning_bases(const struct warning *warnings, size_t count, basis_visit *visit,
                          void *context)
{
    for (size_t i = 0; i < count; i++)
        visit(&warnings[i].basis, context);
}

void procedure_bases(const struct procedure *procedure, basis_visit *visit, void *context)
{
    said_bases(&procedure->berth, visit, context);
    said_bases(&procedure->anchor, visit, context);
    for (size_t i = 0; i < procedure->step_count; i++)
        step_bases(&procedure->steps[i], visit, context);
    visit(&procedure->decision.basis, context);
    warning_bases(procedure->nevers, procedure->never_count, visit, context);
    warning_bases(procedure->cautions, procedure->caution_count, visit, context);
}

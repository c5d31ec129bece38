/* model_read.c - a model's file read by its tables (room: record): what sister ships share.
 * What only shows on a boat, such as a tag given twice, is judged when a boat is read. */
#include "record.h"

#define MODEL_PROBLEMS_ABOUT "record"

const struct model *model_read(const struct source *source, const char *key, struct arena *arena)
{
    struct model *model = arena_alloc(arena, sizeof *model);
    *model = (struct model){.key = key, .source = source, .problems = problems_new(arena)};
    problems_about(model->problems, NULL, MODEL_PROBLEMS_ABOUT);
    plain_section_read(yaml_tree_read(source, arena, model->problems), model_file_fields(),
                       &model->file, arena, model->problems);
    model->sound = !problems_reach(model->problems, SEVERITY_ERROR);
    return model;
}

const char *model_key(const struct model *model)
{
    return model->key;
}

const struct problems *model_problems(const struct model *model)
{
    return model->problems;
}

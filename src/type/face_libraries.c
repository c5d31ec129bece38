/* face_libraries.c - by which libraries' versions shapes and subsets follow (room: type). */
#include <hb.h>
#include <utf8proc.h>

#include "face.h"

const char *face_libraries(struct arena *arena)
{
    return text_format(arena, "HarfBuzz %s, utf8proc %s", hb_version_string(), utf8proc_version());
}

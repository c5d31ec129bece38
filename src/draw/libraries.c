/* libraries.c - by which libraries' versions the bytes of a PDF follow (room: draw). */
#include <hpdf.h>
#include <zlib.h>

#include "draw.h"

const char *draw_libraries(struct arena *arena)
{
    return text_format(arena, "libharu %s, zlib %s, %s", HPDF_GetVersion(), zlibVersion(),
                       face_libraries(arena));
}

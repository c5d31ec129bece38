/* packing.h - zlib as this room uses it: it does not change what it packs or unpacks. Private to
 * src/draw. */
#ifndef MAYDECK_PACKING_H
#define MAYDECK_PACKING_H

#define ZLIB_CONST
#include <zlib.h>

#endif

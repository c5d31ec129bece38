/* procedure_reference.h - the reference of a procedure's two files, for those who write cards
 * (room: procedure). */
#ifndef MAYDECK_PROCEDURE_REFERENCE_H
#define MAYDECK_PROCEDURE_REFERENCE_H

#include "text.h"

/* Adds every key of the logic, of its conditions and of the texts: what may stand there and
 * what it means, a line each, parted by two spaces. It is made of the tables that the files are
 * read by. */
void procedure_reference(struct text_builder *out);

#endif

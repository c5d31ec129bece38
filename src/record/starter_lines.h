/* starter_lines.h - the lines that new files of all kinds have (room: record). Private to the
 * files that write them. */
#ifndef MAYDECK_STARTER_LINES_H
#define MAYDECK_STARTER_LINES_H

#include "starter.h"
#include "text.h"
#include "yaml_fields.h"

/* The line by which editors find the schema of a file, from where it lies. */
#define MODE_LINE(schema) "# yaml-language-server: $schema=" schema "\n"

#define HOW_TO_FILL \
    "# Fill in what you read off the boat or her papers, nothing from memory. What stays\n" \
    "# empty counts as not recorded. Put a text that holds a colon, a comma or a # in quotes.\n" \
    "# Remarks begin with # and are not read. Then run: maydeck check BASE\n"

/* "  key:    # what it is: what may be written", to be filled in; `value` "": nothing is yet. */
void starter_field_add(struct text_builder *out, const struct field *field, const char *value);

/* The same as a remark on the keys of entries. */
void starter_key_explain(struct text_builder *out, const struct field *field);

/* key ("Fuel valve"): with what cards call it. */
void starter_name_add(struct text_builder *out, const struct known_names *known,
                      const char *key);

#endif

/* distress_room.h - what the files of the distress card share. Private to them. */
#ifndef MAYDECK_DISTRESS_ROOM_H
#define MAYDECK_DISTRESS_ROOM_H

#include "compose_room.h"

/* ---- distress_section.c ---- */

/* A new section of the sheet, so titled. */
struct section_facts *section_add(struct composing *composing, struct sheet *sheet,
                                  enum block_key key, enum word title);

/* The same, with a script in that form: whole, as it is said. */
struct script_block { enum block_key key; enum word title; enum script_form form; };
struct section_facts *script_section(struct composing *composing, struct sheet *sheet,
                                     const struct script_block *block);

/* What is said of a word alone. */
const char *section_word(struct composing *composing, enum word word);

/* Keys to press, in a sentence of that word; NULL where none is recorded. */
const struct phrase *steps_phrase(struct composing *composing, enum word word,
                                  const struct list_value *steps);

/* One more hint that a section has; a phrase of NULL says nothing. */
void hint_add(struct composing *composing, struct section_facts *section,
              const struct phrase *phrase, struct card_hint hint);

/* A line of the section, with what stands before it, or NULL. */
void section_line_add(struct composing *composing, struct section_facts *section,
                      const char *lead, struct card_text line);

/* ---- distress_urgency.c ---- */

/* The urgency call, and phrases for the most common ones. */
void urgency_make(struct composing *composing, struct sheet *sheet);

/* ---- distress_position.c ---- */

/* Where the position is read, the other way to say it, and what UTC is. */
void position_section(struct composing *composing, struct sheet *sheet);

/* ---- distress_answer.c ---- */

/* Another's MAYDAY, the relay of it, danger that is over, false alerts, and what is asked by
 * who answers; without a radio, a beacon's false alert alone. */
void answers_make(struct composing *composing, struct sheet *sheet);

/* Name, call sign and MMSI, spelled. */
void spell_section(struct composing *composing, struct sheet *sheet);

#endif

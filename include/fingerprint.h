/* fingerprint.h - the short name of what a qualified person reads and approves: one procedure in
 * one language (room: compose).
 *
 * In it are what the logic and the texts say (comments and layout are not); of each source that
 * they name the issuer, number, title, tag, status and grade; the names of gear and states that
 * its steps print, in that language. What stands on every card, the call panel and the sentences
 * around the steps, is approved with the sheets that are made of the record: their fingerprints
 * have all words of the language in them, and that of the distress call the scripts of the radio. A
 * procedure of a base's own never has the fingerprint of one of the program's. */
#ifndef MAYDECK_FINGERPRINT_H
#define MAYDECK_FINGERPRINT_H

#include "arena.h"
#include "procedure.h"
#include "words.h"

/* "3F9A-01BC-77DE-4410". NULL: the procedure has no texts in the language of the words. */
const char *procedure_fingerprint(const struct procedure *procedure,
                                  const struct authorities *authorities,
                                  const struct words *words, struct arena *arena);

#endif

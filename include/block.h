/* block.h - the blocks that sheets are made of (room: compose). Those who compose a sheet,
 * who lay it out and who proofread it name a block by this one list. */
#ifndef MAYDECK_BLOCK_H
#define MAYDECK_BLOCK_H

/* BLOCK(name in C, word in messages and dumps). */
#define BLOCK_LIST(BLOCK) \
    BLOCK(MARK, "mark")               /* SPECIMEN, in the strips at head and foot */ \
    BLOCK(TITLE, "title")             /* and the sign, boat and number beside it */ \
    BLOCK(SIGNS, "signs") \
    BLOCK(CALL_LINE, "call line")     /* who calls when */ \
    BLOCK(STEPS, "steps") \
    BLOCK(PLAN, "plan")               /* of the boat, with her tags */ \
    BLOCK(DECISION, "decision") \
    BLOCK(NEVER, "never") \
    BLOCK(CAUTIONS, "cautions") \
    BLOCK(LOCAL_RULES, "local rules") \
    BLOCK(CONTACT, "contact") \
    BLOCK(CALL, "call")               /* how to work the radio and what to say */ \
    BLOCK(NATURE, "nature")           /* of the distress card, to CANCEL */ \
    BLOCK(PAN_PAN, "pan_pan") \
    BLOCK(SPELL, "spell") \
    BLOCK(RELAY, "relay") \
    BLOCK(DOWNGRADE, "downgrade") \
    BLOCK(CANCEL, "cancel") \
    BLOCK(LABELS, "labels")           /* of the safety plan, to SOURCES */ \
    BLOCK(LEADERS, "leaders") \
    BLOCK(LEGEND, "legend") \
    BLOCK(SOURCES, "sources") \
    BLOCK(FOOTER, "footer")

enum block_key {
    BLOCK_NONE,
#define BLOCK_ENUM(name, word) BLOCK_##name,
    BLOCK_LIST(BLOCK_ENUM)
#undef BLOCK_ENUM
    BLOCK_COUNT
};

/* Its word in messages and dumps; "-" of none. */
const char *block_word(enum block_key block);

#endif

/* block.h - the blocks that sheets are made of (room: compose). Those who compose a sheet,
 * who lay it out and who proofread it name a block by this one list. */
#ifndef MAYDECK_BLOCK_H
#define MAYDECK_BLOCK_H

/* BLOCK(name in C, word in messages and dumps, its facts: a member of union block_facts in
 * sheet.h; BARE where a page has the block and the facts stand in another). */
#define BLOCK_LIST(BLOCK) \
    BLOCK(MARK, "mark", TEXT)               /* SPECIMEN, DRAFT: at the head */ \
    BLOCK(UNAPPROVED, "unapproved", TEXT)   /* the same where nobody approved it */ \
    BLOCK(TITLE, "title", TITLE)            /* and the sign, boat and number beside it */ \
    BLOCK(SIGNS, "signs", SIGNS) \
    BLOCK(BERTH, "berth", TEXT)             /* what to do where people can step ashore, */ \
    BLOCK(ANCHOR, "anchor", TEXT)           /* and at anchor; */ \
    BLOCK(BERTH_SAY, "ashore", TEXT)        /* what those ashore say, and to whom */ \
    BLOCK(CALL_LINE, "call line", CASES)    /* who calls when */ \
    BLOCK(STEPS, "steps", STEPS) \
    BLOCK(PLAN, "plan", PLAN)               /* of the boat, with her tags */ \
    BLOCK(DECISION, "decision", DECISION) \
    BLOCK(NEVER, "never", WARNINGS) \
    BLOCK(CAUTIONS, "cautions", WARNINGS) \
    BLOCK(OWN_LINES, "lines of the base", WARNINGS) \
    BLOCK(CONTACT, "contact", CONTACT) \
    BLOCK(CALL, "call", CALL)               /* how to work the radio and what to say */ \
    BLOCK(NATURE, "nature", SECTION)        /* of the distress card, to HINTS */ \
    BLOCK(NO_ANSWER, "no answer", SECTION)  /* and where the radio cannot be had */ \
    BLOCK(POSITION, "position", SECTION)    /* where it is read, and the other way to say it */ \
    BLOCK(PAN_PAN, "pan_pan", SECTION) \
    BLOCK(PHRASES, "phrases", SECTION)      /* of an urgency call: what is wrong */ \
    BLOCK(NEEDS, "needs", SECTION)          /* and what is asked for */ \
    BLOCK(HEARD, "heard", SECTION)          /* another's MAYDAY */ \
    BLOCK(RELAY, "relay", SECTION) \
    BLOCK(DOWNGRADE, "downgrade", SECTION) \
    BLOCK(CANCEL, "cancel", SECTION) \
    BLOCK(BEACON, "beacon", SECTION)        /* one that went off by mistake */ \
    BLOCK(ASKED, "asked", SECTION)          /* by who answers */ \
    BLOCK(SPELL, "spell", SECTION) \
    BLOCK(HINTS, "hints", SECTION)          /* what else belongs to the radio */ \
    BLOCK(LABELS, "labels", PLACES)         /* of the safety plan, to SOURCES */ \
    BLOCK(LEADERS, "leaders", BARE) \
    BLOCK(LEGEND, "legend", LEGEND) \
    BLOCK(INDEX, "index", INDEX)            /* what saves lives, and where */ \
    BLOCK(SOURCES, "sources", TEXT) \
    BLOCK(SEEN, "seen", SEEN)               /* which card to take, by what one sees first */ \
    BLOCK(ROWS, "rows", ROWS)               /* gear as a plain list */ \
    BLOCK(FORM, "form", FORM)               /* what people work through and write upon */ \
    BLOCK(STICKERS, "stickers", STICKERS)   /* a label a piece of gear */ \
    BLOCK(VIEWS, "views", VIEWS)            /* pages of other sheets, small */ \
    BLOCK(PAGES, "pages", PAGES)            /* what several pages are called; on none itself */ \
    BLOCK(FOOTER, "footer", FOOTER)

enum facts_kind {
    FACTS_BARE, FACTS_TEXT, FACTS_TITLE, FACTS_SIGNS, FACTS_CASES, FACTS_STEPS, FACTS_PLAN,
    FACTS_DECISION, FACTS_WARNINGS, FACTS_CONTACT, FACTS_CALL, FACTS_SECTION, FACTS_PLACES,
    FACTS_INDEX, FACTS_SEEN, FACTS_LEGEND, FACTS_ROWS, FACTS_FORM, FACTS_STICKERS,
    FACTS_VIEWS, FACTS_PAGES, FACTS_FOOTER
};

enum block_key {
    BLOCK_NONE,
#define BLOCK_ENUM(name, ...) BLOCK_##name,
    BLOCK_LIST(BLOCK_ENUM)
#undef BLOCK_ENUM
    BLOCK_COUNT
};

/* Its word in messages and dumps; "-" of none. */
const char *block_word(enum block_key block);

/* Which facts it has in a sheet. */
enum facts_kind facts_kind_of(enum block_key block);

#endif

/* room_notes.c - what is told of cards that came about: what found no room on them (room:
 * layout). */
#include "layout_room.h"

/* What found no room, and on which card. */
struct room_note {
    const struct yielded *one;
    const char *card;
    struct arena *arena;
    struct problems *problems;
};

static void figure_room_tell(const struct room_note *note)
{
    const struct yielded *one = note->one;
    const char *subject = text_format(note->arena, "%s on the card %s", one->id, note->card);
    problem_add_of(note->problems, (struct problem_subject){"figure_without_room", subject},
                   SEVERITY_NOTE, one->origin,
                   text_format(note->arena, "`maydeck why --figure %s` shows it; %s", one->id,
                               one->cause == YIELDED_TOO_LONG
                                   ? "its words are too long for a row, tell the crew at the "
                                     "briefing"
                                   : "shorter or fewer rows on the card make room"),
                   "the figure %s finds no room on the card %s", one->id, note->card);
}

static void hint_room_tell(const struct room_note *note)
{
    const struct yielded *one = note->one;
    const char *subject = text_format(note->arena, "%s on the card %s", one->id, note->card);
    problem_add_of(note->problems, (struct problem_subject){"hint_without_room", subject},
                   SEVERITY_NOTE, one->origin,
                   "tell the crew at the briefing; shorter keys and a shorter name make room",
                   "%s finds no room on the card %s", one->id, note->card);
}

/* What else yields leaves something else in its place. */
static void contact_room_tell(const struct room_note *note)
{
    problem_add(note->problems, SEVERITY_NOTE, note->one->origin,
                "shorter or fewer rows on the card make room",
                "the line of rescue centre and base finds no room on the card %s: "
                "it stands on the distress card", note->card);
}

/* It is told once a card. */
static bool urgency_room_tell(const struct room_note *note)
{
    problem_add(note->problems, SEVERITY_NOTE, note->one->origin,
                "shorter or fewer rows on the card make room",
                "the words of PAN PAN find no room on the card %s: they stand on the distress card",
                note->card);
    return true;
}

/* All cards go without it then. */
static bool berth_say_tell(const struct room_note *note)
{
    problem_add(note->problems, SEVERITY_NOTE, note->one->origin,
                "tell the crew at the briefing what to say on the telephone; shorter or fewer "
                "rows on the cards make room",
                "what to say from a berth finds no room on the card %s and those like it",
                note->card);
    return true;
}

/* On paper of one side a card of steps has a second page only where it has no room on one. */
static void second_side_tell(const struct laid_sheet *laid, struct problems *problems)
{
    const struct page *page = laid->pages[0];
    if (laid->page_count < 2 || page == NULL || page->paper->sides != ONE_SIDE ||
        sheet_steps(laid->sheet)->count == 0)
        return;
    problem_add(problems, SEVERITY_NOTE, laid->sheet->origin,
                "print it on both sides of one sheet; shorter or fewer rows, or larger paper, make "
                "room on one",
                "the card %s has no room on one side: the words of its call stand on the back",
                laid->sheet->name);
}

void room_notes(const struct laid_set *laid, struct arena *arena, struct problems *problems)
{
    bool say_told = false;
    for (size_t i = 0; i < laid->count; i++)
        second_side_tell(&laid->sheets[i], problems);
    for (size_t i = 0; i < laid->count; i++) {
        bool urgency_told = false;
        for (size_t y = 0; y < laid->sheets[i].yielded_count; y++) {
            struct room_note note = {&laid->sheets[i].yielded[y], laid->sheets[i].sheet->name,
                                     arena, problems};
            if (note.one->id != NULL)
                (note.one->block == BLOCK_STEPS ? figure_room_tell : hint_room_tell)(&note);
            if (note.one->block == BLOCK_CONTACT)
                contact_room_tell(&note);
            if (note.one->block == BLOCK_BERTH_SAY && !say_told)
                say_told = berth_say_tell(&note);
            if (note.one->block == BLOCK_CALL && note.one->id == NULL && !urgency_told)
                urgency_told = urgency_room_tell(&note);
        }
    }
}

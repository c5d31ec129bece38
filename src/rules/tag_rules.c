/* tag_rules.c - pieces that fell out of the record (room: rules). A tag stays with its
 * piece for the boat's life and is never given again, so a number that is on no piece and
 * not retired is one that was there. */
#include "rules_room.h"

#include "text.h"

static const enum item_class tag_classes[] = {ITEM_FIRE, ITEM_RESCUE, ITEM_CONTROL};
enum { TAG_CLASS_COUNT = sizeof tag_classes / sizeof *tag_classes };

static void lost_check(const struct rule_run *run, enum item_class class)
{
    const struct boat *boat = run->in->boat;
    struct tags_lost lost = boat_tags_lost(boat, class, run->arena);
    if (lost.count == 0)
        return;
    rule_tell(run, CHECK_tag_missing, lost.near == NULL ? boat->place : lost.near->place,
              text_format(run->arena,
                          "look for that tag on the boat. What bears it: record it again; where "
                          "it is gone, or was\nnever given, add to retired_tags: %s", lost.words),
              "tag%s %s %s on no piece of the record: what bore %s has fallen out of it",
              lost.count == 1 ? "" : "s", lost.words, lost.count == 1 ? "is" : "are",
              lost.count == 1 ? "it" : "them");
}

/* The list to write: of each letter the highest that is known. */
static const char *given_words(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    struct text_builder words = text_builder_in(run->arena);
    for (size_t i = 0; i < TAG_CLASS_COUNT; i++) {
        size_t highest = boat_tag_highest(boat, tag_classes[i]);
        if (highest < boat_tag_given(boat, tag_classes[i]))
            highest = boat_tag_given(boat, tag_classes[i]);
        if (highest > 0)
            text_add_format(&words, "%s%c%zu", words.length == 0 ? "" : ", ", (char)tag_classes[i],
                            highest);
    }
    return words.at;
}

static void behind_check(const struct rule_run *run, enum item_class class)
{
    const struct boat *boat = run->in->boat;
    size_t highest = boat_tag_highest(boat, class), given = boat_tag_given(boat, class);
    if (highest <= given)
        return;
    rule_tell(run, CHECK_tags_given_behind, boat->tags_given.place,
              text_format(run->arena, "raise it: tags_given: [%s]", given_words(run)),
              given == 0 ? "tag %c%zu was given, but tags_given names none of its letter"
                         : "tag %c%zu was given, but tags_given has %c%zu as the last",
              (char)class, highest, (char)class, given);
}

void tag_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < TAG_CLASS_COUNT; i++) {
        lost_check(run, tag_classes[i]);
        if (boat->tags_given.given && !boat->tags_unclear)
            behind_check(run, tag_classes[i]);
    }
    if (!boat->tags_given.given && !boat->tags_unclear && given_words(run)[0] != '\0')
        rule_tell(run, CHECK_tags_given_unrecorded,
                  place_else(boat->tags_given.place, boat->place),
                  text_format(run->arena,
                              "if no higher tags were ever given, write at the end of the file:\n"
                              "tags_given: [%s]", given_words(run)),
                  "tags_given is not recorded: a piece with the last tag of its letter could "
                  "fall out unseen");
}

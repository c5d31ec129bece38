/* identity_rules.c - do the boat's call sign, MMSI and flag hold together (room: rules).
 * What they are is taken apart in the radio room. Never stops at the first fault: all
 * are told. */
#include "rules_room.h"

#include "radio.h"
#include "text.h"

/* Whose an identity is. Two where a call sign's series is shared. */
struct owner {
    const struct administration *first, *second;
};

static struct owner owner_by_mmsi(const struct text_value *value)
{
    struct mmsi mmsi;
    struct owner owner = {NULL, NULL};
    if (!text_empty(value->text) && mmsi_decode(value->text, &mmsi))
        owner.first = mmsi.administration;
    return owner;
}

static struct owner owner_by_call_sign(const struct text_value *value)
{
    struct call_sign call_sign;
    struct owner owner = {NULL, NULL};
    if (call_sign_given(value) && call_sign_decode(value->text, &call_sign)) {
        owner.first = call_sign.holder;
        owner.second = call_sign.other_holder;
    }
    return owner;
}

static struct owner owner_by_flag(const struct text_value *flag)
{
    struct owner owner = {text_empty(flag->text) ? NULL : administration_find(flag->text), NULL};
    return owner;
}

/* Overseas territories answer to their parent, so GI and GB are the same. */
static bool is_same(const struct administration *a, const struct administration *b)
{
    return a != NULL && b != NULL && text_equal(a->administration, b->administration);
}

static bool owners_differ(struct owner a, struct owner b)
{
    if (a.first == NULL || b.first == NULL)
        return false;
    return !is_same(a.first, b.first) && !is_same(a.first, b.second) &&
           !is_same(a.second, b.first) && !is_same(a.second, b.second);
}

static const char *owner_words(const struct rule_run *run, struct owner owner)
{
    if (owner.first == NULL)
        return "not known";
    if (owner.second == NULL)
        return owner.first->name;
    return text_format(run->arena, "%s or %s", owner.first->name, owner.second->name);
}

#define AGREE_REMEDY \
    "compare all three with the ship's papers, and the country of her beacon: one is\n" \
    "wrong, or was not changed with the flag"

/* Whose the boat is by each of the three. */
struct owners {
    struct owner mmsi, call_sign, flag;
};

static struct owners owners_of(const struct boat *boat)
{
    return (struct owners){owner_by_mmsi(&boat->radio.mmsi),
                           owner_by_call_sign(&boat->radio.call_sign),
                           owner_by_flag(&boat->facts.flag)};
}

static bool any_owners_differ(const struct owners *owners)
{
    return owners_differ(owners->mmsi, owners->call_sign) ||
           owners_differ(owners->mmsi, owners->flag) ||
           owners_differ(owners->call_sign, owners->flag);
}

bool country_in_dispute(const struct boat *boat, const struct administration *country)
{
    struct owners owners = owners_of(boat);
    struct owner other = {country, NULL};
    return any_owners_differ(&owners) &&
           ((owners.mmsi.first != NULL && !owners_differ(owners.mmsi, other)) ||
            (owners.call_sign.first != NULL && !owners_differ(owners.call_sign, other)) ||
            (owners.flag.first != NULL && !owners_differ(owners.flag, other)));
}

static void identities_agreement_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    struct owners owners = owners_of(boat);
    if (any_owners_differ(&owners))
        rule_tell(run, CHECK_identities_disagree,
                  owners.mmsi.first != NULL ? boat->radio.mmsi.place
                                            : boat->radio.call_sign.place,
                  AGREE_REMEDY,
                  "MMSI, call sign and flag are not of one country: MMSI %s, call sign %s, "
                  "flag %s", owner_words(run, owners.mmsi), owner_words(run, owners.call_sign),
                  owner_words(run, owners.flag));
}

static void handheld_agreement_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    struct owner ship = owner_by_mmsi(&boat->radio.mmsi);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (gear->kind == NULL || gear->kind->item != ITEM_vhf_handheld)
            continue;
        struct owner handheld = owner_by_mmsi(&gear->mmsi);
        if (owners_differ(ship, handheld))
            rule_tell(run, CHECK_identities_disagree, gear->mmsi.place,
                      "compare both with the ship's radio licence",
                      "the handheld's MMSI is of %s, the ship's of %s",
                      owner_words(run, handheld), owner_words(run, ship));
    }
}

/* A specimen's flag is nobody's on purpose. */
static void flag_check(const struct rule_run *run)
{
    const struct text_value *flag = &run->in->boat->facts.flag;
    if (boat_specimen(run->in->boat) == ANSWER_NO && !text_empty(flag->text) &&
        administration_find(flag->text) == NULL)
        rule_tell(run, CHECK_flag_unknown, flag->place,
                  "write the flag as the country's two letters (ISO 3166), such as HR or GB",
                  "flag `%s` is not known here: MMSI and call sign are not compared with it",
                  flag->text);
}

void identity_rules(const struct rule_run *run)
{
    call_sign_rules(run);
    mmsi_rules(run);
    identities_agreement_check(run);
    handheld_agreement_check(run);
    flag_check(run);
}

/* contact_rules.c - the numbers and channels of the base's own record (room: rules).
 * Never rings one: only their form is looked at. */
#include "rules_room.h"

#include "text.h"

/* A short code is answered in one country's network alone, and not from a ship's
 * satellite telephone. Its form was checked when the file was read. */
static void centre_phone_check(const struct rule_run *run)
{
    const struct text_value *phone = &run->in->base->centre_phone;
    if (!text_empty(phone->text) && phone->text[0] != '+')
        rule_tell(run, CHECK_centre_phone_short, phone->place,
                  "ask the centre for its number with + and the country code, and write that",
                  "phone `%s` is a short code: it works in that country's network only",
                  phone->text);
}

void contact_rules(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    centre_phone_check(run);
    quotes_check(run, "name", &base->name);
    quotes_check(run, "phone_24h", &base->phone_24h);
    quotes_check(run, "phone", &base->centre_phone);
    quotes_check(run, "channel", &base->centre_channel);
}

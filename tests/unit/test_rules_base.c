/* test_rules_base.c - what only the base can put right: each check of its two families
 * told, and not told; and of its approvals. */
#include "rules_rows.h"

#define AREA ", sea_area: A1"
#define WITHOUT_CLOCK \
    "base: {name: Lee, specimen: yes, phone_24h: \"+999 00 000 000\"}\n" \
    "rescue_centre: {name: Skerry Sound" CENTRE "}\n" \
    "cruising_area: {latitude: north, longitude: east" AREA "}\n"
#define APPROVED(until) \
    BASE_WITH(CENTRE, AREA, "approvals:\n  - {card: flooding, text: " FLOODING ", initials: AB, " \
              "qualification: skipper, date: 2025-01-01, until: " until "}\n")
#define FLOODING "0123-4567-89AB-CDEF"     /* of rules_rows.h: what the approved text is now */
#define TEXT(text) \
    BASE_WITH(CENTRE, AREA, "approvals:\n  - {card: flooding" text ", initials: AB, " \
              "qualification: skipper, date: 2025-01-01, until: 2027-01-01}\n")
#define APPROVED_BOTH \
    BASE_WITH(CENTRE, AREA, "approvals:\n  - {card: flooding, text: " FLOODING ", initials: AB, " \
              "qualification: skipper, date: 2025-01-01, until: 2027-01-01}\n" \
              "  - {card: gas_leak, text: FEDC-BA98-7654-3210, initials: AB, " \
              "qualification: skipper, date: 2025-01-01, until: 2027-01-01}\n")
#define INTERVALS(entries) BASE_WITH(CENTRE, AREA, "intervals:\n" entries)

#define ASHORE(facts) BASE_WITH(CENTRE, AREA, "ashore: {" facts "}\n")

static const struct rule_row rows[] = {
    {"centre_unchecked", {.base = BASE_WITH(CENTRE_DATED(""), AREA, "")}, 2,
     "when channel and number of Skerry Sound were last checked is not recorded", {.base = BASE}},
    {"centre_check_old", {.base = BASE_WITH(CENTRE_DATED(", checked_on: 2025-11-19"), AREA, "")},
     2, "were last checked on 2025-11-19, more than 12 months ago",
     {.base = BASE_WITH(CENTRE_DATED(", checked_on: 2025-11-20"), AREA, "")}},
    {"centre_contact_unrecorded",
     {.base = BASE_WITH(", channel: \"67\", phone: \"+999 00 000 001\"", AREA, "")}, 2,
     "call of Skerry Sound is not recorded", {.base = BASE}},
    {"centre_contact_unrecorded", {.base = BASE_WITH(", channel: \"67\"", AREA, "")}, 2,
     "call and phone of Skerry Sound are not recorded", {.base = BASE}},
    {"berth_unnamed", {.base = ASHORE("fire_phone: \"+999 02\", marina: Wrack Quay")}, 4,
     "berth of the base's own berths is not recorded",
     {.base = ASHORE("fire_phone: \"+999 02\", marina: Wrack Quay, berth: pontoon C")}},
    {"berth_unnamed", {.base = ASHORE("fire_phone: \"+999 02\"")}, 4,
     "marina and berth of the base's own berths are not recorded",
     {.base = ASHORE("fire_phone: \"+999 02\", marina: Wrack Quay, berth: pontoon C")}},
    {"sea_area_unrecorded", {.base = BASE_WITH(CENTRE, "", "")}, 3,
     "the cards take it for one where VHF may not be heard",
     {.base = BASE}},
    {"clock_unrecorded", {.base = WITHOUT_CLOCK}, 3, "calls give LOCAL TIME", {.base = BASE}},
    {"clock_lapsed", {.base = WITHOUT_CLOCK "clocks:\n  - {offset: +2, from: 2026-03-29, "
                              "to: 2026-11-19}\n"}, 5,
     "no clock of the base holds on 2026-11-20",
     {.base = WITHOUT_CLOCK "clocks:\n  - {offset: +2, from: 2026-03-29, to: 2026-11-27}\n"}},
    {"clock_lapsed", {.base = WITHOUT_CLOCK "clocks:\n  - {offset: +2, from: 2026-03-29, "
                              "to: 2026-11-26}\n"}, 5,
     "no clock of the base holds on 2026-11-27", {.base = BASE}},
    {"interval_unused", {.base = INTERVALS("  - {item: liferaft, months: 12}\n")}, 5,
     "the months for liferaft are not used",
     {.base = INTERVALS("  - {item: smoke_alarm, months: 12}\n")}},
    {"interval_twice", {.base = INTERVALS("  - {item: torch, months: 12}\n"
                                          "  - {item: torch, months: 6}\n")}, 6,
     "torch has an interval already",
     {.base = INTERVALS("  - {item: torch, months: 12}\n  - {item: knife, months: 6}\n")}},
};

/* A base that is no specimen: numbers that anybody can ring. */
#define REAL(phone) \
    "base: {name: Lee, phone_24h: \"+44 20 7946 0000\"}\n" \
    "rescue_centre: {name: Skerry Sound, channel: \"67\", phone: \"" phone "\"}\n" \
    "cruising_area: {latitude: north, longitude: east}\n"

static const struct rule_row contact_rows[] = {
    {"centre_phone_short", {.base = REAL("112")}, 2, "phone `112` is a short code",
     {.base = REAL("+44 20 7946 0001")}},
};

static const struct approvable own_approvables[] = {
    {.card = "flooding", .language = "en", .fingerprint = "0123-4567-89AB-CDEF",
     .own_file = "wrack/procedures/flooding.yaml", .changed = true},
    {.card = "lines", .language = "en", .fingerprint = "0123-4567-89AB-0000",
     .own_file = "wrack/procedures/lines.yaml"},
    {.card = "lines", .language = "xx", .fingerprint = "0123-4567-89AB-0001",
     .own_file = "wrack/procedures/lines.yaml"}};

static const struct rule_row approval_rows[] = {
    {"procedures_of_base", {.base = BASE, .approvables = own_approvables, .approvable_count = 3},
     0, "flooding (changed, wrack/procedures/flooding.yaml), "
        "lines (of its own, wrack/procedures/lines.yaml)", {.base = BASE}},
    {"approval_lapsed", {.base = APPROVED("2026-11-19")}, 5,
     "the approval of flooding lapsed on 2026-11-19", {.base = APPROVED("2026-11-20")}},
    {"approval_lapses_during", {.base = APPROVED("2026-11-26")}, 5,
     "lapses on 2026-11-26, before the charter ends", {.base = APPROVED("2026-11-27")}},
    {"approval_without_text", {.base = TEXT("")}, 5,
     "the approval of flooding does not say which text was approved",
     {.base = TEXT(", text: " FLOODING)}},
    {"approval_without_text", {.base = TEXT(", text: 0123-4567-89AB-CDEG")}, 5,
     "names \"0123-4567-89AB-CDEG\", which is no fingerprint",
     {.base = TEXT(", text: 0123 4567 89ab cdef")}},
    {"approval_without_text", {.base = TEXT(", text: 0123-4567-89AB-CDE")}, 5,
     "which is no fingerprint", {.base = TEXT(", text: 0123456789abcdef")}},
    {"approval_text_changed", {.base = TEXT(", text: 0123-4567-89AB-CDEE")}, 5,
     "the approval of flooding by AB has lapsed: the text has changed since",
     {.base = TEXT(", text: " FLOODING)}},
    {"approval_awaited", {.base = BASE}, 0,
     "2 procedures in the language en await the approval of a qualified person: flooding, gas_leak",
     {.base = APPROVED_BOTH}},
    {"approval_awaited", {.base = TEXT(", text: " FLOODING)}, 0,
     "1 procedure in the language en awaits the approval of a qualified person: gas_leak",
     {.base = APPROVED_BOTH}},
};

const struct rule_table rule_table_base = RULE_TABLE(base_rules, rows);
const struct rule_table rule_table_approval = RULE_TABLE(approval_rules, approval_rows);
const struct rule_table rule_table_contact = RULE_TABLE(contact_rules, contact_rows);

int main(void)
{
    return rows_run(&rule_table_base) + rows_run(&rule_table_contact) +
           rows_run(&rule_table_approval);
}

/* base_fields.c - the sections of a base's file and their fields: what each is called, may
 * hold and means (room: record). Adding a field is adding a row and a member. Never reads
 * a file. */
#include "reader.h"
#include "record.h"

#define BASE(key, member, field_kind, ...) \
    KEYED(struct base_record, key, member, field_kind, __VA_ARGS__)

static const struct field base_rows[] = {
    BASE("name", name, FIELD_TEXT, .any_word = true, .required = true,
         .readers = READ_FILE, .about = "the base's name"),
    BASE("specimen", specimen, FIELD_ANSWER, .readers = READ_CHECK, .about = "an invented base?"),
    BASE("phone_24h", phone_24h, FIELD_TEXT, .required = true,
         .readers = READ_CONTACT, .about = "the number that is answered day and night"),
    BASE("position", position, FIELD_TEXT,
         .readers = READ_FIGURE | READ_CALL,
        .about = "the berths, such as 43 30.488 N 016 26.411 E"),
};
static const struct field centre_rows[] = {
    BASE("name", centre_name, FIELD_TEXT, .any_word = true, .required = true,
         .readers = READ_CONTACT, .about = "its name"),
    BASE("call", centre_call, FIELD_TEXT, .any_word = true,
         .readers = READ_DISTRESS, .about = "what it is called on the radio"),
    BASE("channel", centre_channel, FIELD_TEXT, .required = true,
         .readers = READ_PANEL, .about = "its working channel, two digits"),
    BASE("phone", centre_phone, FIELD_TEXT, .readers = READ_CONTACT | READ_PANEL,
          .about = "its telephone number"),
    BASE("epirb_cancel", beacon_cancel, FIELD_CHOICE, .choices = beacon_cancel_words,
         .readers = READ_DISTRESS,
         .about = "a beacon that went off by mistake: which is first, off or telling them"),
    BASE("antenna_m", centre_antenna_m, FIELD_NUMBER, .low = 1000, .high = 3000000,
         .readers = READ_FIGURE, .about = "height of its aerial above the sea, in metres"),
    BASE("checked_on", centre_checked_on, FIELD_DATE, .readers = READ_CHECK,
          .about = "when this was last checked"),
};

static const struct field ashore_rows[] = {
    BASE("fire_phone", fire_phone, FIELD_TEXT, .required = true, .readers = READ_BERTH,
         .about = "the number that brings the fire brigade to the berths"),
    BASE("marina", marina, FIELD_TEXT, .any_word = true, .readers = READ_BERTH,
         .about = "what the fire brigade calls the harbour of the berths"),
    BASE("berth", berth, FIELD_TEXT, .any_word = true, .readers = READ_BERTH,
         .about = "where in it they are, such as pontoon C"),
};

static const struct field area_rows[] = {
    BASE("latitude", latitude, FIELD_CHOICE, .required = true, .choices = latitude_words,
         .readers = READ_SCRIPT, .about = "the hemisphere"),
    BASE("longitude", longitude, FIELD_CHOICE, .required = true, .choices = longitude_words,
         .readers = READ_SCRIPT, .about = "the hemisphere"),
    BASE("sea_area", sea_area, FIELD_CHOICE, .choices = sea_area_words,
         .readers = READ_PANEL | READ_CHECK, .about = "the radio sea area"),
    BASE("tide", tide, FIELD_CHOICE, .choices = tide_words, .readers = READ_CASE,
         .about = "how far the water rises and falls here"),
    BASE("variation", variation, FIELD_TEXT, .readers = READ_CALL | READ_FIGURE,
          .about = "magnetic variation, such as 4 E"),
    BASE("variation_on", variation_on, FIELD_DATE, .readers = READ_CALL | READ_FIGURE,
          .about = "the date it is true for"),
};

static const struct field first_aid_rows[] = {
    BASE("drowning_breaths", drowning_breaths, FIELD_CHOICE, .choices = breaths_words,
         .readers = READ_CASE,
         .about = "with how many breaths one begins on a drowned person, as it is taught here"),
    BASE("sting", sting, FIELD_CHOICE, .choices = sting_words, .readers = READ_CASE,
         .about = "what is poured on a sting of a jellyfish of these waters"),
};

static const struct field date_rows[] = {
    BASE("month_means", month_means, FIELD_CHOICE, .choices = month_means_words,
         .readers = READ_DATES, .about = "05/2027 holds to that month's end or start"),
    BASE("margin_days", margin_days, FIELD_NUMBER, .low = 0, .high = 366000,
         .readers = READ_CHECK, .about = "days a date should last beyond a charter"),
};
static const struct field interval_rows[] = {
    ROW(struct interval, item, FIELD_CHOICE, .required = true, .choices = item_key_list,
        .readers = READ_DATES, .about = "the gear"),
    ROW(struct interval, months, FIELD_NUMBER, .required = true, .low = 1000, .high = 240000,
        .whole = true, .readers = READ_DATES, .about = "months from one to the next"),
};
static const struct field shelter_rows[] = {
    ROW(struct shelter, name, FIELD_TEXT, .any_word = true, .required = true,
        .readers = READ_FIGURE, .about = "its name"),
    ROW(struct shelter, position, FIELD_TEXT, .required = true,
        .readers = READ_FIGURE, .about = "where it lies, such as 43 30.488 N 016 26.411 E"),
};
static const struct field clock_rows[] = {
    ROW(struct clock, offset, FIELD_TEXT, .required = true,
        .readers = READ_DISTRESS,
        .about = "hours that it is ahead of UTC, such as +2 or -3:30"),
    ROW(struct clock, from, FIELD_DATE, .readers = READ_DISTRESS, .about = "the first day"),
    ROW(struct clock, to, FIELD_DATE, .readers = READ_DISTRESS, .about = "the last day"),
};
static const struct field_table date_table = TABLE("the section dates", date_rows);
static const struct field_table interval_table = TABLE("an interval", interval_rows);
static const struct field_table clock_table = TABLE("a clock", clock_rows);
static const struct field_table shelter_table = TABLE("a shelter", shelter_rows);

static const struct field_table base_table = TABLE("a base", base_rows);
static const struct field_table centre_table = TABLE("a rescue centre", centre_rows);
static const struct field_table ashore_table = TABLE("the section ashore", ashore_rows);
static const struct field_table area_table = TABLE("a cruising area", area_rows);
static const struct field_table first_aid_table = TABLE("the section first_aid", first_aid_rows);

static const struct field approval_rows[] = {
    ROW(struct approval, card, FIELD_TEXT, .required = true, .readers = READ_FOOT,
        .about = "the card"),
    ROW(struct approval, text, FIELD_TEXT, .any_word = true, .readers = READ_FOOT | READ_CHECK,
        .about = "the fingerprint on the sheet that they read and signed; needed"),
    ROW(struct approval, initials, FIELD_TEXT, .any_word = true, .required = true,
        .readers = READ_FOOT, .about = "of who approved it"),
    ROW(struct approval, qualification, FIELD_WORDING, .required = true,
        .readers = READ_FOOT, .about = "what qualifies them"),
    ROW(struct approval, date, FIELD_DATE, .required = true, .readers = READ_FOOT,
        .about = "when"),
    ROW(struct approval, until, FIELD_DATE, .required = true, .readers = READ_FOOT | READ_CHECK,
        .about = "how long it holds"),
};
static const struct field_table approval_table = TABLE("an approval", approval_rows);

#define BASE_FILE(member, field_kind, ...) ROW(struct base_file, member, field_kind, __VA_ARGS__)
#define BASE_SECTION(member, of, ...) \
    BASE_FILE(member, FIELD_SECTION, SECTION_OF(struct base_file, record, .table = &(of)), \
             __VA_ARGS__)
#define BASE_ENTRIES(member, entry, of, ...) \
    BASE_FILE(member, FIELD_ENTRIES, ENTRIES_OF(entry, .table = &(of)), __VA_ARGS__)

static const struct field base_file_rows[] = {
    BASE_SECTION(base, base_table, .required = true, .about = "the base itself"),
    BASE_SECTION(rescue_centre, centre_table, .required = true,
                 .about = "the rescue centre that answers here"),
    BASE_SECTION(cruising_area, area_table, .required = true, .about = "where the boats sail"),
    BASE_SECTION(first_aid, first_aid_table, .about = "what the base's own doctor settles"),
    BASE_SECTION(ashore, ashore_table, .about = "who comes to a boat in her berth"),
    BASE_SECTION(dates, date_table, .about = "how dates of gear are read"),
    BASE_ENTRIES(intervals, struct interval, interval_table,
                 .about = "the base's own service intervals: an entry each, or none"),
    BASE_ENTRIES(shelters, struct shelter, shelter_table,
                 .about = "harbours to run for: an entry each, or none"),
    BASE_FILE(clocks, FIELD_ENTRIES,
              ENTRIES_OF(struct clock, .table = &clock_table,
                         .refused = offsetof(struct clock, refused)),
                 .about = "the clock on board against UTC: an entry for each part of the season"),
    KEYED(struct base_file, "languages", record.languages, FIELD_WORDS, .any_word = true,
          .readers = READ_RUN, .about = "languages of the cards"),
    KEYED(struct base_file, "paper", record.paper, FIELD_CHOICE, .choices = paper_words,
          .readers = READ_RUN, .about = "the paper of the cards, a4 where none is named"),
    BASE_FILE(cards, FIELD_SECTION,
              SECTION_OF(struct base_file, record.cards, .table = &card_choice_table),
              .about = "which cards the base hangs, where that is not all that a boat can need"),
    BASE_ENTRIES(approvals, struct approval, approval_table,
                 .about = "who approved which card: an entry each, or none"),
    BASE_ENTRIES(lines, struct own_line, own_line_table,
                 .about = "the base's own lines on cards, two a card at most"),
};
static const struct stray_key base_strays[] = {
    {"local_rules", "call it lines, and in its entries write say in the place of rule"},
    {NULL, NULL}};
static const struct field_table base_file_table = {
    .what = "a base file", .fields = base_file_rows,
    .count = sizeof base_file_rows / sizeof *base_file_rows, .strays = base_strays};

const struct field_table *base_file_fields(void)
{
    return &base_file_table;
}

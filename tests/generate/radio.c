/* radio.c - radios, call signs of the series Q and numbers of the country code 200, which
 * nobody holds. */
#include "radio.h"
#include "places.h"

#include <stddef.h>

static const char *const switches[] = {
    "breaker RADIO", "switch 4, panel", "knob VOL", "breaker VHF, chart table panel", NULL};
static const char *const red_keys[] = {
    "Lift the red lid", "Flip the red flap", "Slide the red cover up", NULL};
static const char *const nature_keys[] = {
    "press MENU, choose DISTRESS, turn to the nature", "press CALL, choose the nature", NULL};
static const char *const screens[] = {"plotter at the wheel", "plotter, chart table", NULL};
static const char *const aerials[] = {"bag at the set", "drawer below the set", NULL};

/* Q, three letters by the number of the boat, a figure: none twice among 64,000. */
static void call_sign_write(FILE *file, int index)
{
    static const char letters[] = "BCDFGHJKLMNPRSTVWXYZ";
    fprintf(file, "  call_sign: Q%c%c%c%d\n", letters[index / 400 % 20], letters[index / 20 % 20],
            letters[index % 20], 2 + (index + index / 8000) % 8);
}

static void dsc_write(struct boat_draw *boat)
{
    fprintf(boat->file, "  dsc: yes\n  mmsi: \"200%06u\"\n  mmsi_programmed: yes\n  gnss: yes\n",
            boat->mmsi);
    fprintf(boat->file, "  distress_key: %s\n  hold_s: %d\n  nature_steps: [%s]\n",
            draw_text(&boat->draw, red_keys), draw_between(&boat->draw, 3, 5),
            draw_text(&boat->draw, nature_keys));
}

static void set_write(struct boat_draw *boat, const struct place_drawn *place)
{
    fprintf(boat->file, "  tag: E%d\n  ", ++boat->tags['E']);
    place_write(boat, place, "\n  ");
    fprintf(boat->file, "\n");
}

void radio_write(struct boat_draw *boat, int index)
{
    struct place_drawn place;
    boat->mmsi = 10007u + (unsigned)index * 41u;
    fprintf(boat->file, "radio:\n");
    call_sign_write(boat->file, index);
    if (draw_happens(&boat->draw, boat_has(boat, FACT(OPEN), 0) ? 60 : 6) ||
        !place_draw(boat, ROLE(CHART), &place))
        return;
    boat->facts |= FACT(RADIO);
    place.spot = place.spot == NULL ? "over the table" : place.spot;
    set_write(boat, &place);
    fprintf(boat->file, "  power_from_cockpit: %s\n", place_at_hand(&place) ? "yes" : "no");
    fprintf(boat->file, "  power_switch: \"%s\"\n  antenna_m: %d\n",
            draw_text(&boat->draw, switches), boat->loa_dm / 8);
    if (draw_happens(&boat->draw, 50))
        fprintf(boat->file, "  emergency_aerial: %s\n", draw_text(&boat->draw, aerials));
    if (draw_happens(&boat->draw, 40))
        fprintf(boat->file, "  second_station: {zone: cockpit, spot: at the wheel}\n");
    if (draw_happens(&boat->draw, 60))
        fprintf(boat->file, "  position_read_at: %s\n", draw_text(&boat->draw, screens));
    if (draw_happens(&boat->draw, 75)) {
        boat->facts |= FACT(DSC);
        dsc_write(boat);
    } else {
        fprintf(boat->file, "  dsc: no\n");
    }
}

/* Standard location protocol, EPIRB with MMSI, no position: a 0, ten bits of country, the
 * protocol 0010, twenty of the boat's own number, four of the beacon's, the rest as for no
 * position. */
void beacon_write(const struct boat_draw *boat, int number)
{
    uint64_t bits = (uint64_t)200 << 49 | (uint64_t)2 << 45 | (uint64_t)boat->mmsi << 25 |
                    (uint64_t)(number & 15) << 21 | 0xFFBFFu;
    fprintf(boat->file, "%015llX", (unsigned long long)bits);
}

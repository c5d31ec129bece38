/* boats.c - a folder of generated boats: the base and a file a boat. */
#include "boats.h"
#include "boat_draw.h"

#define PATH_SIZE 1024
#define NAME_SIZE 32

static const char *const centres[] = {"Skerry Sound", "Whin Islands", "Thornback Skerries", NULL};
static const char *const channels[] = {"67", "12", "10", "72", NULL};
static const char *const sea_areas[] = {"A1", "A1", "A2", "A3", NULL};

static FILE *file_make(const char *folder, const char *name)
{
    char path[PATH_SIZE];
    int length = snprintf(path, sizeof path, "%s/%s", folder, name);
    return length < 0 || length >= PATH_SIZE ? NULL : fopen(path, "w");
}

static bool file_end(FILE *file)
{
    bool written = ferror(file) == 0;
    return fclose(file) == 0 && written;
}

static bool base_write(const char *folder, struct draw *draw)
{
    FILE *file = file_make(folder, "base.yaml");
    if (file == NULL)
        return false;
    const char *centre = draw_text(draw, centres);
    fprintf(file, "# Invented: no such place, company, number or rescue centre.\nbase:\n");
    fprintf(file, "  name: %s Boats (specimen)\n  specimen: yes\n", centre);
    fprintf(file, "  phone_24h: \"+999 00 000 040\"\n  position: 12 30.50 N 060 15.25 E\n");
    fprintf(file, "rescue_centre: {name: %s, call: COASTGUARD, channel: \"%s\", "
            "phone: \"+999 00 000 041\",\n  checked_on: 2026-11-02, antenna_m: 120}\n",
            centre, draw_text(draw, channels));
    fprintf(file, "ashore: {fire_phone: \"+999 04\"}\n");
    fprintf(file, "first_aid: {drowning_breaths: 5}\n");
    fprintf(file, "cruising_area: {latitude: north, longitude: east, sea_area: %s, "
            "variation: 4 E,\n  variation_on: 2026-01-01}\n", draw_text(draw, sea_areas));
    fprintf(file, "shelters:\n  - {name: Long Bay (specimen), position: 12 25.90 N 060 08.70 E}\n");
    fprintf(file, "languages: [en]\napprovals: []\nlines: []\n");
    return file_end(file);
}

/* A boat is drawn from the seed and her own number: she is the same, however many there are. */
static struct boat_draw boat_write_to(FILE *file, uint64_t seed, int index, int openings)
{
    struct boat_draw boat = {.draw = {seed * 1000003u + (uint64_t)index}, .file = file,
                             .openings = openings};
    boat.gear_share = draw_between(&boat.draw, 25, 100);
    boat.usual_way = draw_below(&boat.draw, 4);
    kind_write(&boat, index);
    equipment_write(&boat);
    return boat;
}

/* How many openings she has is known when all of her is drawn, but stands at the head of her
 * file: she is drawn twice. */
static bool boat_file_write(const char *folder, uint64_t seed, int index)
{
    char name[NAME_SIZE];
    snprintf(name, sizeof name, "boats/b%05d.yaml", index);
    FILE *file = file_make(folder, name);
    if (file == NULL)
        return false;
    struct boat_draw counted = boat_write_to(file, seed, index, 0);
    rewind(file);
    boat_write_to(file, seed, index, counted.recorded);
    return file_end(file);
}

bool boats_write(const char *folder, uint64_t seed, int count)
{
    struct draw draw = {seed};
    if (!base_write(folder, &draw))
        return false;
    for (int index = 0; index < count; index++)
        if (!boat_file_write(folder, seed, index))
            return false;
    return true;
}

/* why_json.h - what `why` tells of boats, gathered for one document (room: app). Private to
 * src/app. */
#ifndef MAYDECK_WHY_JSON_H
#define MAYDECK_WHY_JSON_H

#include "figure.h"
#include "job.h"
#include "json.h"

/* Cards or figures of all boats that were looked at. All of it is copied into the arena. */
struct why_gathering {
    struct arena *arena;
    struct why_boat *boats;
    size_t count, room;
};

/* A boat whose cards follow; and once they are all there, whether she was composed. */
void why_boat_add(struct why_gathering *gathering, const char *boat);
void why_boat_composed(struct why_gathering *gathering);

/* A card of hers, with its reasons where they were asked for. */
enum why_depth { WHY_NAMED, WHY_EXPLAINED };
void why_card_add(struct why_gathering *gathering, const struct sheets *sheets,
                  const struct sheet *sheet, enum why_depth depth);

void why_figure_add(struct why_gathering *gathering, const struct sheets *sheets,
                    const struct figure *figure);

/* Is there neither a card nor a figure? */
bool why_told_nothing(const struct why_gathering *gathering);

void why_json_print(const struct options *options, const struct why_gathering *gathering);

#endif

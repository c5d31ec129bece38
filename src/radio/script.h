/* script.h - the parts a script is put together from (private to the radio room). */
#ifndef MAYDECK_RADIO_SCRIPT_H
#define MAYDECK_RADIO_SCRIPT_H

#include <stdbool.h>
#include <stddef.h>

#include "radio.h"

/* When the MMSI belongs to the identity. */
enum mmsi_use {
    MMSI_NEVER,         /* this form is not announced by DSC */
    MMSI_AFTER_ALERT,   /* a DSC distress alert went out */
    MMSI_AFTER_URGENCY  /* only when the set's steps for an urgency call are recorded */
};

/* How a form is spoken. What a form does not have is 0 or NULL. */
struct form_shape {
    const char *signal;
    int signal_times, called_times, name_times;
    const char *answered;        /* a receipt: the blank for whom it answers */
    bool to_centre;              /* the rescue centre is called, where its call is recorded; else,
                                    and of other forms, all stations */
    enum mmsi_use mmsi;
    const char *message_signal;  /* said again where the message begins, with the name */
    bool of_another;             /* relay: the message is about another vessel */
    bool position;
    bool beacon;                 /* about a beacon: which, and its identity */
    bool takes_nature;           /* the request may word what is wrong */
    const char *nature_lead;     /* the word before a nature that is filled in by hand */
    const char *nature_blank;    /* that blank's name; NULL: this form tells no nature */
    const char *assistance;      /* what is said when the request does not say */
    bool asks;                   /* the request may word the assistance */
    bool persons;
    const char *plea;            /* ends in the time meant; its position then has none */
    const char *end;             /* OVER, OUT, or what a receipt ends with */
};

/* One form being told by one boat. */
struct telling {
    const struct form_shape *shape;
    const struct script_request *request;
    const struct base_record *base;       /* NULL: hemispheres are circled by hand */
    struct arena *arena;
    const char *name, *call_sign, *mmsi;  /* as spoken; NULL: none to be said */
    const char *called;                   /* ALL STATIONS, or the rescue centre's call */
    const char *beacon, *beacon_identity; /* EPIRB; its identity spelled, NULL: filled in by hand */
    const char *description;              /* WHITE SAILING YACHT, 12.6 METRES; or NULL */
    bool beside_other;                    /* two forms share one card: kept short */
};

/* The line of one part, in spoken order from 0; a count of 0 pieces means that
 * the form has no such line. */
struct script_line script_part(size_t index, const struct telling *telling);
size_t script_part_count(void);

/* The letters of the two sides, first the one that counts up. */
#define LETTERS_OF_LATITUDE "NS"
#define LETTERS_OF_LONGITUDE "EW"

/* NORTH for N and so on; "" for any other letter. */
const char *hemisphere_word(char letter);

/* The blanks that a position fills. */
#define BLANK_LATITUDE_DEGREES "latitude degrees"
#define BLANK_LATITUDE_MINUTES "latitude minutes"
#define BLANK_LONGITUDE_DEGREES "longitude degrees"
#define BLANK_LONGITUDE_MINUTES "longitude minutes"

/* The blanks of a time, by the clock that is meant. */
#define BLANK_TIME_UTC "time UTC"
#define BLANK_TIME_LOCAL "local time"

/* script_beacon.c: which beacon of hers is told to be silenced, and its identity. */
void telling_beacon_set(struct telling *telling, const struct boat *boat);

#endif

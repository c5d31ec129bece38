/* call_part.h - the parts of a distress call, each of which a page can be of (room: compose). */
#ifndef MAYDECK_CALL_PART_H
#define MAYDECK_CALL_PART_H

/* Which part of a distress call a page of it is: sending it (or, each apart, the call, what
 * helps to send it, and where the boat is), the urgency call (or, apart, what to say in it),
 * answers (or, apart, those to who answers and to another's MAYDAY), and undoing one's own (or,
 * apart, a beacon's). */
enum call_part {
    CALL_PART_WHOLE, CALL_PART_SENDING, CALL_PART_CALL, CALL_PART_HELP, CALL_PART_PLACE,
    CALL_PART_URGENCY, CALL_PART_PHRASES, CALL_PART_ANSWERING, CALL_PART_ANSWER,
    CALL_PART_RELAY, CALL_PART_CANCEL, CALL_PART_BEACON
};

/* The first page of all else comes at most so late. */
#define CALL_REST_MOST 5

#endif

/* approval.h - what an approval of a base says of a text that has a fingerprint (room: record).
 * How a fingerprint comes about is told in fingerprint.h. */
#ifndef MAYDECK_APPROVAL_H
#define MAYDECK_APPROVAL_H

#include <stdbool.h>

#include "base.h"

/* Signs of a fingerprint, and in each of its groups. */
enum { FINGERPRINT_SIGNS = 16, FINGERPRINT_GROUP = 4 };

/* Is it 16 signs 0 to 9 and A to F? Small letters, spaces and hyphens are as good. */
bool fingerprint_sound(const char *written);

/* Does what somebody wrote name that fingerprint? Neither may be NULL for yes. */
bool fingerprint_is(const char *written, const char *fingerprint);

enum approval_state {
    APPROVAL_STANDS,
    APPROVAL_TO_COME,           /* it has not begun */
    APPROVAL_OVER,              /* its last day has passed */
    APPROVAL_OF_OTHER_TEXT      /* what was approved is not what stands there now */
};

/* Of one approval of the procedure with that fingerprint. */
enum approval_state approval_state(const struct approval *approval, const char *fingerprint,
                                   struct date today);

#endif

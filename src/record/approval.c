/* approval.c - fingerprints as people write them, and whether an approval stands (room: record).
 * Knows no text that was approved. */
#include "approval.h"

#include "text.h"

/* The sign behind what only parts signs; NUL at the end, '?' for one that is none. */
static char sign_take(const char **at)
{
    while (**at == ' ' || **at == '-')
        ++*at;
    char sign = **at;
    if (sign == '\0')
        return sign;
    ++*at;
    if (sign >= 'a' && sign <= 'f')
        sign = (char)(sign - 'a' + 'A');
    return is_digit(sign) || (sign >= 'A' && sign <= 'F') ? sign : '?';
}

bool fingerprint_sound(const char *written)
{
    size_t signs = 0;
    char sign;
    while ((sign = sign_take(&written)) != '\0' && sign != '?')
        signs++;
    return sign == '\0' && signs == FINGERPRINT_SIGNS;
}

bool fingerprint_is(const char *written, const char *fingerprint)
{
    if (written == NULL || fingerprint == NULL || !fingerprint_sound(written))
        return false;
    for (char sign = '-'; sign != '\0';) {
        sign = sign_take(&written);
        if (sign != sign_take(&fingerprint))
            return false;
    }
    return true;
}

enum approval_state approval_state(const struct approval *approval, const char *fingerprint,
                                   struct date today)
{
    if (date_compare(today, approval->until.date) > 0)
        return APPROVAL_OVER;
    if (date_compare(date_first_day(approval->date.date), today) > 0)
        return APPROVAL_TO_COME;
    return fingerprint_is(approval->text.text, fingerprint) ? APPROVAL_STANDS
                                                            : APPROVAL_OF_OTHER_TEXT;
}

/* sign_off_command.h - the part of `why` that prints sheets to sign. Private to src/app. */
#ifndef MAYDECK_SIGN_OFF_COMMAND_H
#define MAYDECK_SIGN_OFF_COMMAND_H

#include "app.h"

/* The sheets of the procedures that --card names, else of those that the base hangs. */
enum exit_status why_sign_off(const struct options *options);

#endif

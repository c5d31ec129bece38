/* proof_verbs.h - what the commands of the English cards may begin with. Private to
 * proof_wording.c: a verb that is missing here is a note, never an error. */
#ifndef MAYDECK_PROOF_VERBS_H
#define MAYDECK_PROOF_VERBS_H

static const char *const verbs[] = {
    "act", "aim", "air", "alert", "anchor", "ask", "attach", "bail", "bind", "block", "board",
    "brace", "breathe", "bring", "call", "cancel", "carry", "catch", "check", "clear", "climb",
    "clip", "close", "collect", "come", "cool", "count", "cover", "crawl", "cut", "dial",
    "discharge", "disconnect", "dress", "drink", "drop", "dry", "earth", "ease", "empty", "enter",
    "fasten", "fetch", "fight", "find", "fire", "fit", "fold", "follow", "free", "furl", "gather",
    "get", "give", "go", "grab", "guard", "hail", "hang", "haul", "head", "heave", "help", "hide",
    "hoist", "hold", "inflate", "insert", "isolate", "jump", "keep", "launch", "lay", "lean",
    "leave", "let", "lie", "lift", "light", "listen", "lock", "log", "look", "loosen", "lower",
    "make", "mark", "measure", "mind", "moor", "move", "note", "open", "paddle", "pass", "patch",
    "pay", "place", "plug", "point", "press", "pull", "pump", "push", "put", "raise", "reach",
    "read", "ready", "record", "reduce", "reef", "release", "remove", "repeat", "replace",
    "report", "rescue", "rest", "rig", "roll", "row", "run", "sail", "save", "say", "seal",
    "search", "secure", "see", "send", "set", "shelter", "shift", "shine", "shout", "show",
    "shut", "signal", "sit", "slacken", "slow", "smother", "sound", "spray", "stand", "start",
    "stay", "steer", "step", "stop", "stow", "strap", "stream", "stuff", "swim", "switch", "take",
    "talk", "tell", "tend", "test", "throw", "tie", "touch", "tow", "transmit", "treat", "trim",
    "trip", "try", "turn", "unclip", "undo", "unroll", "use", "vent", "ventilate", "wait", "wake",
    "warm", "warn", "wash", "watch", "wave", "wear", "wedge", "wet", "wind", "work", "wrap",
    "write"};
#define VERB_COUNT (sizeof verbs / sizeof *verbs)

#endif

/* symbol_table.c - all signs by key (room: symbol). What they look like is
 * in the symbol_*.c beside it. */
#include "symbol_private.h"

#include "promise.h"

#define SYMBOL_ROW(name, class, means) \
    [SYMBOL_##name] = {.key = #name, .sign = SIGN_##class, .meaning = means, \
                       .drawing = &drawing_##name},
static const struct symbol symbols[SYMBOL_COUNT] = {SYMBOL_LIST(SYMBOL_ROW)};
#undef SYMBOL_ROW

#define SYMBOL_KEY(name, class, means) #name,
const char *const symbol_keys[] = {SYMBOL_LIST(SYMBOL_KEY) NULL};
#undef SYMBOL_KEY

_Static_assert(sizeof symbol_keys / sizeof *symbol_keys == SYMBOL_COUNT,
               "a key for each sign, and the NULL that ends them");

const struct symbol *symbol_of(enum symbol_key key)
{
    promise(key < SYMBOL_COUNT);
    return key == SYMBOL_NONE ? NULL : &symbols[key];
}

const char *sign_class_word(enum sign_class sign)
{
    static const char *const words[SIGN_CLASS_COUNT] = {
        [SIGN_NONE] = "none",       [SIGN_FIRE] = "fire",
        [SIGN_RESCUE] = "rescue",   [SIGN_CONTROL] = "control",
        [SIGN_WARNING] = "warning", [SIGN_PROHIBITION] = "prohibition",
        [SIGN_MANDATORY] = "mandatory"};
    promise(sign < SIGN_CLASS_COUNT);
    return words[sign];
}

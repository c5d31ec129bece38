/* print_made.c - what the printing of one boat came to, as bytes and back (room: app). */
#include "print_made.h"

#include <string.h>

struct print_event *print_event_add(struct print_made *made, enum print_event_kind kind,
                                    const char *text)
{
    made->events = arena_grow(made->arena, made->events, made->event_count, &made->event_room,
                              sizeof *made->events);
    struct print_event *event = &made->events[made->event_count++];
    *event = (struct print_event){.kind = kind,
                                  .text = arena_copy(made->arena, text, strlen(text))};
    return event;
}

void print_message_add(struct print_made *made, const struct print_message *message)
{
    made->messages = arena_grow(made->arena, made->messages, made->message_count,
                                &made->message_room, sizeof *made->messages);
    made->messages[made->message_count++] = *message;
}

/* ---- to bytes ---- */

static void file_pack(const struct print_file *file, struct text_builder *out)
{
    packet_put_text(out, file->name);
    packet_put_text(out, file->language);
    packet_put_text(out, file->paper);
    packet_put_number(out, file->cards);
    packet_put_number(out, file->of_cards);
    packet_put_text(out, file->rows);
    packet_put_number(out, file->written ? 1 : 0);
    packet_put_bytes(out, &file->draft, sizeof file->draft);
}

void print_made_pack(const struct print_made *made, struct text_builder *out)
{
    packet_put_number(out, made->event_count);
    for (size_t i = 0; i < made->event_count; i++) {
        packet_put_number(out, made->events[i].kind);
        packet_put_text(out, made->events[i].text);
        if (made->events[i].kind == PRINT_FILE)
            file_pack(&made->events[i].file, out);
    }
    packet_put_number(out, made->message_count);
    for (size_t i = 0; i < made->message_count; i++) {
        packet_put_number(out, made->messages[i].severity);
        packet_put_number(out, made->messages[i].told ? 1 : 0);
        packet_put_number(out, made->messages[i].shared ? 1 : 0);
        packet_put_text(out, made->messages[i].text);
    }
    packet_put_number(out, made->deficiencies);
    packet_put_number(out, (uint64_t)made->process);
    packet_put_number(out, made->stands ? 1 : 0);
    packet_put_text(out, made->record);
    packet_put_text(out, made->inputs);
}

/* ---- and back ---- */

static void file_unpack(struct packet *packet, struct arena *arena, struct print_file *file)
{
    file->name = packet_text(packet, arena);
    file->language = packet_text(packet, arena);
    file->paper = packet_text(packet, arena);
    file->cards = (size_t)packet_number(packet);
    file->of_cards = (size_t)packet_number(packet);
    file->rows = packet_text(packet, arena);
    file->written = packet_number(packet) != 0;
    packet_bytes(packet, &file->draft, sizeof file->draft);
}

static void events_unpack(struct packet *packet, struct print_made *made)
{
    uint64_t count = packet_number(packet);
    for (uint64_t i = 0; packet->whole && i < count; i++) {
        uint64_t kind = packet_number(packet);
        const char *text = packet_text(packet, made->arena);
        if (!packet->whole || text == NULL || kind > PRINT_TALLY) {
            packet->whole = false;
            return;
        }
        struct print_event *event = print_event_add(made, (enum print_event_kind)kind, text);
        if (event->kind == PRINT_FILE)
            file_unpack(packet, made->arena, &event->file);
    }
}

static void messages_unpack(struct packet *packet, struct print_made *made)
{
    uint64_t count = packet_number(packet);
    for (uint64_t i = 0; packet->whole && i < count; i++) {
        uint64_t severity = packet_number(packet);
        bool told = packet_number(packet) != 0;
        bool shared = packet_number(packet) != 0;
        const char *text = packet_text(packet, made->arena);
        packet->whole = packet->whole && severity < SEVERITY_COUNT;
        if (packet->whole)
            print_message_add(made, &(struct print_message){(enum severity)severity, told, shared,
                                                               text});
    }
}

bool print_made_unpack(struct packet *packet, struct arena *arena, struct print_made *made)
{
    *made = (struct print_made){.arena = arena};
    events_unpack(packet, made);
    messages_unpack(packet, made);
    made->deficiencies = (size_t)packet_number(packet);
    made->process = (long)packet_number(packet);
    made->stands = packet_number(packet) != 0;
    made->record = packet_text(packet, arena);
    made->inputs = packet_text(packet, arena);
    return packet->whole && packet->left == 0;
}

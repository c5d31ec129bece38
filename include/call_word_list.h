/* call_word_list.h - the words of the distress card but for its call panel, as rows of WORD_LIST in
 * words.h: what sends, answers and undoes a call (room: words). */
#ifndef MAYDECK_CALL_WORD_LIST_H
#define MAYDECK_CALL_WORD_LIST_H

#define CALL_WORD_LIST(X) \
    X(DISTRESS_WHEN, distress_when, PLAIN, "") \
    X(DISTRESS_NATURE, distress_nature, PLAIN, "") \
    X(DISTRESS_POSITION, distress_position, PLAIN, "") \
    X(DISTRESS_PAN_PAN, distress_pan_pan, PLAIN, "") \
    X(DISTRESS_NEEDS, distress_needs, PLAIN, "") \
    X(DISTRESS_HEARD, distress_heard, PLAIN, "") \
    X(DISTRESS_RELAY, distress_relay, PLAIN, "") \
    X(DISTRESS_DOWNGRADE, distress_downgrade, PLAIN, "") \
    X(DISTRESS_CANCEL, distress_cancel, PLAIN, "") \
    X(DISTRESS_CANCEL_SET, distress_cancel_set, PLAIN, "") \
    X(DISTRESS_LISTEN, distress_listen, PLAIN, "") \
    X(DISTRESS_BEACON, distress_beacon, PLAIN, "") \
    X(BEACON_OFF_FIRST, beacon_off_first, PLAIN, "ways") \
    X(BEACON_TELL_FIRST, beacon_tell_first, PLAIN, "ways") \
    X(DISTRESS_ASKED, distress_asked, PLAIN, "") \
    X(SILENCE_STEPS, silence_steps, PLAIN, "steps") \
    X(SILENCE_PLAIN, silence_plain, PLAIN, "") \
    X(ASKED_JACKETS, asked_jackets, PLAIN, "") \
    X(ASKED_HURT, asked_hurt, PLAIN, "") \
    X(ASKED_RAFT, asked_raft, PLAIN, "") \
    X(ASKED_BEACON, asked_beacon, PLAIN, "") \
    X(ASKED_PHONE, asked_phone, PLAIN, "") \
    X(ASKED_SEEN, asked_seen, PLAIN, "") \
    X(STAY_ON_16, stay_on_16, PLAIN, "") \
    X(HEARD_LISTEN, heard_listen, PLAIN, "") \
    X(HEARD_THEN, heard_then, PLAIN, "") \
    X(HEARD_THEN_VOICE, heard_then_voice, PLAIN, "") \
    X(RELAY_CENTRE_FIRST, relay_centre_first, PLAIN, "all_stations") \
    X(POSITION_READ, position_read, PLAIN, "") \
    X(POSITION_READ_ELSEWHERE, position_read_elsewhere, PLAIN, "") \
    X(POSITION_OR, position_or, PLAIN, "") \
    X(UTC_SAME, utc_same, PLAIN, "") \
    X(UTC_MINUS, utc_minus, PLAIN, "time") \
    X(UTC_PLUS, utc_plus, PLAIN, "time") \
    X(UTC_DATED, utc_dated, PLAIN, "from to utc") \
    X(HOURS, hours, PLAIN, "hours") \
    X(HOURS_MINUTES, hours_minutes, PLAIN, "hours minutes") \
    X(DISTRESS_SPELL, distress_spell, PLAIN, "") \
    X(SPELL_NAME, spell_name, PLAIN, "") \
    X(SPELL_CALL_SIGN, spell_call_sign, PLAIN, "") \
    X(SPELL_MMSI, spell_mmsi, PLAIN, "") \
    X(URGENT_ENGINE, urgent_engine, PLAIN, "") \
    X(URGENT_STEERING, urgent_steering, PLAIN, "") \
    X(URGENT_ROPE, urgent_rope, PLAIN, "") \
    X(URGENT_MAST, urgent_mast, PLAIN, "") \
    X(URGENT_AGROUND, urgent_aground, PLAIN, "") \
    X(URGENT_ADRIFT, urgent_adrift, PLAIN, "") \
    X(URGENT_HURT, urgent_hurt, PLAIN, "") \
    X(URGENT_ILL, urgent_ill, PLAIN, "") \
    X(NEED_DOCTOR, need_doctor, PLAIN, "") \
    X(NEED_TOW, need_tow, PLAIN, "") \
    X(NEED_PUMP, need_pump, PLAIN, "") \
    X(NEED_ADVICE, need_advice, PLAIN, "") \
    X(DISTRESS_CALL_LINE, distress_call_line, PLAIN, "") \
    X(CALL_PAGE_LINE, call_page_line, PLAIN, "urgency number") \
    X(ANSWER_CALL_LINE, answer_call_line, PLAIN, "number") \
    X(HELP_TITLE, help_title, PLAIN, "") \
    X(PLACE_TITLE, place_title, PLAIN, "") \
    X(HELP_CALL_LINE, help_call_line, PLAIN, "number") \
    X(URGENCY_TITLE, urgency_title, PLAIN, "") \
    X(RELAY_TITLE, relay_title, PLAIN, "") \
    X(RELAY_WHEN, relay_when, PLAIN, "") \
    X(CANCEL_TITLE, cancel_title, PLAIN, "") \
    X(CANCEL_WHEN, cancel_when, PLAIN, "") \
    X(BEACON_TITLE, beacon_title, PLAIN, "")

#endif

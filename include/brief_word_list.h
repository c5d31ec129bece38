/* brief_word_list.h - the words of the skipper's sheet, a row each as in WORD_LIST (room:
 * words). */
#ifndef MAYDECK_BRIEF_WORD_LIST_H
#define MAYDECK_BRIEF_WORD_LIST_H

#define BRIEF_WORD_LIST(X) \
    X(DOCUMENT_BRIEF, document_brief, PLAIN, "") \
    X(BRIEF_TITLE, brief_title, PLAIN, "") \
    X(BRIEF_SIGNS, brief_signs, PLAIN, "from to people") \
    X(BRIEF_PEOPLE, brief_people, COUNTED, "count") \
    X(BRIEF_CHILDREN, brief_children, COUNTED, "count people") \
    X(BRIEF_STOPPERS, brief_stoppers, PLAIN, "") \
    X(BRIEF_STOPPERS_NONE, brief_stoppers_none, PLAIN, "") \
    X(BRIEF_DO_NOT_SAIL, brief_do_not_sail, PLAIN, "") \
    X(BRIEF_REST, brief_rest, COUNTED, "count") \
    X(BRIEF_TOO_MANY, brief_too_many, PLAIN, "people most") \
    X(BRIEF_RAFT_NONE, brief_raft_none, PLAIN, "people") \
    X(BRIEF_RAFT_UNKNOWN, brief_raft_unknown, PLAIN, "people") \
    X(BRIEF_RAFT_UNSAID, brief_raft_unsaid, PLAIN, "gear place") \
    X(BRIEF_RAFT_FEW, brief_raft_few, PLAIN, "places people") \
    X(BRIEF_RAFT_DATED, brief_raft_dated, PLAIN, "to places people") \
    X(BRIEF_JACKETS_NONE, brief_jackets_none, PLAIN, "people") \
    X(BRIEF_JACKETS_UNKNOWN, brief_jackets_unknown, PLAIN, "people") \
    X(BRIEF_JACKETS_FEW, brief_jackets_few, PLAIN, "jackets people") \
    X(BRIEF_JACKETS_ADULT, brief_jackets_adult, PLAIN, "jackets people") \
    X(BRIEF_JACKETS_CHILD, brief_jackets_child, PLAIN, "jackets people") \
    X(BRIEF_JACKETS_FIT, brief_jackets_fit, PLAIN, "jackets people") \
    X(BRIEF_JACKETS_UNSIZED, brief_jackets_unsized, PLAIN, "jackets") \
    X(BRIEF_JACKETS_DATED, brief_jackets_dated, PLAIN, "jackets to") \
    X(BRIEF_RADIO_NONE, brief_radio_none, PLAIN, "") \
    X(BRIEF_RADIO_UNKNOWN, brief_radio_unknown, PLAIN, "") \
    X(BRIEF_ITEM_NONE, brief_item_none, PLAIN, "item") \
    X(BRIEF_ITEM_UNKNOWN, brief_item_unknown, PLAIN, "item") \
    X(BRIEF_CARDS_HELD, brief_cards_held, PLAIN, "cards") \
    X(BRIEF_DATE_PAST, brief_date_past, PLAIN, "gear date place") \
    X(BRIEF_DATE_DURING, brief_date_during, PLAIN, "gear date place") \
    X(BRIEF_DATE_UNKNOWN, brief_date_unknown, PLAIN, "gear place") \
    X(BRIEF_IDENTITY, brief_identity, PLAIN, "") \
    X(BRIEF_CALL, brief_call, PLAIN, "") \
    X(BRIEF_NAME, brief_name, PLAIN, "") \
    X(BRIEF_CALL_SIGN, brief_call_sign, PLAIN, "") \
    X(BRIEF_MMSI, brief_mmsi, PLAIN, "") \
    X(BRIEF_SPELLED, brief_spelled, PLAIN, "plain words") \
    X(BRIEF_UNRECORDED, brief_unrecorded, PLAIN, "") \
    X(BRIEF_CALL_SIGN_NONE, brief_call_sign_none, PLAIN, "") \
    X(BRIEF_ROLES, brief_roles, PLAIN, "") \
    X(BRIEF_ROLE, brief_role, PLAIN, "") \
    X(BRIEF_WHO, brief_who, PLAIN, "") \
    X(BRIEF_DEPUTY, brief_deputy, PLAIN, "") \
    X(BRIEF_ROLE_CALL, brief_role_call, PLAIN, "") \
    X(BRIEF_ROLE_BOAT, brief_role_boat, PLAIN, "") \
    X(BRIEF_ROLE_COUNT, brief_role_count, PLAIN, "") \
    X(BRIEF_ROLE_SHUT, brief_role_shut, PLAIN, "") \
    X(BRIEF_ROLE_FIRE, brief_role_fire, PLAIN, "") \
    X(BRIEF_ROLE_RAFT, brief_role_raft, PLAIN, "") \
    X(BRIEF_ROLE_WATER, brief_role_water, PLAIN, "") \
    X(BRIEF_ROLE_CARDS, brief_role_cards, PLAIN, "") \
    X(BRIEF_DIFFERS, brief_differs, PLAIN, "") \
    X(BRIEF_DIFFERS_NOTE, brief_differs_note, PLAIN, "") \
    X(BRIEF_SEE_CARD, brief_see_card, PLAIN, "number") \
    X(BRIEF_LIMITS, brief_limits, PLAIN, "draught length most") \
    X(BRIEF_LIMITS_UNKNOWN, brief_limits_unknown, PLAIN, "length most") \
    X(BRIEF_D_NO_RAFT, brief_d_no_raft, PLAIN, "") \
    X(BRIEF_D_NO_EPIRB, brief_d_no_epirb, PLAIN, "") \
    X(BRIEF_D_NO_FIXED_RADIO, brief_d_no_fixed_radio, PLAIN, "") \
    X(BRIEF_D_NO_HANDHELD, brief_d_no_handheld, PLAIN, "") \
    X(BRIEF_D_NO_FLARES, brief_d_no_flares, PLAIN, "") \
    X(BRIEF_D_NO_GRAB_BAG, brief_d_no_grab_bag, PLAIN, "") \
    X(BRIEF_D_NO_FIRE_PORT, brief_d_no_fire_port, PLAIN, "") \
    X(BRIEF_D_NO_BLANKET, brief_d_no_blanket, PLAIN, "") \
    X(BRIEF_D_NO_SMOKE_ALARM, brief_d_no_smoke_alarm, PLAIN, "") \
    X(BRIEF_D_NO_CO_ALARM, brief_d_no_co_alarm, PLAIN, "") \
    X(BRIEF_D_NO_GAS_ALARM, brief_d_no_gas_alarm, PLAIN, "") \
    X(BRIEF_D_NO_HARNESS, brief_d_no_harness, PLAIN, "") \
    X(BRIEF_D_NO_LINE, brief_d_no_line, PLAIN, "") \
    X(BRIEF_D_NO_LIFTING, brief_d_no_lifting, PLAIN, "") \
    X(BRIEF_D_NO_LADDER, brief_d_no_ladder, PLAIN, "") \
    X(BRIEF_D_NO_TILLER, brief_d_no_tiller, PLAIN, "") \
    X(BRIEF_D_NO_ELECTRIC_PUMP, brief_d_no_electric_pump, PLAIN, "") \
    X(BRIEF_D_NO_HAND_PUMP, brief_d_no_hand_pump, PLAIN, "") \
    X(BRIEF_D_NO_WINDLASS, brief_d_no_windlass, PLAIN, "") \
    X(BRIEF_D_NO_BATTERY_SWITCH, brief_d_no_battery_switch, PLAIN, "") \
    X(BRIEF_D_NO_CABIN_VALVE, brief_d_no_cabin_valve, PLAIN, "") \
    X(BRIEF_D_NO_FIRST_AID, brief_d_no_first_aid, PLAIN, "") \
    X(BRIEF_D_STOP_CABLE, brief_d_stop_cable, PLAIN, "place") \
    X(BRIEF_D_NEUTRAL, brief_d_neutral, PLAIN, "place") \
    X(BRIEF_D_LADDER_DECK, brief_d_ladder_deck, PLAIN, "place") \
    X(BRIEF_D_PUMP_SWITCH, brief_d_pump_switch, PLAIN, "place") \
    X(BRIEF_D_FIXED_AUTOMATIC, brief_d_fixed_automatic, PLAIN, "place") \
    X(BRIEF_D_HANDHELD_FLAT, brief_d_handheld_flat, PLAIN, "place") \
    X(BRIEF_D_HANDHELD_BELOW, brief_d_handheld_below, PLAIN, "place") \
    X(BRIEF_D_JACKETS_BELOW, brief_d_jackets_below, PLAIN, "place") \
    X(BRIEF_D_CHAIN_LOOSE, brief_d_chain_loose, PLAIN, "place") \
    X(BRIEF_D_REMOTE_OPEN, brief_d_remote_open, PLAIN, "place") \
    X(BRIEF_D_NO_VALVE, brief_d_no_valve, PLAIN, "place") \
    X(BRIEF_D_PORT_UNFIT, brief_d_port_unfit, PLAIN, "place") \
    X(BRIEF_D_STIFF, brief_d_stiff, PLAIN, "gear place") \
    X(BRIEF_D_SEIZED, brief_d_seized, PLAIN, "gear place") \
    X(BRIEF_D_LOCKED, brief_d_locked, PLAIN, "gear place") \
    X(BRIEF_D_LITHIUM, brief_d_lithium, PLAIN, "place") \
    X(BRIEF_D_PETROL, brief_d_petrol, PLAIN, "place") \
    X(BRIEF_D_GAS_SHUT, brief_d_gas_shut, PLAIN, "gear place") \
    X(BRIEF_D_CUTS_RADIO, brief_d_cuts_radio, PLAIN, "place") \
    X(BRIEF_D_CUTS_UNKNOWN, brief_d_cuts_unknown, PLAIN, "place") \
    X(BRIEF_D_CUTS_PUMP, brief_d_cuts_pump, PLAIN, "place") \
    X(BRIEF_D_KILL_CORD, brief_d_kill_cord, PLAIN, "place") \
    X(BRIEF_D_ONLY_WHEN, brief_d_only_when, PLAIN, "gear fact place") \
    X(BRIEF_D_FROM, brief_d_from, PLAIN, "gear place") \
    X(BRIEF_D_TWO_ENGINES, brief_d_two_engines, PLAIN, "") \
    X(BRIEF_D_TWO_HULLS, brief_d_two_hulls, PLAIN, "") \
    X(BRIEF_D_PETROL_ENGINE, brief_d_petrol_engine, PLAIN, "") \
    X(BRIEF_D_ELECTRIC_DRIVE, brief_d_electric_drive, PLAIN, "") \
    X(BRIEF_D_GENERATOR, brief_d_generator, PLAIN, "") \
    X(BRIEF_D_NO_RED_KEY, brief_d_no_red_key, PLAIN, "") \
    X(BRIEF_D_KEY_NOT_SET, brief_d_key_not_set, PLAIN, "") \
    X(BRIEF_D_KEY_UNKNOWN, brief_d_key_unknown, PLAIN, "") \
    X(BRIEF_D_NO_POSITION, brief_d_no_position, PLAIN, "") \
    X(BRIEF_D_SECOND_SET, brief_d_second_set, PLAIN, "fact") \
    X(BRIEF_TOPICS_EVENING, brief_topics_evening, PLAIN, "") \
    X(BRIEF_TOPICS_DECK, brief_topics_deck, PLAIN, "") \
    X(BRIEF_TOPICS_NOTE, brief_topics_note, PLAIN, "") \
    X(BRIEF_WALK_BELOW, brief_walk_below, PLAIN, "") \
    X(BRIEF_WALK_DECK, brief_walk_deck, PLAIN, "") \
    X(BRIEF_HEAD_NUMBER, brief_head_number, PLAIN, "") \
    X(BRIEF_HEAD_TOPIC, brief_head_topic, PLAIN, "") \
    X(BRIEF_HEAD_TAG, brief_head_tag, PLAIN, "") \
    X(BRIEF_HEAD_WHAT, brief_head_what, PLAIN, "") \
    X(BRIEF_HEAD_DONE, brief_head_done, PLAIN, "") \
    X(BRIEF_HEAD_SHOWN, brief_head_shown, PLAIN, "") \
    X(BRIEF_ASKED_BY, brief_asked_by, PLAIN, "topic tags") \
    X(BRIEF_SUPERSEDED, brief_superseded, PLAIN, "tag") \
    X(BRIEF_PRACTICE, brief_practice, PLAIN, "") \
    X(BRIEF_WALK_LINE, brief_walk_line, PLAIN, "gear place") \
    X(BRIEF_T_DEPUTY, brief_t_deputy, PLAIN, "") \
    X(BRIEF_T_JACKETS, brief_t_jackets, PLAIN, "") \
    X(BRIEF_T_LIFESAVING, brief_t_lifesaving, PLAIN, "place") \
    X(BRIEF_T_EXITS, brief_t_exits, PLAIN, "places") \
    X(BRIEF_T_AID, brief_t_aid, PLAIN, "") \
    X(BRIEF_T_CALL, brief_t_call, PLAIN, "") \
    X(BRIEF_T_WORN, brief_t_worn, PLAIN, "") \
    X(BRIEF_T_DANGERS, brief_t_dangers, PLAIN, "") \
    X(BRIEF_T_SWIM, brief_t_swim, PLAIN, "") \
    X(BRIEF_T_ALARMS, brief_t_alarms, PLAIN, "") \
    X(BRIEF_T_HEALTH, brief_t_health, PLAIN, "") \
    X(BRIEF_T_ANCHOR, brief_t_anchor, PLAIN, "draught") \
    X(BRIEF_T_ASHORE, brief_t_ashore, PLAIN, "phone") \
    X(BRIEF_T_FIRE, brief_t_fire, PLAIN, "") \
    X(BRIEF_T_GAS, brief_t_gas, PLAIN, "") \
    X(BRIEF_T_NO_GAS, brief_t_no_gas, PLAIN, "") \
    X(BRIEF_T_TOUCH, brief_t_touch, PLAIN, "") \
    X(BRIEF_T_LIFT, brief_t_lift, PLAIN, "") \
    X(BRIEF_T_MOVE, brief_t_move, PLAIN, "") \
    X(BRIEF_T_PLAN, brief_t_plan, PLAIN, "") \
    X(BRIEF_PEOPLE_BLANKS, brief_people_blanks, PLAIN, "") \
    X(BRIEF_SLIPS, brief_slips, PLAIN, "") \
    X(BRIEF_SLIPS_DEPUTY, brief_slips_deputy, PLAIN, "") \
    X(BRIEF_MEDICAL, brief_medical, PLAIN, "") \
    X(BRIEF_NO_SWIM, brief_no_swim, PLAIN, "") \
    X(BRIEF_CHILDREN_BLANKS, brief_children_blanks, PLAIN, "") \
    X(BRIEF_CHILD, brief_child, PLAIN, "") \
    X(BRIEF_NO_CHILD, brief_no_child, PLAIN, "") \
    X(BRIEF_REHEARSE, brief_rehearse, PLAIN, "") \
    X(BRIEF_REHEARSE_NOTE, brief_rehearse_note, PLAIN, "") \
    X(BRIEF_REHEARSE_BLANK, brief_rehearse_blank, PLAIN, "") \
    X(BRIEF_CLOCK, brief_clock, PLAIN, "from local offset utc") \
    X(BRIEF_CLOCK_NONE, brief_clock_none, PLAIN, "from") \
    X(BRIEF_SINCE, brief_since, PLAIN, "") \
    X(BRIEF_SINCE_ASK, brief_since_ask, PLAIN, "") \
    X(BRIEF_SINCE_DAY, brief_since_day, PLAIN, "date") \
    X(BRIEF_METRES, brief_metres, PLAIN, "metres") \
    X(BRIEF_SINCE_CARDS, brief_since_cards, PLAIN, "") \
    X(BRIEF_SINCE_CHANGE, brief_since_change, PLAIN, "number reason") \
    X(BRIEF_SINCE_CARD, brief_since_card, PLAIN, "number") \
    X(BRIEF_SINCE_RECORD, brief_since_record, PLAIN, "") \
    X(BRIEF_SINCE_NOTHING, brief_since_nothing, PLAIN, "") \
    X(BRIEF_SINCE_BLANK, brief_since_blank, PLAIN, "") \
    X(BRIEF_SINCE_SERVICED, brief_since_serviced, PLAIN, "gear date place") \
    X(BRIEF_SINCE_NEW, brief_since_new, PLAIN, "gear date place") \
    X(BRIEF_SINCE_TRIED, brief_since_tried, PLAIN, "gear date place") \
    X(BRIEF_CARDS_HANG, brief_cards_hang, PLAIN, "cards") \
    X(BRIEF_RULES, brief_rules, PLAIN, "") \
    X(BRIEF_RULE, brief_rule, PLAIN, "rule source") \
    X(BRIEF_RULES_NONE, brief_rules_none, PLAIN, "") \
    X(BRIEF_CONTACTS, brief_contacts, PLAIN, "") \
    X(BRIEF_CONTACT_CENTRE, brief_contact_centre, PLAIN, "name") \
    X(BRIEF_CONTACT_PHONE, brief_contact_phone, PLAIN, "phone") \
    X(BRIEF_CONTACT_CHANNEL, brief_contact_channel, PLAIN, "channel") \
    X(BRIEF_CONTACT_BASE, brief_contact_base, PLAIN, "name phone") \
    X(BRIEF_CONTACT_FIRE, brief_contact_fire, PLAIN, "phone") \
    X(BRIEF_CONTACT_BERTH, brief_contact_berth, PLAIN, "berth") \
    X(BRIEF_CONTACT_SHELTER, brief_contact_shelter, PLAIN, "name position") \
    X(BRIEF_ASHORE, brief_ashore, PLAIN, "") \
    X(BRIEF_ASHORE_KNOWN, brief_ashore_known, PLAIN, "boat people") \
    X(BRIEF_ASHORE_WITH, brief_ashore_with, PLAIN, "") \
    X(BRIEF_ASHORE_NAMES, brief_ashore_names, PLAIN, "") \
    X(BRIEF_ASHORE_ROUTE, brief_ashore_route, PLAIN, "") \
    X(BRIEF_ASHORE_OVERDUE, brief_ashore_overdue, PLAIN, "") \
    X(BRIEF_PROOF, brief_proof, PLAIN, "") \
    X(BRIEF_PROOF_DAY, brief_proof_day, PLAIN, "") \
    X(BRIEF_PROOF_NAMES, brief_proof_names, PLAIN, "") \
    X(BRIEF_PROOF_SKIPPER, brief_proof_skipper, PLAIN, "") \
    X(BRIEF_PROOF_BASE, brief_proof_base, PLAIN, "") \
    X(BRIEF_PROOF_AGAIN, brief_proof_again, PLAIN, "") \
    X(BRIEF_DEFER, brief_defer, PLAIN, "") \
    X(BRIEF_DEFER_ALL, brief_defer_all, PLAIN, "") \
    X(BRIEF_DEFER_FLAG, brief_defer_flag, PLAIN, "") \
    X(BRIEF_GUESTS, brief_guests, PLAIN, "") \
    X(BRIEF_G_JACKET, brief_g_jacket, PLAIN, "place") \
    X(BRIEF_G_WATER, brief_g_water, PLAIN, "place") \
    X(BRIEF_G_KEY, brief_g_key, PLAIN, "place") \
    X(BRIEF_G_HANDHELD, brief_g_handheld, PLAIN, "place") \
    X(BRIEF_G_STOP, brief_g_stop, PLAIN, "place") \
    X(BRIEF_G_GAS, brief_g_gas, PLAIN, "place") \
    X(BRIEF_G_LADDER, brief_g_ladder, PLAIN, "place") \
    X(BRIEF_G_DEPUTY, brief_g_deputy, PLAIN, "") \
    X(BRIEF_G_GATHER, brief_g_gather, PLAIN, "")

#endif

# fill.awk - fills in every line of a new boat file with a value that could be true, as somebody
# who has all gear aboard. Each value follows from the key alone, and the zone from the heading
# above it.
#
#   awk -v hull=monohull -f tests/fill.awk boats/NAME.yaml

function value_of(key) {
    if (key in values) return values[key]
    return "FILL-" key
}

# Each key in braces with its value; lists come in brackets.
function entry_filled(line,    out, key) {
    out = ""
    while (match(line, /[a-z_0-9]+: *[,}]/)) {
        key = substr(line, RSTART, RLENGTH)
        out = out substr(line, 1, RSTART - 1)
        line = substr(line, RSTART + RLENGTH - 1)
        sub(/:.*/, "", key)
        out = out key ": " value_of(key)
    }
    return out line
}

BEGIN {
    FS = "\n"
    count = split("name Tern|name_spoken|name_latin|specimen yes|rig sail|loa_m 12|beam_m 4|" \
        "shut across|open along|on up|off down|neutral upright|ahead forward|astern back|" \
        "in pull|out let go|up UP|down DOWN|draught_m 2|thickest_wire_mm 8|lay_down_place saloon floor|" \
        "upright yes|drives rudder|needs_engine yes|breaker by the steps|chain_end cord|from_water yes|" \
        "tried 2026-04|cuts_mm 10|kit [gloves, film]|sound three beeps|persons_max 6|flag DE|looks white sloop|openings 1|lwl_m 10.5|bwl_m 3.4|" \
        "usual_kn 5|cabin_m3 20|engine_space_m3 1.2|bilge_to_sole_l 300|carried yes|" \
        "rooms [saloon, galley, navigation_station, forward_cabin, forward_heads, aft_heads, aft_cabin]|" \
        "mounted {zone: saloon, faces: bow}|locker_drains overboard|call_sign QTRN7|" \
        "mmsi \"200012350\"|tag E1|power_switch breaker VHF|power_from_cockpit no|" \
        "distress_key Lift the red lid|second_station {zone: cockpit, side: port, spot: at the wheel}|position_read_at plotter at the wheel|" \
        "emergency_aerial plug at the set|mmsi_programmed yes|dsc yes|gnss yes|hold_s 5|" \
        "antenna_m 15|nature_steps [press MENU]|silence_steps [press ENT]|urgency_steps [press CALL]|" \
        "manual_position_steps [press POS]|fuel diesel|drive shaft|spot aft face|how pull up|" \
        "inside []|cuts []|from_cockpit yes|count 1|agent powder|rating 8A 34B|kg 2|litres 10|" \
        "persons 6|bore_mm 25|depth_m 0.4|leads_to engine|works freely|bung_mm 25|discharge_s 9|" \
        "length_m 25|rated_lph 3000|measured_lpm 30|stroke_l 0.8|protects_m3 2|fed_by battery|" \
        "gas butane|wearer adult|lanyard stowed|kg_low 40|kg_high 120|service_due 2030-04|" \
        "expires 2030-04|serviced 2026-04|made 2026-04|installed 2026-04|valve yes|fits_port yes|" \
        "electrical_ok yes|fails_shut yes|charged yes|in_charger no|automatic no|handle beside it|" \
        "painter foredeck cleat|release pull the pin|vents_to the deck|vents_overboard yes|kind lever|stop mechanical|" \
        "space saloon|hex_id \"990D0 00134 00001\"|serves [engine_space_port, engine_space_starboard]|reach_inverted yes|zone navigation_station|name sink", \
        rows, "|")
    for (i = 1; i <= count; i++) {
        key = rows[i]
        sub(/ .*/, "", key)
        values[key] = index(rows[i], " ") ? substr(rows[i], index(rows[i], " ") + 1) : ""
    }
    name = "Tern"
    values["side"] = hull == "catamaran" ? "port" : "centre"
}

/^  # ---- on most boats: / {
    zone = $0
    sub(/.*boats: /, "", zone)
    sub(/ .*/, "", zone)
    values["zone"] = zone
}
/^[a-z_]+:/ { section = substr($0, 1, index($0, ":") - 1) }
section == "not_fitted" || /^  #  / || /^  # / || /^#/ { print; next }
section == "tags_given" {
    print /^tags_given:/ ? "tags_given: [F" last["F"] ", E" last["E"] ", C" last["C"] "]" : $0
    next
}
section == "retired_tags" { print; next }
/^  #- \{/ {
    sub(/#- /, "- ")
    item = $0
    sub(/.*\{item: /, "", item)
    sub(/,.*/, "", item)
    values["hex_id"] = item == "epirb" ? "\"990D0 00134 00001\"" : "\"9A6F4 048D0 004B1\""
    values["mmsi"] = item == "vhf_handheld" ? "\"899990123\"" : "\"200012350\""
    if (match($0, /tag: [FEC][0-9]+/))
        last[substr($0, RSTART + 5, 1)] = substr($0, RSTART + 6, RLENGTH - 6)
    # a catamaran's pump is in one of her hulls
    values["zone"] = hull == "catamaran" && item == "bilge_pump_electric" ? "bilge" : zone
    # what lies in a room is entered for
    values["from_cockpit"] = zone ~ /cabin|saloon|galley|heads|navigation/ ? "no" : "yes"
    $0 = entry_filled($0)
    print
    # what gear of a generator and of petrol belongs to
    if (section == "engines" && !generators++) {
        sub(/diesel, drive: shaft/, "petrol, drive: generator")
        print
    }
    next
}
match($0, /^  [a-z_0-9]+: +# /) {
    key = $0
    sub(/^ */, "", key)
    sub(/:.*/, "", key)
    if (section == "radio" && key == "zone") print "  zone: navigation_station"
    else if (section == "boat" && key == "name") print "  name: " name
    else print "  " key ": " value_of(key)
    next
}
{ print }

# record.awk - what the rules need of boats' records: each piece of gear with its place, and
# whether it is reached from deck, judged here anew from the zones and the record's own words.
# Read before rules.awk, with `mode` set to zones, words or boat before each kind of file.

function fact(line, key,    at, rest) {
    if (!match(line, "[{ ,]" key ": *")) return ""
    rest = substr(line, RSTART + RLENGTH)
    if (rest ~ /^"/) { match(rest, /^"[^"]*"/); return substr(rest, 2, RLENGTH - 2) }
    if (rest ~ /^\[/) { match(rest, /^\[[^\]]*\]/); return substr(rest, 1, RLENGTH) }
    match(rest, /^[^,}]*/)
    return substr(rest, 1, RLENGTH)
}

# Where one stands to work it: `from`, or else its own place.
function worked(line) {
    return match(line, /[ {,]from: *\{[^}]*\}/) ? substr(line, RSTART, RLENGTH) : line
}

# Does the way there lead below?
function way_below(line,    zones, part, n, i) {
    zones = fact(line, "inside") " " fact(line, "past")
    gsub(/[^a-z_]+/, " ", zones)
    n = split(zones, part, " ")
    for (i = 1; i <= n; i++) if (zone_level[part[i]] == "BELOW") return 1
    return 0
}

# The handle may lie at a spot of its own.
function without_handle(line) {
    sub(/[ {,]handle: *\{[^}]*\}/, "", line)
    return line
}
# Is its handle fetched from below, farther in than a hand reaches through the door?
function handle_below(line,    zone) {
    if (!match(line, /[ {,]handle: *\{[^}]*\}/)) return 0
    zone = fact(substr(line, RSTART, RLENGTH), "zone")
    return zone_level[zone] == "BELOW" && !zone_door[zone] && zone != "companionway"
}

# One piece of gear of the boat, as `tag`.
function gear_add(item, tag, line,    zone, place) {
    place = worked(line)
    zone = fact(place, "zone")
    kind_of[boat, tag] = item
    zone_of[boat, tag] = zone
    side_of[boat, tag] = fact(place, "side")
    spot_of[boat, tag] = fact(without_handle(place), "spot")
    how_of[boat, tag] = fact(line, "how")
    cuts_of[boat, tag] = fact(line, "cuts")
    stop_of[boat, tag] = fact(line, "stop")
    fed_of[boat, tag] = fact(line, "fed_by")
    space_of[boat, tag] = fact(line, "space")
    persons_of[boat, tag] = fact(line, "persons")
    name_of[boat, tag] = fact(line, "name")
    charger_of[boat, tag] = fact(line, "in_charger")
    from = fact(line, "from_cockpit")
    hot[boat, tag] = (zone " " fact(line, "inside")) ~ /engine_space/
    below[boat, tag] = zone_level[zone] == "BELOW" || from == "no" || way_below(line) ||
                       place == line && fact(line, "below") == "yes" || handle_below(line)
    arm[boat, tag] = below[boat, tag] && from == "yes" && !handle_below(line)
    tags_of[boat] = tags_of[boat] " " tag
    count[boat, item]++
    if (zone_locker[zone] && !below[boat, tag]) {
        in_locker[boat, tag] = zone_family[zone]
        locker_side[boat, tag] = zone_side[zone] == "none" ? side_of[boat, tag] : zone_side[zone]
    }
    if (item == "lithium_bank") {
        lithium[boat, fact(line, "space")] = 1
        if (fact(line, "vents_overboard") != "yes") unvented[boat] = 1
    }
    if (item == "vhf_handheld" && fact(line, "dsc") == "yes") alert[boat] = 1
}

function boat_begin() {
    boat = FILENAME
    sub(/.*\//, "", boat); sub(/\.yaml$/, "", boat)
    boats[boat] = 1
    section = ""
}

function radio_end() {
    if (section == "radio" && radio ~ /tag: /) {
        if (match(radio, /second_station: *\{[^}]*\}/)) {
            second_deck[boat] = zone_level[fact(substr(radio, RSTART, RLENGTH), "zone")] != "BELOW"
            sub(/second_station: *\{[^}]*\}/, "", radio)
        }
        gear_add("vhf_dsc", fact(radio, "tag"), radio)
        switch_of[boat] = fact(radio, "power_switch")
        if (fact(radio, "dsc") != "no") alert[boat] = 1
        natured[boat] = radio ~ /nature_steps: *\[ *[^] ]/
        keyed[boat] = fact(radio, "dsc") == "yes"
    }
    radio = ""
}

# ---- vapour ----

# Is the item one whose locker holds vapour on the card?
function vapours(item) {
    if (card == "petrol_leak") return item == "petrol_stowage"
    if (card == "gas_leak") return item == "lpg_bottle_valve"
    return card == "abandon_fire" && item ~ /^(petrol_stowage|lpg_bottle_valve)$/
}
# The tag of the bottle or can that stands in the gear's locker, or nothing. A side that is not
# recorded may be the same.
function vapour_beside(tag,    n, other, part, one, two) {
    if (!((boat, tag) in in_locker) || vapours(kind_of[boat, tag])) return ""
    one = locker_side[boat, tag]
    n = split(tags_of[boat], part, " ")
    for (other = 1; other <= n; other++) {
        if (!vapours(kind_of[boat, part[other]]) || !((boat, part[other]) in in_locker)) continue
        two = locker_side[boat, part[other]]
        if (in_locker[boat, part[other]] == in_locker[boat, tag] &&
            (one == two || one ~ /^(both)?$/ || two ~ /^(both)?$/)) return part[other]
    }
    return ""
}
# May something aboard give vapour?
function vapour_aboard() {
    return !gas_none[boat] || !engines_given[boat] || burns_petrol[boat] ||
           !((boat, "petrol_stowage") in none) || !((boat, "lithium_bank") in none)
}
# A radio that is taken out of its charger may spark.
function sparks(tag) {
    if (kind_of[boat, tag] != "vhf_handheld" || charger_of[boat, tag] == "no") return 0
    return card ~ /^(gas_leak|petrol_leak|battery_fire)$/ || lithium_here() ||
           card == "abandon_fire" && vapour_aboard()
}
# Is one reached on deck, on the card that is judged?
function on_deck(item,    n, t, part) {
    n = split(tags_of[boat], part, " ")
    for (t = 1; t <= n; t++)
        if (kind_of[boat, part[t]] == item && !below[boat, part[t]] && !sparks(part[t]) &&
            vapour_beside(part[t]) == "") return 1
    return 0
}

# ---- what a boat is ----

# An entry of her engines: what is known of each counts for all of her.
function engine_add(line,    fuel, drive, space) {
    fuel = fact(line, "fuel"); drive = fact(line, "drive"); space = fact(line, "space")
    engines_of[boat]++
    drive_of[boat, drive] = 1
    if (drive != "generator") driven[boat] = 1
    if (fuel == "petrol") burns_petrol[boat] = 1
    if (drive == "outboard") return
    if (fuel == "petrol") petrol_inside[boat] = 1
    if (fuel != "electric") burns_in[boat, space] = burns_in[boat, space] " " fuel
}
# "" or "_port" of each space that has an engine with this fuel, or with any; without a record
# of engines, those of most boats of her hull.
function engine_spaces(fuel,    part, n, i, found) {
    n = split("engine_space engine_space_port engine_space_starboard", part, " ")
    for (i = 1; i <= n; i++) {
        if (!engines_given[boat]) {
            if ((part[i] == "engine_space") == (hull_of[boat] != "catamaran"))
                found = found " " part[i]
        } else if (burns_in[boat, part[i]] ~ fuel && (boat, part[i]) in burns_in &&
                   burns_in[boat, part[i]] != "") found = found " " part[i]
    }
    gsub(/engine_space/, "-", found)
    return found
}
function cooks() {
    return !rooms_given[boat] || rooms_of[boat] ~ /[^a-z_](galley|bridgedeck)[^a-z_]/ ||
           count[boat, "cooker"] > 0
}

function fixed() { return count[boat, "vhf_dsc"] > 0 }
function handheld() { return count[boat, "vhf_handheld"] > 0 }
function lithium_here() {
    return lithium[boat, "engine_space"] && card == "engine_fire" ||
           lithium[boat, "engine_space_port"] && card == "engine_fire_port" ||
           lithium[boat, "engine_space_starboard"] && card == "engine_fire_starboard"
}
function carries(items,    part, n, i) {
    n = split(items, part, " ")
    for (i = 1; i <= n; i++) if (count[boat, part[i]]) return 1
    return 0
}
function is_boat(word) {
    if (word ~ /^deck_/) return on_deck(item_of(substr(word, 6)))
    if (word == "radio") return fixed() || handheld()
    if (word == "radioless") return (boat, "vhf_dsc") in none && (boat, "vhf_handheld") in none
    if (word == "alert") return alert[boat] && (fixed() || handheld())
    if (word == "gas") return !gas_none[boat]
    if (word == "lithium_here") return lithium_here()
    if (word == "lithium_unvented") return lithium_here() && unvented[boat]
    if (word == "key") return keyed[boat]
    if (word == "natured") return natured[boat]
    if (word == "hulls") return hull_of[boat] ~ /maran$/
    if (word == "sail") return rig_of[boat] == "sail"
    if (word == "cabin") return !rooms_given[boat] || rooms_of[boat] ~ /[a-z]/
    if (word == "engine") return !engines_given[boat] || driven[boat]
    if (word == "combustion") return engine_spaces(".") != ""
    if (word ~ /^(outboard|jet)$/) return (boat, word) in drive_of
    if (word == "petrol_inside") return petrol_inside[boat]
    if (word == "pump") return !((boat, "bilge_pump_electric") in none) ||
                               !((boat, "bilge_pump_manual") in none)
    if (word ~ /^maybe_/) return !((boat, substr(word, 7)) in none)
    if (word == "throwing") return carries("horseshoe_buoy danbuoy mob_light")
    if (word == "lifting") return carries("recovery_tackle recovery_sling")
    return count[boat, item_of(word)] > 0
}
function item_of(word) {
    return word == "fixed" ? "vhf_dsc" : word == "handheld" ? "vhf_handheld" : \
           word == "raft" ? "liferaft" : word == "harness" ? "harness_tether" : word
}
function boat_fits(words,    part, n, i) {
    n = split(words, part, " ")
    for (i = 1; i <= n; i++) {
        if (part[i] == "-") continue
        if (part[i] ~ /^!/ ? is_boat(substr(part[i], 2)) : !is_boat(part[i])) return 0
    }
    return 1
}

# X(cockpit_locker, cockpit_locker, NONE, 68, 95, DECK, LOCKER | ...)
mode == "zones" && /X\(/ { zone_line = "" }
mode == "zones" {
    zone_line = zone_line $0
    if (zone_line ~ /X\([a-z_]+, [^)]*\)/) {
        sub(/.*X\(/, "", zone_line)
        sub(/\).*/, "", zone_line)
        gsub(/[\\ ]/, "", zone_line)
        split(zone_line, column, /,/)
        zone_family[column[1]] = column[2]; zone_side[column[1]] = tolower(column[3])
        zone_level[column[1]] = column[6]
        zone_locker[column[1]] = column[7] ~ /(^|[|])LOCKER([|]|$)/
        zone_door[column[1]] = column[7] ~ /(^|[|])AT_DOOR([|]|$)/
        zone_line = ""
    }
    next
}
mode == "words" && /^[a-z]+:/ { section = $1 }
mode == "words" && section == "zones:" && /^  [a-z_]+: / {
    key = $1; sub(/:$/, "", key)
    zone_word[key] = substr($0, index($0, ": ") + 2)
    next
}
mode == "words" { next }
mode == "boat" && FNR == 1 { radio_end(); boat_begin() }
mode == "boat" && /^[a-z_]+:/ { radio_end(); section = $1; sub(/:.*/, "", section) }
mode == "boat" && section == "radio" { radio = radio " " $0 "," }
mode == "boat" && section == "gas" && match($0, /carried: *[a-z]+/) {
    gas_none[boat] = substr($0, RSTART, RLENGTH) ~ /no$/
}
mode == "boat" && section == "boat" && match($0, /rig: *[a-z]+/) {
    rig_of[boat] = fact(" " $0, "rig")
}
mode == "boat" && section == "boat" && match($0, /persons_max: *[0-9]+/) {
    persons_max[boat] = fact(" " $0, "persons_max")
}
mode == "boat" && section == "boat" && match($0, /hull: *[a-z]+/) {
    hull_of[boat] = fact(" " $0, "hull")
}
mode == "boat" && section == "boat" && /rooms: *\[/ {
    rooms_given[boat] = 1
    rooms_of[boat] = fact(" " $0, "rooms")
}
mode == "boat" && section == "engines" && /^engines:/ { engines_given[boat] = 1 }
mode == "boat" && section == "engines" && /drive:/ {
    n = split($0, engine, /\{/)
    for (i = 2; i <= n; i++) engine_add("{" engine[i])
}
# Items in brackets or a line each.
mode == "boat" && section == "not_fitted" {
    items = $0
    sub(/#.*/, "", items); sub(/^not_fitted:/, "", items); gsub(/[^a-z_]+/, " ", items)
    n = split(items, column, " ")
    for (i = 1; i <= n; i++) none[boat, column[i]] = 1
}
mode == "boat" && /^ *- \{item: / { gear_add(fact($0, "item"), fact($0, "tag"), $0) }
mode == "boat" { next }

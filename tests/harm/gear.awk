# gear.awk - the rules of harm.sh about gear: each tag of a row, and of the lines of how to call,
# held against the record (record.awk) and the step it stands in. Read before rules.awk.

function gear_row(i) { return what[i] == "row" || what[i] == "cell" }

# Judges each tag of each row, and of the lines of how to call for rules that name them.
function rows_judge(rule, how,    i, t, n, part) {
    for (i = 1; i <= lines; i++) {
        if (!kind_in(what[i], places[rule])) continue
        n = gear_row(i) ? split(tags[i], part, " ") : split(tags_said(offered(words[i])), part, " ")
        for (t = 1; t <= n; t++) row_judge(rule, how, i, part[t], n)
    }
}
# The words without what they forbid.
function offered(said) {
    gsub(/Handheld [FEC][0-9]+: do not fetch it\./, "", said)
    return said
}
function tags_said(said,    found) {
    while (match(said, /(^|[^A-Z])[FEC][0-9]+/)) {
        found = found " " substr(said, RSTART, RLENGTH)
        said = substr(said, RSTART + RLENGTH)
    }
    gsub(/[^FEC0-9 ]/, "", found)
    return found
}
function row_judge(rule, how, i, tag, n) {
    if (how == "below_after_deck") below_after_deck(rule, i, tag)
    else if (how == "below_never" && below[boat, tag])
        wrong(rule, tag " is below: " words[i])
    else if (how == "below_said" && below[boat, tag] && !set_says("Only outside the smoke"))
        wrong(rule, tag " is below: " words[i])
    else if (how == "smoke_said" && words[i] ~ /Smoke/ && below[boat, tag] && !arm[boat, tag])
        wrong(rule, tag " is in it: " words[i])
    else if (how == "flares_gear" && kind_of[boat, tag] == "flares") wrong(rule, words[i])
    else if (how == "place_printed") place_printed(rule, i, tag)
    else if (how == "alike" && n > 1) alike(rule, i, tag)
    else if (how == "isolator") isolator(rule, i, tag)
    else if (how == "isolator_reach" && kind_of[boat, tag] ~ /^battery_isolator/ &&
             below[boat, tag] && (card == "cabin_fire" || !arm[boat, tag]))
        wrong(rule, tag " is below: " words[i])
    else if (how == "panel_reach") panel_reach(rule, i, tag)
    else if (how == "spark") spark(rule, i, tag)
    else if (how == "same_locker") same_locker(rule, i, tag)
    else if (how == "pump_feed") pump_feed(rule, i, tag)
    else if (how == "ladder" && kind_of[boat, tag] == "boarding_ladder" &&
             !step_says(number[i], "flat water, engine off")) wrong(rule, words[i])
    else if (how == "back_in" && below[boat, tag] && number[i] > step_with("SHUT hatches"))
        wrong(rule, tag " is below: " words[i])
    else if (how == "shore_power" && kind_of[boat, tag] == "shore_power_inlet")
        wrong(rule, words[i])
    else if (how == "upwind_deck" && below[boat, tag] && head_of(number[i]) ~ /^STAND UPWIND/)
        wrong(rule, tag " is below: " words[i])
    else if (how == "jackets_worn" && kind_of[boat, tag] == "lifejacket" &&
             !step_says(number[i], "([Jj]ackets on|JACKETS ON|these jackets)")) wrong(rule, words[i])
    else if (how == "gas_clear" && kind_of[boat, tag] == "lpg_bottle_valve" &&
             !step_says(number[i], "(outside the smoke|NO SMOKE)")) wrong(rule, words[i])
    else if (how == "hot_space" && hot[boat, tag] && kind_of[boat, tag] ~ /^fuel_shutoff/ &&
             words[i] !~ /inside: DON.*T TOUCH$/)
        wrong(rule, tag " is in the engine space: " words[i])
    else if (how == "extinguisher" && tag ~ /^F/) wrong(rule, words[i])
    else if (how == "shut_in" && kind_of[boat, tag] ~ /vent_closure|fire_port|engine_ext|bucket/)
        wrong(rule, words[i])
}
function below_after_deck(rule, i, tag,    s, after) {
    if (!below[boat, tag] || words[i] ~ /inside: DON.*T TOUCH$/) return
    if (kind_of[boat, tag] == "hatch" && step_says(number[i], "blocked\\? Through the hatch")) return
    for (s = 1; s <= number[i]; s++)
        if (step_says(s, card == "galley_fire" ? "GO ON DECK" : "[Oo]n deck|ON DECK")) after = 1
    if (!after && card == "galley_fire" && !near_galley(tag))
        wrong(rule, tag " is not in the galley: " words[i])
    if (after && !step_says(number[i], "Only outside the smoke"))
        wrong(rule, tag " is below: " words[i])
}
function near_galley(tag) {
    return zone_of[boat, tag] ~ /^(galley|bridgedeck)$/ || arm[boat, tag]
}
function place_printed(rule, i, tag,    side) {
    side = toupper(side_of[boat, tag] == "both" ? "both sides" : side_of[boat, tag])
    if (index(words[i], zone_word[zone_of[boat, tag]]) == 0)
        wrong(rule, tag " without its zone: " words[i])
    if (what[i] == "cell") return          # its side is its column, its spot its name
    if (side != "" && index(words[i], ", " side) == 0)
        wrong(rule, tag " without its side: " words[i])
    if (spot_of[boat, tag] != "" && index(words[i], spot_of[boat, tag]) == 0)
        wrong(rule, tag " without its spot: " words[i])
}
function place_key(tag) {
    return zone_of[boat, tag] "," side_of[boat, tag] "," spot_of[boat, tag] "," how_of[boat, tag]
}
function alike(rule, i, tag,    first) {
    first = tags[i]; sub(/ .*/, "", first)
    if (place_key(tag) != place_key(first))
        wrong(rule, first " and " tag " are not at one place: " words[i])
}
function isolator(rule, i, tag,    call) {
    if (kind_of[boat, tag] !~ /^battery_isolator/ || !fixed()) return
    if (cuts_of[boat, tag] != "" && cuts_of[boat, tag] !~ /vhf_dsc/) return
    if (head_of(number[i]) !~ /^AFTER THE CALL/) wrong(rule, tag " before the call: " words[i])
    if (!step_says(number[i], "radio is dead")) wrong(rule, tag " without its price: " words[i])
    call = called_after()
    if (number[i] <= call) wrong(rule, tag " in step " number[i] ", the call after " call)
}
function called_after(    i, said) {
    for (i = 1; i <= lines; i++)
        if (what[i] == "bar" && match(words[i], /ALONE: .*step [0-9]+/)) {
            said = substr(words[i], RSTART, RLENGTH)
            sub(/.* /, "", said)
            return said + 0
        }
    return 0
}
function spark(rule, i, tag,    item) {
    item = kind_of[boat, tag]
    if (item == "engine_stop" && stop_of[boat, tag] != "mechanical" ||
        item ~ /electric|blower|isolator|inverter|generator|shore|remote|vhf_dsc|mob_button/ ||
        item ~ /epirb|beacon|sart|torch/ && card ~ /gas|petrol/)
        wrong(rule, tag " may spark: " words[i])
}
# What is taken out of the locker where the bottles or the can stand.
function same_locker(rule, i, tag) {
    if (vapour_beside(tag) != "")
        wrong(rule, tag " stands beside " vapour_beside(tag) ": " words[i])
}
# What one calls with, in a fire. The one radio aboard stands on its card as a fixed set does:
# where it is, and under the words that hold people back.
function panel_reach(rule, i, tag) {
    if (kind_of[boat, tag] !~ /^(vhf_handheld|epirb|personal_beacon|sart|flares)$/) return
    if (!below[boat, tag] || arm[boat, tag]) return
    if (only_radio(tag) && set_says("^Only outside the smoke") &&
        (what[i] == "panel" || words[i] ~ /^1 Take handheld/)) return
    wrong(rule, tag " is below: " words[i])
}
function only_radio(tag) {
    return !fixed() && kind_of[boat, tag] == "vhf_handheld" && count[boat, "vhf_handheld"] == 1
}
function pump_feed(rule, i, tag,    n, part, other, mains, unknown) {
    if (kind_of[boat, tag] !~ /^(inverter_switch|shore_power_inlet|generator_stop)$/) return
    n = split(tags_of[boat], part, " ")
    for (other = 1; other <= n; other++)
        if (kind_of[boat, part[other]] == "bilge_pump_electric") {
            mains += fed_of[boat, part[other]] == "mains"
            unknown += fed_of[boat, part[other]] == ""
        }
    if (mains) wrong(rule, "the pumps live on it: " words[i])
    if (unknown && kind_of[boat, tag] == "generator_stop") wrong(rule, "pumps: " words[i])
    if (unknown && !step_says(number[i], "[Pp]ump stops"))
        wrong(rule, "it may feed the pumps: " words[i])
}

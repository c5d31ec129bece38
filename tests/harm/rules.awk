# rules.awk - holds what is printed (card.awk) against the rules of harm.sh and the boats'
# records (record.awk); prints "NUMBER boat card: what is wrong" for each breach.
# Read after record.awk and gear.awk, with mode=rules before the rules and mode=cards before the cards.

function wrong(rule, words) { printf "%d %s %s: %s\n", rule, boat, card, words }

# ---- which cards ----

function procedure_of(key) { sub(/_(port|starboard|[0-9]+)$/, "", key); return key }
function card_in(words) {
    gsub(/vapour/, "gas_leak petrol_leak battery_fire abandon_fire", words)
    gsub(/burning/, "engine_fire outboard_fire galley_fire cabin_fire", words)
    gsub(/steps/, "engine_fire outboard_fire galley_fire cabin_fire battery_fire flooding man_overboard " \
        "gas_leak diesel_leak petrol_leak abandon_ship abandon_fire", words)
    return words == "all" || index(" " words " ", " " procedure_of(card) " ") > 0
}
function kind_in(kind, words) { return words == "any" || index(" " words " ", " " kind " ") > 0 }

# ---- rules that are a pattern ----

function pattern_judge(rule,    i, met) {
    for (i = 1; i <= lines; i++) {
        if (!kind_in(what[i], places[rule])) continue
        if (words[i] ~ pattern[rule]) {
            met = 1
            if (must[rule] == "never") wrong(rule, words[i])
        }
    }
    if (must[rule] == "must" && !met) wrong(rule, "nowhere: " pattern[rule])
}

# Behind "A => B": a step whose headline says A says B too, there or in its lines.
function with_judge(rule,    i, part) {
    split(pattern[rule], part, " => ")
    for (i = 1; i <= lines; i++)
        if (what[i] == "head" && words[i] ~ part[1] && !step_says(number[i], part[2]))
            wrong(rule, words[i])
}
# "A < B": both are steps of the card, A the earlier.
function before_judge(rule,    part, first, then) {
    split(pattern[rule], part, " < ")
    first = step_with(part[1]); then = step_with(part[2])
    if (!first || !then || first >= then) wrong(rule, "steps " first ", " then ": " pattern[rule])
}
# A step whose headline says so names the gear and its place, and not only such as nobody touches.
function rows_under(rule,    i, n, found) {
    for (i = 1; i <= lines; i++) {
        if (what[i] != "head" || words[i] !~ pattern[rule]) continue
        found = 0
        for (n = 1; n <= lines; n++)
            if (number[n] == number[i] && what[n] ~ /^(row|cell)$/ && words[n] !~ /DON.*T TOUCH$/)
                found = 1
        if (!found) wrong(rule, words[i])
    }
}
# A step whose headline says so shows no gear but such as nobody touches.
function bare_judge(rule,    i) {
    for (i = 1; i <= lines; i++)
        if (what[i] ~ /^(row|cell)$/ && head_of(number[i]) ~ pattern[rule] &&
            words[i] !~ /DON.*T TOUCH$/) wrong(rule, head_of(number[i]) " " words[i])
}

# ---- rules that are reckoned ----

# Do the words of the step hold the pattern, headline and lines alike?
function step_says(step, wanted,    i) {
    for (i = 1; i <= lines; i++)
        if (number[i] == step && (what[i] == "head" || what[i] == "lethal") && words[i] ~ wanted)
            return 1
    return 0
}
function set_says(wanted,    i) {
    for (i = 1; i <= lines; i++) if (what[i] == "set" && words[i] ~ wanted) return 1
    return 0
}
function head_of(step,    i) {
    for (i = 1; i <= lines; i++) if (number[i] == step && what[i] == "head") return words[i]
    return ""
}
function step_with(wanted,    i) {
    for (i = 1; i <= lines; i++) if (what[i] == "head" && words[i] ~ wanted) return number[i]
    return 0
}
function last_step(    i, last) {
    for (i = 1; i <= lines; i++) if (what[i] == "head") last = number[i]
    return last
}

# ---- handling against its step ----

function contrary(rule,    i, wanted, said) {
    for (i = 1; i <= lines; i++) {
        if (what[i] == "head") wanted = wanted_by(words[i])
        if (what[i] == "row" && match(words[i], /: /)) said = substr(words[i], RSTART + 2)
        else if ((what[i] == "cell" || what[i] == "heads") && match(words[i], /: /))
            said = substr(words[i], RSTART + 2)
        else continue
        if (number[i] == "" || wanted == "") continue
        said = " " tolower(said) " "
        if (wanted == "off" && said ~ /[^a-z](open|opens|start|starts|run|runs|on *(=|:|,|;|$))/)
            wrong(rule, "leads to the contrary: " words[i])
        if (wanted == "on" && said ~ /[^a-z](shut|shuts|close|closes|stop|off *(=|:|,|;|$))/)
            wrong(rule, "leads to the contrary: " words[i])
    }
}
function wanted_by(headline) {
    return headline ~ /(TURN OFF|TURN THESE OFF|SWITCH OFF|SHUT|CLOSE|STOP)/ ? "off" : \
           headline ~ /(TURN ON|EPIRB ON|BEACON ON)/ ? "on" : ""
}

# ---- leaving ----

function leave(rule,    i, part, after, call, tie, cut) {
    call = step_with("MAYDAY|PHONE|CALL|beacon|SIGNAL")
    tie = step_with("^TIE the raft")
    cut = step_with("CUT the line\\.|UNTIE\\.")
    for (i = 1; i <= lines; i++) {
        if (what[i] == "ask" && match(words[i], /step [0-9]+/))
            after = substr(words[i], RSTART + 5, RLENGTH - 5) + 0
        if (what[i] != "yes" && what[i] != "no") continue
        if (words[i] ~ /[Ll]eave (now|the boat)/) wrong(rule, words[i])
        if (match(words[i], /[Ss]teps? [0-9]+ (to|and) [0-9]+/)) {
            split(substr(words[i], RSTART, RLENGTH), part, " ")
            if (part[2] + 0 > after + 1)
                wrong(rule, "leaves out steps before " part[2] ": " words[i])
            if (words[i] ~ /now/ && (part[4] + 0 < cut || part[4] + 0 < tie || part[4] + 0 < call))
                wrong(rule, "ends before all are off: " words[i])
        } else if (match(words[i], /[Ss]tep [0-9]+/)) {
            if (substr(words[i], RSTART + 5, RLENGTH - 5) + 0 > after + 1)
                wrong(rule, "leaves out steps: " words[i])
        } else if (words[i] !~ /[Ss]tay/) wrong(rule, "goes without the steps: " words[i])
    }
    if (after < step_with("[Jj]ackets on|GO UPWIND|DRESS")) wrong(rule, "asked before the jackets")
}
function cut_counted(rule,    i) {
    for (i = 1; i <= lines; i++)
        if (what[i] ~ /^(head|lethal|yes|no)$/ && words[i] ~ /(^|[^A-Za-z])(CUT|[Cc]ut)[^A-Za-z]/ &&
            words[i] !~ /COUNT\. CUT the line\./) wrong(rule, words[i])
}
function raft_order(rule,    tie, free, cut) {
    tie = step_with("^TIE the raft"); free = step_with("^FREE"); cut = step_with("CUT the line\\.")
    if (!tie || !free || !cut || tie >= free || free >= cut)
        wrong(rule, "tie " tie ", free " free ", cut " cut)
}

# ---- the set ----

# "3P, ENGINE FIRE." may leave out which engine's.
function subject_said(said, subject) {
    sub(/ PAN PAN: card [0-9]+[.]$/, "", said)
    sub(/^[0-9PS\/ ]+, /, "", said); sub(/\.$/, "", said)
    return said != "" && index(toupper(subject), toupper(said)) == 1
}
function exits(rule,    i, said, part, found, key) {
    for (i = 1; i <= lines; i++) {
        if (what[i] !~ /^(yes|no|lethal|head|signs|bar)$/ || !match(words[i], /(CARD|[Cc]ard) [0-9]+[A-Z]?( \/ [0-9]+[A-Z]?)*/)) continue
        said = substr(words[i], RSTART + 5)
        match(said, /^[0-9]+[A-Z]?( \/ [0-9]+[A-Z]?)*/)
        found = substr(said, 1, RLENGTH)
        split(found, part, " / ")
        for (key in part) {
            # the words of PAN PAN stand on a page of the distress call
            if (words[i] ~ /PAN PAN: card [0-9]+[.]$/ && (boat, part[key] "B") in page_at) continue
            # of a card that has several pages the bar names the whole
            if (what[i] == "bar" && (boat, part[key] "A") in page_at) continue
            if (!((boat, part[key]) in card_at)) wrong(rule, "no card " part[key] ": " words[i])
            else if (what[i] ~ /yes|no/ && !subject_said(said, subject_at[boat, part[key]]))
                wrong(rule, part[key] " is " subject_at[boat, part[key]] ": " words[i])
        }
    }
}
# Is it an order to call by radio? A MAYDAY may be signalled without one.
function calls_by_radio(said) {
    gsub(/(SIGNAL|[Ss]ignal) MAYDAY/, "", said)
    return said ~ /(^|[^A-Za-z])(CALL|[Cc]alls?)([^A-Za-z]|$)|[Ss]end (MAYDAY|PAN)|MAYDAY [Nn]ow/ ||
           said ~ /MAYDAY (NOW|when)|PAN PAN|[Bb]y handheld|BY HANDHELD/
}
function both_ways(rule,    i, unable) {
    for (i = 1; i <= lines; i++) if (what[i] == "panel" && words[i] ~ /NO (RADIO|HANDHELD)/) unable = 1
    if (!unable) return
    for (i = 1; i <= lines; i++)
        if (what[i] == "script" ||
            what[i] ~ /^(bar|head|yes|no)$/ && words[i] !~ /With you|WITH YOU|with you/ &&
            calls_by_radio(words[i])) wrong(rule, words[i])
}
function radioless(rule,    i) {
    for (i = 1; i <= lines; i++)
        if (what[i] == "script" || kind_in(what[i], places[rule]) && calls_by_radio(words[i]))
            wrong(rule, words[i])
}
function switch_named(rule,    i, name) {
    name = switch_of[boat]
    sub(/,.*/, "", name)
    for (i = 1; name != "" && i <= lines; i++)
        if (what[i] ~ /^(head|lethal|row|set|panel|bar)$/ && index(words[i], name) &&
            (what[i] !~ /^(set|panel)$/ || card_in("vapour"))) wrong(rule, words[i])
}
function set_first(rule,    i, first) {
    first = second_deck[boat] ? "second handset" : "handheld"
    for (i = 1; i <= lines; i++)
        if (what[i] == "set") {
            if (index(words[i], "Alone? Stay on deck: " first) != 1) wrong(rule, words[i])
            return
        }
    wrong(rule, "no line of how to call")
}

# ---- verbs ----

function verbs(rule,    i, first) {
    for (i = 1; i <= lines; i++) {
        first = words[i]
        if (what[i] == "bold" && (first !~ /^[A-Z]/ || first ~ /[a-z]/ || !has_verb(first)))
            wrong(rule, "begins without an order: " head_of(number[i]))
        if (what[i] == "yes" || what[i] == "no") {
            sub(/^(YES|NO) /, "", first)
            if (!has_verb(toupper(first))) wrong(rule, "no order: " words[i])
        }
    }
}
function has_verb(said,    part, n, i) {
    gsub(/[^A-Z]+/, " ", said)
    n = split(said, part, " ")
    for (i = 1; i <= n; i++) if (part[i] in verb) return 1
    return 0
}

# ---- a fire that is left as it is ----

# Who is missing is known before powder goes in and before hatches are shut.
function count_first(rule,    count) {
    count = step_with("^COUNT\\.")
    if (!count || count > step_with("^FIGHT|^STAY ON DECK") || count > step_with("SHUT hatches"))
        wrong(rule, "counted in step " count)
}
function shut_counted(rule,    i) {
    for (i = 1; i <= lines; i++)
        if (what[i] == "lethal" && words[i] ~ /[Ss]hut hatches/ && head_of(number[i]) !~ /Count\./)
            wrong(rule, words[i])
}
# What the steps leave running or open, the call says.
function reported(rule,    i, script) {
    for (i = 1; i <= lines; i++) if (what[i] == "script") script = script " " words[i]
    if (script == "") return
    if (step_with("fuel: fire is|fuel stays on|outside the fire|TOUCH the fuel\\.") &&
        script !~ /FUEL IS ON/) wrong(rule, "the call does not say that the fuel is on")
    if (step_with("(engine|generator) runs on") && script !~ /(ENGINE|GENERATOR) RUNS/)
        wrong(rule, "the call does not say that it runs")
}

# Where all radios stand below, one calls on the way to the deck, and never goes back for it.
function no_return(rule,    n, t, part, i) {
    n = split(tags_of[boat], part, " ")
    for (t = 1; t <= n; t++)
        if (kind_of[boat, part[t]] ~ /^vhf_/ && (!below[boat, part[t]] || arm[boat, part[t]])) return
    for (i = 1; i <= lines; i++)
        if ((what[i] == "bar" || what[i] == "no") &&
            words[i] !~ /[Oo]n the way|Call[.] Go on deck/) wrong(rule, words[i])
}

# ---- in a berth, at anchor ----

function card_said(rule, kind, wanted,    i) {
    for (i = 1; i <= lines; i++) if (what[i] == kind && words[i] ~ wanted) return
    wrong(rule, "nowhere: " wanted)
}

# Is every piece of the item reached on deck, and is there one?
function all_on_deck(item,    n, t, part) {
    n = split(tags_of[boat], part, " ")
    for (t = 1; t <= n; t++)
        if (kind_of[boat, part[t]] == item && below[boat, part[t]]) return 0
    return on_deck(item)
}
# People are sent into a dinghy that holds all of them, with their jackets on.
function dinghy_holds(rule,    i, n, t, part, most) {
    n = split(tags_of[boat], part, " ")
    for (t = 1; t <= n; t++)
        if (kind_of[boat, part[t]] == "dinghy" && !below[boat, part[t]] &&
            persons_of[boat, part[t]] + 0 > most) most = persons_of[boat, part[t]] + 0
    for (i = 1; i <= lines; i++) {
        if (what[i] != "anchor" || words[i] !~ /DINGHY/) continue
        if (most < persons_max[boat] + 0 || !persons_max[boat]) wrong(rule, words[i])
        if (!all_on_deck("lifejacket")) wrong(rule, words[i] ": jackets are below")
    }
}

# ---- all cards of a boat ----

function card_missing(rule, key) {
    if (!((boat, key) in seen)) { card = key; wrong(rule, "is not printed") }
}
function card_hers(rule, key, hers) {
    if (hers) card_missing(rule, key)
    else if ((boat, key) in seen) { card = key; wrong(rule, "is there") }
}
# A card for each engine space with such fuel, and none for another.
function engine_cards_judge(rule, key, fuel,    part, n, i, wanted, name) {
    wanted = engine_spaces(fuel) " "
    n = split("- -_port -_starboard", part, " ")
    for (i = 1; i <= n; i++) {
        name = key substr(part[i], 2)
        card_hers(rule, name, index(wanted, " " part[i] " ") > 0)
    }
}
function set_judge(rule,    name, part, n, i) {
    for (boat in boats) {
        if (index(" " spared " ", " " boat " ")) continue
        n = split("safety_plan distress_call battery_fire flooding man_overboard abandon_ship " \
                  "abandon_fire", part, " ")
        for (i = 1; i <= n; i++) card_missing(rule, part[i])
        card_hers(rule, "gas_leak", !gas_none[boat])
        card_hers(rule, "galley_fire", cooks())
        card_hers(rule, "cabin_fire", is_boat("cabin"))
        card_hers(rule, "petrol_leak", !engines_given[boat] || is_boat("petrol_inside") ||
                                       is_boat("outboard") || count[boat, "petrol_stowage"] > 0)
        engine_cards_judge(rule, "engine_fire", ".")
        card_hers(rule, "outboard_fire", is_boat("outboard"))
        engine_cards_judge(rule, "diesel_leak", "diesel")
    }
}

function reckon(rule) {
    if (how[rule] == "contrary") contrary(rule)
    else if (how[rule] == "leave") leave(rule)
    else if (how[rule] == "cut_counted") cut_counted(rule)
    else if (how[rule] == "raft_order") raft_order(rule)
    else if (how[rule] == "exits") exits(rule)
    else if (how[rule] == "both_ways") both_ways(rule)
    else if (how[rule] == "radioless") radioless(rule)
    else if (how[rule] == "switch_named") switch_named(rule)
    else if (how[rule] == "set_first") set_first(rule)
    else if (how[rule] == "verbs") verbs(rule)
    else if (how[rule] == "count_first") count_first(rule)
    else if (how[rule] == "shut_counted") shut_counted(rule)
    else if (how[rule] == "reported") reported(rule)
    else if (how[rule] == "dinghy_holds") dinghy_holds(rule)
    else if (how[rule] == "no_return") no_return(rule)
    else if (how[rule] == "ashore_said") card_said(rule, "berth", "^IN A BERTH[?] GO ASHORE")
    else if (how[rule] == "phone_said") card_said(rule, "berth", "PHONE [+]999 .*[0-9]")
    else if (how[rule] == "anchor_said")
        card_said(rule, "anchor", "^AT ANCHOR[?] (STAY UPWIND ON DECK|DINGHY: ROW ACROSS the wind)")
    else if (how[rule] != "set") rows_judge(rule, how[rule])
}
function card_judge(    rule) {
    for (rule = 1; rule <= rules; rule++) {
        if (!(rule in cards_of) || !card_in(cards_of[rule]) || !boat_fits(fits[rule])) continue
        applied[rule]++
        if (must[rule] == "reckon") reckon(rule)
        else if (must[rule] == "with") with_judge(rule)
        else if (must[rule] == "before") before_judge(rule)
        else if (must[rule] == "rows") rows_under(rule)
        else if (must[rule] == "bare") bare_judge(rule)
        else pattern_judge(rule)
    }
}

mode == "rules" && /^[0-9]+ +\|/ {
    split($0, column, / +\| +/)
    row = column[1] + 0
    rules = row > rules ? row : rules
    if (row in cards_of) printf "%d - -: two rules have this number\n", row
    cards_of[row] = column[2]; fits[row] = column[3]; places[row] = column[4]
    must[row] = column[5]
    how[row] = pattern[row] = column[6]
    next
}
mode == "verbs" { for (i = 1; i <= NF; i++) verb[$i] = 1; next }
mode == "cards" {
    if ($1 != file_boat || $2 != file_card) files++
    file_boat = $1; file_card = $2
    all_boat[++all] = $1; all_card[all] = $2; all_what[all] = $3; all_number[all] = $4
    all_words[all] = $5; all_tags[all] = $6
    seen[$1, $2] = 1
    if ($3 == "number") { split($5, part, " "); number_of[$1, $2] = part[2]; page_at[$1, part[2]] = 1 }
    if ($3 == "title") title[$1, $2] = title[$1, $2] (title[$1, $2] == "" ? "" : " ") $5
}
function lines_end() { if (lines) card_judge(); lines = 0 }
END {
    radio_end()
    for (key in number_of) {
        split(key, part, SUBSEP)
        subject_at[part[1], number_of[key]] = title[key]
    }
    for (key in page_at) card_at[key] = 1       # a distress call has several
    for (n = 1; n <= all; n++) {
        if (all_boat[n] != boat || all_card[n] != card) lines_end()
        boat = all_boat[n]; card = all_card[n]
        lines++
        what[lines] = all_what[n]; words[lines] = all_words[n]
        number[lines] = all_number[n]; tags[lines] = all_tags[n]
    }
    lines_end()
    for (rule in how) if (how[rule] == "set") { applied[rule]++; set_judge(rule) }
    if (tell_applied) for (rule in cards_of) if (!applied[rule]) printf "%d never applied\n", rule
}

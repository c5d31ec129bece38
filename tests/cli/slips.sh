#!/bin/sh
# One slip in a record or in a command line, and the remedy that the message names followed to
# the letter (slips.awk for records): how many are mended. A record is mended when it is the one
# without the slip again, by its check codes; a command line, when it does what was meant.
. tests/tap.sh

# ---- the record ----

base=$scratch/base
cp -R tests/errors/base "$base"
sed -i -e 's/antenna_m: 4$/antenna_m: 4.5/' -e 's/^  spot: over the table/  spot: "over table #1"/' \
    -e 's/spot: berth foot, how: {off: left}/spot: "berth #2", how: {off: "berth: left"}/' \
    -e 's/looks: White sloop/looks: "White sloop, red hood"/' "$base/boats/alder.yaml"

# codes FOLDER: what is printed of it; status and messages as of `maydeck`.
codes() {
    maydeck print "$1" --list --date "$print_date"
    sed 's/^.*alder.pdf/alder.pdf/' "$scratch/stdout"
}
codes "$base" >"$scratch/right"
expect_status slips-right 0

# mend FILE: follows remedies, one error after the other.
mend() {
    for turn in 1 2 3; do
        codes "$scratch/slipped" >"$scratch/found"
        [ "$status" -ne 0 ] || return
        LC_ALL=C awk -v messages="$scratch/stderr" -f tests/cli/slips.awk "$1" >"$scratch/mended"
        if cmp -s "$1" "$scratch/mended"; then return; fi
        cp "$scratch/mended" "$1"
    done
    codes "$scratch/slipped" >"$scratch/found"
}

tried=0 mended=0
# counted NAME: adds one to those tried, and to those mended where $scratch/found is right.
counted() {
    tried=$((tried + 1))
    if cmp -s "$scratch/right" "$scratch/found"; then
        mended=$((mended + 1))
    else
        echo "# not mended: $1: $(sed -n 's/.*error: //p' "$scratch/stderr" | head -n 1)"
        sed -n 's/^  remedy: /#     /p' "$scratch/stderr" | head -n 1
    fi
}

tab=$(printf '\t')
while IFS="$tab" read -r name edit; do
    rm -rf "$scratch/slipped"
    cp -R "$base" "$scratch/slipped"
    file=$scratch/slipped/boats/alder.yaml
    sed -i "$edit" "$file"
    if cmp -s "$file" "$base/boats/alder.yaml"; then not_ok "slip-$name" 'changes nothing'; fi
    codes "$scratch/slipped" >"$scratch/found"
    [ "$status" -ne 0 ] || not_ok "slip-$name" 'nobody tells it'
    mend "$file"
    counted "$name"
done <<'SLIPS'
decimal-comma-in-braces	s/loa_m: 10.2/loa_m: 10,2/
decimal-comma-in-line	s/antenna_m: 4.5/antenna_m: 4,5/
typographic-quotes	s/spot: by the door/spot: “by the door”/
low-quotes	s/power_switch: breaker VHF/power_switch: „breaker VHF“/
spreadsheet-line	/item: epirb/{s/"/""/g;s/^\(.*\)$/"\1"/}
spreadsheet-line-without-quotes	/item: fuel_shutoff_diesel/s/^\(.*\)$/"\1"/
no-space-behind-colon	s/tag: C2/tag:C2/
no-space-behind-colon-in-line	s/^  gnss: yes/  gnss:yes/
comma-missing-before-key	s/side: port, how: {shut: across pipe}/side: port how: {shut: across pipe}/
comma-missing-behind-number	s/kg: 2, fits_port/kg: 2 fits_port/
number-sign-in-braces	s/spot: "berth #2"/spot: berth #2/
number-sign-in-line	s/^  spot: "over table #1"/  spot: over table #1/
no-break-space-indents	s/^  dsc: yes/\xc2\xa0\xc2\xa0dsc: yes/
no-break-space-behind-colon	s/^  side: starboard/  side:\xc2\xa0starboard/
side-left	s/tag: C2, zone: cockpit_locker, side: port/tag: C2, zone: cockpit_locker, side: left/
side-links	s/tag: E5, zone: cockpit, side: port/tag: E5, zone: cockpit, side: links/
side-stbd	s/^  side: starboard/  side: stbd/
tab-indents	s/^  mmsi_programmed/\tmmsi_programmed/
tab-in-text	s/pull red strap/pull red\tstrap/
yes-true	s/fits_port: yes/fits_port: true/
yes-ja	s/charged: yes/charged: ja/
yes-cross	s/^  gnss: yes/  gnss: x/
item-misspelt	s/item: fuel_shutoff_diesel/item: fuel_shutof_diesel/
item-as-printed	s/item: fuel_shutoff_diesel/item: Fuel valve/
item-synonym	s/item: liferaft/item: life raft/
item-in-part	s/torch, knife/torch, first_aid, knife/;s/first_aid_kit, //
zone-misspelt	s/zone: companionway, side: centre/zone: companion_way, side: centre/
zone-as-printed	s/^  zone: navigation_station/  zone: chart table/
zone-synonym	s/bung_mm: 25, zone: engine_space/bung_mm: 25, zone: engine room/
key-misspelt	s/painter: chainplate/paynter: chainplate/
key-synonym	s/lanyard: stowed, hex_id/lanyard: stowed, beacon id/
key-without-unit	s/bore_mm: 25, depth_m: 0.4/bore: 25, depth_m: 0.4/
unit-behind-number	s/bore_mm: 25, depth_m: 0.4/bore_mm: 25 mm, depth_m: 0.4/
number-word	s/count: 6/count: six/
date-with-points	s/discharge_s: 9, service_due: 2030-04/discharge_s: 9, service_due: 04.2030/
date-with-name	s/lanyard: stowed, \(.*\)expires: 2030-04/lanyard: stowed, \1expires: Apr 2030/
comma-in-text	s/looks: "White sloop, red hood"/looks: White sloop, red hood/
colon-in-text	s/off: "berth: left"/off: berth: left/
brace-not-closed	/item: boarding_ladder/s/}$//
quote-not-closed	s/^  mmsi: "200014810"/  mmsi: "200014810/
hyphen-without-space	/item: smoke_alarm/s/- {/-{/
hyphen-missing	/item: smoke_alarm/s/- {/{/
semicolon-for-comma	s/tag: E3, zone: coachroof/tag: E3; zone: coachroof/
equals-for-colon	s/tag: E6, zone: transom/tag: E6, zone=transom/
tag-small-letter	s/tag: C3/tag: c3/
call-sign-small-letters	s/call_sign: QALD3/call_sign: qald3/
comma-at-line-end	s/^  tag: E1/  tag: E1,/
one-space-too-many	s/^  hold_s: 5/   hold_s: 5/
space-at-line-start-missing	s/^  hold_s: 5/ hold_s: 5/
SLIPS
records=$tried

# ---- the command line ----

# words LINE: its words, a line each; | parts them where there is one.
words() {
    case $1 in
    *'|'*) printf '%s\n' "$1" | tr '|' '\n' ;;
    *) printf '%s\n' "$1" | tr ' ' '\n' ;;
    esac
}

# runs FILE: the words of the file as a command line, in a scratch folder.
runs() {
    set --
    while IFS= read -r word; do set -- "$@" "$word"; done <"$scratch/line"
    (cd "$scratch/desk" && "$MAYDECK" "$@" >"$scratch/found" 2>"$scratch/stderr" </dev/null)
    status=$?
}

# The words after the remedy was followed: a word for a word, options anew, or one left out.
line_mend() {
    what=$(sed -n 's/^maydeck: error: //p' "$scratch/stderr" | head -n 1)
    remedy=$(sed -n 's/^  remedy: //p' "$scratch/stderr" | head -n 1)
    second=$(sed -n '/^  remedy: /{n;s/^ *\([^ ]*\).*/\1/p;}' "$scratch/stderr" | head -n 1)
    awk -v what="$what" -v remedy="$remedy" -v second="$second" '
        function quoted(text) { sub(/^[^"]*"/, "", text); sub(/".*/, "", text); return text }
        # options of the remedy, with their values, in the place of those of the line
        function anew(text,    i, n, parts, name, taken) {
            sub(/^.*(write|such as) --/, "--", text)
            sub(/( if |, or ).*/, "", text)
            n = split(text, parts, " ")
            for (i = 1; i <= lines; i++) {
                taken = 0
                for (name = 1; name <= n; name += 2)
                    if (line[i] == parts[name] || line[i - 1] == parts[name] ||
                        (index("," parts[name + 1] ",", "," line[i] ",") && i > 1))
                        taken = 1
                if (!taken) print line[i]
            }
            for (i = 1; i <= n; i++) print parts[i]
        }
        { line[++lines] = $0 }
        END {
            wrong = quoted(what)
            if (wrong == what) { wrong = what; sub(/^.* \(null\).*| is not .*/, "", wrong) }
            right = remedy
            if (remedy ~ /^did you mean "/) right = quoted(remedy)
            else if (remedy ~ /^did you mean /) { sub(/^did you mean /, "", right); sub(/ .*/, "", right) }
            else if (remedy == "write one of:") right = second
            else if (remedy ~ /(write|such as) --[a-z]+ [^w]/ && remedy !~ /with two hyphens/) { anew(remedy); exit }
            else if (remedy ~ /^leave it out/) {
                option = what
                sub(/^.* --/, "--", option)
                for (i = 1; i <= lines; i++) if (line[i] != option) print line[i]
                exit
            } else if (remedy ~ /such as /) { sub(/^.*such as /, "", right); sub(/[;,].*/, "", right) }
            else { sub(/^.*write /, "", right); sub(/[,;].*| \(.*| or .*/, "", right) }
            for (i = 1; i <= lines; i++) {
                if (line[i] == wrong || line[i] == wrong "/") line[i] = right
                print line[i]
            }
        }' "$scratch/line" >"$scratch/line.mended"
}

mkdir "$scratch/desk"
cp -R "$base" "$scratch/desk/rec"
while IFS="$tab" read -r name wrong right; do
    rm -rf "$scratch/desk/new"
    words "$right" >"$scratch/line"
    runs
    [ "$status" -eq 0 ] || not_ok "slip-$name-meant" "$right" "$(cat "$scratch/stderr")"
    cp "$scratch/found" "$scratch/right"
    rm -rf "$scratch/desk/new"
    words "$wrong" >"$scratch/line"
    runs
    [ "$status" -eq 2 ] || not_ok "slip-$name" "status $status" "$wrong"
    for turn in 1 2; do
        [ "$status" -ne 0 ] || break
        line_mend
        cp "$scratch/line.mended" "$scratch/line"
        runs
    done
    counted "$name"
done <<'LINES'
command-misspelt	prnt rec --list	print rec --list
option-misspelt	print rec --list --baot alder	print rec --list --boat alder
option-with-one-hyphen	print rec --list -boat alder	print rec --list --boat alder
option-with-dash	print rec –list	print rec --list
option-too-long	print rec --list --language en	print rec --list --lang en
option-of-another	check rec --each	check rec
boat-in-capitals	print rec --list --boat ALDER	print rec --list --boat alder
boat-misspelt	print rec --list --boat aldr	print rec --list --boat alder
boat-as-file	print rec --list --boat boats/alder.yaml	print rec --list --boat alder
card-misspelt	print rec --list --card floding	print rec --list --card flooding
card-as-printed	print|rec|--list|--card|Gas leak	print rec --list --card gas_leak
card-of-everyday	print rec --list --card mob	print rec --list --card man_overboard
cards-with-space	print rec --list --card flooding gas_leak	print rec --list --card flooding,gas_leak
base-file-for-folder	print rec/base.yaml --list	print rec --list
boats-for-base	print rec/boats --list	print rec --list
date-with-points	print rec --list --date 20.11.2026	print rec --list --date 2026-11-20
date-without-day	print rec --list --date 2026-11	print rec --list --date 2026-11-20
language-by-name	print rec --list --lang English	print rec --list --lang en
charter-without-end	check rec --from 2026-12-01	check rec --from 2026-12-01 --to 2026-12-02
charter-backwards	check rec --from 2026-12-02 --to 2026-12-01	check rec --from 2026-12-01 --to 2026-12-02
crew-with-semicolons	check rec --crew 80;75	check rec --crew 80,75
severity-in-plural	check rec --fail errors	check rec --fail error
nature-as-printed	call|rec|--nature|Man overboard	call rec --nature mob
hull-misspelt	start new --boat tern --hull katamaran	start new --boat tern --hull catamaran
boat-with-space	start|new|--boat|Sea Rose	start new --boat sea_rose
list-misspelt	list item	list items
figure-misspelt	why rec --figure beat_pump	why rec --figure beat_pumps
LINES

lines=$((tried - records))
echo "# $mended of $tried slips are mended by their remedies ($records of records, $lines of command lines)"
[ "$records" -ge 43 ] && [ "$lines" -ge 17 ] || not_ok slips-enough "$records and $lines"
if [ $((mended * 60)) -ge $((56 * tried)) ]; then ok slips-mended; else not_ok slips-mended "$mended of $tried"; fi
exit $failures

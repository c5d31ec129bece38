#!/bin/sh
# The register of what was printed and hangs: what is written into it and what is refused, that
# nothing of it is lost or torn whatever stops a run, and what is told from it.
. tests/tap.sh
. tests/season.sh

base=$scratch/base
register=$base/register.csv
cards=$scratch/cards
day=2027-03-10

# tells NAME STREAM WORDS
tells() {
    if grep -qF -- "$3" "$scratch/$2"; then ok "register-$1"; else
        not_ok "register-$1" "nothing says: $3" "$(cat "$scratch/$2")"
    fi
}

# rows EVENT: how many there are of it
rows() {
    grep -c "^$1," "$register"
}

printed() {
    maydeck print "$base" --date "$day" -o "$cards" "$@"
}

hung() {
    maydeck hang "$base" --date "$day" --place wheel --by KM "$@"
}

# ---- without a register ----

season_lay "$base"
maydeck renew "$base" --date "$day"
expect_status register-none 1
tells none-told stderr "there is no register $register: what hangs is not recorded"
tells none-remedy stderr "maydeck start $base --register"
printed --boat whimbrel --card flooding
expect_status register-specimen 0
[ ! -e "$register" ] && ok register-specimen-none || not_ok register-specimen-none
maydeck start "$base" --register
expect_status register-start 0
expect_equal register-head \
    'event,boat,card,number,name,language,paper,code,date,place,by,until,dates,program,texts,content' \
    "$(cat "$register")"
maydeck start "$base" --register
expect_status register-start-twice 2

# ---- what print records ----

printed --boat whimbrel --card flooding --list
printed --boat whimbrel --card flooding --draft
printed --boat whimbrel --card flooding --dump
expect_equal register-print-nothing 0 "$(rows printed)"
printed --boat whimbrel --card flooding
expect_equal register-print-one 1 "$(rows printed)"
printed --boat whimbrel --card flooding
expect_equal register-print-same 1 "$(rows printed)"
printed --boat whimbrel --card flooding --paper letter
expect_equal register-print-paper 2 "$(rows printed)"
printed --boat whimbrel --each
expect_equal register-print-set 23 "$(rows printed)"
expect_equal register-print-content 22 "$(grep -c '^printed,.*,eN[A-Za-z0-9+/=]*$' "$register")"

# ---- what hang refuses ----

cp "$register" "$scratch/kept"
hang_refused() {
    name=$1 told=$2
    shift 2
    maydeck hang "$base" --date "$day" "$@"
    expect_status "register-refused-$name" 2
    tells "refused-$name-told" stderr "$told"
}
hang_refused boat '--boat is missing' --place wheel --by KM
hang_refused place '--place is missing' --boat whimbrel --by KM
hang_refused by '--by is missing' --boat whimbrel --place wheel
hang_refused formula 'a spreadsheet would take it for a formula' --boat whimbrel --place '=1+1' --by KM
hang_refused empty 'it says nothing' --boat whimbrel --place ' ' --by KM
hang_refused control 'it holds a control character' --boat whimbrel --place "$(printf 'a\tb')" --by KM
hang_refused unknown-boat 'there is no boat "curlew"' --boat curlew --place wheel --by KM
hang_refused unknown-card 'there is no card "floding"' --boat whimbrel --card floding,aground --place wheel --by KM
hung --boat turnstone --card flooding
expect_status register-unprinted 1
tells unprinted-told stderr 'turnstone: 7 FLOODING: no print of it is in the register'
tells unprinted-remedy stderr "maydeck print $base --boat turnstone --card flooding"
hung --boat whimbrel --card flooding --paper a5
expect_status register-other-paper 1
expect_empty register-refused-nothing "$(diff "$scratch/kept" "$register")"

sed 's/spot: on the post/spot: on the mast/' "$base/boats/whimbrel.yaml" >"$scratch/moved"
cp "$base/boats/whimbrel.yaml" "$scratch/whimbrel"
cp "$scratch/moved" "$base/boats/whimbrel.yaml"
hung --boat whimbrel
expect_status register-old 1
tells old-told stderr ': its last print is old: it has code '
tells old-others stdout 'whimbrel: '
moved=$(grep -c 'its last print is old' "$scratch/stderr")
expect_equal register-old-rest "$((22 - moved))" "$(rows hung)"
maydeck renew "$base" --date "$day" --boat whimbrel
expect_equal register-old-again "$moved" "$(grep -c '^  PRINT AGAIN .*, printed 2027-03-10 and never hung; now ' "$scratch/stdout")"
sed '/tag: C4,/d' "$scratch/whimbrel" >"$base/boats/whimbrel.yaml"
hung --boat whimbrel --card flooding,aground
expect_status register-held 1
tells held-told stderr ' is held back and cannot be hung'
maydeck renew "$base" --date "$day" --boat whimbrel
tells held-renew stdout 'HANGS, BUT IS HELD BACK'
cp "$scratch/whimbrel" "$base/boats/whimbrel.yaml"

# ---- what hangs, at two places ----

hung --boat whimbrel
expect_status register-hang 0
expect_equal register-hang-all 22 "$(rows hung)"
hung --boat whimbrel
expect_equal register-hang-twice 22 "$(rows hung)"
maydeck hang "$base" --date "$day" --place 'Bow seat' --by KM --boat whimbrel --card flooding
expect_equal register-hang-place 23 "$(rows hung)"
cp "$scratch/moved" "$base/boats/whimbrel.yaml"
printed --boat whimbrel --card flooding
maydeck hang "$base" --date "$day" --place 'bow  seat' --by KM --boat whimbrel --card flooding
maydeck renew "$base" --date "$day" --boat whimbrel
grep -q 'REPLACE 7 FLOODING' "$scratch/stdout" && not_ok register-places-same || ok register-places-same
cp "$scratch/whimbrel" "$base/boats/whimbrel.yaml"
maydeck hang "$base" --date "$day" --place 'bow seat' --by KM --boat whimbrel --card flooding --down
expect_status register-down 0
tells down-told stdout "whimbrel: 1 card taken down, by KM, $day"
maydeck hang "$base" --date "$day" --place 'bow seat' --by KM --boat whimbrel --card flooding --down
expect_status register-down-twice 1
maydeck renew "$base" --date "$day" --boat whimbrel
expect_status register-clean 0
hung --boat turnstone --checked
expect_status register-checked 0
maydeck renew "$base" --date "$day" --boat turnstone
expect_status register-checked-clean 0

# ---- codes ----

maydeck print "$base" --boat whimbrel --list --date "$day"
code=$(sed -n 's/^  \([0-9A-Z-]*\)  7 FLOODING$/\1/p' "$scratch/stdout")
old=$(sed -n 's/^  \([0-9A-Z-]*\)  18 NO ENGINE.*/\1/p' "$scratch/stdout")
asked() {
    maydeck renew "$base" --date "$day" --code "$1"
}
asked "$code"
expect_status register-code 0
tells code-told stdout "$code: whimbrel, 7 FLOODING: current, it says what the record says today"
tells code-hung stdout "$code: whimbrel, 7 FLOODING, en: hung $day, wheel, by KM"
asked "$(echo "$code" | tr 'A-Z01-' 'a-zol ')"
expect_status register-code-typed 0
slip=$(echo "$code" | sed 's/.$//')$(echo "$code" | sed 's/.*\(.\)$/\1/' | tr '0-9A-HJKMNP-TV-Z' '1-9A-HJKMNP-TV-Z0')
asked "$slip"
expect_status register-code-slip 2
tells code-slip-told stderr "$slip is mistyped"
asked 123
expect_status register-code-none 2
cp "$scratch/moved" "$base/boats/whimbrel.yaml"
asked "$old"
expect_status register-code-old 1
tells code-old-told stdout ': OLD, replace it; the card has now '
tells code-old-reason stdout 'Knife E7 moved from Cockpit, port, on the post to Cockpit, port, on the mast'
cp "$scratch/whimbrel" "$base/boats/whimbrel.yaml"
season_lay "$scratch/other"
"$MAYDECK" start "$scratch/other" --register >/dev/null
sed -i 's/loa_m: 6.9/loa_m: 6.7/' "$scratch/other/boats/whimbrel.yaml"
maydeck renew "$scratch/other" --date "$day" --code "$code"
expect_status register-code-elsewhere 1
tells code-elsewhere-told stderr "$code is a sound code, but neither the register nor a card of today has it"

# ---- what was torn or damaged ----

cp "$register" "$scratch/whole"
size=$(wc -c <"$scratch/whole")
# cut BYTES: the register without its last bytes, then one more row
cut_off() {
    head -c "$((size - $1))" "$scratch/whole" >"$register"
    cp "$register" "$scratch/torn"
    maydeck hang "$base" --date "$day" --place "seat $1" --by KM --boat whimbrel --card aground
}
for bytes in 1 2 30 120 400; do
    cut_off "$bytes"
    expect_status "register-torn-$bytes" 0
    lines=$(grep -c '' "$scratch/torn")
    [ -z "$(tail -c 1 "$scratch/torn")" ] || lines=$((lines - 1))
    expect_empty "register-torn-$bytes-kept" "$(head -n "$lines" "$scratch/torn" | cut -c 1-200 >"$scratch/first"
        head -n "$lines" "$register" | cut -c 1-200 | diff "$scratch/first" -)"
    maydeck renew "$base" --date "$day"
    expect_empty "register-torn-$bytes-sound" "$(grep 'damaged\|not whole' "$scratch/stderr")"
    [ "$bytes" -eq 1 ] || expect_equal "register-torn-$bytes-aside" 1 "$(grep -c '^# torn: ' "$register")"
done
cp "$scratch/whole" "$register"
sed -i '5s/^printed,/pritned,/' "$register"
maydeck renew "$base" --date "$day" --boat whimbrel
expect_status register-damaged 1
tells damaged-told stderr "$register:5:1: error: this row of the register is damaged: event: neither printed, hung nor taken_down"
cp "$scratch/whole" "$register"
sed -i 's/,/;/g' "$register"
maydeck renew "$base" --date "$day" --boat turnstone
expect_status register-semicolons 0
cp "$scratch/whole" "$register"

# ---- dates ----

maydeck due "$base" --date "$day"
expect_status register-due 0
tells due-head stdout 'DATE        STATE    BOAT'
maydeck due "$base" --date "$day" --until 2027-09-30
expect_status register-due-until 1
expect_equal register-due-one 1 "$(grep -c ' to come  turnstone  E13  Raft  *service_due 2027-09 ' "$scratch/stdout")"
maydeck due "$base" --date "$day" --csv -o "$scratch/new/due.csv"
expect_equal register-due-csv "$(printf '\357\273\277')date,state,boat,tag,item,what,where" "$(head -n 1 "$scratch/new/due.csv")"
maydeck due "$base" --date "$day" --ics -o "$scratch/new/due.ics"
expect_equal register-due-days "$(($(wc -l <"$scratch/new/due.csv") - 1))" "$(grep -c '^BEGIN:VEVENT' "$scratch/new/due.ics")"
cp "$scratch/new/due.ics" "$scratch/due.ics"
maydeck due "$base" --date "$day" --ics -o "$scratch/new/due.ics"
cmp -s "$scratch/due.ics" "$scratch/new/due.ics" && ok register-due-same || not_ok register-due-same
expect_empty register-due-lines "$(tr -d '\r' <"$scratch/due.ics" | awk 'length($0) > 75')"
sed -i '/tag: E5,/s/, expires: 2029-01//' "$base/boats/whimbrel.yaml"
maydeck due "$base" --date "$day" --boat whimbrel
expect_status register-due-silent 1
tells due-silent stdout 'NOT RECORDED  whimbrel  E5   Flares'
cp "$scratch/whimbrel" "$base/boats/whimbrel.yaml"

case $VARIANT in
san)
    skip register-faults 'the shim and the sanitizers both stand before the system calls'
    exit $failures
    ;;
esac

# ---- the disk fails ----

cp "$scratch/moved" "$base/boats/whimbrel.yaml"
# faulty CALL AT ERRNO [VARIABLE=value...]
faulty() {
    call=$1 at=$2 errno=$3
    shift 3
    cp "$scratch/whole" "$register"
    rm -rf "$cards"
    env LD_PRELOAD="$SHIM" FAULT_CALL="$call" FAULT_AT="$at" FAULT_ERRNO="$errno" \
        FAULT_FOLDER="$base" "$@" "$MAYDECK" print "$base" --boat whimbrel --card no_engine \
        --date "$day" -o "$cards" >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}
for fault in 'open 1 EROFS' 'open 1 EACCES' 'write 1 ENOSPC' 'write 1 EIO' 'fsync 1 EIO' 'close 2 EIO'; do
    # shellcheck disable=SC2086
    faulty $fault
    name=register-fault-$(echo "$fault" | tr ' ' -)
    [ "${fault%% *}" = close ] || expect_status "$name" 3
    [ -s "$cards/whimbrel-no_engine.pdf" ] && ok "$name-card" || not_ok "$name-card"
    case $fault in
    close*) ;;
    *)
        grep -qF "$register: " "$scratch/stderr" && ok "$name-told" || not_ok "$name-told" "$(cat "$scratch/stderr")"
        grep -qF 'whimbrel: the printed cards stand, but the register does not tell of them' "$scratch/stderr" &&
            ok "$name-cards" || not_ok "$name-cards"
        expect_empty "$name-as-it-was" "$(diff "$scratch/whole" "$register")"
        ;;
    esac
done
faulty write 1 SHORT FAULT_STAYS=1
expect_status register-fault-short 0
expect_equal register-fault-short-row "$(($(grep -c '^printed,' "$scratch/whole") + 1))" "$(rows printed)"
faulty write 2 ENOSPC
expect_status register-fault-rest 0
cp "$scratch/whimbrel" "$base/boats/whimbrel.yaml"

# ---- several at once, and one of them is killed ----

cp "$scratch/whole" "$register"
damages=0 lost=0 shrunk=0 round=0
while [ $round -lt 50 ]; do
    round=$((round + 1))
    cp "$register" "$scratch/before"
    sed "s/spot: on the post/spot: \"on post $round\"/" "$scratch/whimbrel" >"$base/boats/whimbrel.yaml"
    runs=
    for run in 1 2 3 4; do
        case $run in
        1) set -- print --boat whimbrel --card no_engine -o "$scratch/at-once" ;;
        2) set -- print --boat whimbrel --card no_engine --paper letter -o "$scratch/at-once" ;;
        3) set -- hang --boat turnstone --checked --card flooding --place "seat $round" --by KM ;;
        4) set -- hang --boat turnstone --checked --card aground --place "seat $round" --by KM ;;
        esac
        command=$1
        shift
        "$MAYDECK" "$command" "$base" --date "$day" "$@" >/dev/null 2>"$scratch/once-$run" </dev/null &
        runs="$runs $run:$!"
    done
    victim=$((round % 4 + 1))
    sleep "0.0$((round % 9))$((round % 7))"
    for run in $runs; do
        [ "${run%:*}" -ne $victim ] || kill -KILL "${run#*:}" 2>/dev/null
    done
    for run in $runs; do
        wait "${run#*:}" 2>/dev/null
        eval "ended_${run%:*}=$?"
    done
    head -c "$(wc -c <"$scratch/before")" "$register" | cmp -s - "$scratch/before" || shrunk=$((shrunk + 1))
    tail -c "+$(($(wc -c <"$scratch/before") + 1))" "$register" >"$scratch/added"
    [ "$(grep -vc '^printed,\|^hung,\|^# torn: ' "$scratch/added")" -eq 0 ] || damages=$((damages + 1))
    # shellcheck disable=SC2154
    {
        [ "$ended_1" -ne 0 ] || grep -q '^printed,whimbrel,no_engine,.*,a4,' "$scratch/added" || lost=$((lost + 1))
        [ "$ended_2" -ne 0 ] || grep -q '^printed,whimbrel,no_engine,.*,letter,' "$scratch/added" || lost=$((lost + 1))
        [ "$ended_3" -ne 0 ] || grep -q "^hung,turnstone,flooding,.*,seat $round," "$scratch/added" || lost=$((lost + 1))
        [ "$ended_4" -ne 0 ] || grep -q "^hung,turnstone,aground,.*,seat $round," "$scratch/added" || lost=$((lost + 1))
    }
done
expect_equal register-at-once-kept 0 "$shrunk"
expect_equal register-at-once-whole 0 "$damages"
expect_equal register-at-once-none-lost 0 "$lost"
if [ "$(rows printed)" -gt 60 ]; then ok register-at-once-rows; else not_ok register-at-once-rows "$(rows printed)"; fi
cp "$scratch/whimbrel" "$base/boats/whimbrel.yaml"
maydeck renew "$base" --date "$day"
expect_empty register-at-once-sound "$(grep 'damaged\|not whole' "$scratch/stderr")"

exit $failures

#!/bin/sh
# One term an object on all cards: the other names it might have stand nowhere.
. tests/tap.sh

maydeck print tests/fleet --dump --date "$print_date" -o "$scratch/dumps"
expect_status terms-printed 0
sed -n 's/^text [a-z ]* [0-9-]*,[0-9-]* .*role=\([a-z_]*\) .* "\(.*\)"$/\1 \2/p' "$scratch/dumps"/*.dump |
    grep -v '^script \|^footer \|^code \|^source_tag ' | cut -d' ' -f2- >"$scratch/words"
lines=$(wc -l <"$scratch/words" | tr -d ' ')
[ "$lines" -gt 1000 ] && ok terms-seen || not_ok terms-seen "$lines lines of text only"

# one OBJECT TERM OTHER...: the term is used, none of the others is.
one() {
    object=$1 term=$2
    shift 2
    grep -qiw -- "$term" "$scratch/words" || not_ok "terms-$object-used" "\"$term\" stands on no card"
    for other; do
        found=$(grep -iw -- "$other" "$scratch/words" | head -n 3)
        [ -z "$found" ] && ok "terms-$object" || not_ok "terms-$object" "\"$other\": $found"
    done
}

one lifejacket lifejackets 'life jacket' 'life jackets' 'life vest' 'life vests' buoyancy
one raft raft liferaft 'life raft'
one raft-line line painter
one hand-pump 'hand pump' 'manual pump' 'bilge pump'
one electric-pump 'electric pump' 'bilge pump' 'automatic pump'
one handheld handheld portable walkie
one seacock seacocks 'through-hull' 'skin fitting' 'sea valve'
one extinguisher extinguisher 'fire bottle'
one gas-bottle 'gas bottle' 'gas cylinder' LPG propane butane
one engine engine motor
one engine-fan 'engine fan' blower
one toilet toilet heads
one floorboards floorboards sole 'floor boards'
one boat boat vessel yacht she her
one harness 'harness lines' tether tethers
one battery 'service battery' isolator isolators
one coastguard coastguard 'coast guard'
one turn-off 'turn off' 'switch off'
one turn-on 'epirb on' 'switch on'
exit $failures

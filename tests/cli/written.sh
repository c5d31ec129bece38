#!/bin/sh
# What people write as MMSI, call sign, beacon identity and name, and what check makes of
# it: numbers of other stations, what spreadsheets and copying do, letters that look
# like others, beacons of every protocol, names in several alphabets. One boat a row,
# all real boats of Croatia, in one base and one run.
. tests/tap.sh

fleet=$scratch/fleet
mkdir -p "$fleet/boats"
cp tests/errors/base/base.yaml "$fleet/base.yaml"

# A row: the field, what is written, the checks that speak, a piece of what they say.
cat >"$scratch/rows" <<'ROWS'
mmsi|002380014|mmsi_form|a coast station's (MID 238)
mmsi|023800014|mmsi_form|a group of ships' (MID 238)
mmsi|111238001|mmsi_form|a rescue aircraft's (MID 238)
mmsi|992380014|mmsi_form|an aid to navigation's (MID 238)
mmsi|970123456|mmsi_form|AIS-SART
mmsi|972380014|mmsi_form|a man-overboard device's
mmsi|974380014|mmsi_form|EPIRB-AIS
mmsi|979380014|mmsi_form|an autonomous radio device's
mmsi|982380014|mmsi_form|a tender's, carried by a ship (MID 238)
mmsi|823800014|mmsi_form|a handheld radio's (MID 238)
mmsi|123456789|mmsi_form|not assigned
mmsi|971380014|mmsi_form|not assigned
mmsi|238014810 |record|ends with a space
mmsi| 238014810|record|begins with a space
mmsi|238 014 810||
mmsi|238-014-810|mmsi_damaged|(U+002D)
mmsi|238 014 810|mmsi_damaged|(U+202F)
mmsi|２３８０１４８１０|mmsi_damaged|full-width digit in place 1 (U+FF12)
mmsi|23801481O|mmsi_damaged|letter O in place 9
mmsi|2380l4810|mmsi_damaged|letter l in place 5
mmsi|238014810.0|mmsi_damaged|a decimal number
mmsi|2,38E8|mmsi_damaged|a number with an exponent
mmsi|238e6|mmsi_damaged|a number with an exponent
mmsi|238.014810|mmsi_damaged|with commas, full stops
mmsi|+238014810|mmsi_damaged|(U+002B)
mmsi|٢٣٨٠١٤٨١٠|mmsi_damaged|(U+0662)
mmsi|238014810/238014811|mmsi_damaged|(U+002F)
mmsi|000000000|mmsi_form|MID 000
mmsi|999999999|mmsi_form|(MID 999)
mmsi|800000000|mmsi_form|MID 000
mmsi|199999999|mmsi_form|not assigned
mmsi|200123457|mmsi_reserved|MID 200
mmsi|201000001|identities_disagree|Albania
mmsi|279999998|identities_disagree|Serbia
mmsi|280000001|mmsi_mid_unknown|MID 280
mmsi|300000001|mmsi_mid_unknown|MID 300
mmsi|775000001|identities_disagree|Venezuela
mmsi|776000001|mmsi_mid_unknown|MID 776
mmsi|702000001|mmsi_mid_unknown|MID 702
mmsi|335000001|mmsi_mid_unknown|MID 335
mmsi|456000001|mmsi_mid_unknown|MID 456
mmsi|217123456|mmsi_made_up mmsi_mid_unknown|MID 217
mmsi|306000123|identities_disagree|Curacao
mmsi|238000000|mmsi_made_up|
mmsi|238999999|mmsi_made_up|
mmsi|238111111|mmsi_made_up|
mmsi|238123000||
mmsi|238123456|mmsi_made_up|
mmsi|MMSI 238014810|mmsi_damaged|
mmsi|none|record|stands where a fact is yet to be recorded
mmsi|not_programmed|mmsi_damaged|is no number
mmsi|N/A|record|yet to be recorded
mmsi|to be done|record|yet to be recorded
handheld|823800014||
handheld|238014810|handheld_mmsi_ships|
handheld|238014811|handheld_mmsi|
handheld|82380001|handheld_mmsi|has 8 digits
handheld|982380014|handheld_mmsi|a tender's, carried by a ship (MID 238)
handheld|972380014|handheld_mmsi|a man-overboard device's
handheld|838000014|mmsi_mid_unknown|MID 380
handheld|821700001|mmsi_mid_unknown|MID 217
handheld|8238 00014||
handheld|823800014.0|handheld_mmsi|a decimal number
handheld|002380014|handheld_mmsi|a coast station's (MID 238)
handheld|800000000|mmsi_made_up mmsi_mid_unknown|MID 000
call_sign|SS2345|call_sign_halved identities_disagree|Egypt and Sudan share the series SS
call_sign|3D2345|call_sign_halved identities_disagree|Eswatini and Fiji share the series 3D
call_sign|3DA2345|identities_disagree|call sign Eswatini,
call_sign|3DN2345|identities_disagree|call sign Fiji,
call_sign|SSAB|identities_disagree|call sign Egypt,
call_sign|3DZB2|identities_disagree|call sign Fiji,
call_sign|NONE|call_sign_characters|in capitals this is called out
call_sign|None|call_sign_characters|small letter
call_sign|none||
call_sign|nil|call_sign_characters|small letter
call_sign|N/A|record|yet to be recorded
call_sign|TBA|record|yet to be recorded
call_sign|9a2345|call_sign_characters|small letter
call_sign|9A2345 |record|ends with a space
call_sign| 9A2345|record|begins with a space
call_sign|9A 2345|call_sign_characters|is a space
call_sign|9А2345|call_sign_characters|(U+0410) is not A
call_sign|9AЗ345|call_sign_characters|(U+0417) is not 3
call_sign|９A2345|call_sign_characters|(U+FF19) is not 9
call_sign|9A23４5|call_sign_characters|(U+FF14) is not 4
call_sign|9A-2345|call_sign_characters|(U+002D)
call_sign|9A2345.|call_sign_characters|(U+002E)
call_sign|4OAB2|identities_disagree|call sign Montenegro
call_sign|E8AB|call_sign_series_unknown|series E8
call_sign|4NAB|call_sign_series_unknown|series 4N
call_sign|Z60AB|call_sign_pattern call_sign_series_unknown|series Z6
call_sign|C7AB|call_sign_of_a_body identities_disagree|Meteorological
call_sign|QTAB2|call_sign_reserved|nobody holds the series Q
call_sign|2E0ABC|call_sign_pattern identities_disagree|radio amateur
call_sign|M0ABC|call_sign_pattern identities_disagree|radio amateur
call_sign|G2345|call_sign_pattern identities_disagree|no pattern that ships
call_sign|W1AW|call_sign_pattern identities_disagree|radio amateur
call_sign|WDA1234|call_sign_pattern identities_disagree|0 or 1 straight after a letter
call_sign|5E12|call_sign_pattern identities_disagree|no pattern that ships
call_sign|5E1234|call_sign_pattern identities_disagree|0 or 1 straight after a letter
call_sign|5E123456|call_sign_length|it has 8 characters
call_sign|9A12345|call_sign_pattern|no pattern that ships
call_sign|9AB|call_sign_pattern|land station
call_sign|9A|call_sign_length|it has 2 characters
call_sign|A|call_sign_length|it has 1 character;
call_sign|SVAB222|call_sign_pattern identities_disagree|liferaft or tender
call_sign|SVAB2222|call_sign_length|it has 8 characters
call_sign|ZM1726|call_sign_pattern identities_disagree|0 or 1 straight after a letter
call_sign|OXAB|identities_disagree|call sign Denmark
call_sign|LXAB|identities_disagree|call sign Luxembourg
call_sign|VRAB2|identities_disagree|call sign Hong Kong
call_sign|VP2VAB|call_sign_pattern identities_disagree|radio amateur
call_sign|SVÄB|call_sign_characters|(U+00C4)
call_sign|SVÑB|call_sign_characters|(U+00D1)
call_sign|СВАВ|call_sign_characters|(U+0421) is not C
call_sign|ΣΒΑΒ|call_sign_characters|(U+03A3)
call_sign|SV́AB|call_sign_characters|(U+0301)
call_sign|ѕvab|call_sign_characters|(U+0455)
call_sign|9A2З45|call_sign_characters|(U+0417) is not 3
hex_id|9DC8D74A31D34D1||
hex_id|9DC8D74A31D74D1|beacon_other_mmsi|codes MMSI 238014811
hex_id|9DA8D74A31D34D1|beacon_other_mmsi|codes MMSI 237014810
hex_id|9DC83E1940A04D1||
hex_id|9DC83E1940A54D1|beacon_other_call_sign|codes call sign 9A2346
hex_id|9DCA4934BF8CCD1|beacon_other_call_sign|codes call sign SVAB
hex_id|9DCB4BF8CE490D1|beacon_impossible|space inside or on the wrong side
hex_id|9DCA492492490D1|beacon_impossible|no ship's identity
hex_id|9DC83E1840A04D1|beacon_other_call_sign|codes call sign 9A-345
hex_id|9DC8D74A31D3781||
hex_id|9DC8D74A31D3641|beacon_impossible|number on board
hex_id|9DC8D74A31D34D9|beacon_doubtful|bits that must be zero
hex_id|FAC9031D65028D1|beacon_device_identity beacon_other_mmsi|a tender or an AIS device
hex_id|F9C9D65028154D1|beacon_device_identity beacon_other_mmsi|a tender or an AIS device
hex_id|FC09030D34D74D1|beacon_country_unknown beacon_other_mmsi|country code 992
hex_id|8DE9941934D74D1|beacon_country_unknown beacon_other_mmsi|country code 111
hex_id|9DD83E1941168D1||
hex_id|9F183978CCAA8D1|beacon_other_call_sign beacon_other_country|codes call sign 9HAB2
hex_id|9DDA40F864D14D1|beacon_impossible|space inside or on the wrong side
hex_id|9DCD40013400321||
hex_id|9DCE40013400321||
hex_id|9DCF00013400001|beacon_other_kind|personal beacon, not of an EPIRB
hex_id|9DCC00013400001|beacon_wrong_kind|for an aircraft
hex_id|9DCC80013400001|beacon_wrong_kind|for an aircraft
hex_id|9DCD80013400001|beacon_wrong_kind|for an aircraft
hex_id|9DCE80013400001|beacon_impossible|not in use
hex_id|9DCF80013400001|beacon_impossible|not in use
hex_id|9DCD00000000001||
hex_id|9DC43E2EE33BA45|beacon_wrong_kind|for an aircraft
hex_id|9DDC00000000000|beacon_test|for tests
hex_id|9DD000000000000||
hex_id|9DC000000000000|beacon_test|measuring satellites
hex_id|9DD53A6C0050000|beacon_doubtful|ship's part is cut off
hex_id|1DC4073B40FFBFF||
hex_id|1DC4073B5EFFBFF||
hex_id|1DC4073B4057041|beacon_copied|the identity is 1DC40 73B40 FFBFF
hex_id|1DC5E84800FFBFF|beacon_impossible|longer than an MMSI
hex_id|1DCC4B09A4FFBFF||
hex_id|1DCC0009A4FFBFF|beacon_impossible|serial number is one that no beacon has
hex_id|1DCE4B09A4FFBFF|beacon_other_kind|personal beacon, not of an EPIRB
hex_id|1DC84B09A4FFBFF|beacon_wrong_kind|for an aircraft
hex_id|1DC6006072FFBFF|beacon_wrong_kind|for an aircraft
hex_id|1DCA006072FFBFF|beacon_wrong_kind|for an aircraft
hex_id|1DD8073B40FFBFF|beacon_wrong_kind|ship's security
hex_id|1DD46A18BF81FE0||
hex_id|1DD66A18BF81FE0|beacon_other_kind|personal beacon, not of an EPIRB
hex_id|1DD06A18BF81FE0|beacon_wrong_kind|for an aircraft
hex_id|1DD46A1895A820D|beacon_copied|the identity is 1DD46 A18BF 81FE0
hex_id|1DDA854026BFDFF||
hex_id|1DDB054026BFDFF|beacon_other_kind|personal beacon, not of an EPIRB
hex_id|1DDA054026BFDFF|beacon_wrong_kind|for an aircraft
hex_id|1DDA781CED3FDFF||
hex_id|1DDAF81CED3FDFF||
hex_id|1DDB781CED3FDFF|beacon_other_kind|personal beacon, not of an EPIRB
hex_id|1DDBF81CED3FDFF|beacon_test|for tests
hex_id|1DDB854026BFDFF|beacon_test|for tests
hex_id|1DDA85402695C20|beacon_copied|the identity is 1DDA8 54026 BFDFF
hex_id|1DD200000000000|beacon_wrong_kind|for an aircraft
hex_id|1DDC00000000000|beacon_test|for tests
hex_id|1DDE00000000000|beacon_test|for tests
hex_id|1DC000000000000|beacon_impossible|not in use
hex_id|1DC200000000000|beacon_impossible|not in use
hex_id|9DD567650E1138BF456AAAA||
hex_id|9DD567650E1138BF456EAAA|beacon_other_mmsi|codes MMSI 238014811
hex_id|9DD567650E1138BF45684D2||
hex_id|9DD567650E11EA37CACAAAA|beacon_device_identity beacon_impossible beacon_other_mmsi|a tender or an AIS device
hex_id|9DD567650E120F865028190||
hex_id|9DD567650E120F865029590|beacon_other_call_sign|codes call sign 9A2346
hex_id|9DD567650E1000000000000||
hex_id|9DD567650E1300000000000|beacon_wrong_kind|for an aircraft
hex_id|9DD567650E1800000000000|beacon_test|for tests
hex_id|9DD567650E1700000000000|beacon_test|for tests
hex_id|9DD403990E1000000000000|beacon_doubtful|type-approval number is 10000
hex_id|9DB567650E1138BF456AAAA|beacon_impossible|not that of the MMSI in it
hex_id|8EE2039DA02B820A2BAD8000000000|beacon_copied|identity in it is 1DC40 73B40 FFBFF
hex_id|FFFE2F8EE2039DA02B820A2BAD8000000000|beacon_copied|identity in it is 1DC40 73B40 FFBFF
hex_id|8EE2039D002B820A2BAD8000000000|beacon_unreadable|check bits do not fit
hex_id|FFFE2E8EE2039DA02B820A2BAD8000000000|beacon_unreadable|does not begin like one
hex_id|2F8EE2039DA02B820A2BAD8000000000|beacon_unreadable|has not 15 or 23
hex_id|4EE46BA518E9A68BD8DAC0|beacon_copied|identity in it is 9DC8D 74A31 D34D1
hex_id|9DC8D 74A31 D34D1||
hex_id|9DC8D-74A31-D34D1|beacon_unreadable|sign 6 (U+002D)
hex_id|9dc8d74a31d34d1||
hex_id|9DC8D74A31D34O1|beacon_unreadable|sign 14 (O for 0?)
hex_id|9DC8D74A31D34D1 |record|ends with a space
hex_id|9DC8D74A31D34D|beacon_unreadable|has not 15 or 23
hex_id|9DC8D74A31D34D10|beacon_unreadable|has not 15 or 23
hex_id|АDC8D74A31D34D1|beacon_unreadable|sign 1 (U+0410)
hex_id|0x9DC8D74A31D34D1|beacon_unreadable|sign 2 (U+0078)
hex_id|9DC8D  74A31D34D1|record|two spaces
name|Ñandú|name_unspeakable|name_latin: NANDU
name|Čarli|name_unspeakable|name_latin: CARLI
name|Fő|name_unspeakable|name_latin: FO
name|Őrség|name_unspeakable|name_latin: ORSEG
name|Ærø|name_unspeakable|name_latin: AEROE
name|Þór|name_unspeakable|name_latin: THOR
name|Łódź|name_unspeakable|name_latin: LODZ
name|Đurđa|name_unspeakable|name_latin: DURDA (or DJURDJA)
name|Ålesund|name_unspeakable|name_latin: AALESUND (or ALESUND)
name|Straße|name_unspeakable|name_latin: STRASSE
name|Işık|name_unspeakable|name_latin: ISIK
name|İzmir|name_unspeakable|name_latin: IZMIR
name|Nordström|name_unspeakable|name_latin: NORDSTROEM (or NORDSTROM)
name|Δελφίνι|name_unspeakable|name_latin: DELFINI
name|Αύρα|name_unspeakable|name_latin: AVRA
name|Ευτυχία|name_unspeakable|name_latin: EFTYCHIA
name|Θάλασσα|name_unspeakable|name_latin: THALASSA
name|Μπάμπης|name_unspeakable|name_latin: BAMPIS
name|Άγγελος|name_unspeakable|name_latin: ANGELOS
name|Ψαράς|name_unspeakable|name_latin: PSARAS
name|Ωκεανός|name_unspeakable|name_latin: OKEANOS
name|Чайка|name_unspeakable|name_latin: CHAIKA
name|Подъезд|name_unspeakable|name_latin: PODIEEZD
name|Ёлка|name_unspeakable|name_latin: ELKA
name|Ђурђа|name_unspeakable|name_latin: DURDA
name|Његош|name_unspeakable|name_latin: NJEGOSH
name|Џон|name_unspeakable|name_latin: DZON
name|Київ|name_unspeakable|name_latin: KYIV
name|Ґава|name_unspeakable|name_latin: GAVA
name|Tамара|name_unspeakable|name_latin: TAMAPA
name|Anna １|name_unspeakable|name_latin: ANNA 1
name|Anna II|name_roman|name_spoken: ANNA TWO
name|Anna-II|name_roman|name_spoken: ANNA-TWO
name|Anna II of Split|name_roman|name_spoken: ANNA TWO OF SPLIT
name|Anna VIII|name_roman|name_spoken: ANNA EIGHT
name|Anna X|name_roman|name_spoken: ANNA TEN
name|Anna I|name_roman|name_spoken: ANNA ONE
name|Anna III.|name_roman|name_spoken: ANNA THREE.
name|Henry VIII Rose|name_roman|name_spoken: HENRY EIGHT ROSE
name|Anna 2|name_figures|name_spoken: ANNA TWO
name|Anna 45|name_figures|name_spoken: ANNA FORTY-FIVE`, or `name_spoken: ANNA FOUR FIVE
name|Pan Pan|name_signal|name_spoken: YACHT PAN PAN
name|Sierra Two|name_letters|heard as S2
name|L'Ami||
name|L’Ami|name_apostrophe|U+2019
name|Sea & Sun||
name|Sea + Sun|name_unspeakable|has no code word
name|Sea/Sun|name_unspeakable|has no code word
name|S.Y. Alder||
name|Nº 1|name_unspeakable|has no code word
name|Anna #2|name_unspeakable|has no code word
name|Anna!|name_unspeakable|has no code word
name|A||
name|~|name_unspeakable|has no code word
name|Off||
name|12:30|name_unspeakable|has no code word
name|Alder |record|
name| Alder|record|
name|Al  der|record|
name|日本|name_unspeakable|has no code word
name|سفينة|name_unspeakable|has no code word
name|Ⅱ|name_unspeakable|has no code word
name|Anna Ⅱ|name_unspeakable|has no code word
name|ﬁn|name_unspeakable|has no code word
name|Alder of the Very Long Salt Marsh|name_long|33 characters
name|Ol' Salt||
name|Rock'n Roll||
name|Ü|name_unspeakable|name_latin: UE (or U)
name|Crème brûlée|name_unspeakable|name_latin: CREME BRULEE
name|Ĳssel|name_unspeakable|has no code word
name|Ŋ|name_unspeakable|has no code word
name|ſun|name_unspeakable|name_latin: SUN
name|Ạ|name_unspeakable|name_latin: A
name|Balık|name_unspeakable|name_latin: BALIK
name|Anna Vi A||
name|Anna V Maria||
name|Xi Wang||
ROWS

# boat_lay NUMBER FIELD VALUE: the boat of that row.
boat_lay() {
    name=Alder call=9A2345 mmsi=238014810 beacon='9DCD0 00134 00001' handheld=
    case $2 in
    name) name=$3 ;;
    call_sign) call=$3 ;;
    mmsi) mmsi=$3 ;;
    hex_id) beacon=$3 ;;
    handheld) handheld="mmsi: \"$3\", " ;;
    esac
    awk -v name="$name" -v call="$call" -v mmsi="$mmsi" -v beacon="$beacon" -v handheld="$handheld" '
        function put(from, to,    at) {
            at = index($0, from)
            if (at) $0 = substr($0, 1, at - 1) to substr($0, at + length(from))
        }
        {
            put("name: Alder, specimen: yes,", "name: \"" name "\", flag: HR,")
            put("call_sign: QALD3", "call_sign: \"" call "\"")
            put("mmsi: \"200014810\"", "mmsi: \"" mmsi "\"")
            put("hex_id: \"990D0 00134 00001\"", "hex_id: \"" beacon "\"")
            put("charged: yes", handheld "charged: yes")
            print
        }' tests/errors/base/boats/alder.yaml >"$fleet/boats/b$1.yaml"
}

number=1000
while IFS='|' read -r field value _; do
    number=$((number + 1))
    boat_lay "$number" "$field" "$value"
done <"$scratch/rows"

maydeck check "$fleet" --date "$print_date" --json --card abandon_ship
expect_status written-run 1
# "NUMBER CHECK WHAT", but for what figures wait for, for what the boats share and for what is
# told of a record that says nothing of some part of her.
awk '/"boat": "/ { split($0, part, "\""); boat = substr(part[4], 2) }
    /"check": "/ {
        split($0, part, "\"")
        check = part[4]
        what = $0
        sub(/^.*"what": "/, "", what)
        if (check !~ /^cards$|^case_fact_unrecorded$|^approval_awaited$|_twice$/) print boat, check, what
    }' "$scratch/stdout" >"$scratch/told"

number=1000
while IFS='|' read -r field value checks piece; do
    number=$((number + 1))
    found=$(sed -n "s/^$number \([a-z0-9_]*\) .*/\1/p" "$scratch/told" | sort -u | tr '\n' ' ')
    said=$(grep "^$number " "$scratch/told")
    test="written-$field-$((number - 1000))"
    if [ "$found" != "${checks:+$checks }" ]; then
        not_ok "$test" "$value: $checks expected, found $found" "$said"
    elif [ -n "$piece" ] && ! echo "$said" | grep -qF -- "$piece"; then
        not_ok "$test" "$value: nothing says: $piece" "$said"
    else
        ok "$test"
    fi
done <"$scratch/rows"
exit $failures

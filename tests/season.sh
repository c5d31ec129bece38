# Sourced by tests of the register, after tap.sh: an invented base with two sister ships of one
# model, open boats with a raft, and a single boat besides.

# season_sister FILE NAME CALL_SIGN HEX MMSI RAFT_SERIAL RAFT_DUE FLARES
season_sister() {
    cat >"$1" <<BOAT
# One of two sister ships.
like: dory
walked: {date: 2027-03-02, by: KM}
boat: {name: $2, specimen: yes}
radio: {call_sign: $3}
equipment:
  - {tag: F1, service_due: 2028-02}
  - {tag: E1, serviced: 2027-03-01}
  - {tag: E3, mmsi: "$5"}
  - {tag: E4, hex_id: "$4", expires: 2031-05}
  - {tag: E5, expires: $8}
  - {tag: E10, expires: 2029-08}
  - {tag: E11, serviced: 2027-03-01}
  - {tag: E13, service_due: $7, serial: "$6"}
BOAT
}

# season_gear: what the boats have, a line a piece; dates are each boat's own.
season_gear() {
    cat <<'GEAR'
  - {item: fire_extinguisher, tag: F1, zone: cockpit, side: starboard, spot: by the wheel, agent: powder, kg: 2, rating: en 13A 70B, discharge_s: 10, electrical_ok: yes}
  - {item: lifejacket, tag: E1, zone: cockpit_locker, side: centre, spot: bow seat, count: 7, wearer: adult, kg_low: 40, kg_high: 130, automatic: no, from_cockpit: yes}
  - {item: vhf_handheld, tag: E3, zone: cockpit, side: port, spot: grey pocket, dsc: yes, charged: yes, in_charger: no, antenna_m: 1.5}
  - {item: personal_beacon, tag: E4, zone: cockpit, side: port, spot: grey pocket, how: lift flap, lanyard: stowed}
  - {item: flares, tag: E5, zone: cockpit, side: centre, spot: orange tube, count: 5}
  - {item: boarding_ladder, tag: E6, zone: transom, side: port, how: let it drop, from_water: yes}
  - {item: knife, tag: E7, zone: cockpit, side: port, spot: on the post}
  - {item: heaving_line, tag: E8, zone: cockpit, side: port, spot: blue bag, length_m: 18}
  - {item: horseshoe_buoy, tag: E9, zone: cockpit, side: starboard, spot: on the rail}
  - {item: first_aid_kit, tag: E10, zone: cockpit, side: centre, spot: orange tube, kit: [gloves, film, tweezers, seasick_tablets]}
  - {item: water_emergency, tag: E11, zone: cockpit_locker, side: centre, spot: bow seat, litres: 8}
  - {item: foghorn, tag: E12, zone: cockpit, side: centre, spot: orange tube}
  - {item: liferaft, tag: E13, zone: transom, side: starboard, how: pull up, persons: 8, painter: rail, release: grey hook, length_m: 7}
  - {item: outboard_kill, tag: C1, zone: cockpit, side: starboard, spot: lever, how: pull the cord, count: 2}
  - {item: petrol_stowage, tag: C2, zone: cockpit, side: centre, spot: stern seat, how: screw on top, litres: 30, count: 2}
  - {item: battery_isolator_service, tag: C3, zone: cockpit, side: starboard, spot: under the wheel, how: {off: turn right}, cuts: [bilge_pump_electric]}
  - {item: bilge_pump_electric, tag: C4, zone: cockpit, side: centre, spot: under the boards, from: {zone: cockpit, side: starboard, spot: panel}, how: {on: up, off: down}, rated_lph: 2500, fed_by: battery, automatic: no}
  - {item: bucket_lanyard, tag: C5, zone: cockpit_locker, side: centre, spot: bow seat, count: 2}
  - {item: torch, tag: C6, zone: cockpit, side: port, spot: grey pocket, count: 2}
  - {item: anchor_main, tag: C7, zone: anchor_locker, how: lift it out, kg: 8, length_m: 45, chain_end: cord}
  - {item: softwood_bung, tag: C8, zone: cockpit, side: centre, spot: orange tube}
  - {item: throttle, tag: C9, zone: cockpit, side: starboard, spot: by the wheel, how: {neutral: upright, ahead: push forward, astern: pull back}, upright: yes}
  - {item: engine_start, tag: C10, zone: cockpit, side: starboard, spot: panel, how: "cord on, key right"}
  - {item: position_display, tag: C11, zone: cockpit, side: starboard, spot: plotter, how: press POS}
  - {item: light_switch, tag: C12, zone: cockpit, side: starboard, spot: panel, how: LIGHTS up}
  - {item: boathook, tag: C13, zone: cockpit, side: port, spot: under the rail}
  - {item: fender, tag: C14, zone: cockpit_locker, side: centre, spot: bow seat, how: tie to the rail, count: 4}
GEAR
}

# season_rest: what they have not.
season_rest() {
    echo 'not_fitted:'
    for item in vhf_dsc cooker bathing_platform epirb sart dinghy grab_bag thermal_aid danbuoy \
        mob_light mob_button harness_tether recovery_sling recovery_tackle fire_port \
        engine_extinguisher fixed_extinguisher fire_blanket engine_stop engine_blower \
        engine_vent_closure fuel_shutoff_petrol battery_isolator_engine lithium_bank \
        inverter_switch shore_power_inlet bilge_pump_manual leak_kit seacock spill_kit \
        generator_stop heater_stop fuel_shutoff_heater smoke_alarm autopilot windlass aed \
        steering_access drogue hacksaw washboards emergency_tiller bolt_cutters blankets \
        bilge_access emergency_aerial watertight_door; do
        echo "  - $item"
    done
}

# season_hull: her facts, without a name.
season_hull() {
    cat <<'HULL'
  hull: monohull
  rig: motor
  loa_m: 7.2
  beam_m: 2.6
  draught_m: 0.6
  persons_max: 7
  flag: QZ
  looks: Green open motor boat
  lay_down_place: floor ahead of the wheel
  mounted: {zone: cockpit, faces: bow}
  rooms: []
  openings: 0
  lwl_m: 6.3
  bwl_m: 2.2
  usual_kn: 16
HULL
}

# season_lay FOLDER: the whole base; what stands in the folder besides is left.
season_lay() {
    mkdir -p "$1/boats" "$1/models"
    cat >"$1/base.yaml" <<'BASE'
base:
  name: Tern Water Boats (specimen)
  specimen: yes
  phone_24h: "+999 00 000 710"
  position: 21 14.60 N 031 40.10 W
rescue_centre:
  name: Tern Water
  call: TERN WATER COASTGUARD
  channel: "67"
  phone: "+999 00 000 711"
  checked_on: 2027-02-20
  antenna_m: 60
cruising_area: {latitude: north, longitude: west, sea_area: A1, variation: 3 W, variation_on: 2027-01-01}
clocks:
  - {offset: -2}
languages: [en]
approvals: []
lines: []
ashore: {fire_phone: "+999 71", marina: Tern Water Quay, berth: jetty 2}
first_aid: {drowning_breaths: 5}
BASE
    {
        printf 'changed: 2027-03-01\nboat:\n'
        season_hull
        printf 'engines:\n  - {fuel: petrol, drive: outboard}\ngas: {carried: no}\nequipment:\n'
        season_gear
        season_rest
    } >"$1/models/dory.yaml"
    season_sister "$1/boats/sandpiper.yaml" Sandpiper QSPR4 '990F4 048D0 004B1' 899994016 S-1077 \
        2027-12 2028-03
    season_sister "$1/boats/turnstone.yaml" Turnstone QTRN6 '990F4 04A10 004B1' 899994024 S-2080 \
        2027-09 2029-05
    {
        printf 'boat:\n  name: Whimbrel\n  specimen: yes\n'
        season_hull | sed 's/loa_m: 7.2/loa_m: 6.9/'
        printf 'engines:\n  - {fuel: petrol, drive: outboard}\ngas: {carried: no}\n'
        printf 'radio: {call_sign: QWHM3}\nequipment:\n'
        season_gear | sed -e '/tag: F1,/s/}$/, service_due: 2028-06}/' \
            -e '/tag: E1,/s/}$/, serviced: 2027-03-01}/' -e '/tag: E5,/s/}$/, expires: 2029-01}/' \
            -e '/tag: E3,/s/}$/, mmsi: "899994032"}/' \
            -e '/tag: E4,/s/}$/, hex_id: "990F4 04B50 004B1", expires: 2031-05}/' \
            -e '/tag: E10,/s/}$/, expires: 2029-08}/' -e '/tag: E11,/s/}$/, serviced: 2027-03-01}/' \
            -e '/tag: E13,/s/}$/, service_due: 2029-04, serial: "S-3301"}/'
        season_rest
    } >"$1/boats/whimbrel.yaml"
}

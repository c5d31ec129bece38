/* figure_table.c - the one table of figures (room: figure). A figure that is not
 * here is computed nowhere; the verdict decides what a card may say. */
#include "evaluate.h"

#define OPENING_FIELDS "bore_mm and depth_m of each seacock and shaft_seal"
#define PUMP_FIELDS "measured_lpm or rated_lph, and count, of each electric pump (of a catamaran " \
                    "zone too); measured_lpm or stroke_l of each hand pump"
#define CD_ASSUMED "Cd 0.80 for a through-hull with its hose off or a shaft tube with its " \
                   "shaft out"
#define PUMPS_ASSUMED "electric pumps half their label unless measured, hand pumps 30 strokes a " \
                      "minute filled to 0.8; of a catamaran, where water stands in one hull, " \
                      "the electric pumps of the hull with less (those of its zones, and one of " \
                      "each pair in other zones) and no hand pump"

#define COMFORT_WHY_NOT "what is not named seems safe: pumps buy minutes, nothing more"
#define RANGE_WHY_NOT "line of sight alone: a crew that believes it leaves the beacon off"

/* The order on a card, the safest first. Flooding: where to look and with which bung; the
 * minutes last, since they start from a dry bilge and the card is often taken down when the
 * floor is wet already. Which openings the pumps lose to is for the base: on a card it
 * comforts, since what it does not name seems safe. */
static const struct figure figures[] = {
    {.id = "beat_pumps", .title = "Openings that beat the pumps", .verdict = FIGURE_ESTIMATE,
     .reads = OPENING_FIELDS "; " PUMP_FIELDS,
     .formula = "inflow of each opening against all pumps: 1 or more beats them, half or more "
                "may beat them, below half nothing is said",
     .source = "pump tests of boating associations, Cd of engineering tables",
     .assumed = CD_ASSUMED "; " PUMPS_ASSUMED,
     .why_not = COMFORT_WHY_NOT, .evaluate = evaluate_beat_pumps},
    {.id = "worst_openings", .title = "Openings that let in most, and their bungs",
     .verdict = FIGURE_ESTIMATE,
     .reads = OPENING_FIELDS "; bung_mm of the worst",
     .formula = "order of d^2 * sqrt(h); openings nearer than the spread of Cd (0.91 / 0.53) are "
                "equal",
     .source = "derived",
     .assumed = "the same Cd for openings that are not equal", .label_tells = true,
     .procedure = "flooding", .step = "find", .evaluate = evaluate_worst_openings},
    {.id = "floor_wet", .title = "Minutes until the floor is wet by the worst opening",
     .verdict = FIGURE_ESTIMATE,
     .reads = OPENING_FIELDS "; " PUMP_FIELDS "; bilge_to_sole_l; lwl_m and bwl_m where recorded",
     .formula = "dV/dt = k sqrt(h + V/A_w) - Q_pumps with twice the inflow, in closed form; only "
                "up to 15 minutes, rounded down",
     .source = "derived",
     .assumed = CD_ASSUMED ", doubled; " PUMPS_ASSUMED "; waterplane 0.65 of its box, 0.75 of one "
                "hull",
     .procedure = "flooding", .step = "find", .evaluate = evaluate_floor_wet},
    {.id = "distance_run", .title = "Metres run in 10 seconds at the usual speed",
     .verdict = FIGURE_FACT, .reads = "usual_kn of the boat",
     .formula = "d = v * t, 1 kn = 0.5144 m/s", .source = "kinematics",
     .procedure = "man_overboard", .step = "stop", .evaluate = evaluate_distance_run},
    {.id = "boat_fulls", .title = "Explosive air from the worst bottle, against the cabins",
     .verdict = FIGURE_ESTIMATE,
     .reads = "kg and gas of each lpg_bottle_valve; cabin_m3 of the boat",
     .formula = "V = m R T / (M p) at 15 degrees, divided by the least share that explodes and by "
                "the cabins' air; said from 1 on",
     .source = "handbook limits",
     .assumed = "2.1 % of propane or 1.8 % of butane explodes; the whole bottle, evenly mixed",
     .procedure = "gas_leak", .step = "bottle", .evaluate = evaluate_boat_fulls},
    {.id = "raft_places", .title = "Raft places against persons", .verdict = FIGURE_FACT,
     .reads = "persons and count of each liferaft; persons_max of the boat",
     .formula = "sum of places beside the most people allowed on board",
     .source = "the raft's label", .procedure = "abandon_ship", .step = "tie",
     .evaluate = evaluate_raft_places},
    {.id = "radio_range", .title = "Range of the fixed radio", .verdict = FIGURE_ESTIMATE,
     .reads = "antenna_m of radio; antenna_m of rescue_centre where recorded",
     .formula = "2.2 * (sqrt h1 + sqrt h2) miles, rounded down; without the centre's aerial her "
                "own horizon only",
     .source = "derived from an earth of 4/3 radius",
     .assumed = "clear line of sight, full power, dry aerial", .in_check = true,
     .why_not = RANGE_WHY_NOT, .evaluate = evaluate_radio_range},
    {.id = "handheld_range", .title = "Range of the handheld", .verdict = FIGURE_ESTIMATE,
     .reads = "antenna_m of each vhf_handheld; antenna_m of rescue_centre where recorded",
     .formula = "2.2 * (sqrt h1 + sqrt h2) miles, rounded down, of the lowest one",
     .source = "derived from an earth of 4/3 radius",
     .assumed = "clear line of sight, full battery, held clear of the body",
     .in_check = true, .why_not = RANGE_WHY_NOT, .evaluate = evaluate_handheld_range},
    {.id = "discharge", .title = "Seconds until each extinguisher is empty",
     .verdict = FIGURE_ESTIMATE, .reads = "discharge_s of each extinguisher, from its label",
     .formula = "as on the label, whole seconds, rounded down",
     .source = "the label or the maker", .in_rows = true,
     .evaluate = evaluate_discharge},
    {.id = "inflow", .title = "Inflow through each opening", .verdict = FIGURE_ESTIMATE,
     .reads = OPENING_FIELDS,
     .formula = "Q = 60000 Cd (pi/4) d^2 sqrt(2 g h) litres a minute, rounded up",
     .source = "Britannica 11th ed. Hydraulics, pocket-books of engineers",
     .assumed = CD_ASSUMED, .why_not = "beat_pumps and worst_openings say what it means",
     .evaluate = evaluate_inflow},
    {.id = "hand_pump", .title = "What the hand pumps move", .verdict = FIGURE_ESTIMATE,
     .reads = "measured_lpm or stroke_l of each bilge_pump_manual",
     .formula = "stroke * strokes a minute * fill, rounded down",
     .source = "sailing press on pumping rates, figures of human power",
     .assumed = "30 strokes a minute filled to 0.8", .in_check = true,
     .why_not = "a card says which openings beat the pumps, not what pumps move",
     .evaluate = evaluate_hand_pump},
    {.id = "separation", .title = "How fast a stopped yacht leaves a person",
     .verdict = FIGURE_ESTIMATE, .reads = "nothing of the record",
     .formula = "(leeway of a yacht under bare poles - leeway of a person) * 60",
     .source = "drift tables made for search planning",
     .assumed = "slopes of 5.23 % and 0.96 % of the wind; scatter as large as a third of it",
     .why_not = "it is no fact of this boat", .evaluate = evaluate_separation},
    {.id = "head_hidden", .title = "Distance at which troughs hide a head",
     .verdict = FIGURE_ESTIMATE, .reads = "height of eye and the day's waves",
     .formula = "90 % of (e + H/2 - c) L / (2 (H - c))", .source = "derived",
     .assumed = "one regular wave", .why_not = "no record holds the day's waves"},
    {.id = "gas_volume", .title = "Gas and explosive air from the worst bottle",
     .verdict = FIGURE_ESTIMATE, .reads = "kg and gas of each lpg_bottle_valve",
     .formula = "V = m R T / (M p) at 15 degrees; divided by the least share that explodes",
     .source = "handbook limits",
     .assumed = "2.1 % of propane or 1.8 % of butane explodes",
     .why_not = "boat_fulls says what it means", .evaluate = evaluate_gas_volume},
    {.id = "gas_limit", .title = "Gas that makes a bilge explosive", .verdict = FIGURE_ESTIMATE,
     .reads = "kg and gas of each lpg_bottle_valve",
     .formula = "m = V * limit * density for 1 m3; minutes of an unlit burner = m / (60 P / LHV)",
     .source = "handbook limits and heating values",
     .assumed = "a bilge of 1 m3, a burner of 2 kW, all gas stays there",
     .why_not = "a figure to teach with: less gas than this is no safe amount",
     .evaluate = evaluate_gas_limit},
    {.id = "pump_rate", .title = "What the pumps move", .verdict = FIGURE_OFFICE,
     .reads = PUMP_FIELDS, .formula = "measured, else half the label; rounded down",
     .source = "pump tests of boating associations", .assumed = PUMPS_ASSUMED,
     .in_check = true, .why_not = "it would reassure", .evaluate = evaluate_pump_rate},
    {.id = "largest_hole", .title = "Largest hole the pumps match at her deepest opening",
     .verdict = FIGURE_OFFICE, .reads = OPENING_FIELDS "; " PUMP_FIELDS,
     .formula = "d = sqrt(Q / (0.2087 Cd sqrt h)), rounded down",
     .source = "derived", .assumed = CD_ASSUMED "; " PUMPS_ASSUMED,
     .in_check = true, .why_not = "it would reassure", .evaluate = evaluate_largest_hole},
    {.id = "sinkage", .title = "How far water inside lowers her", .verdict = FIGURE_OFFICE,
     .reads = "lwl_m and bwl_m of the boat", .formula = "A_w = lwl * bwl * Cwp; V / A_w",
     .source = "derived", .assumed = "Cwp 0.65, 0.75 for one hull of a catamaran",
     .in_check = true, .why_not = "it takes her for a box", .evaluate = evaluate_sinkage},
    {.id = "manoeuvre_time", .title = "Time to return to a person", .verdict = FIGURE_OFFICE,
     .reads = "a drill", .formula = "half turn pi R / v; reach and return as the sum of its parts",
     .source = "trials of crew-overboard recovery",
     .why_not = "measured in a drill on the boat, not computed"},
    {.id = "agent_mass", .title = "Agent for the engine space", .verdict = FIGURE_OFFICE,
     .reads = "engine_space_m3 of the boat",
     .formula = "halocarbon (V/S) C / (100 - C) at 0 degrees; CO2 0.40 V / 0.56",
     .source = "MSC/Circ.848 and makers' tables",
     .assumed = "9 % of HFC-227ea, 5.9 % of FK-5-1-12, 40 % of CO2",
     .in_check = true, .why_not = "the designer's work: the label counts",
     .evaluate = evaluate_agent},
    {.id = "us_outfit", .title = "Least extinguishers of a boat of the United States",
     .verdict = FIGURE_OFFICE, .reads = "flag and loa_m of the boat; fixed_extinguisher",
     .formula = "by length in feet: under 26, under 40, up to 65; fewer with a fixed system",
     .source = "33 CFR 175.320", .assumed = "no fixed system where none is recorded",
     .in_check = true, .why_not = "a list of one nation, and it changes",
     .evaluate = evaluate_us_outfit},
    {.id = "shelters", .title = "Shelters, from the berths", .verdict = FIGURE_ESTIMATE,
     .reads = "position of the base; name and position of each of its shelters; variation and "
              "variation_on where recorded",
     .formula = "rhumb line on a sphere of 6371008.8 m; miles rounded up, bearing true, magnetic "
                "by the recorded variation; straight, land and shoals ignored",
     .source = "derived", .assumed = "a round earth, off by 0.6 % at most",
     .in_check = true,
     .why_not = "they start from the berths, not from where she is: for the briefing, with the "
                "chart", .evaluate = evaluate_shelters},
    {.id = "fuel_range", .title = "Hours and range on the fuel aboard", .verdict = FIGURE_OFFICE,
     .reads = "the gauge, read today", .formula = "L (1 - reserve) / burn; hours * knots",
     .source = "arithmetic", .why_not = "no record holds the gauge of the day"},
    {.id = "slick_area", .title = "Area of a fuel slick", .verdict = FIGURE_OFFICE,
     .reads = "litres spilt", .formula = "V / film",
     .source = "Bonn Agreement oil appearance code",
     .why_not = "no record holds what was spilt"},
    {.id = "detector_grams", .title = "Gas present when the detector sounds",
     .verdict = FIGURE_NEVER, .reads = "the detector's set point",
     .formula = "grams to the limit * set point", .source = "derived",
     .why_not = "it differs by detector, and silence proves nothing"},
    {.id = "pumps_cope", .title = "Openings the pumps keep up with", .verdict = FIGURE_NEVER,
     .reads = "nothing", .formula = "none", .source = "none",
     .why_not = "reassurance in the unsafe direction"},
    {.id = "time_to_sinking", .title = "Time to sinking", .verdict = FIGURE_NEVER,
     .reads = "nothing", .formula = "none", .source = "none",
     .why_not = "it needs hydrostatics, trim and downflooding"},
    {.id = "survival_hours", .title = "Hours of survival in cold water",
     .verdict = FIGURE_NEVER, .reads = "nothing", .formula = "none", .source = "none",
     .why_not = "people differ widely, and a short number may end a search"},
    {.id = "run_on", .title = "Minutes an engine runs on after shut-off",
     .verdict = FIGURE_NEVER, .reads = "nothing", .formula = "60 V / feed flow",
     .source = "derived",
     .why_not = "what returns to the tank makes it 1 to 40 minutes"},
};
#define FIGURE_COUNT (sizeof figures / sizeof *figures)

const struct figure *figure_at(size_t index)
{
    return index < FIGURE_COUNT ? &figures[index] : NULL;
}

const struct figure *figure_find(const char *id)
{
    for (size_t i = 0; i < FIGURE_COUNT; i++)
        if (text_equal(figures[i].id, id))
            return &figures[i];
    return NULL;
}

size_t figure_count(void)
{
    return FIGURE_COUNT;
}

package dev.brinebook.caution;

import static dev.brinebook.caution.Reader.AUTHORITY;
import static dev.brinebook.caution.Reader.CUSTOMER;
import static dev.brinebook.caution.Reader.INSTALLER;
import static dev.brinebook.caution.Severity.INFO;
import static dev.brinebook.caution.Severity.STOP;
import static dev.brinebook.caution.Severity.WARNING;

import dev.brinebook.wording.Worded;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a person must be told beside a number. The constant's name is the stable code on the wire; its place here is its rank: the
 * gravest first, among equals what questions the input, then health, what must come before a softener, whether it does its work, the
 * rules, and last what goes with every case.
 *
 * <p>Each names the key of its source: [NSDWR], [IL-604], [TRADE-EFFICIENT], [NDSU-WQ1031], [NH-DWGB-3-8],
 * [CP-RESIN-CARE], [DAVIS], [DAVIS-CORNWELL], [NEB-G1491], [TEN-STATES], [WCP-2023], [EPA-822-R-03-006], [WHO-GDWQ],
 * [CP-POTASSIUM], [EPA-600-R-98-044] against [MN-HEALTH], [ONSITE-RULES], [CA-HSC-116785], [NJ-PLUMBING], [EN-1717], [CP-CYCLE],
 * [CP-INSTALLATION], [WCP-2016], [IPC-E103], [CP-NIGHT-FLOW], [USGS-HARDNESS], [CP-WATER-TESTS], [CP-TANKS],
 * [SM1030E], [HEM-2254], [CP-CHLORINE-IRON], [CP-COMMERCIAL], [REU-2016-PERSON].
 */
public enum Caution implements Worded {
    IRON_TREAT_FIRST(STOP, INSTALLER, "NDSU-WQ1031", "Iron and manganese together are above 10 mg/L: treat the water for them"
            + " before any softener."),

    HARDNESS_MAYBE_MG_PER_L(WARNING, INSTALLER, "CP-WATER-TESTS", "The hardness is above 60 gpg, which few waters reach: was it tested"
            + " in mg/L or ppm?", "The hardness is above 1,027 mg/L, which few waters reach: was it tested in mg/L or ppm?"),
    HARDNESS_MAYBE_GRAINS(WARNING, INSTALLER, "USGS-HARDNESS", "The hardness is below 60 mg/L, which is soft water: was it tested in"
            + " grains per gallon?", "The hardness is below 60 mg/L, which is soft water: is its unit right?"),
    RESIN_VOLUME_UNUSUAL(WARNING, INSTALLER, "CP-TANKS", "Few softeners of a house hold less than 0.1 or more than 10 cubic feet of"
            + " resin: is the unit right?", "Few softeners of a house hold less than 2.8 or more than 283 L of resin: is the unit right?"),
    RESIN_SIZES_DISAGREE(WARNING, INSTALLER, "CP-TANKS", "The resin volume, the nameplate and the size of the tank do not go"
            + " together: measure the tank and check which of them is right."),
    HARDNESS_ABOVE_SOLIDS(WARNING, INSTALLER, "SM1030E", "The hardness is above the dissolved solids, which hold it: have both tested"
            + " again, or check their units."),
    SODIUM_ABOVE_SOLIDS(WARNING, INSTALLER, "SM1030E", "Sodium is more than half of the dissolved solids, and its salts weigh more"
            + " than twice as much: have both tested again."),
    PH_IMPLAUSIBLE(WARNING, INSTALLER, "HEM-2254", "Few natural waters have a pH below 4.5 or above 10.5: have it tested again."),
    CHLORINE_BESIDE_IRON(WARNING, INSTALLER, "CP-CHLORINE-IRON", "Free chlorine turns dissolved iron into rust within minutes, so one"
            + " water does not keep both: have them tested again, and look whether the iron is dissolved."),
    USE_PER_PERSON_IMPLAUSIBLE(WARNING, INSTALLER, "REU-2016-PERSON", "The use is below 10.6 or above 158 gal a person and day, where"
            + " some 59 gal are usual: check the people, the unit, and look for a leak.", "The use is below 40 or above 600 L a"
            + " person and day, where some 220 L are usual: check the people, the unit, and look for a leak."),

    COMMERCIAL_USE(WARNING, INSTALLER, "CP-COMMERCIAL", "Above 1,000 gal a day this is more than a household: list its fixtures, or give"
            + " the peak flow that the plumbing code asks for, before a size is chosen.", "Above 3,800 L a day this is more than a"
            + " household:"
            + " list its fixtures, or give the peak flow that the plumbing code asks for, before a size is chosen."),

    MANGANESE_INFANTS(WARNING, CUSTOMER, "NH-DWGB-3-8", "Manganese is above 0.3 mg/L: do not use the raw water for infants, and"
            + " ask the health authority."),
    WELL_WITHOUT_BACTERIA_TEST(WARNING, CUSTOMER, "NEB-G1491", "A private well without a bacteria test: have it tested; a softener"
            + " does not disinfect."),
    POTASSIUM_KIDNEY_HEART(WARNING, CUSTOMER, "CP-POTASSIUM", "Softening with potassium chloride adds potassium: with kidney or"
            + " heart disease ask a doctor."),
    SODIUM_RESTRICTED_DIET(WARNING, CUSTOMER, "EPA-822-R-03-006", "Softened water holds more than 20 mg/L of sodium: on a"
            + " sodium-restricted diet ask a doctor, and keep an unsoftened tap for drinking."),
    SODIUM_TASTE(WARNING, CUSTOMER, "WHO-GDWQ", "Softened water holds more than 200 mg/L of sodium, the taste and parametric"
            + " value: keep an unsoftened tap for drinking."),
    IRON_NOT_DISSOLVED(WARNING, INSTALLER, "CP-RESIN-CARE", "Visible, colloidal or bacterial iron is not removed by a softener and"
            + " fouls it: filter or treat it first; none of it is counted as hardness."),
    IRON_BEFORE_RESIN(WARNING, INSTALLER, "IL-604", "Iron and manganese together are 1 mg/L or more: public plants must remove"
            + " them before the resin; plan resin cleaning or treatment."),
    HYDROGEN_SULFIDE(WARNING, INSTALLER, "NEB-G1491", "Hydrogen sulfide is not removed by a softener: treat it first."),
    PH_OUT_OF_RANGE(WARNING, INSTALLER, "NSDWR", "The pH is outside 6.5 to 8.5: the water corrodes or scales."),
    TURBIDITY_FILTER_FIRST(WARNING, INSTALLER, "TEN-STATES", "Turbidity is above 5 NTU: filter the water before the resin."),
    RUNS_HARD(WARNING, CUSTOMER, "CP-CYCLE", "On some days more water is used than the bed can soften: hard water passes."),
    LEAK_SUSPECTED(WARNING, CUSTOMER, "CP-NIGHT-FLOW", "Water ran night after night without a stop: look for a leak, or a fixture"
            + " that runs, before anything is sized for this use."),
    BLEND_STAINS(WARNING, CUSTOMER, "NSDWR", "The water that passes by the softener keeps its iron and manganese: what is left"
            + " in the mixed water is above 0.3 mg/L of iron or 0.05 mg/L of manganese, and stains."),
    SEPTIC_SYSTEM(WARNING, AUTHORITY, "ONSITE-RULES", "Discharge to a septic system is regulated: some rules allow only"
            + " demand-started softeners, some none; ask the local authority."),
    LOW_DOSE_WILL_NOT_HOLD(WARNING, INSTALLER, "TRADE-EFFICIENT", "Above 2 mg/L of iron or 750 mg/L of dissolved solids the lowest"
            + " salt doses do not hold."),
    CHLORINE_RESIN_LIFE(WARNING, INSTALLER, "CP-RESIN-CARE", "Free chlorine above 1 mg/L shortens the life of the resin."),

    IRON_NOT_TESTED(INFO, INSTALLER, "CP-IRON-FACTORS", "No iron was given, so none is counted: if the water has iron the setting"
            + " must be higher."),
    IRON_STAINS(INFO, CUSTOMER, "NSDWR", "Iron is above 0.3 mg/L: it stains."),
    MANGANESE_STAINS(INFO, CUSTOMER, "NSDWR", "Manganese is above 0.05 mg/L: it stains."),
    IDLE_BED_WITH_IRON(INFO, CUSTOMER, "CP-CYCLE", "The house mostly stands empty and the water has iron or manganese: put the softener in"
            + " bypass when you leave and start a regeneration when you come back, instead of regenerating a bed that nobody uses"
            + " every few days."),
    BED_LARGER_THAN_NEEDED(INFO, INSTALLER, "DAVIS", "The bed is large for this household: water slower than 1 gpm per cubic foot of"
            + " resin finds channels, and resin that stands for weeks fouls.", "The bed is large for this household: water slower"
            + " than 8 bed volumes an hour finds channels, and resin that stands for weeks fouls."),
    BLEND_PARTLY_HARD(INFO, CUSTOMER, "DAVIS-CORNWELL", "Water mixed round a softener is still partly hard: it leaves scale where it"
            + " is heated or dries, and the bypass is to be set by a hardness test of the mixed water."),
    COLD_WATER(INFO, INSTALLER, "WCP-2023", "Water below 50 degrees Fahrenheit is thick: backwash and pressure drop are worked out for"
            + " it, but the capacity is not lowered, of which cold resin has somewhat less.", "Water below 10 degrees Celsius is thick:"
            + " backwash and pressure drop are worked out for it, but the capacity is not lowered, of which cold resin has somewhat"
            + " less."),
    DISSOLVED_SOLIDS_TASTE(INFO, CUSTOMER, "NSDWR", "Dissolved solids are above 500 mg/L: the water tastes."),
    SEWER_SALT_LIMITS(INFO, AUTHORITY, "CA-HSC-116785", "Some places limit or ban salt discharge to the sewer: ask the local"
            + " authority."),

    POWER_AND_PRESSURE(INFO, INSTALLER, "CP-INSTALLATION", "Disconnect the power and relieve the pressure before opening the valve;"
            + " respect the pressure and temperature limits of every part."),
    DRAIN_AIR_GAP(INFO, INSTALLER, "NJ-PLUMBING", "The drain line needs an air gap of twice its opening and at least one inch, never"
            + " a direct connection: the local plumbing code decides.", "The drain line needs an air gap of twice its opening and"
            + " at least 25 mm, never a direct connection: the local plumbing code decides."),
    DRAIN_AIR_GAP_EUROPE(INFO, INSTALLER, "EN-1717", "The drain line needs an air gap of three times its inner diameter,"
            + " never a direct connection: the local rules decide."),
    LOCAL_CODE_DECIDES(INFO, AUTHORITY, "CP-INSTALLATION", "Plumbing and electrical codes and licensed practice decide over any"
            + " figure given here."),
    UNSOFTENED_TAPS(INFO, CUSTOMER, "CP-INSTALLATION", "Outdoor taps, and the kitchen cold tap where wanted, are left unsoftened."),
    LEAD_COPPER_PLUMBING(INFO, CUSTOMER, "EPA-600-R-98-044", "A health department warns that softened water dissolves lead and copper"
            + " from old plumbing; studies found no pattern of more of them after softening. Where pipes or solder may hold lead, have"
            + " standing water tested."),
    PIPES_BY_CODE(INFO, INSTALLER, "IPC-E103", "The flow advised is for a softener: pipes, meters and valves are sized for the flow that"
            + " the local plumbing code prescribes."),
    SETTINGS_BEFORE_PARTS(INFO, CUSTOMER, "WCP-2016", "A meter saves only where the clock regenerates too often: in one district's"
            + " study tuning the settings alone cut chloride by 27 % on average, replacing the softener by 47 %."),
    EFFICIENCY_NOT_CERTIFIED(INFO, AUTHORITY, "CA-HSC-116785", "The salt efficiency is a computed estimate, never a certification.");

    /** What goes with every advice on a softener that is to be installed or opened, besides the air gap of its drain. */
    public static final List<Caution> OF_INSTALLATION = List.of(POWER_AND_PRESSURE, UNSOFTENED_TAPS,
            LOCAL_CODE_DECIDES);
    /** What goes with every discharge of brine whose way is not known. */
    public static final List<Caution> OF_DISCHARGE = List.of(SEPTIC_SYSTEM, SEWER_SALT_LIMITS);
    /** What questions the input itself: to be settled before anything is done by the answer. */
    public static final Set<Caution> OF_INPUT = Collections.unmodifiableSet(EnumSet.range(HARDNESS_MAYBE_MG_PER_L,
            COMMERCIAL_USE));
    /** As many are shown in front, unless there are more that say stop. */
    public static final int MOST_IN_FRONT = 5;

    private final Severity severity;
    private final Reader reader;
    private final String sourceKey;
    private final String words;
    private final String metricWords;

    Caution(Severity severity, Reader reader, String sourceKey, String words) {
        this(severity, reader, sourceKey, words, words);
    }

    Caution(Severity severity, Reader reader, String sourceKey, String words, String metricWords) {
        this.severity = severity;
        this.reader = reader;
        this.sourceKey = sourceKey;
        this.words = words;
        this.metricWords = metricWords;
    }

    public Severity severity() {
        return severity;
    }

    /** Who has to do something about it. */
    public Reader reader() {
        return reader;
    }

    public String sourceKey() {
        return sourceKey;
    }

    @Override
    public String words() {
        return words;
    }

    @Override
    public String metricWords() {
        return metricWords;
    }

    /** {@code cautions} without repetition, by their rank. */
    public static List<Caution> ordered(Collection<Caution> cautions) {
        return cautions.stream().distinct().sorted().toList();
    }

    /** Those of {@code cautions} that belong in front: all that say stop, and the first others, five in all where that is possible. */
    public static Set<Caution> inFront(Collection<Caution> cautions) {
        List<Caution> ordered = ordered(cautions);
        long stops = ordered.stream().filter(caution -> caution.severity() == STOP).count();
        return new LinkedHashSet<>(ordered.subList(0, (int) Math.min(ordered.size(), Math.max(stops, MOST_IN_FRONT))));
    }
}

package dev.brinebook.caution;

import static dev.brinebook.caution.Severity.INFO;
import static dev.brinebook.caution.Severity.STOP;
import static dev.brinebook.caution.Severity.WARNING;

import dev.brinebook.wording.Worded;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * What a person must be told beside a number. The constant's name is the stable code on the wire.
 *
 * <p>Each names the key of its source: [NSDWR], [IL-604], [TRADE-EFFICIENT], [NDSU-WQ1031], [NH-DWGB-3-8],
 * [CP-RESIN-CARE], [DAVIS], [DAVIS-CORNWELL], [NEB-G1491], [TEN-STATES], [WCP-2023], [EPA-822-R-03-006], [WHO-GDWQ],
 * [CP-POTASSIUM], [MN-HEALTH], [ONSITE-RULES], [CA-HSC-116785], [NJ-PLUMBING], [CP-CYCLE], [CP-INSTALLATION],
 * [WCP-2016], [IPC-E103], [CP-NIGHT-FLOW].
 */
public enum Caution implements Worded {
    IRON_TREAT_FIRST(STOP, "NDSU-WQ1031", "Iron and manganese together are above 10 mg/L: treat the water for them"
            + " before any softener."),

    IRON_BEFORE_RESIN(WARNING, "IL-604", "Iron and manganese together are 1 mg/L or more: public plants must remove"
            + " them before the resin; plan resin cleaning or treatment."),
    LOW_DOSE_WILL_NOT_HOLD(WARNING, "TRADE-EFFICIENT", "Above 2 mg/L of iron or 750 mg/L of dissolved solids the lowest"
            + " salt doses do not hold."),
    MANGANESE_INFANTS(WARNING, "NH-DWGB-3-8", "Manganese is above 0.3 mg/L: do not use the raw water for infants, and"
            + " ask the health authority."),
    IRON_NOT_DISSOLVED(WARNING, "CP-RESIN-CARE", "Visible, colloidal or bacterial iron is not removed by a softener and"
            + " fouls it: filter or treat it first; none of it is counted as hardness."),
    HYDROGEN_SULFIDE(WARNING, "NEB-G1491", "Hydrogen sulfide is not removed by a softener: treat it first."),
    CHLORINE_RESIN_LIFE(WARNING, "CP-RESIN-CARE", "Free chlorine above 1 mg/L shortens the life of the resin."),
    TURBIDITY_FILTER_FIRST(WARNING, "TEN-STATES", "Turbidity is above 5 NTU: filter the water before the resin."),
    WELL_WITHOUT_BACTERIA_TEST(WARNING, "NEB-G1491", "A private well without a bacteria test: have it tested; a softener"
            + " does not disinfect."),
    COLD_WATER(WARNING, "WCP-2023", "Below 50 degrees Fahrenheit the bed has less capacity and needs a gentler backwash.",
            "Below 10 degrees Celsius the bed has less capacity and needs a gentler backwash."),
    SODIUM_RESTRICTED_DIET(WARNING, "EPA-822-R-03-006", "Softened water holds more than 20 mg/L of sodium: on a"
            + " sodium-restricted diet ask a doctor, and keep an unsoftened tap for drinking."),
    SODIUM_TASTE(WARNING, "WHO-GDWQ", "Softened water holds more than 200 mg/L of sodium, the taste and parametric"
            + " value: keep an unsoftened tap for drinking."),
    POTASSIUM_KIDNEY_HEART(WARNING, "CP-POTASSIUM", "Softening with potassium chloride adds potassium: with kidney or"
            + " heart disease ask a doctor."),
    SEPTIC_SYSTEM(WARNING, "ONSITE-RULES", "Discharge to a septic system is regulated: some rules allow only"
            + " demand-started softeners, some none; ask the local authority."),
    RUNS_HARD(WARNING, "CP-CYCLE", "On some days more water is used than the bed can soften: hard water passes."),
    LEAK_SUSPECTED(WARNING, "CP-NIGHT-FLOW", "Water ran night after night without a stop: look for a leak, or a fixture"
            + " that runs, before anything is sized for this use."),
    BLEND_STAINS(WARNING, "NSDWR", "The water that passes by the softener keeps its iron and manganese: what is left"
            + " in the mixed water is above 0.3 mg/L of iron or 0.05 mg/L of manganese, and stains."),

    BED_LARGER_THAN_NEEDED(INFO, "DAVIS", "The bed is large for this household: water slower than 1 gpm per cubic foot of"
            + " resin finds channels, and resin that stands for weeks fouls.", "The bed is large for this household: water slower"
            + " than 8 bed volumes an hour finds channels, and resin that stands for weeks fouls."),
    IDLE_BED_WITH_IRON(INFO, "CP-CYCLE", "The house mostly stands empty and the water has iron or manganese: put the softener in"
            + " bypass when you leave and start a regeneration when you come back, instead of regenerating a bed that nobody uses"
            + " every few days."),
    IRON_STAINS(INFO, "NSDWR", "Iron is above 0.3 mg/L: it stains."),
    MANGANESE_STAINS(INFO, "NSDWR", "Manganese is above 0.05 mg/L: it stains."),
    PH_OUT_OF_RANGE(INFO, "NSDWR", "The pH is outside 6.5 to 8.5: the water corrodes or scales."),
    DISSOLVED_SOLIDS_TASTE(INFO, "NSDWR", "Dissolved solids are above 500 mg/L: the water tastes."),
    IRON_NOT_TESTED(INFO, "CP-IRON-FACTORS", "No iron was given, so none is counted: if the water has iron the setting"
            + " must be higher."),
    LEAD_COPPER_PLUMBING(INFO, "MN-HEALTH", "Softened water can dissolve more lead and copper from old plumbing: have"
            + " standing water tested."),
    SEWER_SALT_LIMITS(INFO, "CA-HSC-116785", "Some places limit or ban salt discharge to the sewer: ask the local"
            + " authority."),
    DRAIN_AIR_GAP(INFO, "NJ-PLUMBING", "The drain line needs an air gap of twice its opening and at least one inch, never"
            + " a direct connection: the local plumbing code decides.", "The drain line needs an air gap of twice its opening and"
            + " at least 25 mm, never a direct connection: the local plumbing code decides."),
    POWER_AND_PRESSURE(INFO, "CP-INSTALLATION", "Disconnect the power and relieve the pressure before opening the valve;"
            + " respect the pressure and temperature limits of every part."),
    BLEND_PARTLY_HARD(INFO, "DAVIS-CORNWELL", "Water mixed round a softener is still partly hard: it leaves scale where it"
            + " is heated or dries, and the bypass is to be set by a hardness test of the mixed water."),
    UNSOFTENED_TAPS(INFO, "CP-INSTALLATION", "Outdoor taps, and the kitchen cold tap where wanted, are left unsoftened."),
    LOCAL_CODE_DECIDES(INFO, "CP-INSTALLATION", "Plumbing and electrical codes and licensed practice decide over any"
            + " figure given here."),
    PIPES_BY_CODE(INFO, "IPC-E103", "The flow advised is for a softener: pipes, meters and valves are sized for the flow that"
            + " the local plumbing code prescribes."),
    SETTINGS_BEFORE_PARTS(INFO, "WCP-2016", "A meter saves only where the clock regenerates too often: in one district's"
            + " study tuning the settings alone cut chloride by 27 % on average, replacing the softener by 47 %."),
    EFFICIENCY_NOT_CERTIFIED(INFO, "CA-HSC-116785", "The salt efficiency is a computed estimate, never a certification.");

    /** What goes with every advice on a softener that is to be installed or opened. */
    public static final List<Caution> OF_INSTALLATION = List.of(DRAIN_AIR_GAP, POWER_AND_PRESSURE, UNSOFTENED_TAPS,
            LOCAL_CODE_DECIDES);
    /** What goes with every discharge of brine whose way is not known. */
    public static final List<Caution> OF_DISCHARGE = List.of(SEPTIC_SYSTEM, SEWER_SALT_LIMITS);
    /** Gravest first, then by code: the order of every list of cautions. */
    public static final Comparator<Caution> ORDER = Comparator.comparing(Caution::severity).thenComparing(Enum::name);

    private final Severity severity;
    private final String sourceKey;
    private final String words;
    private final String metricWords;

    Caution(Severity severity, String sourceKey, String words) {
        this(severity, sourceKey, words, words);
    }

    Caution(Severity severity, String sourceKey, String words, String metricWords) {
        this.severity = severity;
        this.sourceKey = sourceKey;
        this.words = words;
        this.metricWords = metricWords;
    }

    public Severity severity() {
        return severity;
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

    /** {@code cautions} without repetition, in order. */
    public static List<Caution> ordered(Collection<Caution> cautions) {
        return cautions.stream().distinct().sorted(ORDER).toList();
    }
}

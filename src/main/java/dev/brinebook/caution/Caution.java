// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.caution;

import static dev.brinebook.caution.Reader.AUTHORITY;
import static dev.brinebook.caution.Reader.CUSTOMER;
import static dev.brinebook.caution.Reader.INSTALLER;
import static dev.brinebook.caution.Severity.INFO;
import static dev.brinebook.caution.Severity.STOP;
import static dev.brinebook.caution.Severity.WARNING;

import dev.brinebook.text.Localizable;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A warning that goes with a number. The constant's name is the stable code on the wire; its place here is its rank: the
 * most severe first, among equals what questions the input, then health, what must come before a softener, whether it does its work, the
 * rules, and last what goes with every case.
 *
 * <p>Each names the key of its source: [NSDWR], [IL-604], [TRADE-EFFICIENT], [NDSU-WQ1031], [NH-DWGB-3-8],
 * [CP-RESIN-CARE], [DAVIS], [DAVIS-CORNWELL], [NEB-G1491], [TEN-STATES], [WCP-2023], [EPA-822-R-03-006], [WHO-GDWQ],
 * [CP-POTASSIUM], [EPA-600-R-98-044] against [MN-HEALTH], [ONSITE-RULES], [CA-HSC-116785], [NJ-PLUMBING], [EN-1717], [CP-CYCLE],
 * [CP-INSTALLATION], [WCP-2016], [IPC-E103], [CP-NIGHT-FLOW], [USGS-HARDNESS], [CP-WATER-TESTS], [CP-TANKS],
 * [SM1030E], [HEM-2254], [CP-CHLORINE-IRON], [CP-COMMERCIAL], [REU-2016-PERSON], [NPDWR], [EPA-816-R-03-002],
 * [CP-SOFTENER-FAULTS], [CP-RESIN-SANITISING], [UFC-3-240-13FN], [RICHARDSON-ZAKI].
 */
public enum Caution implements Localizable {
    BACTERIA_FOUND(STOP, AUTHORITY, "NPDWR"),
    TREATMENT_BYPASSED(STOP, CUSTOMER, "CP-SOFTENER-FAULTS"),
    IRON_TREAT_FIRST(STOP, INSTALLER, "NDSU-WQ1031"),
    BACKWASH_LOSES_RESIN(STOP, INSTALLER, "RICHARDSON-ZAKI"),

    HARDNESS_MAYBE_MG_PER_L(WARNING, INSTALLER, "CP-WATER-TESTS"),
    HARDNESS_MAYBE_GRAINS(WARNING, INSTALLER, "USGS-HARDNESS"),
    RESIN_VOLUME_UNUSUAL(WARNING, INSTALLER, "CP-TANKS"),
    RESIN_SIZES_DISAGREE(WARNING, INSTALLER, "CP-TANKS"),
    HARDNESS_ABOVE_SOLIDS(WARNING, INSTALLER, "SM1030E"),
    SODIUM_ABOVE_SOLIDS(WARNING, INSTALLER, "SM1030E"),
    PH_IMPLAUSIBLE(WARNING, INSTALLER, "HEM-2254"),
    CHLORINE_BESIDE_IRON(WARNING, INSTALLER, "CP-CHLORINE-IRON"),
    USE_PER_PERSON_IMPLAUSIBLE(WARNING, INSTALLER, "REU-2016-PERSON"),

    COMMERCIAL_USE(WARNING, INSTALLER, "CP-COMMERCIAL"),

    HEALTH_VALUE_MISSED(WARNING, AUTHORITY, "NPDWR"),
    CROSS_CONNECTION(WARNING, INSTALLER, "EPA-816-R-03-002"),
    MANGANESE_INFANTS(WARNING, CUSTOMER, "NH-DWGB-3-8"),
    WELL_WITHOUT_BACTERIA_TEST(WARNING, CUSTOMER, "NEB-G1491"),
    POTASSIUM_KIDNEY_HEART(WARNING, CUSTOMER, "CP-POTASSIUM"),
    SODIUM_RESTRICTED_DIET(WARNING, CUSTOMER, "EPA-822-R-03-006"),
    SODIUM_TASTE(WARNING, CUSTOMER, "WHO-GDWQ"),
    IRON_NOT_DISSOLVED(WARNING, INSTALLER, "CP-RESIN-CARE"),
    IRON_BEFORE_RESIN(WARNING, INSTALLER, "IL-604"),
    HYDROGEN_SULFIDE(WARNING, INSTALLER, "NEB-G1491"),
    PH_OUT_OF_RANGE(WARNING, INSTALLER, "NSDWR"),
    TURBIDITY_FILTER_FIRST(WARNING, INSTALLER, "TEN-STATES"),
    TANK_SIZE_NOT_GIVEN(WARNING, INSTALLER, "CP-TANKS"),
    RUNS_HARD(WARNING, CUSTOMER, "CP-CYCLE"),
    LEAK_SUSPECTED(WARNING, CUSTOMER, "CP-NIGHT-FLOW"),
    BLEND_STAINS(WARNING, CUSTOMER, "NSDWR"),
    SEPTIC_SYSTEM(WARNING, AUTHORITY, "ONSITE-RULES"),
    LOW_DOSE_WILL_NOT_HOLD(WARNING, INSTALLER, "TRADE-EFFICIENT"),
    CHLORINE_RESIN_LIFE(WARNING, INSTALLER, "CP-RESIN-CARE"),
    BLEACH_ALONE(WARNING, INSTALLER, "CP-RESIN-SANITISING"),
    RESIN_CLEANER_ALONE(WARNING, INSTALLER, "CP-RESIN-CARE"),
    ACID_ON_SAMPLE(WARNING, INSTALLER, "UFC-3-240-13FN"),

    IRON_NOT_TESTED(INFO, INSTALLER, "CP-IRON-FACTORS"),
    IRON_STAINS(INFO, CUSTOMER, "NSDWR"),
    MANGANESE_STAINS(INFO, CUSTOMER, "NSDWR"),
    IDLE_BED_WITH_IRON(INFO, CUSTOMER, "CP-CYCLE"),
    BED_LARGER_THAN_NEEDED(INFO, INSTALLER, "DAVIS"),
    BLEND_PARTLY_HARD(INFO, CUSTOMER, "DAVIS-CORNWELL"),
    COLD_WATER(INFO, INSTALLER, "WCP-2023"),
    DISSOLVED_SOLIDS_TASTE(INFO, CUSTOMER, "NSDWR"),
    SEWER_SALT_LIMITS(INFO, AUTHORITY, "CA-HSC-116785"),

    POWER_AND_PRESSURE(INFO, INSTALLER, "CP-INSTALLATION"),
    DRAIN_AIR_GAP(INFO, INSTALLER, "NJ-PLUMBING"),
    DRAIN_AIR_GAP_EUROPE(INFO, INSTALLER, "EN-1717"),
    LOCAL_CODE_DECIDES(INFO, AUTHORITY, "CP-INSTALLATION"),
    UNSOFTENED_TAPS(INFO, CUSTOMER, "CP-INSTALLATION"),
    LEAD_COPPER_PLUMBING(INFO, CUSTOMER, "EPA-600-R-98-044"),
    PIPES_BY_CODE(INFO, INSTALLER, "IPC-E103"),
    SETTINGS_BEFORE_PARTS(INFO, CUSTOMER, "WCP-2016"),
    EFFICIENCY_NOT_CERTIFIED(INFO, AUTHORITY, "CA-HSC-116785");

    /** Cautions with every advice on a softener to be installed or opened, besides the air gap of its drain. */
    public static final List<Caution> OF_INSTALLATION = List.of(POWER_AND_PRESSURE, UNSOFTENED_TAPS,
            LOCAL_CODE_DECIDES);

    /** Cautions with every discharge of brine whose route is not known. */
    public static final List<Caution> OF_DISCHARGE = List.of(SEPTIC_SYSTEM, SEWER_SALT_LIMITS);
    /** What questions the input itself: to be settled before anything is done by the answer. */
    public static final Set<Caution> OF_INPUT = Collections.unmodifiableSet(EnumSet.range(HARDNESS_MAYBE_MG_PER_L,
            COMMERCIAL_USE));
    /** As many are shown in front, unless there are more that say stop. */
    public static final int MOST_IN_FRONT = 5;

    private final Severity severity;
    private final Reader reader;
    private final String sourceKey;
    private final String textId = Localizable.idOf("caution", this);

    Caution(Severity severity, Reader reader, String sourceKey) {
        this.severity = severity;
        this.reader = reader;
        this.sourceKey = sourceKey;
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

    /** {@code cautions} without repetition, by their rank. */
    public static List<Caution> ordered(Collection<Caution> cautions) {
        return cautions.isEmpty() ? List.of() : List.copyOf(EnumSet.copyOf(cautions));
    }

    /** Those of {@code cautions} that belong in front: all that say stop, and the first others, five in all where that is possible. */
    public static Set<Caution> inFront(Collection<Caution> cautions) {
        List<Caution> ordered = ordered(cautions);
        long stops = ordered.stream().filter(caution -> caution.severity() == STOP).count();
        return new LinkedHashSet<>(ordered.subList(0, (int) Math.min(ordered.size(), Math.max(stops, MOST_IN_FRONT))));
    }

    @Override
    public String textId() {
        return textId;
    }
}

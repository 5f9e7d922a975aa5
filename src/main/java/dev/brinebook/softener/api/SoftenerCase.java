package dev.brinebook.softener.api;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.household.Demand;
import dev.brinebook.household.api.HouseholdRequest;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.Softener;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.water.api.WaterRequest;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;

/**
 * The parts of a request that most calculators share, in the domain: the water, its hardness, the demand, and the
 * softener that stands there at the dose it gets.
 */
public record SoftenerCase(WaterAnalysis water, CompensatedHardness hardness, Demand demand, DosedSoftener found) {

    /** Hardness below which there is nothing to soften, mg/L as CaCO3. */
    public static final double LEAST_HARDNESS_MG_PER_L = 1;

    /**
     * The case that the parts of a request make, with every default told to {@code explanation}, and the cautions of
     * the water.
     *
     * @throws InvalidRequest when the water has no hardness to remove
     */
    public static SoftenerCase of(WaterRequest waterRequest, HouseholdRequest householdRequest,
            SoftenerRequest softenerRequest, CapacityTable table, Explanation explanation) {
        WaterAnalysis water = waterRequest.toDomain(explanation);
        CompensatedHardness hardness = water.compensated(waterRequest.factors(explanation));
        requireHardness(hardness);
        Demand demand = householdRequest.toDomain(explanation);
        Softener softener = softenerRequest.toDomain(table, explanation);
        DosedSoftener found = DosedSoftener.designed(softener, softenerRequest.doseGramsPerLitre(explanation),
                water.temperatureCelsius()).withMinutes(minutes(softenerRequest.minutes()));
        explanation.cautions(WaterCautions.of(water));
        return new SoftenerCase(water, hardness, demand, found);
    }

    /** Refuses a water that a softener can do nothing for. */
    public static void requireHardness(CompensatedHardness hardness) {
        if (!(hardness.totalMgPerL() >= LEAST_HARDNESS_MG_PER_L)) {
            throw InvalidRequest.impossible("/water", "the water has less than 1 mg/L of hardness: there is nothing to"
                    + " soften");
        }
    }

    /** Whether iron asks for the shorter day override. */
    public boolean iron() {
        return water.ironMgPerL().orElse(0) > WaterCautions.IRON_STAINS_MG_PER_L;
    }

    /** Hardness that a mean day loads on the resin, grams as CaCO3. */
    public double dailyLoadGrams() {
        return demand.dailyLoadGrams(hardness.totalMgPerL());
    }

    /** Minutes of each step that is set. */
    static Map<Kind, Double> minutes(StepMinutesRequest set) {
        Map<Kind, Double> minutes = new EnumMap<>(Kind.class);
        if (set != null) {
            put(minutes, Kind.BACKWASH, set.backwash());
            put(minutes, Kind.BRINE_AND_SLOW_RINSE, set.brineAndSlowRinse());
            put(minutes, Kind.SECOND_BACKWASH, set.secondBackwash());
            put(minutes, Kind.FAST_RINSE, set.fastRinse());
            put(minutes, Kind.REFILL, set.refill());
        }
        return minutes;
    }

    private static void put(Map<Kind, Double> minutes, Kind kind, BigDecimal set) {
        if (set != null) {
            minutes.put(kind, set.doubleValue());
        }
    }
}

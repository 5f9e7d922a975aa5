package dev.brinebook.request.softener;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.CyclicColumn;
import dev.brinebook.softener.ControllerTerms;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.SaltStep;
import dev.brinebook.softener.Softener;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToIntFunction;

/**
 * What most calculators start from, in the domain.
 *
 * @param duty what the softener is there to do
 * @param found the softener that stands there, at the dose it gets
 */
public record SoftenerCase(Duty duty, DosedSoftener found) {

    /** Hardness below which there is nothing to soften, mg/L as CaCO3. */
    public static final double LEAST_HARDNESS_MG_PER_L = 1;
    public static final Message NOTHING_TO_SOFTEN = Message.of("the water has less than 1 mg/L of hardness: there is nothing to"
            + " soften");

    /** The case that {@code request} makes, tried on a year, or on the days that were measured. */
    public static SoftenerCase of(CaseRequest request, Explanation explanation) {
        return of(request, demand -> Days.PER_YEAR, explanation);
    }

    /**
     * The case that {@code request} makes, with every default told to {@code explanation}, and the cautions of the
     * water.
     *
     * @param days how many days to try it on, unless they were measured
     * @throws InvalidRequest when the water has no hardness to remove
     */
    public static SoftenerCase of(CaseRequest request, ToIntFunction<Demand> days, Explanation explanation) {
        PreferencesRequest preferences = PreferencesRequest.orNone(request.preferences());
        WaterAnalysis water = request.water().toDomain(explanation);
        CompensatedHardness hardness = water.compensated(request.water().factors(explanation));
        requireHardness(hardness);
        Demand demand = request.household().toDomain(explanation);
        Softener softener = request.softener().toDomain(preferences.capacity(request.water(), water,
                request.softener().resinState(water, explanation), explanation), explanation)
                .onDrain(SiteRequest.orUnseen(request.site()).drainLitresPerMinute());
        double dose = request.softener().doseGramsPerLitre(explanation);
        requireCapacity(softener, dose, "/softener/saltDose");
        DosedSoftener found = DosedSoftener.designed(softener, dose, water.temperatureCelsius())
                .withMinutes(minutes(request.softener().minutes()));
        ControllerTerms controller = preferences.controllerTerms(request.softener().control(), request.household().country(),
                HomeCountry.units(request.units(), request.household().country()), explanation);
        requireSaltStep(controller.saltStep(), softener, water);
        Duty duty = preferences.duty(water, hardness, demand, days.applyAsInt(demand), request.seed(), controller, explanation);
        explanation.cautions(duty.cautions());
        request.water().questionUnit(explanation);
        return new SoftenerCase(duty, found);
    }

    /** Refuses a water that a softener can do nothing for. */
    public static void requireHardness(CompensatedHardness hardness) {
        if (!(hardness.realMgPerL() >= LEAST_HARDNESS_MG_PER_L)) {
            throw InvalidRequest.impossible("/water", NOTHING_TO_SOFTEN);
        }
    }

    /**
     * Refuses a dose at which the column settles to no cycle, whatever the end point.
     *
     * @param pointer where the dose stands in the request
     */
    public static void requireCapacity(Softener softener, double doseGramsPerLitre, String pointer) {
        if (!softener.capacity().isKnownAt(softener.salt(), doseGramsPerLitre)) {
            throw InvalidRequest.impossible(pointer, Message.of("at {0} or {1} more than half of this water's hardness, or more"
                    + " than {2} mg/L, leaks through from the first litre on: there is no capacity to state. A higher dose or a"
                    + " counter-current brine may hold it; capacityMethod table counts without regard to leakage",
                    Text.of(AnswerUnits.US.saltDose(doseGramsPerLitre)),
                    Text.of(AnswerUnits.METRIC.saltDose(doseGramsPerLitre)),
                    Text.number(CyclicColumn.MAX_END_POINT_MG_PER_L)));
        }
    }

    /** Refuses a step of salt so large that one alone is more than the tables cover in this bed. */
    private static void requireSaltStep(SaltStep step, Softener softener, WaterAnalysis water) {
        double most = CapacityTable.maxSaltDoseGramsPerLitre(softener.salt());
        double dose = step.gramsPerLitre(softener, water.temperatureCelsius());
        if (dose > most) {
            throw InvalidRequest.impossible(step instanceof SaltStep.Mass ? "/preferences/controller/saltStep"
                    : "/preferences/controller/refillMinutesStep", Message.of("must be smaller: one step is {0} times the most salt"
                            + " that this much resin takes", Text.number(dose / most)));
        }
    }

    /** Refuses a bed of which no dose that could be recommended has a capacity to state. */
    public static void requireDoses(Softener softener, String pointer) {
        requireCapacity(softener, softener.salt().fromSodiumChloride(SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(
                DoseChoice.HIGHEST_POUNDS_PER_CUBIC_FOOT)), pointer);
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

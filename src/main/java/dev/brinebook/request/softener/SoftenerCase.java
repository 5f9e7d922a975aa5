// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.CyclicColumn;
import dev.brinebook.softener.ControllerTerms;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.SaltStep;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.TankSize;
import dev.brinebook.text.Message;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.WaterAnalysis;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToIntFunction;

/**
 * What most calculators start from, in the domain.
 *
 * @param duty the demand on the softener
 * @param found the existing softener, at its present dose
 * @param model the model to calculate with
 */
public record SoftenerCase(DesignConditions duty, DosedSoftener found, Model model) {

    /** Hardness below which there is nothing to soften, mg/L as CaCO3. */
    public static final double LEAST_HARDNESS_MG_PER_L = 1;
    public static final Message NOTHING_TO_SOFTEN = Message.of("softenerCase.waterLessThan1");

    /** The case that {@code request} makes, tried on a year, or on the days that were measured. */
    public static SoftenerCase of(CaseRequest request, Model model, Explanation explanation) {
        return of(request, demand -> Days.PER_YEAR, model, explanation);
    }

    /**
     * The case that {@code request} makes, with every default recorded in {@code explanation}, and the cautions of the
     * water.
     *
     * @param days how many days to try it on, unless they were measured
     * @throws InvalidRequest when the water has no hardness to remove
     */
    public static SoftenerCase of(CaseRequest request, ToIntFunction<Demand> days, Model model, Explanation explanation) {
        PreferencesRequest preferences = PreferencesRequest.orNone(request.preferences());
        WaterAnalysis water = request.water().toDomain(explanation);
        CompensatedHardness hardness = water.compensated(request.water().factors(explanation));
        requireHardness(hardness);
        Demand demand = request.household().resolved().toDomain(explanation);
        Softener softener = request.softener().resolved(model).toDomain(preferences.capacity(request.water(), water,
                request.softener().resolved(model).resinState(water, explanation), explanation), explanation)
                .onDrain(SiteRequest.orUnseen(request.site()).drainLitresPerMinute());
        double dose = request.softener().resolved(model).doseGramsPerLitre(explanation);
        requireCapacity(softener, dose, "/softener/saltDose");
        DosedSoftener found = DosedSoftener.designed(softener, dose, water.temperatureCelsius())
                .withMinutes(minutes(request.softener().minutes()));
        ControllerTerms controller = preferences.controllerTerms(request.softener().control(), request.household().country(),
                HomeCountry.units(request.units(), request.household().country()), model, explanation);
        requireSaltStep(controller.saltStep(), softener, water);
        DesignConditions duty = preferences.duty(water, hardness, demand, days.applyAsInt(demand), request.seed(), controller,
                PreferencesRequest.practice(model, request.household().country()), explanation);
        explanation.cautions(duty.cautions());
        if (request.softener().resolved(model).tankSize() != TankSize.KNOWN) {
            explanation.caution(Caution.TANK_SIZE_NOT_GIVEN);
        }
        request.water().questionUnit(explanation);
        return new SoftenerCase(duty, found, model);
    }

    /** The same softener under other conditions. */
    public SoftenerCase under(DesignConditions other) {
        return new SoftenerCase(other, found, model);
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
     * @param pointer pointer to the dose in the request
     */
    public static void requireCapacity(Softener softener, double doseGramsPerLitre, String pointer) {
        if (!softener.capacity().isKnownAt(softener.salt(), doseGramsPerLitre)) {
            throw InvalidRequest.impossible(pointer, Message.of("problem.softener.orHardnessLeakageExceeds",
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
                    : "/preferences/controller/refillMinutesStep", Message.of("problem.softener.mustSmallerOneStep",
                            Text.number(dose / most)));
        }
    }

    /** Refuses a bed of which no dose that could be recommended has a capacity to state. */
    public static void requireDoses(Softener softener, String pointer) {
        requireCapacity(softener, softener.salt().fromSodiumChloride(SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(
                DoseChoice.HIGHEST_POUNDS_PER_CUBIC_FOOT)), pointer);
    }

    /** Minutes of each step that is set. */
    public static Map<Kind, Double> minutes(StepMinutesRequest set) {
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

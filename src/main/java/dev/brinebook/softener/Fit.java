// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.Demand;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.resin.PressureDrop;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.ServiceFlow;
import dev.brinebook.text.Localizable;
import dev.brinebook.water.Treatment;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Whether a softener at a dose fits its duty.
 *
 * @param dosed the softener at the dose
 * @param dailyLoadGrams hardness that a mean day loads on the resin, grams as CaCO3
 * @param fullChargeDays days of mean use that the capacity lasts; none when nothing is used
 * @param intervalDays mean days between regenerations to be expected; none when it never regenerates
 * @param continuous continuous flow against its limit
 * @param peak peak flow against its limit
 * @param lines salt and water against the published limits
 * @param shortcomings why it does not fit, empty when it does
 */
public record Fit(DosedSoftener dosed, double dailyLoadGrams, OptionalResult fullChargeDays, OptionalResult intervalDays,
        FlowCheck continuous,
        FlowCheck peak, List<EfficiencyLine.Verdict> lines, List<Shortcoming> shortcomings) {

    /** Days of mean use beyond which a bed is idle too long: twice the usual day override. */
    public static final int ASSUMED_LONGEST_INTERVAL_DAYS = 28;

    private static final double ROUNDING = 1e-6;

    /** Why a softener does not fit, said as one plain sentence without a full stop. */
    public enum Shortcoming implements Localizable {
        INTERVAL_TOO_SHORT,
        LEAKS_ABOVE_END_POINT,
        WATER_UNTREATED,
        RUNS_HARD,
        SERVICE_STANDARD_NOT_MET,
        CONTINUOUS_FLOW_TOO_HIGH,
        PEAK_FLOW_TOO_HIGH,
        BED_TOO_SHALLOW,
        NO_ROOM_FOR_BACKWASH;

        /** Whether bed and tank do not suit the flows, whatever is set. */
        public boolean isOfSize() {
            return compareTo(CONTINUOUS_FLOW_TOO_HIGH) >= 0;

        }

        @Override
        public String textId() {
            return Localizable.idOf("shortcoming", this);
        }
    }

    /**
     * A flow against the limit that binds first.
     *
     * @param flowLitresPerMinute flow of the household
     * @param limitLitresPerMinute most that the bed takes
     * @param binding what sets that limit; null when the rating of the maker does
     * @param velocityMetresPerHour velocity of the flow over the tank's cross-section
     * @param bedVolumesPerHour the flow per volume of resin
     * @param pressureDropPascals pressure that the flow loses in the bed
     */
    public record FlowCheck(double flowLitresPerMinute, double limitLitresPerMinute, ServiceFlow.Limit binding,
            double velocityMetresPerHour, double bedVolumesPerHour, double pressureDropPascals) {

        public boolean withinLimit() {
            return flowLitresPerMinute <= limitLitresPerMinute;
        }

        /** The check of a bed against the first of its limits that is known; {@code bounds} has the one that binds first in front. */
        static FlowCheck of(ResinBed bed, double flow, List<ServiceFlow.Bound> bounds, OptionalDouble rating, TankSize tank,
                double celsius) {
            ServiceFlow.Bound bound = bounds.stream().filter(one -> tank.knowsDiameter() || !one.limit().isOfDiameter()).findFirst()
                    .orElseThrow();
            boolean rated = rating.isPresent() && rating.getAsDouble() < bound.flowLitresPerMinute();
            return new FlowCheck(flow, rated ? rating.getAsDouble() : bound.flowLitresPerMinute(),
                    rated ? null : bound.limit(), bed.velocityMetresPerHour(flow), bed.bedVolumesPerHour(flow),
                    PressureDrop.pascals(bed, flow, celsius));
        }
    }

    /**
     * What the maker of a softener states beside its resin, as far as known.
     *
     * @param continuousLitresPerMinute lasting flow that it allows
     * @param peakLitresPerMinute short peaks that it allows
     * @param tank how much of the size of its tank
     */
    public record Datasheet(OptionalDouble continuousLitresPerMinute, OptionalDouble peakLitresPerMinute, TankSize tank) {

        /** A tank in which the resin is known to be, without ratings. */
        public static final Datasheet TANK_ALONE = new Datasheet(OptionalDouble.empty(), OptionalDouble.empty(), TankSize.KNOWN);

        public Datasheet {
            Objects.requireNonNull(tank, "tank");
        }

        /** Whether enough is known to judge it; a flow that the maker rates needs no size of the tank. */
        boolean judges(Shortcoming shortcoming) {
            return tank.judges(shortcoming)
                    || shortcoming == Shortcoming.CONTINUOUS_FLOW_TOO_HIGH && continuousLitresPerMinute.isPresent()
                    || shortcoming == Shortcoming.PEAK_FLOW_TOO_HIGH && peakLitresPerMinute.isPresent();
        }
    }

    public Fit {
        lines = List.copyOf(lines);
        shortcomings = List.copyOf(shortcomings);
    }

    /** How {@code dosed} fits {@code duty} with the meter settings that suit it. */
    public static Fit of(DosedSoftener dosed, DesignConditions duty, boolean demandStarted, Datasheet datasheet) {
        return of(dosed, duty, demandStarted, datasheet, duty.year(MeterSettings.of(dosed, duty).policy(), dosed.regeneration()));
    }

    /**
     * How {@code dosed} fits {@code duty}, started by demand or by a clock.
     *
     * @param year expected totals of a year with its settings
     */
    public static Fit of(DosedSoftener dosed, DesignConditions duty, boolean demandStarted, Datasheet datasheet, YearlyTotals year) {
        double load = duty.dailyLoadGrams();
        OptionalResult fullCharge = load > 0 ? OptionalResult.of(dosed.capacityGrams() / load)
                : OptionalResult.none(NoResultReason.NEVER_REGENERATES);
        ResinBed bed = dosed.softener().bed();
        double celsius = duty.water().temperatureCelsius();
        Demand demand = duty.demand();
        FlowCheck continuous = FlowCheck.of(bed, demand.continuousLitresPerMinute(),
                ServiceFlow.continuousBounds(bed, celsius), datasheet.continuousLitresPerMinute(), datasheet.tank(), celsius);
        FlowCheck peak = FlowCheck.of(bed, demand.peakLitresPerMinute(),
                ServiceFlow.peakBounds(bed, celsius), datasheet.peakLitresPerMinute(), datasheet.tank(), celsius);
        var performance = new EfficiencyLine.Performance(dosed.saltEfficiencyGramsPerGram(),
                dosed.cycle().waterLitresPerKilogram(dosed.capacityGrams()), demandStarted,
                fullCharge.exists() ? fullCharge.value() : Double.MAX_VALUE);
        return new Fit(dosed, load, fullCharge, year.intervalDays(), continuous, peak, EfficiencyLine.standings(performance),
                shortcomings(dosed, duty, fullCharge, year, continuous, peak, datasheet.tank()));
    }

    /**
     * Whether the bed is so large that its lasting flow is slower than 1 gpm per cubic foot of resin, or that its capacity
     * lasts more than {@value #ASSUMED_LONGEST_INTERVAL_DAYS} days.
     */
    public boolean largerThanNeeded() {
        return continuous.bedVolumesPerHour() < ServiceFlow.GUIDE_LOW_BED_VOLUMES_PER_HOUR
                || fullChargeDays.exists() && fullChargeDays.value() > ASSUMED_LONGEST_INTERVAL_DAYS;
    }

    public boolean fits() {
        return shortcomings.isEmpty();
    }

    /** What {@code datasheet} states too little for: neither found nor ruled out. */
    public List<Shortcoming> notChecked(Datasheet datasheet) {
        return Stream.of(Shortcoming.values()).filter(one -> !datasheet.judges(one) && !shortcomings.contains(one)).toList();
    }

    private static List<Shortcoming> shortcomings(DosedSoftener dosed, DesignConditions duty, OptionalResult fullCharge, YearlyTotals year,
            FlowCheck continuous, FlowCheck peak, TankSize tank) {
        List<Shortcoming> found = new ArrayList<>();
        if (!Treatment.neededBy(duty.water()).isEmpty()) {
            found.add(Shortcoming.WATER_UNTREATED);
        }
        if (fullCharge.exists() && !(largestCapacityGrams(dosed) >= duty.minimumIntervalDays() * duty.dailyLoadGrams())) {
            found.add(Shortcoming.INTERVAL_TOO_SHORT);
        }
        if (!dosed.softener().holdsEndPoint(dosed.saltDoseGramsPerLitre())) {
            found.add(Shortcoming.LEAKS_ABOVE_END_POINT);
        }
        if (!MeterSettings.of(dosed, duty).keepsStandard()) {
            found.add(Shortcoming.SERVICE_STANDARD_NOT_MET);
        } else if (year.hardDays() > duty.standard().hardDaysPerYear() * (1 + ROUNDING)) {
            found.add(Shortcoming.RUNS_HARD);
        }
        found.addAll(ofSize(dosed.softener(), continuous, peak, tank));
        return found;
    }

    /** What bed and tank lack whatever is set, where the whole size of the tank is known; empty where they suit the flows. */
    public static List<Shortcoming> ofSize(Softener softener, DesignConditions duty) {
        ResinBed bed = softener.bed();
        double celsius = duty.water().temperatureCelsius();
        return ofSize(softener, FlowCheck.of(bed, duty.demand().continuousLitresPerMinute(), ServiceFlow.continuousBounds(bed, celsius),
                OptionalDouble.empty(), TankSize.KNOWN, celsius), FlowCheck.of(bed, duty.demand().peakLitresPerMinute(),
                ServiceFlow.peakBounds(bed, celsius), OptionalDouble.empty(), TankSize.KNOWN, celsius), TankSize.KNOWN);
    }

    private static List<Shortcoming> ofSize(Softener softener, FlowCheck continuous, FlowCheck peak, TankSize tank) {
        List<Shortcoming> found = new ArrayList<>();
        if (!continuous.withinLimit()) {
            found.add(Shortcoming.CONTINUOUS_FLOW_TOO_HIGH);
        }
        if (!peak.withinLimit()) {
            found.add(Shortcoming.PEAK_FLOW_TOO_HIGH);
        }
        if (tank.judges(Shortcoming.BED_TOO_SHALLOW) && !softener.bed().hasGuideDepth()) {
            found.add(Shortcoming.BED_TOO_SHALLOW);
        }
        if (tank.judges(Shortcoming.NO_ROOM_FOR_BACKWASH)
                && !softener.bed().hasFreeboardFor(ResinBed.GUIDE_MIN_FREEBOARD_SHARE, softener.tankHeightMetres())) {
            found.add(Shortcoming.NO_ROOM_FOR_BACKWASH);
        }
        return found;
    }

    /** At the highest dose that is recommended, or at the dose itself where that is higher or alone has a capacity. */
    private static double largestCapacityGrams(DosedSoftener dosed) {
        Softener softener = dosed.softener();
        double highest = softener.salt().fromSodiumChloride(
                SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(DoseChoice.HIGHEST_POUNDS_PER_CUBIC_FOOT));
        return softener.capacity().isKnownAt(softener.salt(), highest)
                ? Math.max(softener.capacityGrams(highest), dosed.capacityGrams()) : dosed.capacityGrams();
    }
}

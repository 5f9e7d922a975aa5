// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.text.Localizable;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether a softener is ready to be converted to a metered controller. */
public final class Readiness {

    /** Age up to which resin is counted as good, years; the trade counts on 10 to 15. */
    public static final double ASSUMED_GOOD_RESIN_YEARS = 10;
    /** Age above which resin is counted as worn out, years. */
    public static final double ASSUMED_WORN_RESIN_YEARS = 15;
    /** Velocity above which cold-water pipe is noisy and wears, 8 ft/s. Source: [CP-INSTALLATION]. */
    public static final double MAX_VELOCITY_METRES_PER_SECOND = 2.4;

    /** State of a condition. */
    public enum State {
        MET, NOT_MET, CHECK_ON_SITE
    }

    /** The conditions of a conversion. Source: [CP-INSTALLATION]. */
    public enum Condition implements Localizable {
        BRINE_TANK_AND_LINE(Message.of("readiness.brineTankSoundLine"),
                Message.of("readiness.replaceTankOrLine")),
        DRAIN(Message.of("readiness.drainLineTakesBackwash"),
                Message.of("readiness.layLargerOrShorter")),
        VALVE_BORE(Message.of("readiness.boreValvePassesPeak"),
                Message.of("readiness.newValveMustLarger")),
        PLACE_FOR_METER(Message.of("readiness.thereRoomMeterWhere"),
                Message.of("readiness.pipingMustChangedBefore")),
        POWER_WITHIN_REACH(Message.of("readiness.groundedOutletWithoutSwitch"),
                Message.of("readiness.electricianInstallOutletDo")),
        SURGE_PROTECTION(Message.of("readiness.outletProtectedAgainstSurges"),
                Message.of("readiness.addSurgeProtectorElectronic")),
        BYPASS(Message.of("readiness.bypassLetsYouShut"),
                Message.of("readiness.fitBypassFirstSo")),
        RESIN(Message.of("readiness.resinYoungEnoughGood"),
                Message.of("readiness.replaceOrCleanResin"));

        private final Message wanted;
        private final Message whenNotMet;

        Condition(Message wanted, Message whenNotMet) {
            this.wanted = wanted;
            this.whenNotMet = whenNotMet;
        }

        /** What is wanted, a sentence. */
        public Message wanted() {
            return wanted;
        }

        /** What to do when it is not met, one or more sentences. */
        public Message whenNotMet() {
            return whenNotMet;
        }

        @Override
        public String textId() {
            return Localizable.idOf("readinessName", this);
        }
    }

    /** A condition and its state. */
    public record Check(Condition condition, State state) {
    }

    /**
     * Cost of meeting the conditions that are not met, as far as priced.
     *
     * @param priced sum of the prices that are known, 0 or above, any currency
     * @param unpriced conditions that are not met and have no price, so that the sum lacks them
     */
    public record Cost(double priced, List<Condition> unpriced) {

        /** Everything is met, or nothing was checked. */
        public static final Cost NONE = new Cost(0, List.of());

        public Cost {
            Guard.notNegative(priced, "priced");
            unpriced = List.copyOf(unpriced);
        }
    }

    /**
     * Observations on site; absent where nothing was checked.
     *
     * @param brineTankAndLine sound tank and line
     * @param drainLitresPerMinute what the drain line takes
     * @param drain drain line with air gap, large enough
     * @param valveBoreMetres bore of the valve
     * @param placeForMeter room for the meter
     * @param powerWithinReach outlet
     * @param surgeProtection surge protection
     * @param bypass bypass
     * @param resinGood resin in good condition
     * @param resinYears age of the resin
     */
    public record Site(Optional<Boolean> brineTankAndLine, OptionalDouble drainLitresPerMinute, Optional<Boolean> drain,
            OptionalDouble valveBoreMetres, Optional<Boolean> placeForMeter, Optional<Boolean> powerWithinReach,
            Optional<Boolean> surgeProtection, Optional<Boolean> bypass, Optional<Boolean> resinGood,
            OptionalDouble resinYears) {

        /** The same site where the drain line takes no more than a flow, if that is known. */
        Site drainingAtMost(OptionalDouble litresPerMinute) {
            double least = Math.min(litresPerMinute.orElse(Double.POSITIVE_INFINITY),
                    drainLitresPerMinute.orElse(Double.POSITIVE_INFINITY));
            return new Site(brineTankAndLine, Double.isInfinite(least) ? OptionalDouble.empty() : OptionalDouble.of(least), drain,
                    valveBoreMetres, placeForMeter, powerWithinReach, surgeProtection, bypass, resinGood, resinYears);
        }
    }

    private Readiness() {
    }

    /**
     * Every condition with its state.
     *
     * @param backwashLitresPerMinute flow that the drain has to take
     * @param peakLitresPerMinute flow that the valve has to pass
     */
    public static List<Check> of(Site site, double backwashLitresPerMinute, double peakLitresPerMinute) {
        List<Check> checks = new ArrayList<>();
        checks.add(new Check(Condition.BRINE_TANK_AND_LINE, state(site.brineTankAndLine())));
        checks.add(new Check(Condition.DRAIN, drain(site, backwashLitresPerMinute)));
        checks.add(new Check(Condition.VALVE_BORE, site.valveBoreMetres().isEmpty() ? State.CHECK_ON_SITE
                : state(Optional.of(velocityMetresPerSecond(peakLitresPerMinute, site.valveBoreMetres().getAsDouble())
                        <= MAX_VELOCITY_METRES_PER_SECOND))));
        checks.add(new Check(Condition.PLACE_FOR_METER, state(site.placeForMeter())));
        checks.add(new Check(Condition.POWER_WITHIN_REACH, state(site.powerWithinReach())));
        checks.add(new Check(Condition.SURGE_PROTECTION, state(site.surgeProtection())));
        checks.add(new Check(Condition.BYPASS, state(site.bypass())));
        checks.add(new Check(Condition.RESIN, resin(site)));
        return List.copyOf(checks);
    }

    /**
     * Every condition of converting a softener that was found. Its drain has to take the backwash that its bed wants, with a flow
     * control that suits it, not the lesser one that a small drain leaves it.
     */
    public static List<Check> of(Site site, ExistingSoftener found, DesignConditions duty) {
        SoftenerSettings setup = found.setup();
        Softener wanting = Review.withRightDrain(found.with(setup.with(setup.softener().onAnyDrain())), duty);
        double backwash = wanting.cycleDesign(setup.countedDoseGramsPerLitre(), duty.water().temperatureCelsius()).cycle()
                .step(CycleStep.Kind.BACKWASH).flowLitresPerMinute();
        return of(site.drainingAtMost(setup.softener().flows().drainLineLitresPerMinute()), backwash,
                duty.demand().peakLitresPerMinute());
    }

    /**
     * Cost of meeting the conditions that are not met. A condition that was not checked costs nothing yet.
     *
     * @param prices of meeting a condition, as far as known
     */
    public static Cost cost(List<Check> checks, Map<Condition, Double> prices) {
        List<Condition> notMet = checks.stream().filter(check -> check.state() == State.NOT_MET).map(Check::condition).toList();
        return new Cost(notMet.stream().filter(prices::containsKey).mapToDouble(prices::get).sum(),
                notMet.stream().filter(condition -> !prices.containsKey(condition)).toList());
    }

    /**
     * Mean velocity of a flow in a round bore.
     *
     * <pre>v = 4 Q / (pi d^2)</pre>
     *
     * <p>Q flow, L/min, 0 or above; d bore, m, above 0. Source: definition of the mean velocity
     */
    public static double velocityMetresPerSecond(double flowLitresPerMinute, double boreMetres) {
        Guard.notNegative(flowLitresPerMinute, "flowLitresPerMinute");
        Guard.positive(boreMetres, "boreMetres");
        return 4 * flowLitresPerMinute / 60_000 / (Math.PI * boreMetres * boreMetres);
    }

    private static State drain(Site site, double backwashLitresPerMinute) {
        if (site.drain().isPresent() && !site.drain().get()) {
            return State.NOT_MET;
        }
        if (site.drainLitresPerMinute().isPresent()
                && !(site.drainLitresPerMinute().getAsDouble() >= backwashLitresPerMinute)) {
            return State.NOT_MET;
        }
        return state(site.drain());
    }

    private static State resin(Site site) {
        boolean worn = site.resinYears().isPresent() && site.resinYears().getAsDouble() > ASSUMED_WORN_RESIN_YEARS;
        if (worn || site.resinGood().isPresent() && !site.resinGood().get()) {
            return State.NOT_MET;
        }
        boolean young = site.resinYears().isPresent() && site.resinYears().getAsDouble() <= ASSUMED_GOOD_RESIN_YEARS;
        return young && site.resinGood().orElse(false) ? State.MET : State.CHECK_ON_SITE;
    }

    private static State state(Optional<Boolean> seen) {
        return seen.map(yes -> yes ? State.MET : State.NOT_MET).orElse(State.CHECK_ON_SITE);
    }
}

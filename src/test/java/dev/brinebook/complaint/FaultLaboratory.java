// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Days;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.randomness.RandomStream;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.Simulation;
import dev.brinebook.regeneration.SimulationInput;
import dev.brinebook.regeneration.SimulationResult;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.Salt;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A household whose softener has a fault, some weeks of it by the day simulation, and somebody who answers what a diagnosis asks: with
 * the noise of the readings, and sometimes wrongly. It knows nothing of what the diagnosis expects of a fault.
 */
final class FaultLaboratory {

    /** Faults that are injected. */
    enum Fault {
        LEAKING_BYPASS, WRONG_HARDNESS, DEAD_METER, PLUGGED_INJECTOR, DRAIN_RESTRICTION, LOST_RESIN, STUCK_CLOCK, FOULED_BED, WRONG_DOSE,
        SALT_BRIDGE
    }

    private static final LocalDate FIRST_DAY = LocalDate.of(2026, 3, 2);
    private static final int WEEKS_OF_DAYS = 42;
    private static final int YEAR = 364;
    private static final double WRONG_LOOK = 0.03;
    private static final double REPORTED = 0.85;
    private static final double IMAGINED = 0.02;
    private static final double SETTINGS_GIVEN = 0.7;
    private static final double BOOKS_GIVEN = 0.5;

    private final Fault fault;
    private final RandomStream random;

    private final double hardness;
    private final double resin;
    private final double dose;
    private final double capacity;
    private final boolean metered;
    private final UseModel use;
    private final Policy right;

    /** What the fault does; 1 or 0 where it does nothing. */
    private double rawShare;
    private double setHardness = 1;
    private double meterShare = 1;
    private double suction;
    private double drain;
    private double refill;
    private double brine;
    private double resinShare = 1;
    private double sites = 1;
    private boolean clockStands;
    private boolean real;

    private final SimulationResult weeks;
    private final double capacityLeft;
    private final double saltShare;
    private final double expectedRate;

    FaultLaboratory(Fault fault, long seed) {
        this.fault = fault;
        random = new RandomStream(seed, fault.ordinal());
        double people = 1 + Math.floor(between(0, 6));
        resin = between(0.75, 2.5) * Exact.CUBIC_FOOT_LITRES;
        double dosePounds = between(6, 12);
        dose = SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(dosePounds);
        capacity = grams(resin, dose);
        double litres = people * between(120, 260);
        hardness = Math.max(HardnessUnit.GPG.toBase(6), Math.min(HardnessUnit.GPG.toBase(40), 1000 * capacity / litres / between(3, 10)));
        use = new UseModel(WeekdayMeans.ofWeek(litres, between(0.9, 1.5)), DayVariation.forPersons((int) people), UseModel.EVEN_MONTHS,
                Occupancy.Chain.USUAL);
        metered = fault == Fault.DEAD_METER || fault == Fault.WRONG_HARDNESS || random.happens(0.75);
        double softened = 1000 * capacity / hardness;
        right = metered ? new MeteredDelayed(softened, Math.min(softened / 2, between(1.2, 1.8) * litres), random.happens(0.5) ? 14 : 0)
                : new ClockEveryDays((int) Math.max(1, Math.min(30, Math.floor(softened / litres / 1.3))), 0);
        suction = between(0.88, 1.12);
        drain = between(0.92, 1.08);
        refill = between(0.94, 1.06);
        brine = between(0.96, 1);
        inject();
        double brineMade = refill * (fault == Fault.SALT_BRIDGE ? brine : 1);
        saltShare = Math.min(brineMade, brineMade * suction * between(1.1, 1.6));
        capacityLeft = Math.max(0.002 * capacity, sites * grams(resin * resinShare, saltShare * dose / resinShare));
        expectedRate = (double) run(use.typicalDays(FIRST_DAY, YEAR, seed + 1), right, capacity, 1).events().size() / YEAR;
        Policy set = right.withMeter(right.meterVolumeLitres() == 0 ? 1 : Policy.nearestMeterLitres(
                right.meterVolumeLitres() / setHardness / Math.max(0.001, meterShare)));
        weeks = run(use.typicalDays(FIRST_DAY, WEEKS_OF_DAYS, seed + 2), clockStands ? new ClockEveryDays(365, 0) : set, capacityLeft,
                1 - rawShare);
    }

    private void inject() {
        switch (fault) {
            case LEAKING_BYPASS -> rawShare = between(0.08, 0.5);
            case WRONG_HARDNESS -> setHardness = between(0.35, 0.75);
            case DEAD_METER -> meterShare = random.happens(0.5) ? 0 : between(0.1, 0.6);
            case PLUGGED_INJECTOR -> suction *= between(0, 0.5);
            case DRAIN_RESTRICTION -> {
                drain *= between(0.2, 0.65);
                suction *= between(0.1, 0.6);
            }
            case LOST_RESIN -> resinShare = between(0.3, 0.75);
            case STUCK_CLOCK -> clockStands = true;
            case FOULED_BED -> sites = between(0.3, 0.75);
            case WRONG_DOSE -> refill *= random.happens(0.5) ? between(1.4, 2.2) : between(0.3, 0.65);
            case SALT_BRIDGE -> brine = between(0.03, 0.4);
        }
    }

    /** Capacity by the table; in proportion to the salt below it. */
    private static double grams(double litres, double gramsPerLitre) {
        double least = CapacityTable.MIN_SALT_DOSE_GRAMS_PER_LITRE;
        double counted = Math.max(least, Math.min(CapacityTable.MAX_SALT_DOSE_GRAMS_PER_LITRE, gramsPerLitre));
        return litres * CapacityTable.WORKING.capacityGramsPerLitre(Salt.SODIUM_CHLORIDE, counted) * Math.min(1, gramsPerLitre / least);
    }

    private SimulationResult run(Days days, Policy policy, double grams, double throughBed) {
        double[] litres = new double[days.size()];
        for (int i = 0; i < litres.length; i++) {
            litres[i] = throughBed * days.useLitres(i);
        }
        return Simulation.simulate(new SimulationInput(Days.series(days.firstDate(), litres), hardness,
                new Regeneration(grams, dose * resin, 200, 90)), policy);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** The cause that a diagnosis should find. */
    Cause truth() {
        return switch (fault) {
            case LEAKING_BYPASS -> Cause.BYPASS_LEAK;
            case WRONG_HARDNESS -> Cause.HARDNESS_SET_LOW;
            case DEAD_METER -> Cause.METER_NOT_COUNTING;
            case PLUGGED_INJECTOR -> Cause.INJECTOR_PLUGGED;
            case DRAIN_RESTRICTION -> Cause.DRAIN_RESTRICTED;
            case LOST_RESIN -> Cause.RESIN_LOST;
            case STUCK_CLOCK -> Cause.CLOCK_LOST;
            case FOULED_BED -> Cause.RESIN_FOULED;
            case WRONG_DOSE -> refill > 1 ? Cause.REFILL_TOO_MUCH : Cause.SALT_DOSE_LOW;
            case SALT_BRIDGE -> Cause.NO_SALT;
        };
    }

    boolean metered() {
        return metered;
    }

    private double hardShare() {
        return (double) weeks.totals().hardDays() / WEEKS_OF_DAYS;
    }

    private double rate() {
        return (double) weeks.events().size() / WEEKS_OF_DAYS / expectedRate;
    }

    /** What the people say, from what happened in their weeks; none where they notice nothing of it. */
    Set<Symptom> symptoms() {
        Set<Symptom> said = EnumSet.noneOf(Symptom.class);
        real = false;
        double salt = rate() * saltShare;
        say(said, Symptom.HARD_ALWAYS, hardShare() > 0.7 || rawShare > 0.05);
        say(said, Symptom.HARD_AT_TIMES, hardShare() > 0.05 && hardShare() <= 0.7);
        say(said, Symptom.MUCH_SALT, salt > 1.25);
        say(said, Symptom.NO_SALT_USED, salt < 0.25);
        say(said, Symptom.BRINE_TANK_FULL, (refill > 1.3 || refill - saltShare > 0.3 && fault != Fault.SALT_BRIDGE) && random.happens(0.7));
        say(said, Symptom.NEVER_REGENERATES, rate() < 0.15 && random.happens(0.6));
        say(said, Symptom.WRONG_HOUR, clockStands && random.happens(0.3));
        say(said, Symptom.COLOUR, fault == Fault.FOULED_BED && random.happens(0.5));
        say(said, Symptom.LOW_PRESSURE, fault == Fault.FOULED_BED && random.happens(0.2));
        say(said, Symptom.RESIN_IN_TAPS, fault == Fault.LOST_RESIN && random.happens(0.1));
        say(said, Symptom.SALTY, fault == Fault.DRAIN_RESTRICTION && random.happens(0.4));
        return real ? said : Set.of();
    }

    private void say(Set<Symptom> said, Symptom symptom, boolean so) {
        if (random.happens(so ? REPORTED : IMAGINED)) {
            said.add(symptom);
            real |= so;
        }
    }

    /** What comes with the complaint: how it began, the water test, and as far as they have them settings, books and counts. */
    List<Sign> given(Set<Symptom> said) {
        List<Sign> given = new ArrayList<>(List.of(Sign.CAME_SLOWLY, Sign.IRON_IN_WATER));
        if (said.contains(Symptom.HARD_AT_TIMES)) {
            given.add(Sign.SOFT_DAYS);
        }
        if (random.happens(SETTINGS_GIVEN)) {
            given.addAll(List.of(Sign.METER_SETTING, Sign.HARD_NIGHTS));
        }
        if (random.happens(BOOKS_GIVEN)) {
            given.addAll(List.of(Sign.SALT_BY_BOOKS, Sign.REGENERATION_RATE));
        }
        return given;
    }

    /** What somebody sees who looks for a sign, or reads who measures it. */
    Observation answer(Sign sign) {
        if (sign.isLook()) {
            boolean seen = look(sign);
            return Observation.of(sign, random.happens(WRONG_LOOK) != seen);
        }
        double number = number(sign);
        if (Double.isNaN(number)) {
            return Observation.none(sign);
        }
        double uncertainty = uncertainty(sign, number);
        return new Observation(sign, number + uncertainty * random.nextNormal(), uncertainty);
    }

    private boolean look(Sign sign) {
        return switch (sign) {
            case SALT_LEVEL_UNCHANGED -> rate() * saltShare < 0.2;
            case SALT_BRIDGE -> fault == Fault.SALT_BRIDGE;
            case CONTROLLER_RIGHT -> !clockStands && !weeks.events().isEmpty();
            case DISPLAY_COUNTS -> meterShare > 0.05;
            case BYPASS_NOT_SHUT -> rawShare > 0 && random.happens(0.5);
            case SUCTION_WITHOUT_DRAIN_HOSE -> fault != Fault.PLUGGED_INJECTOR;
            case ACID_TURNS_YELLOW -> fault == Fault.FOULED_BED;
            case CAME_SLOWLY -> random.happens(switch (fault) {
                case FOULED_BED -> 0.9;
                case LOST_RESIN, PLUGGED_INJECTOR -> 0.6;
                case LEAKING_BYPASS, DRAIN_RESTRICTION -> 0.3;
                default -> 0.1;
            });
            case BED_LOW -> resinShare < 0.85;
            case BEADS_IN_SCREEN -> fault == Fault.LOST_RESIN && random.happens(0.1);
            case SOFT_AFTER_HAND_START -> capacityLeft > 0.4 * capacity;
            case IRON_IN_WATER -> random.happens(fault == Fault.FOULED_BED ? 0.8 : 0.25);
            case RAW_THE_SAME -> fault == Fault.FOULED_BED && random.happens(0.4);
            default -> false;
        };
    }

    private double number(Sign sign) {
        boolean outletHard = random.happens(hardShare());
        return switch (sign) {
            case RAW_SHARE -> random.happens(hardShare()) ? Double.NaN : rawShare;
            case OUTLET_SHARE -> outletHard ? between(0.5, 1) : between(0, 0.03);
            case SUCTION -> suction;
            case DRAIN_FLOW -> drain;
            case REFILL_WATER -> refill;
            case BRINE_STRENGTH -> brine;
            case SALT_BY_BOOKS -> weeks.events().size() < 2 ? Double.NaN : saltShare;
            case METER_SHARE -> meterShare;
            case REGENERATION_RATE -> rate();
            case METERED_USE -> meterShare * weeks.totals().throughBedLitres() / WEEKS_OF_DAYS / use.meanLitres();
            case METER_SETTING -> metered ? between(0.95, 1.03) / setHardness : Double.NaN;
            case HARD_NIGHTS -> right.fixedReserveLitres().isPresent() ? 1 - DayVariation.shareOfDaysBelow(use.cv(),
                    right.fixedReserveLitres().getAsDouble() / use.means().meanLitres()) : Double.NaN;
            case BREAKTHROUGH -> capacityLeft / capacity;
            case SOFT_DAYS -> hardShare() > 0.05 ? capacityLeft / capacity : Double.NaN;
            case PRESSURE_LOSS -> between(0.9, 1.6) * (fault == Fault.FOULED_BED ? between(1.1, 2.2) : resinShare);
            case RESIN_VOLUME -> resinShare * between(0.97, 1.03);
            case CHLORIDE_EXCESS -> fault == Fault.DRAIN_RESTRICTION && random.happens(0.6) ? between(1, 15)
                    : fault == Fault.PLUGGED_INJECTOR && random.happens(0.3) ? between(1, 8) : between(0, 0.6);
            case RAW_CHANGE -> between(0.95, 1.05);
            default -> 0;
        };
    }

    /** Standard uncertainties of bucket, drop test, hydrometer, books and counts, over what the sound softener shows. */
    private double uncertainty(Sign sign, double number) {
        return switch (sign) {
            case RAW_SHARE, OUTLET_SHARE, RAW_CHANGE, HOT_SHARE -> Math.max(0.02, HardnessUnit.GPG.toBase(0.3) * 1.5 / hardness);
            case SUCTION, DRAIN_FLOW, REFILL_WATER, METER_SHARE -> Math.max(0.02, 0.03 * number);
            case BRINE_STRENGTH, RESIN_VOLUME -> 0.02;
            case SALT_BY_BOOKS -> 0.06;
            case REGENERATION_RATE -> StrictMath.hypot(number * Math.sqrt(0.535 / WEEKS_OF_DAYS),
                    Math.sqrt(1.0 / 6) / WEEKS_OF_DAYS / expectedRate);
            case METERED_USE -> Math.max(0.02, number * Math.sqrt(0.535 / WEEKS_OF_DAYS));
            case CHLORIDE_EXCESS -> 0.4;
            case PRESSURE_LOSS -> 0.15;
            case SOFT_DAYS -> Math.max(0.1, number * use.cv() / Math.sqrt(Math.max(1, number * 1000 * capacity / hardness
                    / use.meanLitres())));
            default -> 0.04;
        };
    }
}

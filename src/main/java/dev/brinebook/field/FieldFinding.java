// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.measurement.Measured;
import dev.brinebook.quantity.Exact;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.text.Localizable;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;

/** What measurements contradict: each other, a setting, a name plate or a rule. Most important first. Source: [CP-FIELD-TESTS]. */
public enum FieldFinding implements Localizable {
    /** Hard water leaves the softener. */
    OUTLET_HARD,
    /** What no softener has, so that the filled softener keeps what was given. */
    NOT_OF_A_SOFTENER,
    /** Raw water reaches the tap past the softener. */
    RAW_WATER_PASSES,
    /** Hardly any salt was bought for the regenerations counted. */
    NO_SALT_USED,
    /** The brine is below {@link BrineStrength#LEAST_DEGREES}. */
    BRINE_WEAK,
    /** More than saturated: the hydrometer is not of this scale, or the brine was colder. */
    BRINE_ABOVE_SATURATION,
    /** More brine leaves the tank than its refill makes. */
    OUTSIDE_WATER,
    /** The draw takes less brine than the refill makes. */
    WATER_LEFT_OVER,
    /** More salt is bought than regenerations take. */
    SALT_USED_ELSEWHERE,
    DOSE_ABOVE_SETTING, DOSE_BELOW_SETTING,
    /** Less than {@link BreakthroughRun#WORN_SHARE} of the capacity of new resin. */
    CAPACITY_LOST,
    /** Less than new resin would take up, by more than the readings may be off. */
    CAPACITY_REDUCED,
    RESIN_MISSING, RESIN_ABOVE_NAMEPLATE, METER_COUNTS_TOO_LITTLE, METER_COUNTS_TOO_MUCH, BACKWASH_LOSES_RESIN, BACKWASH_WEAK,
    PRESSURE_LOSS_HIGH,
    /** Less room above the bed than half its depth. */
    FREEBOARD_SMALL,
    /** Too uncertain for its uncertainty to be sent on, so that the filled softener has the value alone. */
    TOO_UNCERTAIN;

    /** Deviation from which two numbers contradict each other, in standard uncertainties. Source: [GUM] 6.3.3, about 95 %. */
    public static final double CONTRADICTS = 2;
    /** How far a meter may be off, as a share. Source: [CP-FIELD-TESTS]. */
    public static final double METER_LIMIT_SHARE = 0.05;
    /** Most pressure that a softener may lose, kPa: 15 psi. Source: [CP-FIELD-TESTS]. */
    public static final double MOST_LOSS_KILOPASCALS = 15 * Exact.PSI_PASCALS / 1000;
    /** Saturated brine of any household temperature, with a margin for its minerals. */
    public static final double ASSUMED_MOST_DEGREES = 101;
    /** Books below this share of the other witnesses are taken as no salt at all. */
    public static final double ASSUMED_NO_SALT_SHARE = 0.1;

    @Override
    public String textId() {
        return Localizable.idOf("fieldFinding", this);
    }

    /** Every finding, in the order above, with how far the numbers lie apart in standard uncertainties where two are compared. */
    public static Map<FieldFinding, OptionalDouble> of(FieldResults results, FieldKnown known) {
        Map<FieldFinding, OptionalDouble> found = new EnumMap<>(FieldFinding.class);
        BiConsumer<FieldFinding, Double> add = (finding, z) -> found.put(finding, Double.isNaN(z) ? OptionalDouble.empty()
                : OptionalDouble.of(z));
        addSalt(results, add);
        addDose(results, known, add);
        addWater(results, add);
        addResin(results, add);
        addFlows(results, known, add);
        return found;
    }

    private static void addSalt(FieldResults results, BiConsumer<FieldFinding, Double> add) {
        Optional<Measured<ReadingCode>> refill = results.of(FieldQuantity.SALT_BY_REFILL);
        Optional<Measured<ReadingCode>> draw = results.of(FieldQuantity.SALT_BY_DRAW);
        Optional<Measured<ReadingCode>> books = results.of(FieldQuantity.SALT_BY_BOOKS);
        if (refill.isPresent() && draw.isPresent()) {
            double z = z(draw.get(), refill.get());
            addIf(z > CONTRADICTS, OUTSIDE_WATER, z, add);
            addIf(z < -CONTRADICTS, WATER_LEFT_OVER, z, add);
        }
        Optional<Measured<ReadingCode>> other = draw.or(() -> refill);
        if (books.isPresent() && other.isPresent()) {
            double z = z(books.get(), other.get());
            addIf(books.get().value() < ASSUMED_NO_SALT_SHARE * other.get().value() && z < -CONTRADICTS, NO_SALT_USED, z, add);
            addIf(z > CONTRADICTS && (refill.isEmpty() || z(books.get(), refill.get()) > CONTRADICTS), SALT_USED_ELSEWHERE, z, add);
        }
    }

    private static void addDose(FieldResults results, FieldKnown known, BiConsumer<FieldFinding, Double> add) {
        Optional<Measured<ReadingCode>> mean = results.salt().flatMap(Witnesses::mean);
        if (mean.isPresent() && known.setSaltKilograms().isPresent()) {
            double z = mean.get().deviation(known.setSaltKilograms().getAsDouble(), 0);
            addIf(z > CONTRADICTS, DOSE_ABOVE_SETTING, z, add);
            addIf(z < -CONTRADICTS, DOSE_BELOW_SETTING, z, add);
        }
    }

    private static void addWater(FieldResults results, BiConsumer<FieldFinding, Double> add) {
        addIf(results.outletHard(), OUTLET_HARD, Double.NaN, add);
        results.of(FieldQuantity.RAW_SHARE).ifPresent(share -> {
            double z = share.deviation(0, 0);
            addIf(z > CONTRADICTS, RAW_WATER_PASSES, z, add);
        });
        results.of(FieldQuantity.METER_SHARE).ifPresent(share -> {
            double over = Math.abs(share.value() - 1) - METER_LIMIT_SHARE;
            addIf(over > share.expandedUncertainty(), share.value() < 1 ? METER_COUNTS_TOO_LITTLE : METER_COUNTS_TOO_MUCH,
                    share.deviation(1, 0), add);
        });
    }

    private static void addResin(FieldResults results, BiConsumer<FieldFinding, Double> add) {
        results.capacityLeft().ifPresent(left -> {
            double z = left.deviation(1, 0);
            boolean lost = left.value() < BreakthroughRun.WORN_SHARE;
            addIf(lost, CAPACITY_LOST, z, add);
            addIf(!lost && z < -CONTRADICTS, CAPACITY_REDUCED, z, add);
        });
        Optional<Measured<ReadingCode>> tank = results.of(FieldQuantity.RESIN_BY_GEOMETRY);
        Optional<Measured<ReadingCode>> plate = results.of(FieldQuantity.RESIN_BY_NAMEPLATE);
        if (tank.isPresent() && plate.isPresent()) {
            double z = z(tank.get(), plate.get());
            addIf(z < -CONTRADICTS, RESIN_MISSING, z, add);
            addIf(z > CONTRADICTS, RESIN_ABOVE_NAMEPLATE, z, add);
        }
        results.of(FieldQuantity.FREEBOARD_SHARE).ifPresent(room -> addIf(room.value() < ResinBed.GUIDE_MIN_FREEBOARD_SHARE,
                FREEBOARD_SMALL, Double.NaN, add));
    }

    private static void addFlows(FieldResults results, FieldKnown known, BiConsumer<FieldFinding, Double> add) {
        results.of(FieldQuantity.BRINE_DEGREES_AT_SCALE).ifPresent(degrees -> addIf(known.brineTested()
                && degrees.value() < BrineStrength.LEAST_DEGREES, BRINE_WEAK, degrees.deviation(100, 0), add));
        results.of(FieldQuantity.BRINE_DEGREES_AT_SCALE).ifPresent(degrees -> addIf(known.brineTested()
                && degrees.deviation(ASSUMED_MOST_DEGREES, 0) > CONTRADICTS, BRINE_ABOVE_SATURATION, degrees.deviation(100, 0), add));
        Optional<Measured<ReadingCode>> lift = results.of(FieldQuantity.LIFT);
        Optional<Measured<ReadingCode>> room = results.of(FieldQuantity.FREEBOARD_SHARE);
        boolean loses = lift.isPresent() && room.isPresent() && lift.get().value() > room.get().value();
        addIf(loses || results.carriesResinOut(), BACKWASH_LOSES_RESIN, loses ? z(lift.get(), room.get()) : Double.NaN, add);
        addIf(results.liftsNothing() || lift.isPresent() && lift.get().value() < BackwashEffect.ASSUMED_WEAK_EXPANSION_SHARE,
                BACKWASH_WEAK, Double.NaN, add);
        results.of(FieldQuantity.PRESSURE_LOSS).ifPresent(loss -> addIf(loss.value() > MOST_LOSS_KILOPASCALS, PRESSURE_LOSS_HIGH,
                loss.deviation(MOST_LOSS_KILOPASCALS, 0), add));
    }

    private static double z(Measured<ReadingCode> one, Measured<ReadingCode> other) {
        return one.deviation(other.value(), other.standardUncertainty());
    }

    private static void addIf(boolean so, FieldFinding finding, double z, BiConsumer<FieldFinding, Double> add) {
        if (so) {
            add.accept(finding, z);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.measurement.Formula;
import dev.brinebook.measurement.Measured;
import dev.brinebook.measurement.Reading;
import dev.brinebook.measurement.Readings;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.Salt;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What readings taken at a softener say of it.
 *
 * @param measured each quantity that the readings suffice for
 * @param salt given in each regeneration, kg
 * @param resinInTank by its depth and by the name plate, L
 * @param resinByRun new resin that would take up what the run took up, L
 * @param resin by all of these, L
 * @param capacityLeft share of the capacity of new resin with the salt really given
 * @param outletHard whether the outlet is too hard to be distinguished from raw water
 * @param carriesResinOut whether the drain flow carries beads out of the tank, however high it is
 * @param liftsNothing whether the drain flow leaves the bed settled
 */
public record FieldResults(Map<FieldQuantity, Measured<ReadingCode>> measured, Optional<Witnesses> salt,
        Optional<Witnesses> resinInTank, Optional<Measured<ReadingCode>> resinByRun, Optional<Witnesses> resin,
        Optional<Measured<ReadingCode>> capacityLeft, boolean outletHard, boolean carriesResinOut,
        boolean liftsNothing) {

    /** Below any dose of the table, for a litre of resin: what a draw of a hardly known dose is taken as. */
    private static final double LEAST_SALT_KILOGRAMS = CapacityTable.MIN_SALT_DOSE_GRAMS_PER_LITRE / 1000;
    private static final List<FieldQuantity> SALT = List.of(FieldQuantity.SALT_BY_REFILL, FieldQuantity.SALT_BY_DRAW,
            FieldQuantity.SALT_BY_BOOKS);
    private static final List<FieldQuantity> RESIN = List.of(FieldQuantity.RESIN_BY_GEOMETRY, FieldQuantity.RESIN_BY_NAMEPLATE);

    public FieldResults {
        measured = Map.copyOf(measured);
    }

    /** What was found of a quantity. */
    public Optional<Measured<ReadingCode>> of(FieldQuantity quantity) {
        return Optional.ofNullable(measured.get(quantity));
    }

    /** Hardness taken up in the run, by the meter as well as it is known. */
    public Optional<Measured<ReadingCode>> capacity() {
        return of(FieldQuantity.CAPACITY_BY_CHECKED_METER).or(() -> of(FieldQuantity.CAPACITY));
    }

    /** Resin in the tank: of depth and name plate where they agree, else by depth, which was read here; by the run where that is all. */
    public Optional<Measured<ReadingCode>> bestResin() {
        return resinInTank.flatMap(Witnesses::mean).or(() -> of(FieldQuantity.RESIN_BY_GEOMETRY)).or(() -> resinByRun);
    }

    /** Reduces readings; {@code seed} is that of the simulations. */
    public static FieldResults of(Readings<ReadingCode> readings, FieldSetup setup, long seed) {
        Map<FieldQuantity, Measured<ReadingCode>> measured = new EnumMap<>(FieldQuantity.class);
        for (FieldQuantity quantity : FieldQuantity.values()) {
            if (readings.has(quantity.needs()) && isDefined(quantity, readings, setup)) {
                measured.put(quantity, readings.measure(quantity.formula(setup), seed + quantity.ordinal()));
            }
        }
        long next = seed + FieldQuantity.values().length;
        Optional<Witnesses> salt = Witnesses.of(SALT, measured, readings, setup, next);
        Optional<Witnesses> inTank = Witnesses.of(RESIN, measured, readings, setup, next + 1);
        Optional<Formula<ReadingCode>> capacity = capacityFormula(measured, setup);
        Optional<Formula<ReadingCode>> dose = salt.flatMap(Witnesses::formula);
        Optional<Formula<ReadingCode>> resinFormula = inTank.map(known -> known.formula()
                .orElse(FieldQuantity.RESIN_BY_GEOMETRY.formula(setup)));
        Optional<Formula<ReadingCode>> byRun = capacity.isEmpty() || dose.isEmpty() ? Optional.empty()
                : byRun(readings, setup.salt(), dose.get(), capacity.get());
        Optional<Measured<ReadingCode>> runResin = byRun.map(formula -> readings.measure(formula, next + 2));
        Optional<Measured<ReadingCode>> left = capacity.isEmpty() || dose.isEmpty() || resinFormula.isEmpty() ? Optional.empty()
                : left(setup.salt(), dose.get(), resinFormula.get(), capacity.get(), readings).map(formula ->
                readings.measure(formula, next + 3));
        boolean hasLift = readings.has(FieldQuantity.LIFT.needs());
        List<Witnesses.Answer> answers = new ArrayList<>(RESIN.stream().filter(measured::containsKey)
                .map(quantity -> new Witnesses.Answer(quantity, measured.get(quantity), quantity.formula(setup))).toList());
        runResin.ifPresent(run -> answers.add(new Witnesses.Answer(capacityQuantity(measured), run, byRun.get())));
        return new FieldResults(measured, salt, inTank, runResin, Witnesses.of(answers, readings, next + 4), left,
                readings.has(List.of(ReadingCode.RAW_HARDNESS, ReadingCode.OUTLET_HARDNESS)) && !rawIsFarAbove(readings),
                hasLift && lift(readings, setup) >= Backwash.MAX_EXPANSION_SHARE, hasLift && lift(readings, setup) == 0);
    }

    /** Whether the readings as they are let a quantity be calculated at all. */
    private static boolean isDefined(FieldQuantity quantity, Readings<ReadingCode> readings, FieldSetup setup) {
        return switch (quantity) {
            case RAW_SHARE -> rawIsFarAbove(readings);
            case LIFT -> lift(readings, setup) > 0 && lift(readings, setup) < Backwash.MAX_EXPANSION_SHARE;
            case CAPACITY -> rawIsFarAbove(readings)
                    && !readings.has(FieldQuantity.CAPACITY_BY_CHECKED_METER.needs());
            case CAPACITY_BY_CHECKED_METER -> rawIsFarAbove(readings);
            default -> true;
        };
    }

    private static double lift(Readings<ReadingCode> readings, FieldSetup setup) {
        return FieldQuantity.LIFT.of(code -> readings.get(code).value(), setup);
    }

    private static boolean rawIsFarAbove(Readings<ReadingCode> readings) {
        Reading raw = readings.get(ReadingCode.RAW_HARDNESS);
        Reading outlet = readings.get(ReadingCode.OUTLET_HARDNESS);
        return RawWaterShare.isKnown(raw.value(), outlet.value(), raw.standardUncertainty(), outlet.standardUncertainty());
    }

    private static FieldQuantity capacityQuantity(Map<FieldQuantity, Measured<ReadingCode>> measured) {
        return measured.containsKey(FieldQuantity.CAPACITY_BY_CHECKED_METER) ? FieldQuantity.CAPACITY_BY_CHECKED_METER
                : FieldQuantity.CAPACITY;
    }

    private static Optional<Formula<ReadingCode>> capacityFormula(Map<FieldQuantity, Measured<ReadingCode>> measured, FieldSetup setup) {
        FieldQuantity quantity = capacityQuantity(measured);
        return measured.containsKey(quantity) ? Optional.of(quantity.formula(setup)) : Optional.empty();
    }

    private static Optional<Formula<ReadingCode>> byRun(Readings<ReadingCode> readings, Salt salt, Formula<ReadingCode> dose,
            Formula<ReadingCode> capacity) {
        Formula.Values<ReadingCode> asRead = code -> readings.get(code).value();
        return dose.value(asRead) > 0 && BreakthroughRun.hasResinLitres(salt, dose.value(asRead), capacity.value(asRead))
                ? Optional.of(x -> BreakthroughRun.resinLitres(salt, Math.max(LEAST_SALT_KILOGRAMS, dose.value(x)),
                        capacity.value(x) / x.of(ReadingCode.CAPACITY_TABLE))) : Optional.empty();
    }

    private static Optional<Formula<ReadingCode>> left(Salt salt, Formula<ReadingCode> dose, Formula<ReadingCode> resin,
            Formula<ReadingCode> capacity, Readings<ReadingCode> readings) {
        Formula.Values<ReadingCode> asRead = code -> readings.get(code).value();
        return dose.value(asRead) > 0 && BreakthroughRun.isInTable(salt, dose.value(asRead), resin.value(asRead))
                ? Optional.of(x -> capacity.value(x) / x.of(ReadingCode.CAPACITY_TABLE)
                        / BreakthroughRun.tableGrams(salt, Math.max(LEAST_SALT_KILOGRAMS, dose.value(x)), resin.value(x)))
                : Optional.empty();
    }
}

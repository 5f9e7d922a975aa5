// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.field.BrineStrength;
import dev.brinebook.field.BrineTankShape;
import dev.brinebook.field.BucketFlow;
import dev.brinebook.field.FieldSetup;
import dev.brinebook.field.ReadingCode;
import dev.brinebook.field.TankBottom;
import dev.brinebook.measurement.Instrument;
import dev.brinebook.measurement.Reading;
import dev.brinebook.measurement.Readings;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.request.softener.PlusMinus;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.softener.StandardTank;
import dev.brinebook.water.WaterAnalysis;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleFunction;

/** The readings of a request in SI, each with its uncertainty; what the request leaves out is recorded. */
public final class FieldReadings {

    private static final String OWN = "OWN-ASSUMPTION";
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double USUAL_BAG_POUNDS = 40;
    /** Far below anything that is read. */
    private static final double EXACT = 1e-9;
    /** So little of what is not there that it moves no digit. */
    private static final double NONE = 1e-18;

    private final Map<ReadingCode, Reading> readings = new EnumMap<>(ReadingCode.class);
    private final FieldMeasurementsRequest request;
    private final AnswerUnits units;
    private final Explanation explanation;

    private FieldReadings(FieldMeasurementsRequest request, AnswerUnits units, Explanation explanation) {
        this.request = request;
        this.units = units;
        this.explanation = explanation;
    }

    /** All readings of a request without violations. */
    public static Readings<ReadingCode> of(FieldMeasurementsRequest request, AnswerUnits units, Explanation explanation) {
        FieldReadings all = new FieldReadings(request, units, explanation);
        all.addFlows();
        all.addMeter();
        all.addResinTank();
        all.addBrine();
        all.addBrineTank();
        all.addHardness();
        all.addBooks();
        all.addPressure();
        return new Readings<>(ReadingCode.class, all.readings);
    }

    /** What is known without reading it. */
    public static FieldSetup setup(FieldMeasurementsRequest request, Explanation explanation) {
        TankBottom bottom = request.resinTank() == null ? TankBottom.ELLIPTICAL : explanation.resolve("/resinTank/bottom",
                request.resinTank().bottom(), TankBottom.ELLIPTICAL, "CP-FIELD-TESTS");
        return new FieldSetup(bottom, request.brineTank() == null ? BrineTankShape.ROUND
                : request.brineTank().shapeOrDefault(), request.saltOrDefault());
    }

    /** Step of a display, litres. */
    public static double stepLitres(VolumeQuantity given) {
        return PlusMinus.isWhole(given) ? given.inBase() : VolumeUnit.US_GALLON.toBase(1);
    }

    private void addFlows() {
        addBucket("/drain", request.drain(), ReadingCode.DRAIN_VOLUME, ReadingCode.DRAIN_SECONDS);
        addBucket("/refill", request.refill(), ReadingCode.REFILL_VOLUME, ReadingCode.REFILL_SECONDS);
        addBucket("/brineDraw", request.brineDraw(), ReadingCode.BRINE_DRAW_VOLUME, ReadingCode.BRINE_DRAW_SECONDS);
        addBucket("/serviceFlow", request.serviceFlow(), ReadingCode.SERVICE_VOLUME, ReadingCode.SERVICE_SECONDS);
        if (request.brineDraw() != null) {
            boolean water = explanation.resolve("/brineDrawLiquid", request.brineDrawLiquid(),
                    FieldMeasurementsRequest.DrawnLiquid.BRINE, OWN) == FieldMeasurementsRequest.DrawnLiquid.WATER;
            double factor = BucketFlow.ASSUMED_WATER_FOR_BRINE;
            if (water) {
                explanation.assume(Resolved.of("waterForBrine", factor, null).byDefault(OWN));
            }
            readings.put(ReadingCode.WATER_FOR_BRINE, water ? Reading.within(factor, Instrument.BRINE_BY_WATER.halfWidth(factor))
                    : Reading.within(1, EXACT));
        }
        BigDecimal minutes = refillMinutes();
        if (minutes != null) {
            readings.put(ReadingCode.REFILL_MINUTES, Reading.within(minutes.doubleValue(),
                    Instrument.VALVE_TIMER.halfWidth(SECONDS_PER_MINUTE) / SECONDS_PER_MINUTE));
            assumeOff("refillMinutesPlusMinus", Resolved.of("refillMinutesPlusMinus", 2, "s"), Instrument.VALVE_TIMER);
        }
    }

    private BigDecimal refillMinutes() {
        SoftenerRequest softener = request.softener();
        return request.refillMinutes() != null || softener == null || softener.minutes() == null ? request.refillMinutes()
                : softener.minutes().refill();
    }

    private void addBucket(String place, BucketRequest given, ReadingCode volume, ReadingCode seconds) {
        if (given == null) {
            return;
        }
        Instrument bucket = Boolean.TRUE.equals(given.weighed()) ? Instrument.WEIGHED_BUCKET : Instrument.MARKED_BUCKET;
        double litres = given.volume().inBase();
        readings.put(volume, Reading.within(litres, off(given.volumePlusMinus(), place + "/volumePlusMinus", bucket, litres,
                units::volume)));
        double off = given.secondsPlusMinus() != null ? given.secondsPlusMinus().doubleValue() : Instrument.STOPWATCH.halfWidth(1);
        Resolved watch = Resolved.of(place + "/secondsPlusMinus", off, "s");
        explanation.assume(given.secondsPlusMinus() != null ? watch : watch.byDefault(Instrument.STOPWATCH.sourceKey()));
        readings.put(seconds, Reading.mean(given.times(), time -> Reading.difference(time, off)));
    }

    private double off(Quantity<?> given, String place, Instrument instrument, double value, DoubleFunction<Quantity<?>> shown) {
        double usual = instrument.halfWidth(value);
        return explanation.resolve(given, usual, Resolved.of(place, shown.apply(usual)).byDefault(instrument.sourceKey()));
    }

    private void assumeOff(String name, Resolved shown, Instrument instrument) {
        explanation.assume(shown.byDefault(instrument.sourceKey()));
    }

    private void addMeter() {
        MeterCheckRequest check = request.meterCheck();
        if (check != null) {
            Instrument bucket = Boolean.TRUE.equals(check.weighed()) ? Instrument.WEIGHED_BUCKET : Instrument.MARKED_BUCKET;
            double fill = check.bucket().inBase();
            double off = off(null, "meterCheckBucketPlusMinus", bucket, fill, units::volume);
            readings.put(ReadingCode.METER_CHECK_VOLUME, Reading.within(check.fills() * fill, check.fills() * off));
            double step = explanation.resolve(check.displayStep(), stepLitres(null), Resolved.of("/meterCheck/displayStep",
                    units.volume(stepLitres(null))).byDefault(OWN));
            readings.put(ReadingCode.METER_CHECK_COUNT, Reading.difference(check.counted().inBase(), step / 2));
        } else if (request.run() != null) {
            readings.put(ReadingCode.METER_ERROR, Reading.within(1, Instrument.WATER_METER.halfWidth(1)));
            assumeOff("meterPlusMinus", Resolved.of("meterPlusMinus", 100 * Instrument.WATER_METER.halfWidth(1), "%"),
                    Instrument.WATER_METER);
        }
    }

    private void addResinTank() {
        ResinTankRequest tank = request.resinTank();
        double celsius = explanation.resolve(request.waterTemperature(), WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS, Resolved.of(
                "/waterTemperature", units.temperature(WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS)).byDefault(OWN));
        readings.put(ReadingCode.WATER_TEMPERATURE, Reading.within(celsius, Instrument.THERMOMETER.halfWidth(1)));
        if (tank != null) {
            double diameter = tank.diameterMetres();
            if (tank.innerDiameter() == null) {
                explanation.assume(Resolved.of("tankWalls", units.length(ResinTankRequest.ASSUMED_WALLS_METRES)).byDefault(OWN));
            }
            readings.put(ReadingCode.TANK_DIAMETER, Reading.within(diameter, off(tank.diameterPlusMinus(), "/resinTank/diameterPlusMinus",
                    tank.diameterBy(), diameter, units::length)));
            double depth = off(tank.depthPlusMinus(), "/resinTank/depthPlusMinus", Instrument.DIP_ROD, 1, units::length);
            readings.put(ReadingCode.TANK_HEIGHT, Reading.within(tank.height().inBase(), depth));
            readings.put(ReadingCode.FREEBOARD, Reading.within(tank.freeboard().inBase(), depth));
            readings.put(ReadingCode.GRAVEL_DEPTH, length("/resinTank/gravelDepth", tank.gravelDepth(), depth));
        }
        SoftenerRequest softener = request.softener();
        if (softener != null && softener.nameplateCapacity() != null) {
            double litres = StandardTank.resinLitresOfNameplate(softener.nameplateCapacity().inBase());
            readings.put(ReadingCode.NAMEPLATE_RESIN, Reading.within(litres, off(null, "nameplateResinPlusMinus", Instrument.NAMEPLATE,
                    litres, units::resinVolume)));
        }
    }

    /** A length that is 0 where it is not given. */
    private Reading length(String place, LengthQuantity given, double off) {
        explanation.resolve(given, 0, Resolved.of(place, units.length(0)).byDefault(OWN));
        return given == null ? Reading.within(0, NONE) : Reading.within(given.inBase(), off);
    }

    private void addBrine() {
        BrineTestRequest test = request.brine();
        if (test == null) {
            readings.put(ReadingCode.BRINE_DEGREES, Reading.within(BrineStrength.ASSUMED_DEGREES,
                    BrineStrength.ASSUMED_DEGREES_HALF_WIDTH));
            explanation.assume(Resolved.of("/brine/degrees", BrineStrength.ASSUMED_DEGREES, "degrees").byDefault(OWN));
        } else {
            double off = test.degreesPlusMinus() != null ? test.degreesPlusMinus().doubleValue() : Instrument.HYDROMETER.halfWidth(1);
            Resolved shown = Resolved.of("/brine/degreesPlusMinus", off, "degrees");
            explanation.assume(test.degreesPlusMinus() != null ? shown : shown.byDefault(Instrument.HYDROMETER.sourceKey()));
            readings.put(ReadingCode.BRINE_DEGREES, Reading.within(test.degrees().doubleValue(), off));
        }
        double celsius = explanation.resolve(test == null ? null : test.temperature(), BrineStrength.SCALE_CELSIUS,
                Resolved.of("/brine/temperature", units.temperature(BrineStrength.SCALE_CELSIUS)).byDefault(OWN));
        readings.put(ReadingCode.BRINE_TEMPERATURE, Reading.within(celsius, Instrument.THERMOMETER.halfWidth(1)));
    }

    private void addBrineTank() {
        BrineTankRequest tank = request.brineTank();
        if (tank == null) {
            return;
        }
        explanation.resolve("/brineTank/shape", tank.shape(), BrineTankShape.ROUND, OWN);
        boolean bothGiven = tank.voidShare() != null && tank.voidSharePlusMinus() != null;
        BrineTankRequest.SaltForm form = bothGiven ? BrineTankRequest.SaltForm.PELLETS
                : explanation.resolve("/brineTank/saltForm", tank.saltForm(), BrineTankRequest.SaltForm.PELLETS, OWN);
        double off = off(tank.levelPlusMinus(), "/brineTank/levelPlusMinus", Instrument.TAPE_IN_BRINE_TANK, 1, units::length);
        readings.put(ReadingCode.BRINE_TANK_WIDTH, Reading.within(tank.width().inBase(), off));
        readings.put(ReadingCode.BRINE_WELL_WIDTH, length("/brineTank/wellWidth", tank.wellWidth(), off));
        readings.put(ReadingCode.BRINE_LEVEL_FALL, Reading.difference(tank.levelBefore().inBase() - tank.levelAfter().inBase(), off));
        double voids = explanation.resolve(tank.voidShare(), Resolved.of("/brineTank/voidShare", form.voidShare(), null)
                .byDefault(form.voidsBy().sourceKey()));
        double voidsOff = explanation.resolve(tank.voidSharePlusMinus(), Resolved.of("/brineTank/voidSharePlusMinus",
                form.voidsBy().halfWidth(voids), null).byDefault(form.voidsBy().sourceKey()));
        readings.put(ReadingCode.VOID_SHARE, Reading.within(voids, voidsOff));
        readings.put(ReadingCode.SALT_SLUMP, Reading.within(1, Instrument.SALT_SLUMP.halfWidth(1)));
        assumeOff("saltSlumpPlusMinus", Resolved.of("saltSlumpPlusMinus", 100 * Instrument.SALT_SLUMP.halfWidth(1), "%"),
                Instrument.SALT_SLUMP);
    }

    private void addHardness() {
        DropTestsRequest tests = request.hardness();
        if (tests == null) {
            return;
        }
        double gpg = HardnessUnit.GPG.toBase(1);
        double drop = explanation.resolve(tests.dropSize(), gpg, Resolved.of("/hardness/dropSize", units.hardness(gpg)).byDefault(OWN));
        readings.put(ReadingCode.RAW_HARDNESS, Reading.toStep(tests.raw().inBase(), drop));
        readings.put(ReadingCode.OUTLET_HARDNESS, Reading.toStep(tests.outlet().inBase(), drop));
        if (tests.tap() != null) {
            readings.put(ReadingCode.TAP_HARDNESS, Reading.toStep(tests.tap().inBase(), drop));
        }
        if (request.run() != null) {
            double step = request.run().testStep().inBase();
            readings.put(ReadingCode.RUN_VOLUME, Reading.within(request.run().volume().inBase() - step / 2, step / 2));
            double table = Instrument.CAPACITY_TABLE.halfWidth(1);
            readings.put(ReadingCode.CAPACITY_TABLE, Reading.within(1, table));
            assumeOff("capacityTablePlusMinus", Resolved.of("capacityTablePlusMinus", 100 * table, "%"), Instrument.CAPACITY_TABLE);
        }
    }

    private void addBooks() {
        SaltBooksRequest books = request.books();
        if (books != null) {
            double usual = MassUnit.POUND.toBase(USUAL_BAG_POUNDS);
            double bag = explanation.resolve(books.bag(), usual, Resolved.of("/books/bag", units.mass(usual)).byDefault(OWN));
            readings.put(ReadingCode.SALT_BOUGHT, Reading.difference(books.salt().inBase(), bag / 2));
            readings.put(ReadingCode.REGENERATIONS, Reading.difference(books.regenerations(), 1 / 2.0));
        }
    }

    private void addPressure() {
        PressureTestRequest test = request.pressure();
        if (test != null) {
            double off = off(test.plusMinus(), "/pressure/plusMinus", Instrument.GAUGE_DIFFERENCE, 1, units::pressure);
            readings.put(ReadingCode.PRESSURE_DROP, Reading.normal(test.dropKilopascals(), Math.sqrt(test.readings() / 3.0) * off));
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Checker;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.Resin;
import dev.brinebook.resin.ResinBead;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.resin.Salt;
import dev.brinebook.resin.TotalCapacity;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.Setting;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.softener.StandardTank;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis;
import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.OptionalDouble;
import java.util.Set;

@SchemaDescription("The existing softener. Give its resin volume, its name plate capacity, or the diameter and height of its tank.")
public record SoftenerRequest(
        @Property(value = "Resin volume. It takes precedence over the name plate and the tank size.", min = ResinBed.MIN_RESIN_LITRES,
                max = Softener.MAX_RESIN_LITRES, unit = "L") VolumeQuantity resinVolume,
        @Property(value = "Name plate capacity. 24,000, 32,000, 48,000 and 64,000 gr usually mean 0.75, 1, 1.5 and 2 cubic "
                + "feet of resin.", min = SoftenerRequest.MIN_NAMEPLATE_GRAMS, max = SoftenerRequest.MAX_NAMEPLATE_GRAMS, unit = "g")
        CapacityQuantity nameplateCapacity,
        @Property(value = "Inner diameter of the resin tank.", min = ResinBed.MIN_TANK_DIAMETER_METRES,
                max = Softener.MAX_TANK_DIAMETER_METRES, unit = "m",
                fallback = "that of the smallest standard tank that holds the resin") LengthQuantity tankDiameter,
        @Property(value = "Inside height of the resin tank.", min = Softener.MIN_TANK_HEIGHT_METRES,
                max = Softener.MAX_TANK_HEIGHT_METRES, unit = "m",
                fallback = "that of the smallest standard tank that holds the resin") LengthQuantity tankHeight,
        @Property(value = "The salt.", fallback = "sodiumChloride", example = "\"sodiumChloride\"") Salt salt,
        @Property(value = "Salt dose of each regeneration: 3 to 20 lb/ft3 of sodium chloride, or the same equivalents of "
                + "potassium chloride. Give this, or saltPerRegeneration.", min = 0,
                aboveMin = true, max = SoftenerRequest.MAX_ANY_DOSE_GRAMS_PER_LITRE, unit = "g/L",
                fallback = "10 lb/ft3, the common setting") SaltDoseQuantity saltDose,
        @Property(value = "Salt per regeneration. Replaces saltDose.", min = 0, aboveMin = true,
                max = SoftenerRequest.MAX_SALT_KILOGRAMS, unit = "kg") MassQuantity saltPerRegeneration,
        @Property("The controller and its settings.") ControlRequest control,
        @Property("Minutes set for each step.") StepMinutesRequest minutes,
        @Property("Flows of the valve, as far as known.") FlowsRequest flows,
        @Property(value = "Age of the resin.", min = 0, max = 60, unit = "years", example = "8",
                fallback = "unknown: no capacity is deducted") BigDecimal resinAgeYears,
        @Property(value = "Exchange sites lost to chlorine and other oxidants per year. Used when the age is given.",
                min = SoftenerRequest.MIN_YEARLY_LOSS_PERCENT,
                max = SoftenerRequest.MAX_YEARLY_LOSS_PERCENT, unit = "%", example = "2", fallback = "1 "
                + "with a private well or without free chlorine, 5 at 1 mg/L of free chlorine or "
                + "more, in proportion between; 3 with a public supply whose chlorine was not "
                + "tested") BigDecimal yearlyCapacityLossPercent,
        @Property("Laboratory test of the resin. Replaces age and chlorine.") ResinTestRequest resinTest,
        @Property(value = "Direction of the brine through the bed. Used when the capacity method is column.",
                fallback = "coCurrent", example = "\"coCurrent\"") Brining.Direction brineDirection,
        @Property(value = "Salt capacity of the brine tank.", min = SaltStore.MIN_CAPACITY_KILOGRAMS,
                max = SaltStore.MAX_CAPACITY_KILOGRAMS, unit = "kg", fallback = "100 kg") MassQuantity brineTankCapacity,
        @Property(value = "Salt in the brine tank at the start.", min = 0, max = SaltStore.MAX_CAPACITY_KILOGRAMS,
                unit = "kg", fallback = "half of its capacity") MassQuantity saltOnHand) implements Checked {

    static final double MIN_YEARLY_LOSS_PERCENT = 100 * ResinEfficiency.LOW_YEARLY_LOSS_SHARE;
    static final double MAX_YEARLY_LOSS_PERCENT = 100 * ResinEfficiency.HIGH_YEARLY_LOSS_SHARE;
    /** Resin beyond which the unit is doubted: far below the smallest standard tank, and the largest. Source: [CP-TANKS]. */
    private static final double ASSUMED_LEAST_USUAL_RESIN_LITRES = 0.1 * Exact.CUBIC_FOOT_LITRES;
    private static final double MOST_USUAL_RESIN_LITRES = 10 * Exact.CUBIC_FOOT_LITRES;
    /** Largest ratio of resin to name plate, or to tank, without a question. */
    private static final double ASSUMED_NAMEPLATE_SLACK = 1.4;
    /** The least share of what goes with the tank; more than it holds is an error. */
    private static final double ASSUMED_LEAST_SHARE_OF_TANK = 0.5;
    static final double MIN_NAMEPLATE_GRAMS = 100;
    static final double MAX_NAMEPLATE_GRAMS = 40_000;
    /** 20 lb/ft³ of sodium chloride in equivalents of potassium chloride; the salt decides what is allowed below it. */
    public static final double MAX_ANY_DOSE_GRAMS_PER_LITRE = 409;
    static final double MAX_SALT_KILOGRAMS = 250;
    /** The rule of thumb that most softeners found are set by. Source: [CP-NAMEPLATE]. */
    static final double COMMON_DOSE_POUNDS_PER_CUBIC_FOOT = 10;
    /** Default salt capacity of a brine tank. */
    static final double ASSUMED_BRINE_TANK_KILOGRAMS = 100;

    @Override
    public void check(Violations at) {
        if (resinVolume == null && nameplateCapacity == null && !knowsTank() && !at.here()) {
            at.add("resinVolume", Code.MISSING, Message.of("softener.missingResinvolumeGiveNameplatecapacity"));
        }
        if (saltDose != null && saltPerRegeneration != null) {
            at.add("saltDose", Code.INCONSISTENT, Message.of("problem.softener.omitWhenSaltperregenerationGiven"));
        }
        if (saltOnHand != null && saltOnHand.value() != null && saltOnHand.unit() != null && !at.at("saltOnHand").here()
                && brineTank() < saltOnHand.inBase()) {
            at.add("saltOnHand", Code.INCONSISTENT, Message.of("problem.softener.mustMostBrinetankcapacity"));
        }
        if (!at.at("salt").here()) {
            SaltDoseRange.check(saltDose, saltOrDefault(), at.at("saltDose"));
        }
        if (!at.here()) {
            checkResin(at);
        }
        if (!at.here()) {
            checkSalt(at);
            checkTank(at);
        }
    }

    private double brineTank() {
        return brineTankCapacity == null || brineTankCapacity.value() == null || brineTankCapacity.unit() == null
                ? ASSUMED_BRINE_TANK_KILOGRAMS : brineTankCapacity.inBase();
    }

    /** A tank alone makes a bed of a size that is allowed. */
    private void checkResin(Violations at) {
        if (!Guard.isWithin(resinLitres(), ResinBed.MIN_RESIN_LITRES, Softener.MAX_RESIN_LITRES)) {
            at.add("tankHeight", Code.INCONSISTENT, Message.of("softener.tankSizeUsuallyHolds", Text.number(resinLitres()),
                    Text.number(ResinBed.MIN_RESIN_LITRES),
                    Text.number(Softener.MAX_RESIN_LITRES)));
        }
    }

    /** The salt of a regeneration makes a dose that the tables cover; the limits are of the salt, as the caller gave it. */
    private void checkSalt(Violations at) {
        if (saltPerRegeneration == null) {
            return;
        }
        double min = CapacityTable.minSaltDoseGramsPerLitre(saltOrDefault());
        double max = CapacityTable.maxSaltDoseGramsPerLitre(saltOrDefault());
        if (!Guard.isWithin(doseGramsPerLitre(), min, max)) {
            Message allowed = Checker.allowed(saltPerRegeneration.unit(), min * resinLitres() / 1000, max * resinLitres() / 1000);
            Violations place = at.at("saltPerRegeneration");
            place.add(new Violation(place.pointer(), Code.OUT_OF_RANGE,
                    Message.of("problem.softener.mustSaltAmountResin", allowed,
                            SaltDoseRange.received(saltPerRegeneration)), allowed, null,
                    Checker.echo(saltPerRegeneration.value())));
        }
    }

    private void checkTank(Violations at) {
        ResinBed bed = new ResinBed(resinLitres(), diameterMetres());
        if (bed.depthMetres() > heightMetres()) {
            at.add(tankHeight == null ? "tankDiameter" : "tankHeight", Code.INCONSISTENT, Message.of(
                    "softener.resinMDeepTank", Text.number(bed.depthMetres()),
                    Text.number(heightMetres())));
        }
    }

    /** The resin with its remaining exchange sites, and the direction of its brine. */
    public ResinState resinState(WaterAnalysis water, Explanation explanation) {
        Brining.Direction direction = explanation.orDefault("softener.brineDirection", brineDirection,
                Brining.Direction.CO_CURRENT);
        return new ResinState(Resin.STANDARD.withSitesLeft(sitesLeft(ResinState.assumedYearlyLossShare(water), explanation)),
                direction);
    }

    /** Share of the exchange sites that a test found or that age has left, where no water test is given. */
    public double sitesLeftInUnknownWater(Explanation explanation) {
        return sitesLeft(ResinState.ASSUMED_PUBLIC_SUPPLY_LOSS_SHARE, explanation);
    }

    private double sitesLeft(double assumedYearlyLossShare, Explanation explanation) {
        if (resinTest != null) {
            return resinTest.sitesLeft("softener.resinTest", Resin.STANDARD.totalEquivalentsPerLitre(), explanation);
        }
        if (resinAgeYears == null) {
            return 1;
        }
        double years = Math.min(ResinEfficiency.MAX_YEARS, resinAgeYears.doubleValue());
        double loss = explanation.orDefault("softener.yearlyCapacityLossPercent", yearlyCapacityLossPercent,
                100 * assumedYearlyLossShare,
                percent -> Message.of("assumed.common.remainingExchangeSites", percent)) / 100;
        double left = ResinEfficiency.remainingShare(years, loss);
        explanation.assume("softener.resinAgeYears", ageInWords(years, Text.number(100 * left)), Origin.CALLER);
        return left;
    }

    private Message ageInWords(double years, BigDecimal leftPercent) {
        return resinAgeYears.doubleValue() > years
                ? Message.of("softener.yearsLongestTimeYearly", Text.number(years), leftPercent)
                : Message.of("softener.yearLeavesExchangeSites", Text.number(years), leftPercent);
    }

    /** The softener in SI, with every default recorded in {@code explanation}. */
    public Softener toDomain(CapacityModel capacity, Explanation explanation) {
        ResinBed bed = bed(ResinBead.DEFAULT, explanation);
        double height = tankHeightMetres(explanation);
        explanation.orDefault("softener.salt", salt, Salt.SODIUM_CHLORIDE);
        return new Softener(bed, height, saltOrDefault(), capacity, cycleFlows());
    }

    /** The resin in its tank, of beads of a kind, with every default recorded in {@code explanation}. */
    public ResinBed bed(ResinBead bead, Explanation explanation) {
        if (!Guard.isWithin(resinLitres(), ASSUMED_LEAST_USUAL_RESIN_LITRES, MOST_USUAL_RESIN_LITRES)) {
            explanation.caution(Caution.RESIN_VOLUME_UNUSUAL);
        }
        if (sizesDisagree()) {
            explanation.caution(Caution.RESIN_SIZES_DISAGREE);
        }
        assumeResin(explanation);
        explanation.orDefault("softener.tankDiameter", tankDiameter, diameterMetres(),
                standardTank(diameterMetres(), explanation));
        return new ResinBed(resinLitres(), diameterMetres(), bead);
    }

    /** Whether nameplate, resin and tank are further apart than makers' roundings explain. */
    private boolean sizesDisagree() {
        double litres = resinLitres();
        double tank = knowsTank() ? StandardTank.resinLitresOfTank(diameterMetres(), heightMetres()) : litres;
        double nameplate = nameplateCapacity != null ? nameplateResinLitres() : litres;
        double most = Math.max(litres, nameplate);
        double least = Math.min(litres, nameplate);
        return most > ASSUMED_NAMEPLATE_SLACK * least || litres < ASSUMED_LEAST_SHARE_OF_TANK * tank
                || resinVolume == null && !Guard.isWithin(litres, tank / ASSUMED_NAMEPLATE_SLACK, tank * ASSUMED_NAMEPLATE_SLACK);
    }

    private void assumeResin(Explanation explanation) {
        if (resinVolume == null) {
            Message usual = inBothUnits(resinLitres(), explanation);
            explanation.assume("softener.resinVolume", nameplateCapacity == null ? ofTank(usual, explanation) : explanation.inUnits(
                    Message.of("softener.usualNamePlate30", usual,
                            Text.of(AnswerUnits.METRIC.capacity(TotalCapacity.NAMEPLATE_GRAMS_PER_LITRE)),
                            Text.of(AnswerUnits.METRIC.capacity(TotalCapacity.HIGHEST_NAMEPLATE_GRAMS_PER_LITRE)))),
                    Origin.DERIVED);
        } else if (nameplateCapacity != null) {
            explanation.assume("softener.nameplateCapacity", Message.of("assumed.softener.usuallyGoesResinGiven",
                    Text.of(nameplateCapacity), inBothUnits(nameplateResinLitres(), explanation)), Origin.CALLER);
        }
    }

    /** Volume of resin in a tank, by its size alone. */
    private Message ofTank(Message resin, Explanation explanation) {
        StandardTank tank = StandardTank.nearest(diameterMetres(), heightMetres());
        return tank.isOfSize(diameterMetres(), heightMetres())
                ? Message.of("softener.resinSoldStandardTank", resin)
                : Message.of("softener.ifTankFilledLike", resin,
                        length(tank.diameterMetres(), explanation), length(tank.heightMetres(), explanation));
    }

    private static Message length(double metres, Explanation explanation) {
        return explanation.inUnits(Text.of(AnswerUnits.US.length(metres)), Text.of(AnswerUnits.METRIC.length(metres)));
    }

    private static Message inBothUnits(double litres, Explanation explanation) {
        return explanation.inBothUnits(AnswerUnits.US.resinVolume(litres), AnswerUnits.METRIC.resinVolume(litres));
    }

    /** Inside height of the tank, with its default recorded in {@code explanation}. */
    public double tankHeightMetres(Explanation explanation) {
        return explanation.orDefault("softener.tankHeight", tankHeight, heightMetres(), standardTank(heightMetres(), explanation));
    }

    /** The flows of the valve and of its site, as far as known. */
    public CycleFlows cycleFlows() {
        return flows == null ? CycleFlows.UNKNOWN : flows.toDomain();
    }

    /** The present dose, g/L, with its default recorded in {@code explanation}. */
    public double doseGramsPerLitre(Explanation explanation) {
        if (!doseRead()) {
            explanation.assume("softener.saltDose", Message.of("assumed.softener.sodiumChlorideCommonSetting",
                    explanation.inUnits(Message.verbatim("10 lb/ft3"), Text.of(AnswerUnits.METRIC.saltDose(
                    SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(COMMON_DOSE_POUNDS_PER_CUBIC_FOOT))))), Origin.DEFAULT);
        } else {
            Message metric = Text.of(AnswerUnits.METRIC.saltDose(doseGramsPerLitre()));
            explanation.assume("softener.saltDose", saltDose != null ? Text.of(saltDose)
                    : explanation.inUnits(Message.of("softener.resinVolumeOr", Text.of(saltPerRegeneration),
                            Text.of(AnswerUnits.US.saltDose(doseGramsPerLitre())), metric),
                            Message.of("softener.resinVolume", Text.of(saltPerRegeneration), metric)), Origin.CALLER);
        }
        return doseGramsPerLitre();
    }

    /** Salt capacity of the brine tank, its present content, and the bags that fill it. */
    public SaltStore saltStore(double bagKilograms, Explanation explanation) {
        double capacity = explanation.orDefault("softener.brineTankCapacity", brineTankCapacity,
                ASSUMED_BRINE_TANK_KILOGRAMS, Text.of(AnswerUnits.METRIC.mass(ASSUMED_BRINE_TANK_KILOGRAMS)));
        double start = explanation.orDefault("softener.saltOnHand", saltOnHand, capacity / 2,
                Message.of("assumed.softener.halfWhatBrineTank"));
        return new SaltStore(capacity, start, bagKilograms);
    }

    /** The softener with its present control; settings that were not read are named. */
    public ExistingSoftener found(SoftenerCase given, Explanation explanation) {
        DesignConditions duty = given.duty();
        Policy policy = control.toPolicy(given.found(), duty, explanation);
        int hour = (int) explanation.orDefault("control.regenerationHour", control.regenerationHour(),
                MeterSettings.REGENERATION_HOUR, clock -> Message.of("pattern.value", LocalTime.of(clock.intValue(), 0)));
        SoftenerSettings setup = setup(given, policy, hour);
        boolean refillRead = refillSaltGrams(duty.water().temperatureCelsius()).isPresent();
        double stated = refillRead && !doseRead() ? setup.saltDoseGramsPerLitre() : given.found().saltDoseGramsPerLitre();
        Set<Setting> unknown = control.unread();
        if (!doseRead() && !refillRead) {
            unknown.add(Setting.SALT_DOSE);
        }
        return new ExistingSoftener(setup, stated, new ExistingSoftener.Meter(FlowsRequest.base(control.hardnessSetting()),
                FlowsRequest.base(control.capacitySetting()), policy.meterVolumeLitres()), unknown);
    }

    private boolean doseRead() {
        return saltDose != null || saltPerRegeneration != null;
    }

    /** The softener under a policy, with the salt that its refill really dissolves where that is known. */
    public SoftenerSettings setup(SoftenerCase given, Policy policy, int hour) {
        double stated = given.found().saltDoseGramsPerLitre();
        double real = refillSaltGrams(given.duty().water().temperatureCelsius()).orElse(stated * resinLitres()) / resinLitres();
        SoftenerSettings setup = new SoftenerSettings(given.found().softener(), real, SoftenerCase.minutes(minutes), policy, hour);
        SoftenerCase.requireCapacity(setup.softener(), setup.countedDoseGramsPerLitre(), "/softener/minutes/refill");
        return setup;
    }

    /** Salt that the refill dissolves, when its minutes and its flow are both known. */
    private OptionalDouble refillSaltGrams(double celsius) {
        boolean known = minutes != null && minutes.refill() != null
                && flows != null && flows.refill() != null;
        return known ? OptionalDouble.of(CycleDesign.saltGramsOfRefill(saltOrDefault(),
                minutes.refill().doubleValue() * cycleFlows().refillOnSiteLitresPerMinute(), celsius)) : OptionalDouble.empty();
    }

    private double doseGramsPerLitre() {
        if (saltDose != null) {
            return saltDose.inBase();
        }
        if (saltPerRegeneration != null) {
            return 1000 * saltPerRegeneration.inBase() / resinLitres();
        }
        return saltOrDefault().fromSodiumChloride(
                SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(COMMON_DOSE_POUNDS_PER_CUBIC_FOOT));
    }

    private Salt saltOrDefault() {
        return salt == null ? Salt.SODIUM_CHLORIDE : salt;
    }

    private double resinLitres() {
        return resinVolume != null ? resinVolume.inBase() : nameplateCapacity != null ? nameplateResinLitres()
                : StandardTank.resinLitresOfTank(tankDiameter.inBase(), tankHeight.inBase());
    }

    private double nameplateResinLitres() {
        return StandardTank.resinLitresOfNameplate(nameplateCapacity.inBase());
    }

    private boolean knowsTank() {
        return tankDiameter != null && tankHeight != null;
    }

    private static Message standardTank(double metres, Explanation explanation) {
        Message metric = Text.of(AnswerUnits.METRIC.length(metres));
        return explanation.inUnits(Message.of("softener.orStandardTank", Text.of(AnswerUnits.US.length(metres)), metric),
                Message.of("softener.standardTank", metric));
    }

    private double diameterMetres() {
        return tankDiameter != null ? tankDiameter.inBase() : standardTank().diameterMetres();
    }

    private double heightMetres() {
        return tankHeight != null ? tankHeight.inBase() : standardTank().heightMetres();
    }

    /** The smallest standard tank for the resin, or the largest there is. */
    private StandardTank standardTank() {
        return StandardTank.smallestFor(resinLitres()).orElseGet(() ->
                StandardTank.all().get(StandardTank.all().size() - 1));
    }
}

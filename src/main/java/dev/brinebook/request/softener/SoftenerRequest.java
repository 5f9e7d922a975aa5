// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Checker;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.guard.Guard;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.BedUncertainty;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.StandardTank;
import dev.brinebook.softener.TankSize;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("The existing softener. Give its resin volume, its name plate capacity, or the diameter and height of its tank.")
@Alternatives(value = {"resinVolume", "nameplateCapacity", "tankDiameter + tankHeight"}, required = true, several = true)
@Alternatives({"saltPerRegeneration", "saltDose"})
public record SoftenerRequest(
        @Property(value = "Resin volume. It takes precedence over the name plate and the tank size.", min = ResinBed.MIN_RESIN_LITRES,
                max = Softener.MAX_RESIN_LITRES, unit = "L") VolumeQuantity resinVolume,
        @Property(value = "Name plate capacity. 24,000, 32,000, 48,000 and 64,000 gr usually mean 0.75, 1, 1.5 and 2 cubic "
                + "feet of resin.", min = SoftenerRequest.MIN_NAMEPLATE_GRAMS, max = SoftenerRequest.MAX_NAMEPLATE_GRAMS, unit = "g")
        CapacityQuantity nameplateCapacity,
        @Property(value = "Inner diameter of the resin tank.", min = ResinBed.MIN_TANK_DIAMETER_METRES,
                max = Softener.MAX_TANK_DIAMETER_METRES, unit = "m",
                fallback = "that of the smallest standard tank that holds the resin; what depends on it is not checked")
        LengthQuantity tankDiameter,
        @Property(value = "Inside height of the resin tank.", min = Softener.MIN_TANK_HEIGHT_METRES,
                max = Softener.MAX_TANK_HEIGHT_METRES, unit = "m",
                fallback = "that of the smallest standard tank that holds the resin; what depends on it is not checked")
        LengthQuantity tankHeight,
        @Property(value = "The salt.", defaultCode = "sodiumChloride", example = "\"sodiumChloride\"") Salt salt,
        @Property(value = "Salt dose of each regeneration: 3 to 20 lb/ft3 of sodium chloride, or the same equivalents of "
                + "potassium chloride. Give this, or saltPerRegeneration.", min = 0,
                aboveMin = true, max = SoftenerRequest.MAX_ANY_DOSE_GRAMS_PER_LITRE, unit = "g/L",
                byDefault = SoftenerRequest.COMMON_DOSE_POUNDS_PER_CUBIC_FOOT, defaultUnit = "lb/ft3",
                fallback = "the common setting") SaltDoseQuantity saltDose,
        @Property(value = "Salt per regeneration. Replaces saltDose.", min = 0, aboveMin = true,
                max = SoftenerRequest.MAX_SALT_KILOGRAMS, unit = "kg") MassQuantity saltPerRegeneration,
        @Property("The controller and its settings.") ControlRequest control,
        @Property("Minutes set for each step.") StepMinutesRequest minutes,
        @Property("Flows of the valve, as far as known.") FlowsRequest flows,
        @Property(value = "Age of the resin.", min = 0, max = 60, unit = "years", example = "8",
                fallback = "unknown: no capacity is deducted") BigDecimal resinAgeYears,
        @Property(value = "Exchange sites lost to chlorine and other oxidants per year. Used when the age is given.",
                min = SoftenerRequest.MIN_YEARLY_LOSS_PERCENT,
                max = SoftenerRequest.MAX_YEARLY_LOSS_PERCENT, unit = "%", example = "2",
                fallback = ResinState.ASSUMED_YEARLY_LOSS) BigDecimal yearlyCapacityLossPercent,
        @Property("Laboratory test of the resin. Replaces age and chlorine.") ResinTestRequest resinTest,
        @Property(value = "Direction of the brine through the bed. Used when the capacity method is column.",
                defaultCode = "coCurrent", example = "\"coCurrent\"") Brining.Direction brineDirection,
        @Property(value = "Salt capacity of the brine tank.", min = SaltStore.MIN_CAPACITY_KILOGRAMS,
                max = SaltStore.MAX_CAPACITY_KILOGRAMS, unit = "kg", byDefault = SoftenerRequest.ASSUMED_BRINE_TANK_KILOGRAMS)
        MassQuantity brineTankCapacity,
        @Property(value = "Salt in the brine tank at the start.", min = 0, max = SaltStore.MAX_CAPACITY_KILOGRAMS,
                unit = "kg", fallback = "half of its capacity") MassQuantity saltOnHand,
        @Property("Uncertainty of what was measured. Used by assess and reviewSettings.") SoftenerUncertaintyRequest uncertainty)
        implements Checked {
    static final double MIN_YEARLY_LOSS_PERCENT = 100 * ResinEfficiency.LOW_YEARLY_LOSS_SHARE;
    static final double MAX_YEARLY_LOSS_PERCENT = 100 * ResinEfficiency.HIGH_YEARLY_LOSS_SHARE;
    static final double MIN_NAMEPLATE_GRAMS = 100;
    static final double MAX_NAMEPLATE_GRAMS = 40_000;
    /** 20 lb/ft³ of sodium chloride in equivalents of potassium chloride; the salt decides what is allowed below it. */
    public static final double MAX_ANY_DOSE_GRAMS_PER_LITRE = 409;
    static final double MAX_SALT_KILOGRAMS = 250;
    /** The rule of thumb that most softeners found are set by. Source: [CP-NAMEPLATE]. */
    static final double COMMON_DOSE_POUNDS_PER_CUBIC_FOOT = 10;
    static final double COMMON_DOSE_GRAMS_PER_LITRE = SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(COMMON_DOSE_POUNDS_PER_CUBIC_FOOT);
    static final Salt DEFAULT_SALT = Salt.SODIUM_CHLORIDE;
    /** Default salt capacity of a brine tank. */
    static final double ASSUMED_BRINE_TANK_KILOGRAMS = 100;

    @Override
    public void check(Violations at) {
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
        if (uncertainty != null && !at.here()) {
            uncertainty.checkAgainst(this, at.at("uncertainty"));
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
                            SaltDoseRange.received(saltPerRegeneration)), List.of(allowed), null,
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

    boolean doseRead() {
        return saltDose != null || saltPerRegeneration != null;
    }

    double doseGramsPerLitre() {
        if (saltDose != null) {
            return saltDose.inBase();
        }
        if (saltPerRegeneration != null) {
            return 1000 * saltPerRegeneration.inBase() / resinLitres();
        }
        return saltOrDefault().fromSodiumChloride(COMMON_DOSE_GRAMS_PER_LITRE);
    }

    public Salt saltOrDefault() {
        return salt == null ? DEFAULT_SALT : salt;
    }

    double resinLitres() {
        return resinVolume != null ? resinVolume.inBase() : nameplateCapacity != null ? nameplateResinLitres()
                : StandardTank.resinLitresOfTank(tankDiameter.inBase(), tankHeight.inBase());
    }

    double nameplateResinLitres() {
        return StandardTank.resinLitresOfNameplate(nameplateCapacity.inBase());
    }

    boolean knowsTank() {
        return tankDiameter != null && tankHeight != null;
    }

    /** How much of the size of its tank is given; a resin volume that is worked out from the tank needs both. */
    TankSize tankSize() {
        return tankDiameter == null ? TankSize.UNKNOWN : tankHeight == null ? TankSize.DIAMETER_KNOWN : TankSize.KNOWN;
    }

    double diameterMetres() {
        return tankDiameter != null ? tankDiameter.inBase() : standardTank().diameterMetres();
    }

    double heightMetres() {
        return tankHeight != null ? tankHeight.inBase() : standardTank().heightMetres();
    }

    /** The smallest standard tank for the resin, or the largest there is. */
    StandardTank standardTank() {
        return StandardTank.smallestFor(resinLitres()).orElseGet(() ->
                StandardTank.all().get(StandardTank.all().size() - 1));
    }

    /** How far what was measured of it may be off. */
    public BedUncertainty bedUncertainty() {
        return uncertainty == null ? BedUncertainty.NONE : uncertainty.toDomain(this);
    }

    /** Salt of a regeneration as given, kg. */
    double saltKilograms() {
        return doseGramsPerLitre() * resinLitres() / 1000;
    }

    /** What is calculated with, made of this. */
    public ResolvedSoftener resolved(Model model) {
        return new ResolvedSoftener(this, model);
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.guard.Guard;
import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;
import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.Resin;
import dev.brinebook.resin.ResinBead;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.resin.Salt;
import dev.brinebook.resin.TotalCapacity;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Setting;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.softener.StandardTank;
import dev.brinebook.softener.TankSize;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis;
import java.math.BigDecimal;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The softener of a request in the domain: resin, tank, salt, control. Whatever the request leaves out is resolved, and recorded.
 *
 * @param request without violations
 * @param model the model to calculate with
 */
public record ResolvedSoftener(SoftenerRequest request, Model model) {

    /** Resin beyond which the unit is doubted: far below the smallest standard tank, and the largest. Source: [CP-TANKS]. */
    private static final double ASSUMED_LEAST_USUAL_RESIN_LITRES = 0.1 * Exact.CUBIC_FOOT_LITRES;
    private static final double MOST_USUAL_RESIN_LITRES = 10 * Exact.CUBIC_FOOT_LITRES;
    /** Largest ratio of resin to name plate, or to tank, without a question. */
    private static final double ASSUMED_NAMEPLATE_SLACK = 1.4;
    /** The least share of what goes with the tank; more than it holds is an error. */
    private static final double ASSUMED_LEAST_SHARE_OF_TANK = 0.5;

    /** The resin with its remaining exchange sites, and the direction of its brine. */
    public ResinState resinState(WaterAnalysis water, Explanation explanation) {
        Brining.Direction direction = explanation.resolve("/softener/brineDirection", request.brineDirection(),
                Brining.Direction.CO_CURRENT, "CP-WORKING-TABLE");
        return new ResinState(Resin.STANDARD.withSitesLeft(sitesLeft(ResinState.assumedYearlyLossShare(water), explanation)),
                direction);
    }

    /** Share of the exchange sites that a test found or that age has left, where no water test is given. */
    public double sitesLeftInUnknownWater(Explanation explanation) {
        return sitesLeft(ResinState.ASSUMED_PUBLIC_SUPPLY_LOSS_SHARE, explanation);
    }

    private double sitesLeft(double assumedYearlyLossShare, Explanation explanation) {
        if (request.resinTest() != null) {
            return request.resinTest().sitesLeft("/softener/resinTest", Resin.STANDARD.totalEquivalentsPerLitre(), explanation);
        }
        if (request.resinAgeYears() == null) {
            return 1;
        }
        double years = Math.min(ResinEfficiency.MAX_YEARS, request.resinAgeYears().doubleValue());
        double loss = explanation.resolve(request.yearlyCapacityLossPercent(), 100 * assumedYearlyLossShare,
                Resolved.of("/softener/yearlyCapacityLossPercent", 100 * assumedYearlyLossShare, "%").byDefault("UFC-3-240-13FN")
                        .noting(Message.of("assumed.common.remainingExchangeSites"))) / 100;
        double left = ResinEfficiency.remainingShare(years, loss);
        BigDecimal leftPercent = Text.digits(100 * left);
        explanation.assume(Resolved.of("/softener/resinAgeYears", request.resinAgeYears(),
                "years").noting(request.resinAgeYears().doubleValue() > years
                ? Message.of("softener.yearsLongestTimeYearly", Text.digits(years), leftPercent)
                : Message.of("softener.yearLeavesExchangeSites", leftPercent)));
        return left;
    }

    /** The softener in SI, with every default recorded in {@code explanation}. */
    public Softener toDomain(CapacityModel capacity, Explanation explanation) {
        ResinBed bed = bed(ResinBead.DEFAULT, explanation);
        double height = tankHeightMetres(explanation);
        Salt used = explanation.resolve("/softener/salt", request.salt(), SoftenerRequest.DEFAULT_SALT, "OWN-ASSUMPTION");
        return new Softener(bed, height, used, capacity, cycleFlows());
    }

    /** The resin in its tank, of beads of a kind, with every default recorded in {@code explanation}. */
    public ResinBed bed(ResinBead bead, Explanation explanation) {
        if (!Guard.isWithin(request.resinLitres(), ASSUMED_LEAST_USUAL_RESIN_LITRES, MOST_USUAL_RESIN_LITRES)) {
            explanation.caution(Caution.RESIN_VOLUME_UNUSUAL);
        }
        if (sizesDisagree()) {
            explanation.caution(Caution.RESIN_SIZES_DISAGREE);
        }
        assumeResin(explanation);
        double diameter = resolveTank("/softener/tankDiameter", request.tankDiameter(), request.diameterMetres(), explanation);
        return new ResinBed(request.resinLitres(), diameter, bead);
    }

    /** Whether nameplate, resin and tank are further apart than makers' roundings explain. */
    private boolean sizesDisagree() {
        double litres = request.resinLitres();
        double tank = request.knowsTank() ? StandardTank.resinLitresOfTank(request.diameterMetres(), request.heightMetres()) : litres;
        double nameplate = request.nameplateCapacity() != null ? request.nameplateResinLitres() : litres;
        double most = Math.max(litres, nameplate);
        double least = Math.min(litres, nameplate);
        return most > ASSUMED_NAMEPLATE_SLACK * least || litres < ASSUMED_LEAST_SHARE_OF_TANK * tank
                || request.resinVolume() == null && !Guard.isWithin(litres, tank / ASSUMED_NAMEPLATE_SLACK, tank * ASSUMED_NAMEPLATE_SLACK);
    }

    private void assumeResin(Explanation explanation) {
        AnswerUnits units = AnswerUnits.of(explanation);
        if (request.resinVolume() == null) {
            Resolved usual = Resolved.of("/softener/resinVolume", units.resinVolume(request.resinLitres()));
            explanation.assume(request.nameplateCapacity() == null ? usual.estimated("CP-TANKS").noting(ofTank(units))
                    : usual.estimated("CP-NAMEPLATE").noting(explanation.inUnits(Message.of("softener.usualNamePlate30",
                            Text.of(AnswerUnits.METRIC.capacity(TotalCapacity.NAMEPLATE_GRAMS_PER_LITRE)),
                            Text.of(AnswerUnits.METRIC.capacity(TotalCapacity.HIGHEST_NAMEPLATE_GRAMS_PER_LITRE))))));
        } else if (request.nameplateCapacity() != null) {
            explanation.assume(Resolved.of("/softener/nameplateCapacity", request.nameplateCapacity()).noting(Message.of(
                    "assumed.softener.usuallyGoesResinGiven", Text.of(units.resinVolume(request.nameplateResinLitres())))));
        }
    }

    /** How a tank, by its size alone, gives its resin. */
    private Message ofTank(AnswerUnits units) {
        StandardTank tank = StandardTank.nearest(request.diameterMetres(), request.heightMetres());
        return tank.isOfSize(request.diameterMetres(), request.heightMetres()) ? Message.of("softener.resinSoldStandardTank")
                : Message.of("softener.ifTankFilledLike", Text.of(units.length(tank.diameterMetres())),
                        Text.of(units.length(tank.heightMetres())));
    }

    /** Inside height of the tank, with its default recorded in {@code explanation}. */
    public double tankHeightMetres(Explanation explanation) {
        return resolveTank("/softener/tankHeight", request.tankHeight(), request.heightMetres(), explanation);
    }

    /** How much of the size of its tank is known; what is not known refuses nothing. */
    public TankSize tankSize() {
        return model.has(ModelChange.ASSUMED_TANKS_REFUSE_NOTHING) ? request.tankSize() : TankSize.KNOWN;
    }

    /** Records in {@code explanation} what of the size of its tank is not given; {@code pointer} is its place in the request. */
    public void assumeTank(String pointer, Explanation explanation) {
        if (request.tankDiameter() == null) {
            resolveTank(pointer + "/tankDiameter", null, request.diameterMetres(), explanation);
        }
        if (request.tankHeight() == null) {
            resolveTank(pointer + "/tankHeight", null, request.heightMetres(), explanation);
        }
    }

    private static double resolveTank(String pointer, LengthQuantity given, double metres, Explanation explanation) {
        return explanation.resolve(given, metres, Resolved.of(pointer, AnswerUnits.of(explanation).length(metres))
                .estimated("CP-TANKS").noting(pointer.endsWith("tankDiameter")
                        ? Message.of("softener.standardTankForFlows") : Message.of("softener.standardTank")));
    }

    /** The flows of the valve and of its site, as far as known. */
    public CycleFlows cycleFlows() {
        return request.flows() == null ? CycleFlows.UNKNOWN : request.flows().toDomain(model);
    }

    /** The present dose, g/L, with its default recorded in {@code explanation}. */
    public double doseGramsPerLitre(Explanation explanation) {
        Resolved dose = Resolved.of("/softener/saltDose", AnswerUnits.of(explanation).saltDose(request.doseRead()
                ? request.doseGramsPerLitre()
                : SoftenerRequest.COMMON_DOSE_GRAMS_PER_LITRE));
        if (request.saltDose() != null) {
            explanation.assume(Resolved.of("/softener/saltDose", request.saltDose()));
        } else if (request.saltPerRegeneration() != null) {
            explanation.assume(Resolved.of("/softener/saltPerRegeneration", request.saltPerRegeneration()));
            explanation.assume(dose.estimated("REQUEST").noting(Message.of("softener.resinVolume")));
        } else {
            explanation.assume(dose.byDefault("CP-NAMEPLATE").noting(Message.of("assumed.softener.sodiumChlorideCommonSetting")));
        }
        return request.doseGramsPerLitre();
    }

    /** Salt capacity of the brine tank, its present content, and the bags that fill it. */
    public SaltStore saltStore(double bagKilograms, Explanation explanation) {
        AnswerUnits units = AnswerUnits.of(explanation);
        double capacity = explanation.resolve(request.brineTankCapacity(), SoftenerRequest.ASSUMED_BRINE_TANK_KILOGRAMS, Resolved.of(
                "/softener/brineTankCapacity", units.mass(SoftenerRequest.ASSUMED_BRINE_TANK_KILOGRAMS)).byDefault("OWN-ASSUMPTION"));
        double start = explanation.resolve(request.saltOnHand(), capacity / 2, Resolved.of("/softener/saltOnHand", units.mass(capacity / 2))
                .byDefault("OWN-ASSUMPTION").noting(Message.of("assumed.softener.halfWhatBrineTank")));
        return new SaltStore(capacity, start, bagKilograms);
    }

    /** The softener with its present control; settings that were not read are named. */
    public ExistingSoftener found(SoftenerCase given, Explanation explanation) {
        DesignConditions duty = given.duty();
        Policy policy = request.control().toPolicy(ControlRequest.OF_SOFTENER, given.found(), duty, explanation);
        int hour = request.control().hour(ControlRequest.OF_SOFTENER, explanation);
        SoftenerSettings setup = setup(given, policy, hour);
        recordFlows(setup, duty, explanation);
        boolean refillRead = refillSaltGrams(duty.water().temperatureCelsius()).isPresent();
        double stated = refillRead && !request.doseRead() ? setup.saltDoseGramsPerLitre() : given.found().saltDoseGramsPerLitre();
        Set<Setting> unknown = request.control().unread();
        if (!request.doseRead() && !refillRead) {
            unknown.add(Setting.SALT_DOSE);
        }
        return new ExistingSoftener(setup, stated, new ExistingSoftener.Meter(FlowsRequest.base(request.control().hardnessSetting()),
                FlowsRequest.base(request.control().capacitySetting()), policy.meterVolumeLitres()), unknown, tankSize());
    }

    /** The flows that the regenerations of a softener are calculated with. */
    public void recordFlows(SoftenerSettings setup, DesignConditions duty, Explanation explanation) {
        CycleDesign design = setup.softener().cycleDesign(setup.countedDoseGramsPerLitre(), duty.water().temperatureCelsius());
        CycleFlowAssumptions.record(request.flows(), design, design.cycle(), explanation);
    }

    /** The softener under a policy, with the salt that its refill really dissolves where that is known. */
    public SoftenerSettings setup(SoftenerCase given, Policy policy, int hour) {
        double stated = given.found().saltDoseGramsPerLitre();
        double real = refillSaltGrams(given.duty().water().temperatureCelsius())
                .orElse(stated * request.resinLitres()) / request.resinLitres();
        SoftenerSettings setup = new SoftenerSettings(given.found().softener(), real, SoftenerCase.minutes(request.minutes()), policy,
                hour);
        SoftenerCase.requireCapacity(setup.softener(), setup.countedDoseGramsPerLitre(), "/softener/minutes/refill");
        return setup;
    }

    /** Salt that the refill dissolves, when its minutes and its flow are both known. */
    private OptionalDouble refillSaltGrams(double celsius) {
        boolean known = request.minutes() != null && request.minutes().refill() != null
                && request.flows() != null && request.flows().refill() != null;
        return known ? OptionalDouble.of(CycleDesign.saltGramsOfRefill(request.saltOrDefault(),
                request.minutes().refill().doubleValue() * cycleFlows().refillOnSiteLitresPerMinute(), celsius)) : OptionalDouble.empty();
    }
}

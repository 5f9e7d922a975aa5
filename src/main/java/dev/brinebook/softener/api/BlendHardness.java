package dev.brinebook.softener.api;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.caution.Caution;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.ConcentrationQuantity;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.BlendedSoftening;
import dev.brinebook.softener.Softener;
import dev.brinebook.water.Blend;
import dev.brinebook.water.BlendedWater;
import dev.brinebook.water.SoftenedWater;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.water.api.HardnessClasses;
import dev.brinebook.water.api.HardnessLines;
import dev.brinebook.water.api.SoftenedWaterAnswer;
import java.util.List;
import java.util.OptionalDouble;

/** Which bypass round a softener leaves a chosen hardness. */
public final class BlendHardness {

    public static final Operation<BlendingRequest, BlendingAnswer> OPERATION = new Operation<>(
            "blendHardness", "/v1/hardness-blending", "Leave a chosen hardness by a bypass",
            "Choose this when the water is not to be wholly soft: it works out which share of the water passes by the"
                    + " softener to leave the hardness asked for, and what that changes in load on the resin, sodium"
                    + " or potassium added, days between regenerations and salt; and what stays of iron and"
                    + " manganese, which pass by with it. How hard the raw water is with its iron is told by"
                    + " compensateHardness; when a softener regenerates by scheduleRegeneration.",
            BlendingRequest.class, BlendingAnswer.class, BlendHardness::answer, List.of(),
            List.of("well-family", "apartment"));

    private BlendHardness() {
    }

    /** The softener as far as it counts here: what a regeneration restores and takes. */
    private record Dosed(Salt salt, double capacityGrams, double saltGrams, CapacityModel capacity) {
    }

    private static BlendingAnswer answer(BlendingRequest request) {
        AnswerUnits units = AnswerUnits.orDefault(request.units());
        Explanation explanation = new Explanation();
        WaterAnalysis raw = request.water().toDomain(explanation);
        double leakage = explanation.orDefault("leakageHardness", request.leakageHardness(),
                Blend.DEFAULT_LEAKAGE_MG_PER_L, "0 gpg");
        Blend blend = new Blend(raw.hardnessMgPerL(), request.residualHardness().inBase(), leakage);
        Dosed dosed = request.softener() == null ? null : dosed(request, raw, explanation);
        Salt salt = dosed == null ? explanation.orDefault("softener.salt", null, Salt.SODIUM_CHLORIDE) : dosed.salt();
        BlendedWater water = new BlendedWater(raw, raw.compensated(request.water().factors(explanation)), blend,
                salt == Salt.POTASSIUM_CHLORIDE);
        double litres = request.household().toDomain(explanation).meanLitres();
        explain(water, dosed, explanation);
        SofteningEffort without = effort(litres * water.fullLoadMgPerL() / 1000, dosed, SoftenedWaterAnswer.of(
                water.fullySoftened(), units, "/withoutBypass/water", explanation), units);
        SofteningEffort with = effort(litres * water.loadMgPerL() / 1000, dosed, SoftenedWaterAnswer.of(
                water.softened(), units, "/withBypass/water", explanation), units);
        return new BlendingAnswer(explanation.behindStops(summary(request, water, litres, with, without, units)),
                HardnessLines.of(water.hardness(), raw.hardnessUncertaintyMgPerL(), units, "/hardness", explanation),
                units.hardness(blend.residualMgPerL()), HardnessClasses.of(blend.residualMgPerL()),
                Rounding.answer(100 * blend.bypassShare()), units.volume(litres),
                units.volume(blend.bypassShare() * litres), units.volume(blend.resinShare() * litres),
                left(water.ironMgPerL(), units), left(water.manganeseMgPerL(), units), without, with,
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static Dosed dosed(BlendingRequest request, WaterAnalysis raw, Explanation explanation) {
        CapacityModel capacity = PreferencesRequest.orNone(request.preferences()).capacity(request.water(), raw,
                request.softener().resinState(raw, explanation), explanation);
        Softener softener = request.softener().toDomain(capacity, explanation);
        double dose = request.softener().doseGramsPerLitre(explanation);
        SoftenerCase.requireCapacity(softener, dose, "/softener/saltDose");
        return new Dosed(softener.salt(), softener.capacityGrams(dose), softener.saltGrams(dose), capacity);
    }

    private static SofteningEffort effort(double dailyLoadGrams, Dosed dosed, SoftenedWaterAnswer water,
            AnswerUnits units) {
        if (dosed == null) {
            return new SofteningEffort(units.capacity(dailyLoadGrams), water, null, null);
        }
        var softening = new BlendedSoftening(dosed.capacityGrams(), dosed.saltGrams(), dailyLoadGrams);
        return new SofteningEffort(units.capacity(dailyLoadGrams), water, FigureAnswer.of(softening.days(), 1),
                units.mass(softening.saltGramsPerYear() / 1000));
    }

    private static ConcentrationQuantity left(OptionalDouble mgPerL, AnswerUnits units) {
        return mgPerL.isPresent() ? units.concentration(mgPerL.getAsDouble()) : null;
    }

    private static String summary(BlendingRequest request, BlendedWater water, double litres, SofteningEffort with,
            SofteningEffort without, AnswerUnits units) {
        Blend blend = water.blend();
        String days = with.daysBetweenRegenerations() == null || with.daysBetweenRegenerations().value() == null ? ""
                : ", and the capacity lasts " + Text.number(with.daysBetweenRegenerations().value().doubleValue())
                        + " days of mean use" + (without.daysBetweenRegenerations().value() == null ? "" : " instead of "
                        + Text.number(without.daysBetweenRegenerations().value().doubleValue()));
        return "A bypass of " + Text.number(100 * blend.bypassShare()) + " % leaves "
                + Text.of(request.residualHardness()) + ": " + Text.of(units.volume(blend.bypassShare() * litres))
                + " of a mean day pass by the softener and " + Text.of(units.volume(blend.resinShare() * litres))
                + " pass the resin. It adds " + added(water.softened(), units) + " instead of "
                + added(water.fullySoftened(), units) + (water.potassiumSalt() ? " of potassium" : " of sodium") + days + ".";
    }

    private static String added(SoftenedWater water, AnswerUnits units) {
        return Text.of(units.concentration(water.addedPotassiumMgPerL() + water.addedSodiumMgPerL())).toString();
    }

    private static void explain(BlendedWater water, Dosed dosed, Explanation explanation) {
        explanation.cautions(WaterCautions.of(water.raw()));
        explanation.cautions(water.cautions());
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES);
        explanation.assume("dayOverride", "left out of the days between regenerations: a control that has one regenerates no"
                + " later than it says", Origin.DEFAULT);
        explanation.assume("mixing", "the bypass keeps its share at every flow", Origin.DEFAULT);
        explanation.assume("ironAndManganese", "dissolved iron and manganese are taken out of the water that passes the"
                + " resin and stay in the water that passes by", Origin.DEFAULT);
        explanation.because("/bypassPercent", "residual less leakage over tested hardness less leakage", "DAVIS-CORNWELL");
        explanation.because("/waterThroughBypass", "mean use times the bypass", "DAVIS-CORNWELL");
        explanation.because("/waterThroughResin", "mean use less what passes by", "DAVIS-CORNWELL");
        explanation.because("/residualClasses", "three scales, which disagree", "USGS-HARDNESS");
        explanation.because("/ironLeft", "iron times the bypass; all of it where it is not dissolved, which no softener"
                + " takes out", "CP-RESIN-CARE");
        explanation.because("/manganeseLeft", "manganese times the bypass", "CP-RESIN-CARE");
        explanation.because("/withoutBypass/dailyLoad", "mean use times compensated hardness less leakage", "WQP-2009");
        explanation.because("/withBypass/dailyLoad", "the same for the water that passes the resin", "DAVIS-CORNWELL");
        if (dosed != null) {
            for (String side : List.of("/withoutBypass", "/withBypass")) {
                CapacityBasis.explain(side + "/daysBetweenRegenerations", dosed.capacity(), ", over the daily load",
                        explanation);
                explanation.because(side + "/saltPerYear", "365 days over those between regenerations, times the salt of"
                        + " one: by mean days, not tried day by day", "WQP-2009");
            }
        }
    }
}

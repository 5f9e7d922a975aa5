// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.water.HardnessClasses;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.answer.water.SoftenedWaterAnswer;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.BlendedSoftening;
import dev.brinebook.softener.ControllerTerms;
import dev.brinebook.softener.Softener;
import dev.brinebook.text.Message;
import dev.brinebook.water.Blend;
import dev.brinebook.water.BlendedWater;
import dev.brinebook.water.SoftenedWater;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Which bypass round a softener leaves a chosen hardness. */
public final class BlendHardness {

    public static final Operation<BlendingRequest, BlendingAnswer> OPERATION = new Operation<>(
            "blendHardness", "/v1/hardness-blending", "Blend to a chosen hardness with a bypass",
            "Choose this to blend softened water to a chosen hardness. It calculates the share of water that bypasses the softener, the "
                    + "change in hardness load, sodium or potassium added, days between regenerations and salt, and the iron and "
                    + "manganese left by the bypass. For the compensated hardness of the raw water choose compensateHardness. For the "
                    + "regenerations of a softener choose scheduleRegeneration.",
            BlendingRequest.class, BlendingAnswer.class, BlendHardness::answer, List.of(),
            List.of("well-family", "apartment"));

    private BlendHardness() {
    }

    /** The softener as needed here: capacity and salt of a regeneration. */
    private record Dosed(Salt salt, double capacityGrams, double saltGrams, CapacityModel capacity) {
    }

    private static BlendingAnswer answer(BlendingRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        WaterAnalysis raw = request.water().toDomain(explanation);
        double leakage = explanation.resolve(request.leakageHardness(), Blend.DEFAULT_LEAKAGE_MG_PER_L,
                Resolved.of("/leakageHardness", units.hardness(Blend.DEFAULT_LEAKAGE_MG_PER_L)).byDefault("DAVIS-CORNWELL"));
        Blend blend = new Blend(raw.hardnessMgPerL(), request.residualHardness().inBase(), leakage);
        Dosed dosed = request.softener() == null ? null : dosed(request, raw, model, explanation);
        Salt salt = dosed == null ? explanation.resolve("/softener/salt", null, Salt.SODIUM_CHLORIDE, "OWN-ASSUMPTION") : dosed.salt();
        BlendedWater water = new BlendedWater(raw, raw.compensated(request.water().factors(explanation)), blend,
                salt == Salt.POTASSIUM_CHLORIDE);
        double litres = request.household().resolved().toDomain(explanation).meanLitres();
        ControllerTerms controller = PreferencesRequest.orNone(request.preferences()).controllerTerms(
                request.softener() == null ? null : request.softener().control(), request.household().country(), units, model,
                explanation);
        explain(water, dosed, units, explanation);
        request.water().questionUnit(explanation);
        SofteningDemand without = effort(litres * water.fullLoadMgPerL() / 1000, dosed, SoftenedWaterAnswer.of(
                water.fullySoftened(), units), units);
        SofteningDemand with = effort(litres * water.loadMgPerL() / 1000, dosed, SoftenedWaterAnswer.of(
                water.softened(), units), units);
        return new BlendingAnswer(explanation.behindStops(summary(request, water, litres, with, without, units)),
                HardnessLines.of(water.hardness(), raw.hardnessUncertaintyMgPerL(), controller.hardness(), units, "/hardness",
                        explanation),
                units.hardness(blend.residualMgPerL()), HardnessClasses.of(blend.residualMgPerL()),
                Rounding.answer(100 * blend.bypassShare()), units.volume(litres),
                units.volume(blend.bypassShare() * litres), units.volume(blend.resinShare() * litres),
                left(water.ironMgPerL(), units), left(water.manganeseMgPerL(), units), without, with,
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static Dosed dosed(BlendingRequest request, WaterAnalysis raw, Model model, Explanation explanation) {
        CapacityModel capacity = PreferencesRequest.orNone(request.preferences()).capacity(request.water(), raw,
                request.softener().resolved(model).resinState(raw, explanation), explanation);
        Softener softener = request.softener().resolved(model).toDomain(capacity, explanation);
        double dose = request.softener().resolved(model).doseGramsPerLitre(explanation);
        SoftenerCase.requireCapacity(softener, dose, "/softener/saltDose");
        return new Dosed(softener.salt(), softener.capacityGrams(dose), softener.saltGrams(dose), capacity);
    }

    private static SofteningDemand effort(double dailyLoadGrams, Dosed dosed, SoftenedWaterAnswer water,
            AnswerUnits units) {
        if (dosed == null) {
            return new SofteningDemand(units.capacity(dailyLoadGrams), water, null, null);
        }
        var softening = new BlendedSoftening(dosed.capacityGrams(), dosed.saltGrams(), dailyLoadGrams);
        return new SofteningDemand(units.capacity(dailyLoadGrams), water, OptionalResultAnswer.of(softening.days(), 1),
                units.mass(softening.saltGramsPerYear() / 1000));
    }

    private static ConcentrationQuantity left(OptionalDouble mgPerL, AnswerUnits units) {
        return mgPerL.isPresent() ? units.concentration(mgPerL.getAsDouble()) : null;
    }

    private static Message summary(BlendingRequest request, BlendedWater water, double litres, SofteningDemand with,
            SofteningDemand without, AnswerUnits units) {
        Blend blend = water.blend();
        List<Message> sentences = new ArrayList<>();
        boolean saves = with.saltPerYear() != null && without.saltPerYear() != null
                && without.saltPerYear().value().compareTo(with.saltPerYear().value()) > 0;
        Message saved = saves ? Text.rounded(new MassQuantity(without.saltPerYear().value().subtract(with.saltPerYear().value()),
                with.saltPerYear().unit())) : Message.verbatim("");
        sentences.add(Message.of("blendHardness.bypassGivesSavesSalt", Text.whole(100 * blend.bypassShare()),
                Text.setting(request.residualHardness()), Text.rounded(units.volume(blend.bypassShare() * litres)),
                Text.rounded(units.volume(blend.resinShare() * litres)), saves ? "yes" : "no", saved));
        Message less = added(water.softened(), units);
        Message full = added(water.fullySoftened(), units);
        sentences.add(water.potassiumSalt() ? Message.of("problem.softener.blendedWaterAddedPotassium", less, full)
                : Message.of("problem.softener.blendedWaterAddedSodium", less, full));
        if (with.daysBetweenRegenerations() != null && with.daysBetweenRegenerations().value() != null) {
            sentences.add(lasts(with.daysBetweenRegenerations().value(), without.daysBetweenRegenerations().value()));
        }
        return Message.sentences(sentences);
    }

    private static Message lasts(BigDecimal days, BigDecimal daysWithout) {
        BigDecimal longer = Text.days(days.doubleValue());
        return daysWithout == null ? Message.of("blendHardness.capacityLastsDaysMean", longer)
                : Message.of("blendHardness.capacityLastsDaysMeanUse", longer,
                        Text.days(daysWithout.doubleValue()));
    }

    private static Message added(SoftenedWater water, AnswerUnits units) {
        return Text.rounded(units.concentration(water.addedPotassiumMgPerL() + water.addedSodiumMgPerL()));
    }

    private static void explain(BlendedWater water, Dosed dosed, AnswerUnits units, Explanation explanation) {
        explanation.cautions(WaterCautions.of(water.raw()));
        explanation.cautions(water.cautions());
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES);
        explanation.assume(Resolved.inWords("dayOverride", Message.of("assumed.softener.includedDaysBetweenRegenerations"))
                .byDefault("OWN-ASSUMPTION"));
        explanation.assume(Resolved.inWords("mixing", Message.of("assumed.softener.bypassKeepsShareEvery")).byDefault("DAVIS-CORNWELL"));
        explanation.assume(Resolved.inWords("ironAndManganese", Message.of("assumed.softener.resinRemovesDissolvedIron"))
                .byDefault("CP-RESIN-CARE"));
        if (dosed != null) {
            CapacityBasis.explain("/withoutBypass/daysBetweenRegenerations", dosed.capacity(), units, explanation);
            CapacityBasis.explain("/withBypass/daysBetweenRegenerations", dosed.capacity(), units, explanation);
        }
    }
}

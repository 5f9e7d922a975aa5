package dev.brinebook.operation.softener;

import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.water.HardnessClasses;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.answer.water.SoftenedWaterAnswer;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.BlendedSoftening;
import dev.brinebook.softener.ControllerTerms;
import dev.brinebook.softener.Softener;
import dev.brinebook.water.Blend;
import dev.brinebook.water.BlendedWater;
import dev.brinebook.water.SoftenedWater;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
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
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = units.explanation();
        WaterAnalysis raw = request.water().toDomain(explanation);
        double leakage = explanation.orDefault("leakageHardness", request.leakageHardness(),
                Blend.DEFAULT_LEAKAGE_MG_PER_L, explanation.inUnits(Message.verbatim("0 gpg"), Message.verbatim("0 mg/L")));
        Blend blend = new Blend(raw.hardnessMgPerL(), request.residualHardness().inBase(), leakage);
        Dosed dosed = request.softener() == null ? null : dosed(request, raw, explanation);
        Salt salt = dosed == null ? explanation.orDefault("softener.salt", null, Salt.SODIUM_CHLORIDE) : dosed.salt();
        BlendedWater water = new BlendedWater(raw, raw.compensated(request.water().factors(explanation)), blend,
                salt == Salt.POTASSIUM_CHLORIDE);
        double litres = request.household().toDomain(explanation).meanLitres();
        ControllerTerms controller = PreferencesRequest.orNone(request.preferences()).controllerTerms(
                request.softener() == null ? null : request.softener().control(), request.household().country(), units, explanation);
        explain(water, dosed, units, explanation);
        request.water().questionUnit(explanation);
        SofteningEffort without = effort(litres * water.fullLoadMgPerL() / 1000, dosed, SoftenedWaterAnswer.of(
                water.fullySoftened(), units, "/withoutBypass/water", explanation), units);
        SofteningEffort with = effort(litres * water.loadMgPerL() / 1000, dosed, SoftenedWaterAnswer.of(
                water.softened(), units, "/withBypass/water", explanation), units);
        return new BlendingAnswer(explanation.behindStops(summary(request, water, litres, with, without, units)),
                HardnessLines.of(water.hardness(), raw.hardnessUncertaintyMgPerL(), controller.hardness(), units, "/hardness",
                        explanation),
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

    private static Message summary(BlendingRequest request, BlendedWater water, double litres, SofteningEffort with,
            SofteningEffort without, AnswerUnits units) {
        Blend blend = water.blend();
        List<Message> sentences = new ArrayList<>();
        sentences.add(Message.of("A bypass of {0} % leaves {1}: {2} of a mean day pass by the softener and {3} pass the resin.",
                Text.number(100 * blend.bypassShare()), Text.of(request.residualHardness()),
                Text.of(units.volume(blend.bypassShare() * litres)), Text.of(units.volume(blend.resinShare() * litres))));
        Message less = added(water.softened(), units);
        Message full = added(water.fullySoftened(), units);
        sentences.add(water.potassiumSalt() ? Message.of("It adds {0} instead of {1} of potassium.", less, full)
                : Message.of("It adds {0} instead of {1} of sodium.", less, full));
        if (with.daysBetweenRegenerations() != null && with.daysBetweenRegenerations().value() != null) {
            sentences.add(lasts(with.daysBetweenRegenerations().value(), without.daysBetweenRegenerations().value()));
        }
        return Message.joined(" ", sentences);
    }

    private static Message lasts(BigDecimal days, BigDecimal daysWithout) {
        BigDecimal longer = Text.number(days.doubleValue());
        return daysWithout == null ? Message.counted("The capacity lasts {0} day of mean use.",
                "The capacity lasts {0} days of mean use.", longer)
                : Message.counted("The capacity lasts {0} day of mean use instead of {1}.",
                        "The capacity lasts {0} days of mean use instead of {1}.", longer,
                        Text.number(daysWithout.doubleValue()));
    }

    private static Message added(SoftenedWater water, AnswerUnits units) {
        return Text.of(units.concentration(water.addedPotassiumMgPerL() + water.addedSodiumMgPerL()));
    }

    private static void explain(BlendedWater water, Dosed dosed, AnswerUnits units, Explanation explanation) {
        explanation.cautions(WaterCautions.of(water.raw()));
        explanation.cautions(water.cautions());
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES);
        explanation.assume("dayOverride", Message.of("left out of the days between regenerations: a control that has one"
                + " regenerates no later than it says"), Origin.DEFAULT);
        explanation.assume("mixing", Message.of("the bypass keeps its share at every flow"), Origin.DEFAULT);
        explanation.assume("ironAndManganese", Message.of("dissolved iron and manganese are taken out of the water that passes"
                + " the resin and stay in the water that passes by"), Origin.DEFAULT);
        explanation.given("/residualHardness");
        explanation.because("/bypassPercent", Message.of("residual less leakage over tested hardness less leakage"),
                "DAVIS-CORNWELL");
        explanation.because("/dailyUse", Message.of("indoor use at home times the share that is softened, and outdoor use that"
                + " passes the softener"), "REU-2016");
        explanation.because("/waterThroughBypass", Message.of("mean use times the bypass"), "DAVIS-CORNWELL");
        explanation.because("/waterThroughResin", Message.of("mean use less what passes by"), "DAVIS-CORNWELL");
        explanation.because("/residualClasses", Message.of("three scales, which disagree"), "USGS-HARDNESS");
        explanation.because("/ironLeft", Message.of("iron times the bypass; all of it where it is not dissolved, which no"
                + " softener takes out"), "CP-RESIN-CARE");
        explanation.because("/manganeseLeft", Message.of("manganese times the bypass"), "CP-RESIN-CARE");
        explanation.because("/withoutBypass/dailyLoad", Message.of("mean use times hardness less leakage, with iron and manganese at"
                + " their chemical equivalents"),
                "WQP-2009");
        explanation.because("/withBypass/dailyLoad", Message.of("the same for the water that passes the resin"),
                "DAVIS-CORNWELL");
        if (dosed != null) {
            for (String side : List.of("/withoutBypass", "/withBypass")) {
                String days = side + "/daysBetweenRegenerations";
                explanation.because(days, Message.of("capacity over daily load"), "WQP-2009");
                CapacityBasis.explain(days, dosed.capacity(), units, explanation);
                explanation.because(side + "/saltPerYear", Message.of("365 days over those between regenerations, times the"
                        + " salt of one: by mean days, not tried day by day"), "WQP-2009");
            }
        }
    }
}

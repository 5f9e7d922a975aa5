// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.softener.FlowCheckAnswer;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.request.softener.CandidateRequest;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.Sizing;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

@SchemaDescription("A candidate with its results, and why it fits or does not.")
public record SizedSoftener(
        @Property(value = "Rank, 1 for the best.", min = 1, max = SizingRequest.MAX_CANDIDATES, example = "1") Integer rank,
        @Property(value = "Your name for it, or the size of a standard tank.", example = "\"10 x 54 in\"") String sku,
        @Property(value = "Whether it fits the household.", example = "true") Boolean fits,
        @Property("Reasons why it does not fit, as stable codes. Empty when it fits.") List<Fit.Shortcoming> shortcomings,
        @Property(value = "The same in words.", example = "[]", eachOf = Fit.Shortcoming.class) List<Message> reasons,
        @Property(value = "Reasons that could not be checked, because the size of its tank was not given, as the same codes.",
                optional = "when all were checked", example = "[\"bedTooShallow\"]") List<Fit.Shortcoming> notChecked,
        @Property("Resin volume.") VolumeQuantity resinVolume,
        @Property("Inner diameter of the tank.") LengthQuantity tankDiameter,
        @Property("Salt dose used.") SaltDoseQuantity saltDose,
        @From({"resinVolume", "saltDose"})
        @Property("Capacity restored per regeneration at that dose.") CapacityQuantity capacity,
        @Basis(formula = "formula.common.of365ExpectedRegenerationsYear", source = "FELLER")
        @Property(value = "Expected mean days between regenerations.", optional = "when it never regenerates", example = "4.1",
                unit = "days") BigDecimal daysBetweenRegenerations,
        @Basis(formula = "formula.softener.capacityHardnessLoadPer", source = "WQP-2009")
        @From("capacity")
        @Property(value = "Days of mean use per full capacity.", optional = "when no water is used", example = "5.2",
                unit = "days") BigDecimal fullChargeDays,
        @Basis(formula = "formula.common.capacitySaltPerRegeneration", source = "WQP-2009")
        @From({"capacity", "saltDose", "resinVolume"})
        @Property("Salt efficiency when all of the capacity is used.") SaltEfficiencyQuantity saltEfficiency,
        @Basis
        @Property(value = "Certified salt efficiency rating, as given.", optional = "when none was given")
        SaltEfficiencyQuantity certifiedEfficiency,
        @Property("Continuous flow compared with the limit of the bed.") FlowCheckAnswer continuousFlow,
        @Property("Peak flow compared with the limit of the bed.") FlowCheckAnswer peakFlow,
        @Basis(formula = "formula.softener.expectedRegenerationsMeteredYear", source = "DAIAD")
        @Property("Salt per year, with a meter.") MassQuantity saltPerYear,
        @Basis(formula = "formula.softener.expectedRegenerationsMeteredYearWater", source = "CP-CYCLE")
        @Property("Regeneration water per year, with a meter.") VolumeQuantity waterPerYear,
        @Basis(formula = "formula.softener.expectedDaysBedExhausted", source = "DAIAD")
        @Property(value = "Hard days per year, with a meter.", min = 0, unit = "days a year", example = "1")
        BigDecimal hardDaysPerYear,
        @Basis(formula = "formula.softener.saltWaterYearTheir", source = "CP-PRICES")
        @From({"saltPerYear", "waterPerYear"})
        @Property("Cost of salt and regeneration water per year.") Money runningCostPerYear,
        @From("runningCostPerYear")
        @Property(value = "The same plus the purchase price spread over 15 years.", optional = "when its price is unknown")
        Money costPerYear) {

    private static final String EACH = "/candidates/*";

    static SizedSoftener of(int rank, Sizing.Ranked ranked, CandidateRequest request, AnswerUnits units,
            Currency currency) {
        DosedSoftener dosed = ranked.option().dosed();
        YearlyTotals year = ranked.option().year();
        Fit fit = ranked.fit();
        return new SizedSoftener(rank, ranked.candidate().name(), fit.fits(), fit.shortcomings(),
                fit.shortcomings().stream().map(units::saying).toList(),
                ranked.notChecked().isEmpty() ? null : ranked.notChecked(),
                units.resinVolume(dosed.softener().bed().resinLitres()),
                units.length(dosed.softener().bed().tankDiameterMetres()), units.saltDose(dosed.saltDoseGramsPerLitre()),
                units.capacity(dosed.capacityGrams()),
                fit.intervalDays().exists() ? Rounding.answer(fit.intervalDays().value()) : null,
                fit.fullChargeDays().exists() ? Rounding.answer(fit.fullChargeDays().value()) : null,
                units.saltEfficiency(dosed.saltEfficiencyGramsPerGram()),
                request == null || request.certifiedEfficiency() == null ? null
                        : units.saltEfficiency(request.certifiedEfficiency().inBase()),
                FlowCheckAnswer.of(fit.continuous(), units), FlowCheckAnswer.of(fit.peak(), units),
                units.mass(year.saltGrams() / 1000), units.volume(year.waterLitres()), Rounding.toThousandth(year.hardDays()),
                Money.of(ranked.option().costPerYear(), currency),
                ranked.candidate().price().isPresent() ? Money.of(ranked.costPerYear(), currency) : null);
    }

    /** Records formula and source of the numbers of every candidate, except its flows. */
    static void explain(SizingRequest request, List<Sizing.Ranked> ranked, Currency currency, AnswerUnits units,
            Explanation explanation) {
        boolean priced = ranked.stream().allMatch(one -> one.candidate().price().isPresent());
        explanation.because(EACH + "/rank", priced
                ? Message.of("formula.softener.fewestReasonsAgainstFirst")
                : Message.of("formula.softener.fewestReasonsAgainstFirstThen",
                        Text.unitPrice(Sizing.ASSUMED_COST_PER_RESIN_LITRE, currency)), priced ? "CP-PRICES"
                                : "CP-RESIN-PRICE");
        explainBed(request, units, explanation);
        CapacityBasis.explain(EACH + "/capacity", ranked.get(0).candidate().softener().capacity(), units, explanation);
        if (ranked.stream().anyMatch(one -> one.candidate().price().isPresent())) {
            explanation.because(EACH + "/costPerYear", Message.of("formula.softener.runningCostPriceYears",
                    Text.number(Sizing.ASSUMED_LIFE_YEARS)), "CP-PRICES");
        }
    }

    private static void explainBed(SizingRequest request, AnswerUnits units, Explanation explanation) {
        if (request.candidates() == null) {
            Message standard = Message.of("sizedSoftener.standardTankResinSold");
            explanation.because(EACH + "/resinVolume", standard, "CP-TANKS");
            explanation.because(EACH + "/tankDiameter", standard, "CP-TANKS");
        } else {
            explanation.because(EACH + "/resinVolume", Message.of("formula.softener.givenOrResinVolume"), "CP-NAMEPLATE");
            explanation.because(EACH + "/tankDiameter", Message.of("formula.softener.givenOrSmallestStandard"), "CP-TANKS");
        }
        if (request.saltDose() == null) {
            explanation.because(EACH + "/saltDose", Message.of("formula.softener.saltDoseReserveLeast"), "TRADE-EFFICIENT");
        } else {
            explanation.given(EACH + "/saltDose");
        }
    }
}

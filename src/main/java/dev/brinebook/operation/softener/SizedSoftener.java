package dev.brinebook.operation.softener;

import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.softener.FlowCheckAnswer;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
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
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

@About("A candidate with its numbers, and why it fits or does not.")
public record SizedSoftener(
        @Property(value = "Place in the ranking, 1 for the best.", min = 1, max = SizingRequest.MAX_CANDIDATES, example = "1") Integer rank,
        @Property(value = "The caller's name for it, or the size of a standard tank.", example = "\"10 x 54 in\"") String sku,
        @Property(value = "Whether it fits.", example = "true") Boolean fits,
        @Property("Why it does not fit, as stable codes; empty when it does.") List<Fit.Shortcoming> shortcomings,
        @Property(value = "The same in words.", example = "[]") List<Message> reasons,
        @Property("Resin in it.") VolumeQuantity resinVolume,
        @Property("Inner diameter of its tank.") LengthQuantity tankDiameter,
        @Property("Salt dose it is tried at.") SaltDoseQuantity saltDose,
        @Property("Capacity that a regeneration restores at that dose.") CapacityQuantity capacity,
        @Property(value = "Mean days between regenerations to be expected.", optional = "when it never regenerates", example = "4.1",
                unit = "days") BigDecimal daysBetweenRegenerations,
        @Property(value = "Days of mean use that a full charge lasts.", optional = "when nothing is used", example = "5.2",
                unit = "days") BigDecimal fullChargeDays,
        @Property("Hardness removed per salt when all of the capacity is used.") SaltEfficiencyQuantity saltEfficiency,
        @Property(value = "The certified rating given for it.", optional = "when none was given")
        SaltEfficiencyQuantity certifiedEfficiency,
        @Property("The lasting flow against what the bed takes.") FlowCheckAnswer continuousFlow,
        @Property("The short peaks against what the bed takes.") FlowCheckAnswer peakFlow,
        @Property("Salt of a year, metered.") MassQuantity saltPerYear,
        @Property("Regeneration water of a year, metered.") VolumeQuantity waterPerYear,
        @Property(value = "Days of the year on which hard water passes, metered.", min = 0, unit = "days a year", example = "1")
        BigDecimal hardDaysPerYear,
        @Property("Salt and regeneration water of a year.") Money runningCostPerYear,
        @Property(value = "The same with its price spread over 15 years.", optional = "when its price is unknown")
        Money costPerYear) {

    private static final String EACH = "/candidates/*";

    static SizedSoftener of(int rank, Sizing.Ranked ranked, CandidateRequest request, AnswerUnits units,
            Currency currency) {
        DosedSoftener dosed = ranked.option().dosed();
        YearlyTotals year = ranked.option().year();
        Fit fit = ranked.fit();
        return new SizedSoftener(rank, ranked.candidate().name(), fit.fits(), fit.shortcomings(),
                fit.shortcomings().stream().map(units::saying).toList(),
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

    /** Tells why the numbers of every candidate are what they are, but for its flows. */
    static void explain(SizingRequest request, List<Sizing.Ranked> ranked, AnswerUnits units, Explanation explanation) {
        boolean priced = ranked.stream().allMatch(one -> one.candidate().price().isPresent());
        explanation.because(EACH + "/rank", priced
                ? Message.of("the fewest reasons against it first, then the least cost a year with its price")
                : Message.of("the fewest reasons against it first, then the least cost a year, with {0} assumed for each litre of resin",
                        Text.number(Sizing.ASSUMED_COST_PER_RESIN_LITRE)), priced ? "CP-PRICES" : "CP-RESIN-PRICE");
        explainBed(request, units, explanation);
        CapacityBasis.explain(EACH + "/capacity", ranked.get(0).candidate().softener().capacity(), units, explanation);
        explanation.because(EACH + "/daysBetweenRegenerations", Message.of("365 over the expected regenerations of a year"), "FELLER");
        explanation.because(EACH + "/fullChargeDays", Message.of("capacity over daily load"), "WQP-2009");
        explanation.because(EACH + "/saltEfficiency", Message.of("capacity over salt of a regeneration"), "WQP-2009");
        explanation.because(EACH + "/saltPerYear", Message.of("expected regenerations of a metered year times salt"), "DAIAD");
        explanation.because(EACH + "/waterPerYear", Message.of("expected regenerations of a metered year times the water of the"
                + " cycle"), "CP-CYCLE");
        explanation.because(EACH + "/hardDaysPerYear", Message.of("days to be expected on which the bed is used up"), "DAIAD");
        explanation.because(EACH + "/runningCostPerYear", Message.of("salt and water of that year at their prices"),
                "CP-PRICES");
        if (ranked.stream().anyMatch(one -> one.candidate().price().isPresent())) {
            explanation.because(EACH + "/costPerYear", Message.of("running cost, and the price over {0} years",
                    Text.number(Sizing.ASSUMED_LIFE_YEARS)), "CP-PRICES");
        }
    }

    private static void explainBed(SizingRequest request, AnswerUnits units, Explanation explanation) {
        if (request.candidates() == null) {
            Message standard = Message.of("a standard tank and the resin that it is sold with");
            explanation.because(EACH + "/resinVolume", standard, "CP-TANKS");
            explanation.because(EACH + "/tankDiameter", standard, "CP-TANKS");
        } else {
            explanation.because(EACH + "/resinVolume", Message.of("as the request has it, or what usually goes with its nameplate,"
                    + " or with its tank"), "CP-NAMEPLATE");
            explanation.because(EACH + "/tankDiameter", Message.of("as the request has it, or that of the smallest standard"
                    + " tank that takes the resin"), "CP-TANKS");
        }
        if (request.candidates() != null
                && request.candidates().stream().anyMatch(one -> one.certifiedEfficiency() != null)) {
            explanation.given(EACH + "/certifiedEfficiency");
        }
        if (request.saltDose() == null) {
            explanation.because(EACH + "/saltDose", Message.of("with its reserve the least costly in the long run that keeps"
                    + " to the service standard"), "TRADE-EFFICIENT");
        } else {
            explanation.given(EACH + "/saltDose");
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.household.Days;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.softener.ControlRequest.Kind;
import dev.brinebook.savings.SavingsEstimate;
import dev.brinebook.savings.SavingsFactors;
import dev.brinebook.savings.SavingsFactors.Factor;
import dev.brinebook.savings.SavingsGoal;
import dev.brinebook.savings.SavingsPeriod;
import dev.brinebook.savings.SavingsVerdict;
import dev.brinebook.savings.UseScatter;
import dev.brinebook.savings.WaitingTime;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** Whether a change at a softener saved what was promised. */
public final class VerifySavings {

    public static final Operation<SavingsVerificationRequest, SavingsVerificationAnswer> OPERATION = new Operation<>(
            "verifySavings", "/v1/savings-verification", "Verify a saving by readings before and after",
            "Choose this after a conversion or a change of settings, to see whether it saved what was promised. It takes the water meter, "
                    + "regenerations, salt per regeneration and bags of a period before and one after, compares both at the use before, "
                    + "and gives the salt, water and money saved with their interval, a verdict, or how many weeks more to read, and what "
                    + "explains the difference: use, hardness, count, dose or price. Without readings after, it states how long to wait. "
                    + "For many homes together choose verifyFleetSavings. To predict a saving choose estimatePayback. "
                    + "With Accept text/html or application/pdf it returns a sheet to print.",
            SavingsVerificationRequest.class, SavingsVerificationAnswer.class, VerifySavings::answer, List.of(),
            List.of("well-family", "apartment", "beforehand")).answeringIn(SavingsSheet.forms(VerifySavings::answer));

    private VerifySavings() {
    }

    private static SavingsVerificationAnswer answer(SavingsVerificationRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = units.explanation();
        HomeCountry.of(request.country(), explanation);
        LocalPrices prices = LocalPrices.of(request.prices(), request.country());
        UseScatter scatter = HomeScatter.of(request, explanation);
        SavingsGoal goal = SavingsPromiseRequest.goal(request.promise(), null, explanation);
        boolean bags = ReadPeriod.restsOnUsualBag(request.before())
                || request.after() != null && ReadPeriod.restsOnUsualBag(request.after());
        double bag = bags ? prices.bagKilograms(explanation) : 1;
        SavingsPeriod before = ReadPeriod.of(request.before(), "/before", bag, explanation);
        explanation.assume(Resolved.of("interval", 100 * SavingsEstimate.INTERVAL, "%").byDefault("OWN-ASSUMPTION"));
        return request.after() == null ? beforehand(request, before, scatter, goal, explanation)
                : verified(request, VerifiedHome.of(request.before(), request.after(), before,
                        ReadPeriod.of(request.after(), "/after", bag, explanation), request.changedOn(), scatter, goal), scatter, goal,
                        prices, units, explanation);
    }

    private static SavingsVerificationAnswer beforehand(SavingsVerificationRequest request, SavingsPeriod before, UseScatter scatter,
            SavingsGoal goal, Explanation explanation) {
        Kind planned = explanation.resolve("/plannedControl", request.plannedControl(), Kind.METERED_DELAYED, "OWN-ASSUMPTION");
        List<SavingsWait> waiting = SavingsWait.of(before, ReadPeriod.startedBy(planned), scatter, goal);
        SavingsWait asked = waiting.get(goal.promised() == 0 ? 1 : 0);
        BigDecimal saving = Text.digits(asked.savingPercent().doubleValue());
        Message summary = asked.evenWeeks() == null ? Message.of("savings.beforehandNever", saving)
                : Message.of("savings.beforehand", saving, asked.evenWeeks());
        return new SavingsVerificationAnswer(summary, null, null, null, null, null, null, null, null, null, waiting, List.of(),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static SavingsVerificationAnswer verified(SavingsVerificationRequest request, VerifiedHome home, UseScatter scatter,
            SavingsGoal goal, LocalPrices prices, AnswerUnits units, Explanation explanation) {
        SavingsEstimate estimate = home.estimate();
        OptionalInt more = home.verdict() == SavingsVerdict.TOO_EARLY
                ? WaitingTime.more(home.before(), home.after(), scatter, goal) : OptionalInt.empty();
        LocalDate again = more.isPresent() ? request.after().to().plusWeeks(more.getAsInt()) : null;
        SavedCost cost = SavedCost.of(request, home, prices, explanation);
        return new SavingsVerificationAnswer(summary(home, goal, more, again, units), home.verdict(), SavedSalt.of(estimate, units),
                cost.water(units), cost.money(), units.mass(home.avoidedKilograms()), PromiseSeen.of(estimate, goal),
                causes(request, home, cost, units), SavingsWait.weeks(more), again, null, home.findings().stream()
                .map(finding -> new SavingsFindingLine(finding, units.saying(finding))).toList(), explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static List<SavingsCause> causes(SavingsVerificationRequest request, VerifiedHome home, SavedCost cost, AnswerUnits units) {
        double before = SavedCost.saltPrice(request.before(), cost.saltPerKilogram());
        double after = SavedCost.saltPrice(request.after(), cost.saltPerKilogram());
        Map<Factor, Double> salt = SavingsFactors.salt(home.before(), home.after());
        boolean priced = before > 0 && after > 0;
        Map<Factor, Double> money = priced ? SavingsFactors.cost(home.before(), home.after(), before, after) : Map.of();
        Currency currency = cost.currency();
        return Arrays.stream(Factor.values()).filter(factor -> salt.containsKey(factor) || money.containsKey(factor))
                .map(factor -> new SavingsCause(factor, units.mass(-Days.PER_YEAR * salt.getOrDefault(factor, 0.0)), priced
                        ? Money.of(-Days.PER_YEAR * money.getOrDefault(factor, 0.0), currency) : null)).toList();
    }

    private static Message summary(VerifiedHome home, SavingsGoal goal, OptionalInt more, LocalDate again, AnswerUnits units) {
        SavingsEstimate estimate = home.estimate();
        List<Message> sentences = new ArrayList<>();
        Message aYear = Text.rounded(units.mass(Days.PER_YEAR * estimate.before() * Math.abs(estimate.share())));
        sentences.add(estimate.share() >= 0 ? Message.of("savings.saves", Text.whole(100 * estimate.share()),
                Text.whole(100 * estimate.low()), Text.whole(100 * estimate.high()), aYear)
                : Message.of("savings.usesMore", Text.whole(-100 * estimate.share()), Text.whole(-100 * estimate.high()),
                        Text.whole(-100 * estimate.low()), aYear));
        switch (home.verdict()) {
            case CONFIRMED -> sentences.add(goal.promised() == 0 ? Message.of("savings.certain")
                    : Message.of("savings.kept", Text.digits(100 * goal.promised())));
            case NOT_CONFIRMED -> sentences.add(goal.promised() == 0 ? Message.of("savings.nothing")
                    : Message.of("savings.notKept", Text.digits(100 * goal.promised())));
            case TOO_EARLY -> {
                sentences.add(more.isPresent() ? Message.of("savings.tooEarly", more.getAsInt(), again) : Message.of("savings.unclear"));
                if (more.isEmpty()) {
                    sentences.add(units.saying(estimate.largestError()));
                }
            }
            default -> {
                sentences.add(Message.of("savings.noVerdict"));
                sentences.add(units.saying(home.findings().iterator().next()));
            }
        }
        return Message.sentences(sentences);
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.savings.FleetSavings;
import dev.brinebook.savings.SavingsEstimate;
import dev.brinebook.savings.SavingsGoal;
import dev.brinebook.savings.SavingsPeriod;
import dev.brinebook.savings.SavingsVerdict;
import dev.brinebook.savings.UseScatter;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What many homes saved together, and how that compares with what was promised. */
public final class VerifyFleetSavings {

    public static final Operation<FleetSavingsRequest, FleetSavingsAnswer> OPERATION = new Operation<>(
            "verifyFleetSavings", "/v1/fleet-savings-verification", "Verify the savings of many homes together",
            "Choose this to see what a dealer's conversions saved: a list of homes with readings before and after, as for verifySavings. "
                    + "It gives the mean saving with its interval, how far homes differ, outliers, a verdict for each home, and the factor "
                    + "by which to multiply the next promises. For one home in detail choose verifySavings.",
            FleetSavingsRequest.class, FleetSavingsAnswer.class, VerifyFleetSavings::answer, List.of(),
            List.of("dealer", "dealer-metric"));

    /** A home that can be pooled, by its place, with its promise. */
    private record Member(int place, VerifiedHome home, double promised, double response) {
    }

    private VerifyFleetSavings() {
    }

    private static FleetSavingsAnswer answer(FleetSavingsRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = units.explanation();
        HomeCountry.of(request.country(), explanation);
        double bag = LocalPrices.of(null, request.country()).bagKilograms(new Explanation());
        assume(request, bag, units, explanation);
        List<Member> homes = IntStream.range(0, request.homes().size()).mapToObj(i -> member(i, request, bag)).toList();
        List<Member> judged = homes.stream().filter(home -> home.home.verdict() != SavingsVerdict.NO_VERDICT).toList();
        List<SavingsEstimate> estimates = judged.stream().map(home -> home.home.estimate()).toList();
        List<Optional<Double>> deviations = new ArrayList<>();
        homes.forEach(home -> deviations.add(judged.contains(home) ? FleetSavings.deviation(estimates, judged.indexOf(home))
                : Optional.empty()));
        List<Member> pooled = judged.stream().filter(home -> !FleetSavings.isOutlier(home.home.estimate(),
                deviations.get(home.place))).toList();
        Optional<FleetSavings> fleet = pooled.size() < FleetSavings.MIN_HOMES ? Optional.empty()
                : Optional.of(FleetSavings.of(pooled.stream().map(home -> home.home.estimate()).toList()));
        Optional<FleetFactor> factor = fleet.flatMap(all -> factor(all, pooled));
        return new FleetSavingsAnswer(summary(homes.size(), fleet, factor, judged.size() - pooled.size()),
                fleet.map(FleetPooled::of).orElse(null), factor.orElse(null),
                units.mass(judged.stream().mapToDouble(home -> home.home.avoidedKilograms()).sum()), counts(homes),
                homes.stream().map(home -> FleetHomeLine.of(request.homes().get(home.place).name(), home.home,
                        deviations.get(home.place))).toList(), explanation.cautions(), explanation.assumptions(), explanation.basis(),
                ModelVersion.CURRENT);
    }

    /** The promises against what was seen; empty if a home has none. */
    private static Optional<FleetFactor> factor(FleetSavings fleet, List<Member> pooled) {
        double[] responses = pooled.stream().mapToDouble(Member::response).toArray();
        boolean fromClockToMeter = Arrays.stream(responses).allMatch(response -> response > 0);
        return pooled.stream().anyMatch(home -> home.promised == 0) ? Optional.empty() : Optional.of(FleetFactor.of(fleet,
                pooled.stream().mapToDouble(Member::promised).average().orElseThrow(),
                fromClockToMeter ? Arrays.stream(responses).average().orElseThrow() : 0));
    }

    private static void assume(FleetSavingsRequest request, double bag, AnswerUnits units, Explanation explanation) {
        explanation.assume(Resolved.of("interval", 100 * SavingsEstimate.INTERVAL, "%").byDefault("OWN-ASSUMPTION"));
        explanation.assume(Resolved.of("outlierFrom", FleetSavings.ASSUMED_OUTLIER_DEVIATION, null).byDefault("OWN-ASSUMPTION"));
        SavingsPromiseRequest.goal(null, request.promise(), explanation);
        HomeScatter.of(null, null, null, "", explanation);
        if (request.homes().stream().anyMatch(home -> ReadPeriod.restsOnUsualBag(home.before())
                || ReadPeriod.restsOnUsualBag(home.after()))) {
            explanation.assume(Resolved.of("saltOfABag", units.mass(bag)).byDefault("OWN-ASSUMPTION"));
        }
    }

    /** A home; what is assumed of it alone is not listed for each of hundreds. */
    private static Member member(int place, FleetSavingsRequest request, double bag) {
        FleetHomeRequest given = request.homes().get(place);
        Explanation own = new Explanation();
        SavingsGoal goal = SavingsPromiseRequest.goal(given.promise(), request.promise(), own);
        UseScatter scatter = HomeScatter.of(given.people(), null, null, "", own);
        SavingsPeriod before = ReadPeriod.of(given.before(), "/before", bag, own);
        SavingsPeriod after = ReadPeriod.of(given.after(), "/after", bag, own);
        return new Member(place, VerifiedHome.of(given.before(), given.after(), before, after, given.changedOn(), scatter, goal),
                goal.promised(), before.startedBy().byWater() ? 0 : after.response(scatter));
    }

    private static List<VerdictCount> counts(List<Member> homes) {
        return Arrays.stream(SavingsVerdict.values()).map(verdict -> new VerdictCount(verdict,
                (int) homes.stream().filter(home -> home.home.verdict() == verdict).count())).toList();
    }

    private static Message summary(int homes, Optional<FleetSavings> fleet, Optional<FleetFactor> factor, int outliers) {
        if (fleet.isEmpty()) {
            return Message.of("savings.fleetTooSmall", homes);
        }
        List<Message> sentences = new ArrayList<>();
        FleetSavings all = fleet.get();
        sentences.add(all.share() >= 0 ? Message.of("savings.fleet", all.homes(), Text.whole(100 * all.share()),
                Text.whole(100 * all.low()), Text.whole(100 * all.high()))
                : Message.of("savings.fleetUsesMore", all.homes(), Text.whole(-100 * all.share()), Text.whole(-100 * all.high()),
                        Text.whole(-100 * all.low())));
        factor.ifPresent(promise -> sentences.add(nextPromises(promise)));
        if (outliers > 0) {
            sentences.add(Message.of("savings.fleetOutliers", outliers));
        }
        return Message.sentences(sentences);
    }

    private static Message nextPromises(FleetFactor promise) {
        if (promise.factor().signum() <= 0) {
            return Message.of("savings.fleetPromiseNothing");
        }
        BigDecimal rounded = Rounding.significant(promise.factor().doubleValue(), new MathContext(2));
        return rounded.compareTo(BigDecimal.ONE) == 0 ? Message.of("savings.fleetPromiseStays")
                : Message.of("savings.fleetFactor", rounded);
    }
}

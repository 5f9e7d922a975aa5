// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.Demand;
import dev.brinebook.household.Fixture;
import dev.brinebook.household.FixtureCount;
import dev.brinebook.household.FixtureSchedule;
import dev.brinebook.household.FixtureUse;
import dev.brinebook.household.PeakFlow;
import dev.brinebook.household.PeakFlow.Fixtures;
import dev.brinebook.household.SizingFlow;
import dev.brinebook.text.Message;
import java.util.List;
import java.util.Optional;

/**
 * The flows of a household: those given, else those of its fixtures, else those of its bathrooms.
 *
 * @param peakLitresPerMinute flow of short peaks
 * @param continuousLitresPerMinute flow that lasts
 */
record HouseholdFlows(double peakLitresPerMinute, double continuousLitresPerMinute) {

    private static final String BATHROOMS = "/household/bathrooms";

    static HouseholdFlows of(HouseholdRequest household, Explanation explanation) {
        return household.fixtures() == null ? ofBathrooms(household, explanation) : ofFixtures(household, explanation);
    }

    private static HouseholdFlows ofBathrooms(HouseholdRequest household, Explanation explanation) {
        Resolved assumed = household.people() == null
                ? Resolved.of(BATHROOMS, PeakFlow.ASSUMED_BATHROOMS, null).byDefault("OWN-ASSUMPTION")
                : Resolved.of(BATHROOMS, PeakFlow.assumedBathrooms(household.people()), null).estimated("OWN-ASSUMPTION");
        int bathrooms = (int) explanation.resolve(household.bathrooms(), assumed);
        return of(household, PeakFlow.percentile99LitresPerMinute(PeakFlow.assumedFixtures(bathrooms)),
                PeakFlow.assumedContinuousLitresPerMinute(bathrooms), explanation);
    }

    /** A flow that is given needs no estimate, so fixtures without an estimate are allowed with both flows. */
    private static HouseholdFlows ofFixtures(HouseholdRequest household, Explanation explanation) {
        FixtureSchedule schedule = FixtureLine.schedule("/household/fixtures", household.fixtures(), explanation);
        Optional<SizingFlow> sizing = SizingFlow.of(schedule, PeakFlow.DEFAULT_PERCENTILE);
        return of(household, sizing.map(SizingFlow::peakLitresPerMinute).orElse(0.0),
                sizing.map(SizingFlow::continuousLitresPerMinute).orElse(0.0), explanation);
    }

    private static HouseholdFlows of(HouseholdRequest household, double peakEstimate, double lastingEstimate,
            Explanation explanation) {
        double lasting = flow("/household/continuousFlow", household.continuousFlow(), lastingEstimate, explanation);
        return new HouseholdFlows(flow("/household/peakFlow", household.peakFlow(), Math.max(lasting, peakEstimate),
                explanation), lasting);
    }

    private static double flow(String pointer, FlowQuantity given, double estimate, Explanation explanation) {
        return explanation.resolve(given, estimate, Resolved.of(pointer, AnswerUnits.of(explanation).flow(estimate))
                .estimated("BUCHBERGER-2017").noting(Message.of("assumed.household.estimatedFixtures")));
    }

    /** A flow in the units of both systems, for an error, where the units of the answer are not known. */
    private static Message inBoth(double litresPerMinute) {
        return Message.of("pattern.or", Text.of(AnswerUnits.US.flow(litresPerMinute)),
                Text.of(AnswerUnits.METRIC.flow(litresPerMinute)));
    }

    /** What fixtures say against bathrooms and flows, and what they need that no table has. */
    static void check(HouseholdRequest household, Violations at) {
        if (household.fixtures() == null || at.at("fixtures").here()) {
            return;
        }
        FixtureSchedule schedule = new FixtureSchedule(household.fixtures().stream().map(FixtureRequest::toDomain).toList());
        if (household.peakFlow() == null || household.continuousFlow() == null) {
            checkEstimate(household, schedule, at);
        }
        if (household.bathrooms() != null && household.bathrooms() < schedule.bathroomGroups()) {
            at.add("bathrooms", Code.INCONSISTENT, Message.of("problem.household.mustLeastNumberBathroom", schedule.bathroomGroups()));
        }
        schedule.draws().ifPresent(draws -> {
            checkAtOnce("peakFlow", household.peakFlow(), draws, at);
            checkAtOnce("continuousFlow", household.continuousFlow(), draws, at);
        });
    }

    private static void checkEstimate(HouseholdRequest household, FixtureSchedule schedule, Violations at) {
        for (int i = 0; i < household.fixtures().size(); i++) {
            checkMeasured(household.fixtures().get(i), at.at("fixtures").at(i));
        }
        SizingFlow.of(schedule, PeakFlow.DEFAULT_PERCENTILE).filter(flow -> flow.peakLitresPerMinute()
                > Demand.MAX_FLOW_LITRES_PER_MINUTE).ifPresent(flow -> at.add("fixtures", Code.INCONSISTENT,
                Message.of("problem.household.mustFixturesHouseholdTheir", inBoth(flow.peakLitresPerMinute()),
                        inBoth(Demand.MAX_FLOW_LITRES_PER_MINUTE))));
    }

    private static void checkMeasured(FixtureRequest fixture, Violations at) {
        if (fixture.kind() == Fixture.BATHROOM_GROUP_FLUSHOMETER || fixture.kind().isGroup()
                && fixture.use() == FixtureUse.PUBLIC) {
            at.add("kind", Code.INCONSISTENT, Message.of("householdFlows.giveShowerLavatoryWater"));
            return;
        }
        FixtureCount count = fixture.toDomain();
        if (!fixture.kind().isGroup() && count.busyProbability(fixture.kind()).isEmpty()) {
            at.add("busyProbability", Code.MISSING, Message.of("householdFlows.missingBusyprobabilityHowOften"));
        }
        if (!fixture.kind().isGroup() && count.litresPerMinute(fixture.kind()).isEmpty()) {
            at.add("flow", Code.MISSING, Message.of("householdFlows.missingFlowTableNo"));
        }
    }

    private static void checkAtOnce(String name, FlowQuantity given, List<Fixtures> draws, Violations at) {
        double all = draws.stream().mapToDouble(f -> f.count() * f.litresPerMinute()).sum();
        if (given != null && !at.at(name).here() && given.inBase() > all * (1 + 1e-9)) {
            at.add(name, Code.INCONSISTENT, Message.of("problem.household.mustMostFlowAll", inBoth(all)));
        }
    }
}

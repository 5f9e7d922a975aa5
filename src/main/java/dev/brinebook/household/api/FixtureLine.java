package dev.brinebook.household.api;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.household.Fixture;
import dev.brinebook.household.FixtureCount;
import dev.brinebook.household.FixtureSchedule;
import dev.brinebook.household.FixtureUse;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.FlowQuantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

@About("Fixtures of one kind with the values taken of one of them.")
public record FixtureLine(
        @Property("What they are.") Fixture kind,
        @Property(value = "How many.", min = 1, example = "2") Integer count,
        @Property("Where they stand.") FixtureUse use,
        @Property(value = "Water supply fixture units.", optional = "when the code has none in this use", min = 0,
                example = "1.4") BigDecimal fixtureUnits,
        @Property(value = "Flow when it runs.", optional = "when it is a bathroom group, or not known") FlowQuantity flow,
        @Property(value = "How likely it runs at a moment of the busy hour.", optional = "when it is a bathroom group, or not"
                + " known", min = 0, example = "0.045") BigDecimal busyProbability,
        @Property(value = "Design flow, cold and hot together.", optional = "when not known") FlowQuantity designFlow) {

    static FixtureLine of(FixtureCount f, AnswerUnits units) {
        Fixture fixture = f.fixture();
        OptionalDouble none = OptionalDouble.empty();
        OptionalDouble flow = fixture.isGroup() ? none : f.litresPerMinute(fixture);
        OptionalDouble busy = fixture.isGroup() ? none : f.busyProbability(fixture);
        OptionalDouble design = f.designLitresPerSecond();
        return new FixtureLine(fixture, f.count(), f.use(), number(f.fixtureUnits()),
                flow.isPresent() ? units.flow(flow.getAsDouble()) : null, number(busy),
                design.isPresent() ? units.flow(60 * design.getAsDouble()) : null);
    }

    private static BigDecimal number(OptionalDouble value) {
        return value.isPresent() ? Rounding.answer(value.getAsDouble()) : null;
    }

    /** The fixtures asked for at {@code name}, with what was taken of each told to {@code explanation}. */
    static FixtureSchedule schedule(String name, List<FixtureRequest> asked, Explanation explanation) {
        List<FixtureCount> fixtures = asked.stream().map(FixtureRequest::toDomain).toList();
        for (int i = 0; i < fixtures.size(); i++) {
            explanation.assume(name + "." + i, inWords(fixtures.get(i)), asked.get(i).leavesOut() ? Origin.DEFAULT
                    : Origin.CALLER);
        }
        return new FixtureSchedule(fixtures);
    }

    private static String inWords(FixtureCount f) {
        OptionalDouble units = f.fixtureUnits();
        OptionalDouble design = f.designLitresPerSecond();
        return f.count() + " x " + WireNames.of(f.fixture()) + ", " + WireNames.of(f.use()) + ": "
                + f.fixture().parts().stream().map(part -> draw(f, part)).collect(Collectors.joining())
                + (units.isPresent() ? Text.number(units.getAsDouble()) + " fixture units, " : "no fixture units, ")
                + (design.isPresent() ? "design flow " + Text.number(design.getAsDouble()) + " L/s" : "no design flow");
    }

    private static String draw(FixtureCount f, Fixture part) {
        OptionalDouble flow = f.litresPerMinute(part);
        OptionalDouble busy = f.busyProbability(part);
        return (f.fixture().isGroup() ? WireNames.of(part) + " " : "")
                + (flow.isPresent() ? Text.number(FlowUnit.GPM.fromBase(flow.getAsDouble())) + " gpm or "
                        + Text.number(flow.getAsDouble()) + " L/min" : "flow unknown")
                + (busy.isPresent() ? " with probability " + Text.number(busy.getAsDouble()) : " how often unknown") + ", ";
    }
}

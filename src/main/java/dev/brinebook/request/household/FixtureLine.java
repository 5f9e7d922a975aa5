// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.Fixture;
import dev.brinebook.household.FixtureCount;
import dev.brinebook.household.FixtureSchedule;
import dev.brinebook.household.FixtureUse;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

@SchemaDescription("Fixtures of one kind, with the values used for one fixture.")
public record FixtureLine(
        @Property("Kind of fixture.") Fixture kind,
        @Basis
        @Property(value = "Number of fixtures.", min = 1, example = "2") Integer count,
        @Property("Place of use: a home, or open to anyone.") FixtureUse use,
        @Basis(formula = "formula.household.givenOrTableE103", source = "IPC-E103")
        @Property(value = "Water supply fixture units.", optional = "when the code has none in this use", min = 0,
                example = "1.4") BigDecimal fixtureUnits,
        @Basis(formula = "formula.household.givenOrMeasuredHomes", source = "BUCHBERGER-2017")
        @Property(value = "Flow of one fixture while it runs.", optional = "for a bathroom group, or when not known") FlowQuantity flow,
        @Basis(formula = "formula.household.givenOrMeasuredBusy", source = "BUCHBERGER-2017")
        @Property(value = "Probability that it runs at a moment of the busy hour.", optional = "for a bathroom group, or when not "
                + "known", min = 0, example = "0.045") BigDecimal busyProbability,
        @Basis(formula = "formula.household.givenOrTable2", source = "DIN-1988-300")
        @Property(value = "Design flow, cold and hot together.", optional = "when not known") FlowQuantity designFlow) {

    public static FixtureLine of(FixtureCount f, AnswerUnits units) {
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

    /** The fixtures asked for at {@code pointer}, with what was taken of each recorded in {@code explanation}. */
    public static FixtureSchedule schedule(String pointer, List<FixtureRequest> asked, Explanation explanation) {
        List<FixtureCount> fixtures = asked.stream().map(FixtureRequest::toDomain).toList();
        for (int i = 0; i < fixtures.size(); i++) {
            FixtureCount f = fixtures.get(i);
            Resolved kind = Resolved.of(pointer + "/" + i, f.fixture()).noting(inWords(f, AnswerUnits.of(explanation)));
            explanation.assume(asked.get(i).sourceOfOmitted().map(kind::byDefault).orElse(kind));
        }
        return new FixtureSchedule(fixtures);
    }

    private static Message inWords(FixtureCount f, AnswerUnits answered) {
        OptionalDouble units = f.fixtureUnits();
        OptionalDouble design = f.designLitresPerSecond();
        List<Message> values = new ArrayList<>(f.fixture().parts().stream().map(part -> part(f, part, answered)).toList());
        values.add(units.isEmpty() ? Message.of("fixture.noFixtureUnits")
                : Message.of("fixture.fixtureUnits", Text.digits(units.getAsDouble())));
        values.add(design.isEmpty() ? Message.of("fixture.noDesignFlow")
                : Message.of("fixture.designFlow", Text.of(answered.flow(60 * design.getAsDouble()))));
        return Message.of("fixture.value", f.count(), WireNames.of(f.use()), Message.joined(Joint.COMMA, values));
    }

    private static Message part(FixtureCount f, Fixture part, AnswerUnits answered) {
        return f.fixture().isGroup() ? Message.of("fixture.partOfGroup", WireNames.of(part), draw(f, part, answered))
                : draw(f, part, answered);
    }

    private static Message draw(FixtureCount f, Fixture part, AnswerUnits answered) {
        OptionalDouble flow = f.litresPerMinute(part);
        OptionalDouble busy = f.busyProbability(part);
        if (flow.isEmpty()) {
            return busy.isEmpty() ? Message.of("fixture.flowUnknownProbabilityUse")
                    : Message.of("fixture.flowUnknownProbabilityUse2", Text.digits(busy.getAsDouble()));
        }
        Message known = Text.of(answered.flow(flow.getAsDouble()));
        return busy.isEmpty() ? Message.of("fixture.probabilityUseUnknown", known)
                : Message.of("fixture.probabilityUse", known, Text.digits(busy.getAsDouble()));
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What belongs to some kinds of a record only is refused in the others, and missed in its own. */
class DiscriminatorValuesTest {

    private enum Shape {
        DOT, LINE, BOX, BIG_BOX
    }

    @SchemaDescription("A drawing.")
    record Drawing(@Property(value = "The shape.", required = true) @Discriminator(others = "plain") Shape shape,
            @Property(value = "How long.", kinds = "line", required = true, min = 1) BigDecimal length,
            @Property(value = "How wide.", kinds = {"box", "bigBox"}) BigDecimal width,
            @Property(value = "How red.", exceptKinds = "line") BigDecimal red) {
    }

    @SchemaDescription("A drawing whose shape may be left out.")
    record Sketch(@Property(value = "The shape.", defaultCode = "dot") @Discriminator Shape shape,
            @Property(value = "How long.", kinds = "line", required = true) BigDecimal length) {
    }

    @SchemaDescription("A drawing of a shape that there is not.")
    record Wrong(@Property("The shape.") @Discriminator Shape shape, @Property(value = "How round.", kinds = "ring") BigDecimal x) {
    }

    @Test
    void takesWhatBelongsToTheKind() {
        assertEquals(List.of(), check(new Drawing(Shape.LINE, BigDecimal.TEN, null, null)));
        assertEquals(List.of(), check(new Drawing(Shape.BOX, null, BigDecimal.ONE, BigDecimal.ONE)));
        assertEquals(List.of(), check(new Drawing(Shape.DOT, null, null, null)));
        assertEquals(List.of(), check(new Sketch(null, null)));
        assertEquals(List.of(), check(new Sketch(Shape.LINE, BigDecimal.ONE)));
    }

    @Test
    void refusesWhatBelongsToAnotherKind() {
        assertEquals(List.of(List.of("/length", "INCONSISTENT", "Omit it unless `shape` is line."),
                List.of("/width", "INCONSISTENT", "Omit it unless `shape` is box or bigBox.")),
                check(new Drawing(Shape.DOT, BigDecimal.ZERO, BigDecimal.ONE, null)), "and no more: 0 is too short, too");
        assertEquals(List.of(List.of("/red", "INCONSISTENT", "Omit it when `shape` is line.")),
                check(new Drawing(Shape.LINE, BigDecimal.ONE, null, BigDecimal.ONE)));
        assertEquals(List.of(List.of("/length", "INCONSISTENT", "Omit it unless `shape` is line.")),
                check(new Sketch(null, BigDecimal.ONE)), "dot is meant where nothing is given");
    }

    @Test
    void missesWhatTheKindNeeds() {
        assertEquals(List.of(List.of("/length", "MISSING", "Missing `length`. It is required when `shape` is `line`.")),
                check(new Drawing(Shape.LINE, null, null, null)));
    }

    /** Which properties go with it cannot be said as long as the kind is not known. */
    @Test
    void saysOnlyThatTheKindIsMissing() {
        String missing = "Missing `shape`. Must be one of dot, line, box, bigBox.";
        assertEquals(List.of(List.of("/shape", "MISSING", missing)),
                check(new Drawing(null, null, BigDecimal.ONE, BigDecimal.ONE)));
        Violations told = new Violations();
        told.add("shape", Code.UNKNOWN_VALUE, Message.verbatim("must be another"));
        Checker.check(new Drawing(null, BigDecimal.ONE, BigDecimal.ONE, null), told);
        assertEquals(1, told.sorted().size());
    }

    @Test
    void givesKindsThatDifferASchemaOfTheirOwn() {
        assertEquals(Map.of("Plain", List.of("dot"), "Line", List.of("line"), "Box", List.of("box"), "BigBox",
                List.of("bigBox")), DiscriminatorValues.of(Drawing.class).bySchema());
        assertEquals(List.of("Dot", "Line", "Box", "BigBox"), List.copyOf(DiscriminatorValues.of(Sketch.class).bySchema().keySet()));
    }

    @Test
    void refusesARecordThatNamesAKindThatThereIsNot() {
        assertThrows(IllegalStateException.class, () -> DiscriminatorValues.of(Wrong.class));
    }

    private static List<List<String>> check(Record request) {
        Violations violations = new Violations();
        Checker.check(request, violations);
        return violations.sorted().stream().map(fault -> List.of(fault.pointer(), fault.code().name(),
                fault.message().toString())).toList();
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.WireNames;
import dev.brinebook.guard.CalculationCancelled;
import dev.brinebook.guard.CancellationToken;
import dev.brinebook.http.Trial;
import dev.brinebook.http.problem.ProblemException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a body of faults costs: processor time in proportion to its length, whatever the faults are. Four times as many may
 * take up to eight times as long, so that no noise fails a linear reader; a quadratic one takes sixteen times as long.
 */
@Tag("processorTime")
class FaultFloodTest {

    private static final int FEW = 3_000;
    private static final int TIMES_AS_MANY = 4;
    private static final double HIGHEST_RATIO = 8;
    /** Below this, timer steps and compilation are all that is seen. */
    private static final long NEGLIGIBLE_NANOS = 20_000_000;
    private static final int RUNS = 5;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final JsonReader READER = new JsonReader();

    /** A body that grows with a number. */
    private record Flood(String name, Class<? extends Record> type, IntFunction<String> body) {

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Flood> floods() {
        List<Flood> floods = new ArrayList<>(List.of(
                trial("unknown keys", "{%s}", i -> "\"key%d\": 1".formatted(i)),
                trial("unknown keys of a part", "{\"part\": {\"count\": 1, %s}}", i -> "\"key%d\": 1".formatted(i)),
                trial("unknown keys with objects", "{%s}", i -> "\"key%d\": {\"a\": null}".formatted(i)),
                trial("long unknown keys", "{%s}", i -> "\"%s%d\": 1".formatted("k".repeat(100), i)),
                trial("parts with an unknown key", "{\"parts\": [%s]}", i -> "{\"count\": 1, \"a\": 1}"),
                trial("parts with a fault", "{\"parts\": [%s]}", i -> "{\"count\": 10}"),
                trial("parts without fault", "{\"parts\": [%s]}", i -> "{\"count\": 1}"),
                trial("empty parts", "{\"parts\": [%s]}", i -> "{}"),
                trial("numbers for parts", "{\"parts\": [%s]}", i -> "1"),
                trial("numbers out of range", "{\"series\": [%s]}", i -> "9"),
                trial("numbers in range", "{\"series\": [%s]}", i -> "1"),
                trial("texts for numbers", "{\"series\": [%s]}", i -> "\"x\""),
                trial("lists for numbers", "{\"series\": [%s]}", i -> "[[[[1]]]]"),
                trial("nulls in a list", "{\"series\": [%s]}", i -> "null"),
                trial("nulls where nothing is known", "{\"x\": [%s]}", i -> "null"),
                trial("unknown names", "{\"parts\": [%s]}", i -> "{\"count\": 1, \"kind\": \"%s\"}".formatted("p".repeat(60))),
                trial("names of one hash", "{%s}", i -> "\"%s\": 1".formatted(ofOneHash(i)))));
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            addLists(operation, operation.requestType(), "", "", new ArrayList<>(), floods);
        }
        return floods;
    }

    private static Flood trial(String name, String frame, IntFunction<String> element) {
        return new Flood(name, Trial.Request.class, count -> frame.formatted(listed(count, element)));
    }

    /** Every list of a request, filled with what it should hold, whatever else is missing. */
    private static void addLists(Operation<?, ?> operation, Class<?> type, String before, String after, List<Class<?>> above,
            List<Flood> floods) {
        if (above.contains(type)) {
            return;
        }
        above.add(type);
        for (RecordComponent component : type.getRecordComponents()) {
            String start = before + "{\"" + component.getName() + "\": ";
            if (component.getGenericType() instanceof ParameterizedType list) {
                Class<?> element = (Class<?>) list.getActualTypeArguments()[0];
                floods.add(new Flood(operation.id() + " " + start, operation.requestType(), count -> start + "["
                        + listed(count, i -> element.isAnnotationPresent(SchemaDescription.class) ? filled(element, i) : plain(element, i))
                        + "]}" + after));
            } else if (component.getType().isAnnotationPresent(SchemaDescription.class)) {
                addLists(operation, component.getType(), start, "}" + after, above, floods);
            }
        }
        above.remove(type);
    }

    /** An object with each of its plain properties. */
    private static String filled(Class<?> type, int number) {
        return Arrays.stream(type.getRecordComponents()).filter(one -> !(one.getGenericType() instanceof ParameterizedType)
                && !one.getType().isAnnotationPresent(SchemaDescription.class))
                .map(one -> "\"%s\": %s".formatted(one.getName(), plain(one.getType(), number)))
                .collect(Collectors.joining(",", "{", "}"));
    }

    private static String plain(Class<?> type, int number) {
        if (type == String.class) {
            return "\"no. " + number + '"';
        }
        if (type.isEnum()) {
            return '"' + WireNames.all(type).get(0) + '"';
        }
        return type == Boolean.class ? "true" : type == LocalDate.class
                ? '"' + LocalDate.of(1900, 1, 1).plusDays(number).toString() + '"' : "1";
    }

    private static String listed(int count, IntFunction<String> element) {
        return IntStream.range(0, count).mapToObj(element).collect(Collectors.joining(","));
    }

    /** Names whose hash code is the same, by {@code "Aa".hashCode() == "BB".hashCode()}. */
    private static String ofOneHash(int number) {
        return IntStream.range(0, 14).mapToObj(bit -> (number >> bit & 1) == 0 ? "Aa" : "BB").collect(Collectors.joining());
    }

    @ParameterizedTest
    @MethodSource("floods")
    void takesTimeInProportionToItsLength(Flood flood) {
        byte[] many = flood.body().apply(FEW * TIMES_AS_MANY).getBytes(StandardCharsets.UTF_8);
        long nanosOfMany = leastNanos(many, flood.type(), NEGLIGIBLE_NANOS);
        if (nanosOfMany < NEGLIGIBLE_NANOS) {
            return;
        }
        byte[] few = flood.body().apply(FEW).getBytes(StandardCharsets.UTF_8);
        long nanosOfFew = leastNanos(few, flood.type(), 0);
        // The many came first, when less was compiled.
        nanosOfMany = Math.min(nanosOfMany, leastNanos(many, flood.type(), (long) (HIGHEST_RATIO * nanosOfFew)));
        assertTrue(nanosOfMany <= HIGHEST_RATIO * nanosOfFew,
                "%d take %d us, %d take %d us".formatted(FEW, nanosOfFew / 1_000, FEW * TIMES_AS_MANY, nanosOfMany / 1_000));
    }

    /** Of some runs, until one takes less than is asked for. */
    private static long leastNanos(byte[] body, Class<? extends Record> type, long enough) {
        long least = Long.MAX_VALUE;
        for (int run = 0; run < RUNS && least >= enough; run++) {
            least = Math.min(least, nanos(body, type));
        }
        return least;
    }

    private static long nanos(byte[] body, Class<? extends Record> type) {
        long before = THREADS.getCurrentThreadCpuTime();
        try {
            READER.read(body, type);
        } catch (InvalidRequest | ProblemException expected) {
            // what it says is tested elsewhere
        }
        return THREADS.getCurrentThreadCpuTime() - before;
    }

    /** Faults of form end the reading, those of content the checking; what is below an unknown key is one fault with it. */
    @ParameterizedTest
    @CsvSource({"99, 99", "100, 100", "101, 100", "5000, 100"})
    void gathersFaultsUpToTheirLimit(int sent, int gathered) {
        for (String element : List.of("\"x\"", "null", "9")) {
            String oneLess = "{\"series\": [" + listed(sent - 1, i -> element) + "]}";
            assertEquals(gathered, faults(oneLess), element + " in a list, which is too long as well");
        }
        assertEquals(gathered, faults("{" + listed(sent, i -> "\"key%d\": {\"a\": null}".formatted(i)) + "}"));
        assertEquals(gathered, faults("{\"flag\": true, \"part\": {" + listed(sent - 2, i -> "\"key%d\": 1".formatted(i))
                + ", \"count\": 0}}"));
    }

    private static int faults(String body) {
        return assertThrows(InvalidRequest.class, () -> READER.read(body.getBytes(StandardCharsets.UTF_8), Trial.Request.class))
                .violations().size();
    }

    /** A deadline that has passed ends the reading and the checking wherever they are, and not as a fault of the body. */
    @ParameterizedTest
    @ValueSource(strings = {"{\"parts\": [%s]}", "{\"x\": [%s]}", "{\"part\": {\"count\": [%s]}}",
        "{\"part\": {\"x\": [%s]}}", "{\"parts\": [{\"x\": {\"y\": [%s]}}]}"})
    void stopsReadingAndCheckingWhenItIsToStop(String frame) {
        byte[] body = frame.formatted(listed(FEW, i -> "{\"a\": 1}")).getBytes(StandardCharsets.UTF_8);
        AtomicInteger looks = new AtomicInteger();
        CancellationToken.obeying(() -> looks.incrementAndGet() < 0, () -> assertThrows(InvalidRequest.class,
                () -> READER.read(body, Trial.Request.class)));
        for (int stopAt = 1; stopAt <= looks.get(); stopAt++) {
            AtomicInteger left = new AtomicInteger(stopAt);
            assertThrows(CalculationCancelled.class, () -> CancellationToken.obeying(() -> left.decrementAndGet() <= 0,
                    () -> READER.read(body, Trial.Request.class)));
        }
        assertTrue(looks.get() > 0, "never looked");
    }

    /** Neither the reading of a long list without fault nor the checking of it is left to run. */
    @Test
    void looksAtTheSignAllTheWayThroughALongList() {
        byte[] body = "{\"series\": [%s]}".formatted(listed(FEW, i -> "1")).getBytes(StandardCharsets.UTF_8);
        AtomicInteger looks = new AtomicInteger();
        CancellationToken.obeying(() -> looks.incrementAndGet() < 0, () -> assertThrows(InvalidRequest.class,
                () -> READER.read(body, Trial.Request.class)));
        assertTrue(looks.get() >= FEW + FEW / 256, looks + " looks");
    }
}

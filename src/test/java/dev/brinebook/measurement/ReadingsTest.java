// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.measurement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.Exact;
import dev.brinebook.randomness.RandomStream;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ReadingsTest {

    private static final double GALLON = Exact.US_GALLON_LITRES;
    private static final long SEED = 11;

    private enum Name {
        A, B, C
    }

    private static final Formula<Name> QUOTIENT = x -> x.of(Name.A) / x.of(Name.B);

    @ParameterizedTest
    @CsvFileSource(resources = "/measurement/worked-uncertainty.csv", useHeadersInDisplayName = true)
    void agreesWithHandArithmetic(String kind, double gallons, double flowGallonsPerMinute, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, 200 * (kind.startsWith("bucket")
                ? bucket(gallons, 60 * gallons / flowGallonsPerMinute) : meter(kind, gallons)).relativeUncertainty());
    }

    private static Measured<Name> bucket(double gallons, double seconds) {
        return of(Reading.within(gallons * GALLON, Instrument.MARKED_BUCKET.halfWidth(gallons * GALLON)),
                Reading.difference(seconds, Instrument.STOPWATCH.halfWidth(seconds))).measure(QUOTIENT, SEED);
    }

    /** A bucket of 5 gal as many times as needed, its mark being wrong by as much each time. */
    private static Measured<Name> meter(String kind, double gallons) {
        Instrument bucket = kind.contains("Marked") ? Instrument.MARKED_BUCKET : Instrument.WEIGHED_BUCKET;
        return of(Reading.difference(gallons * GALLON, GALLON / 2),
                Reading.within(gallons * GALLON, gallons / 5 * bucket.halfWidth(5 * GALLON))).measure(QUOTIENT, SEED);
    }

    private static Readings<Name> of(Reading a, Reading b) {
        return new Readings<>(Name.class, Map.of(Name.A, a, Name.B, b));
    }

    @Test
    void readsEveryRow() {
        assertEquals(15, Rows.in("/measurement/worked-uncertainty.csv"));
    }

    @ParameterizedTest
    @EnumSource
    void everyInstrumentHasAHalfWidthAndASource(Instrument instrument) {
        assertTrue(instrument.halfWidth(20) > 0);
        assertFalse(instrument.sourceKey().isEmpty());
    }

    /** The mark limits a small bucket, and repeats of the time do not make it better. */
    @Test
    void namesTheReadingThatMattersMost() {
        Measured<Name> measured = bucket(1, 30);
        assertEquals(Name.A, measured.largestContribution().orElseThrow());
        assertEquals(1, measured.varianceShare(Name.A) + measured.varianceShare(Name.B), 1e-9);
        assertEquals(0, measured.varianceShare(Name.C));
    }

    @ParameterizedTest
    @CsvSource({
            // repeats | u, by hand: s/√n, or the single reading's 2·0.3/√6 = 0.245 where that is larger
            "10;10, 0.24495, single reading",
            "10;12, 1, √2/√2",
            "10;10;10;10, 0.12247, 0.24495/√4: equal repeats are not exact",
            "9;11;9;11, 0.57735, √(4/3)/√4"})
    void takesRepeatsForWhatTheyAreWorth(String repeats, double expected) {
        double[] values = java.util.Arrays.stream(repeats.split(";")).mapToDouble(Double::parseDouble).toArray();
        assertEquals(expected, Reading.mean(values, value -> Reading.difference(value, 0.3)).standardUncertainty(), 1e-5);
    }

    /** Propagation against simulation on 500 sets of readings at random, of sums, products, quotients and differences. */
    @Test
    void propagationAgreesWithSimulation() {
        RandomStream random = new RandomStream(20, 1);
        int agree = 0;
        for (int set = 0; set < 500; set++) {
            Map<Name, Reading> readings = new EnumMap<>(Name.class);
            for (Name name : Name.values()) {
                double value = 1 + 9 * random.nextDouble();
                double width = value * (0.01 + 0.14 * random.nextDouble());
                readings.put(name, set % 3 == 0 ? Reading.within(value, width) : set % 3 == 1 ? Reading.difference(value, width / 2)
                        : Reading.normal(value, width / 3));
            }
            Formula<Name> formula = List.<Formula<Name>>of(QUOTIENT, x -> x.of(Name.A) * x.of(Name.B) / x.of(Name.C),
                    x -> x.of(Name.A) + 2 * x.of(Name.B) - x.of(Name.C), x -> x.of(Name.A) * x.of(Name.A) * x.of(Name.B)).get(set % 4);
            Measured<Name> measured = new Readings<>(Name.class, readings).measure(formula, set);
            agree += measured.agrees() ? 1 : 0;
        }
        assertTrue(agree >= 495, agree + " of 500");
    }

    /** A quotient by a reading that is hardly known is not linear, and says so. */
    @Test
    void saysWhereTheyDisagree() {
        assertFalse(of(Reading.within(10, 0.1), Reading.within(1, 0.9)).measure(QUOTIENT, SEED).agrees());
    }

    @Test
    void isTheSameForTheSameSeed() {
        assertEquals(bucket(5, 60).simulated(), bucket(5, 60).simulated());
    }

    @Test
    void refusesAnExactReading() {
        assertThrows(IllegalArgumentException.class, () -> Reading.within(3, 0));
        assertThrows(IllegalArgumentException.class, () -> Reading.normal(3, Double.NaN));
    }
}

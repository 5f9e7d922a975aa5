// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers of answers: RFC 8259, section 6, has neither NaN nor infinity. */
class JsonWriterTest {

    private record Boxed(Double value) {
    }

    private record Plain(double value) {
    }

    private record Decimal(BigDecimal value) {
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1})
    void refusesBinaryNumbersWhateverTheyAre(double value) {
        assertThrows(RuntimeException.class, () -> new JsonWriter().write(new Boxed(value)));
        assertThrows(RuntimeException.class, () -> new JsonWriter().write(new Plain(value)));
    }

    @ParameterizedTest
    @CsvSource({"1E+5, 100000", "1E-7, 0.0000001", "-0.50, -0.50"})
    void writesDecimalsPlain(BigDecimal value, String written) {
        assertEquals("{\"value\":" + written + "}", new String(new JsonWriter().write(new Decimal(value)), StandardCharsets.UTF_8));
    }

    @Test
    void omitsAbsentValues() {
        assertEquals("{}", new String(new JsonWriter().write(new Decimal(null)), StandardCharsets.UTF_8));
    }
}

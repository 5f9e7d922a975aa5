package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExceptionalDaysTest {

    private static MeteredDays days(String values) {
        return MeteredDays.of(LocalDate.of(2026, 3, 2), Arrays.stream(values.split(" ")).map(value -> value.equals("-")
                ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(value))).toList());
    }

    /** By hand: the median is of days with somebody at home, and four times it is not yet exceptional. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            values,                                  exceptional, held
            100 90 110 100 - 401 100 100,            5,           100 90 110 100 - 400 100 100
            100 90 110 100 - 400 100 100,            '',          100 90 110 100 - 400 100 100
            0 0 0 0 0 0 0 0 100 100 100 0 0 0 900,   14,          0 0 0 0 0 0 0 0 100 100 100 0 0 0 400
            0 0 0 - 0,                               '',          0 0 0 - 0
            3000,                                    '',          3000
            """)
    void areThoseAboveFourMedianDays(String values, String exceptional, String held) {
        int[] expected = exceptional.isEmpty() ? new int[0] : new int[] {Integer.parseInt(exceptional)};
        assertArrayEquals(expected, ExceptionalDays.of(days(values)).indexes());
        MeteredDays most = days(held);
        MeteredDays actual = ExceptionalDays.of(days(values)).held();
        assertArrayEquals(most.known(), actual.known());
        for (int i : most.known()) {
            assertEquals(most.litres(i), actual.litres(i));
        }
    }

    /** Of 45 real homes: [DAIAD] has such days in 31 % of all 68, 1.1 a year. */
    @Test
    void areInEveryThirdOfRealHomes() {
        long homes = RealHome.all().stream().filter(home -> ExceptionalDays.of(home.days()).indexes().length > 0).count();
        double perYear = 365.0 * RealHome.all().stream().mapToInt(home -> ExceptionalDays.of(home.days()).indexes().length).sum()
                / 17_243;
        assertEquals(0.31, homes / 45.0, 0.05);
        assertEquals(1.1, perYear, 0.2);
    }
}

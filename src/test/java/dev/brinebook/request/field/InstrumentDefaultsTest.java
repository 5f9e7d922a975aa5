// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.api.Property;
import dev.brinebook.measurement.Instrument;
import dev.brinebook.quantity.LengthUnit;
import dev.brinebook.quantity.PressureUnit;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the contract says of a reading that states no uncertainty is what the table of instruments says. */
class InstrumentDefaultsTest {

    static Stream<Arguments> defaults() {
        return Stream.of(Arguments.of(BucketRequest.class, "secondsPlusMinus", Instrument.STOPWATCH, 1.0),
                Arguments.of(BrineTestRequest.class, "degreesPlusMinus", Instrument.HYDROMETER, 1.0),
                Arguments.of(BrineTankRequest.class, "levelPlusMinus", Instrument.TAPE_IN_BRINE_TANK, LengthUnit.INCH.toBase(1)),
                Arguments.of(ResinTankRequest.class, "depthPlusMinus", Instrument.DIP_ROD, LengthUnit.INCH.toBase(1)),
                Arguments.of(PressureTestRequest.class, "plusMinus", Instrument.GAUGE_DIFFERENCE, PressureUnit.PSI.toBase(1)));
    }

    @ParameterizedTest
    @MethodSource("defaults")
    void areThoseOfTheTable(Class<?> record, String name, Instrument instrument, double base) {
        RecordComponent component = Arrays.stream(record.getRecordComponents()).filter(each -> each.getName().equals(name)).findFirst()
                .orElseThrow();
        assertEquals(instrument.halfWidth(1), component.getAnnotation(Property.class).byDefault() * base, 1e-12);
    }
}

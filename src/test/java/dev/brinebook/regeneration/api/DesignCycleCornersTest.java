package dev.brinebook.regeneration.api;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.Checker;
import dev.brinebook.api.Violations;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.LengthUnit;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.quantity.TemperatureUnit;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.CapacityQuantity;
import dev.brinebook.quantity.api.FlowQuantity;
import dev.brinebook.quantity.api.LengthQuantity;
import dev.brinebook.quantity.api.MassQuantity;
import dev.brinebook.quantity.api.SaltDoseQuantity;
import dev.brinebook.quantity.api.TemperatureQuantity;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.api.FlowsRequest;
import dev.brinebook.softener.api.PreferencesRequest;
import dev.brinebook.softener.api.SoftenerRequest;
import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Corners of every allowed range, in units that do not convert evenly: what passes the checks is answered. */
class DesignCycleCornersTest {

    private static final long SEED = 20_260_101;
    private static final int REQUESTS = 20_000;

    private final Random random = new Random(SEED);

    @Test
    void answersEveryCornerThatPassesTheChecks() {
        int answered = 0;
        for (int i = 0; i < REQUESTS; i++) {
            CycleDesignRequest request = request();
            Violations violations = new Violations();
            Checker.check(request, violations);
            if (violations.isEmpty()) {
                assertDoesNotThrow(() -> DesignCycle.OPERATION.calculate().apply(request),
                        "seed " + SEED + ", request " + i + ": " + request);
                answered++;
            }
        }
        assertTrue(answered > REQUESTS / 5, answered + " answered");
    }

    private CycleDesignRequest request() {
        return new CycleDesignRequest(softener(), temperature("1", "35", "33.8", "95"),
                temperature("0", "37.8", "32", "100.04"), sometimes(random.nextBoolean()),
                sometimes(new BigDecimal(one("0", "0.5", "2000"))),
                new PreferencesRequest(null, sometimes(one(CapacityTable.values())), null, null),
                one(AnswerUnits.values()));
    }

    private SoftenerRequest softener() {
        boolean nameplate = random.nextInt(4) == 0;
        boolean byMass = random.nextInt(3) == 0;
        boolean tank = random.nextBoolean();
        return new SoftenerRequest(nameplate ? null : one(litres("1"), litres("12"), litres("600"), cubicFeet("0.03531467"),
                        cubicFeet("1"), cubicFeet("1.5"), cubicFeet("21.188")),
                nameplate ? one(new CapacityQuantity(new BigDecimal("100"), CapacityUnit.GRAM),
                        new CapacityQuantity(new BigDecimal("30000"), CapacityUnit.GRAIN),
                        new CapacityQuantity(new BigDecimal("40000"), CapacityUnit.GRAM)) : null,
                tank ? one(metres("0.1"), metres("2"), inches("3.93700788"), inches("10"), inches("78.7401574")) : null,
                tank ? one(metres("0.2"), metres("3"), inches("7.87401575"), inches("54"), inches("118.11023")) : null,
                sometimes(one(Salt.values())),
                byMass ? null : sometimes(one(dose("3", SaltDoseUnit.POUND_PER_CUBIC_FOOT),
                        dose("20", SaltDoseUnit.POUND_PER_CUBIC_FOOT), dose("48.0553803", SaltDoseUnit.GRAM_PER_LITRE),
                        dose("61.302", SaltDoseUnit.GRAM_PER_LITRE), dose("320.369", SaltDoseUnit.GRAM_PER_LITRE),
                        dose("408.67", SaltDoseUnit.GRAM_PER_LITRE))),
                byMass ? one(pounds("3"), pounds("4.5"), pounds("20"), pounds("30"), pounds("0.2"), pounds("250")) : null,
                null, null, random.nextBoolean() ? null : new FlowsRequest(flow(), flow(), flow(), flow(), flow()), null,
                null, null);
    }

    private FlowQuantity flow() {
        return sometimes(one(new FlowQuantity(new BigDecimal("0.1"), FlowUnit.LITRE_PER_MINUTE),
                new FlowQuantity(new BigDecimal("500"), FlowUnit.LITRE_PER_MINUTE),
                new FlowQuantity(new BigDecimal("30"), FlowUnit.CUBIC_METRE_PER_HOUR),
                new FlowQuantity(new BigDecimal("0.0264172053"), FlowUnit.GPM),
                new FlowQuantity(new BigDecimal("3"), FlowUnit.GPM)));
    }

    private TemperatureQuantity temperature(String minCelsius, String maxCelsius, String minFahrenheit,
            String maxFahrenheit) {
        return sometimes(random.nextBoolean()
                ? new TemperatureQuantity(new BigDecimal(one(minCelsius, maxCelsius)), TemperatureUnit.CELSIUS)
                : new TemperatureQuantity(new BigDecimal(one(minFahrenheit, maxFahrenheit)), TemperatureUnit.FAHRENHEIT));
    }

    private static VolumeQuantity litres(String value) {
        return new VolumeQuantity(new BigDecimal(value), VolumeUnit.LITRE);
    }

    private static VolumeQuantity cubicFeet(String value) {
        return new VolumeQuantity(new BigDecimal(value), VolumeUnit.CUBIC_FOOT);
    }

    private static LengthQuantity metres(String value) {
        return new LengthQuantity(new BigDecimal(value), LengthUnit.METRE);
    }

    private static LengthQuantity inches(String value) {
        return new LengthQuantity(new BigDecimal(value), LengthUnit.INCH);
    }

    private static SaltDoseQuantity dose(String value, SaltDoseUnit unit) {
        return new SaltDoseQuantity(new BigDecimal(value), unit);
    }

    private static MassQuantity pounds(String value) {
        return new MassQuantity(new BigDecimal(value), MassUnit.POUND);
    }

    @SafeVarargs
    private <T> T one(T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private <T> T sometimes(T value) {
        return random.nextInt(3) > 0 ? value : null;
    }
}

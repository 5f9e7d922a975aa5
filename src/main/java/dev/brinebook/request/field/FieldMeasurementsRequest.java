// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.household.Country;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis;
import java.math.BigDecimal;

@SchemaDescription("Readings taken at a softener, as many as there are. Each may be off by a stated amount, or by that of its usual "
        + "instrument.")
@Alternatives(value = {"drain", "refill", "brineDraw", "serviceFlow", "meterCheck", "resinTank", "brineTank", "brine", "pressure",
        "hardness", "books", "softener"}, required = true, several = true)
public record FieldMeasurementsRequest(
        @Property("Flow at the end of the drain line in backwash, after a minute.") BucketRequest drain,
        @Property("Flow of the brine refill, caught from the brine line.") BucketRequest refill,
        @Property(value = "Minutes of the brine refill.", min = 0.1, max = 240, unit = "minutes", example = "6",
                fallback = "the refill minutes of the softener; else the salt by the refill is not known") BigDecimal refillMinutes,
        @Property("Flow that the injector draws from a bucket by the brine line.") BucketRequest brineDraw,
        @Property(value = "What it drew.", defaultCode = "brine", example = "\"water\"") DrawnLiquid brineDrawLiquid,
        @Property("Flow at open taps behind the softener.") BucketRequest serviceFlow,
        @Property("Check of the meter against a bucket.") MeterCheckRequest meterCheck,
        @Property("Tape and dip rod in the resin tank.") ResinTankRequest resinTank,
        @Property("Tape in the brine tank, before and after a brine draw.") BrineTankRequest brineTank,
        @Property("Hydrometer in the brine.") BrineTestRequest brine,
        @Property("Pressures in service and in bypass.") PressureTestRequest pressure,
        @Property("Drop tests at raw water, outlet and tap.") DropTestsRequest hardness,
        @Property("Run until it ran hard. Needs hardness.") BreakthroughRunRequest run,
        @Property("Salt bought and regenerations counted.") SaltBooksRequest books,
        @Property(value = "Temperature of the water.", min = FieldMeasurementsRequest.MIN_CELSIUS,
                max = FieldMeasurementsRequest.MAX_CELSIUS, unit = "C", byDefault = WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS)
        TemperatureQuantity waterTemperature,
        @Property("What is known of the softener: name plate, age, salt and settings. The answer has it with the measured values.")
        SoftenerRequest softener,
        @Property("What is known of the site. The answer has it with the measured values.") SiteRequest site,
        @Property(value = "Country. Sets the default units.", defaultCode = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Seed of the simulation. The same seed gives the same answer.", min = 0, max = PreferencesRequest.MAX_SEED,
                byDefault = PreferencesRequest.DEFAULT_SEED, example = "1") Long seed) implements Checked {

    public static final double MIN_CELSIUS = 3;
    public static final double MAX_CELSIUS = 35;

    /** What the brine line drew from the bucket. */
    public enum DrawnLiquid {
        BRINE, WATER
    }

    @Override
    public void check(Violations at) {
        if (run != null && hardness == null) {
            at.add("hardness", Code.MISSING, Message.of("problem.field.runNeedsHardness"));
        }
        if (brine != null && saltOrDefault() != Salt.SODIUM_CHLORIDE) {
            at.add("brine", Code.INCONSISTENT, Message.of("problem.field.hydrometerSodium"));
        }
    }

    public Salt saltOrDefault() {
        return softener == null || softener.salt() == null ? Salt.SODIUM_CHLORIDE : softener.salt();
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.http.TestServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Households at random that a person could meet: nearly all of {@link dev.brinebook.http.RandomRequests} have water that must be
 * treated first.
 */
final class HouseholdRequests {

    private static final String[] CONTROLS = {"{\"kind\":\"clock\",\"everyDays\":%d}", "{\"kind\":\"clock\",\"weekdays\":[\"monday\"]}",
        "{\"kind\":\"meteredDelayed\"}", "{\"kind\":\"meteredImmediate\"}", "{\"kind\":\"clock\",\"everyDays\":%d}"};
    private static final String[] COUNTRIES = {"unitedStates", "germany", "france", "unitedKingdom", null};
    private static final String[] EXAMPLES = {"well-family", "apartment", "holiday-cabin"};

    private final Random random;

    HouseholdRequests(long seed) {
        random = new Random(seed);
    }

    /** The first of the seeds from 1 on. */
    static List<String> first(int many) {
        List<String> requests = new ArrayList<>();
        for (long seed = 1; seed <= many; seed++) {
            requests.add(new HouseholdRequests(seed).request().toString());
        }
        return requests;
    }

    /** One of the three invented households, with much of it changed. */
    ObjectNode request() {
        ObjectNode request = (ObjectNode) json(TestServer.example("assess." + EXAMPLES[random.nextInt(EXAMPLES.length)]));
        ObjectNode water = (ObjectNode) request.get("water");
        water.set("hardness", json("{\"value\":" + (random.nextInt(12) == 0 ? 2 : 5 + random.nextInt(35)) + ",\"unit\":\"gpg\"}"));
        water.set("iron", json("{\"value\":" + (random.nextInt(12) == 0 ? 12 : random.nextInt(3) * 0.4) + ",\"unit\":\"mg/L\"}"));
        ObjectNode household = (ObjectNode) request.get("household");
        if (household.has("people")) {
            household.put("people", 1 + random.nextInt(7));
        }
        String country = COUNTRIES[random.nextInt(COUNTRIES.length)];
        if (country != null && !request.has("prices") && !request.has("retrofit")) {
            household.put("country", country);
        }
        softener((ObjectNode) request.get("softener"));
        if (random.nextInt(3) == 0) {
            request.remove("retrofit");
        } else if (random.nextInt(2) == 0) {
            upgrades((ObjectNode) request.get("retrofit"));
        }
        return request;
    }

    private void softener(ObjectNode softener) {
        double cubicFeet = List.of(0.5, 0.75, 1.0, 1.5, 2.0, 3.0).get(random.nextInt(6));
        softener.remove(List.of("nameplateCapacity", "tankDiameter", "tankHeight"));
        softener.set("resinVolume", json("{\"value\":" + cubicFeet + ",\"unit\":\"ft3\"}"));
        softener.set("control", json(CONTROLS[random.nextInt(CONTROLS.length)].formatted(1 + random.nextInt(12))));
        softener.set("saltDose", json("{\"value\":" + (4 + random.nextInt(14)) + ",\"unit\":\"lb/ft3\"}"));
        if (random.nextInt(5) == 0) {
            softener.remove("saltDose");
        }
        if (random.nextInt(2) == 0) {
            softener.remove(List.of("minutes", "flows"));
        }
    }

    private void upgrades(ObjectNode retrofit) {
        String money = retrofit.at("/cost/unit").asText();
        retrofit.set("upgrades", json(random.nextBoolean() ? """
                [{"kind":"secondTank","cost":{"value":%1$d,"unit":"%2$s"}}, {"kind":"largerBed","cost":{"value":%1$d,"unit":"%2$s"}}]"""
                .formatted(200 + random.nextInt(900), money) : """
                [{"kind":"replacement","cost":{"value":%d,"unit":"%s"},
                  "softener":{"sku":"Invented R","resinVolume":{"value":2.5,"unit":"ft3"}}}]"""
                .formatted(50 + random.nextInt(600), money)));
    }

    private static JsonNode json(String text) {
        try {
            return SheetSamples.JSON.readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The facts of a quick assessment: which are missing, what to ask for them, and the request that they make. */
final class QuickFacts {

    /** The question for each fact that cannot be assumed. */
    private static final Map<String, String> QUESTIONS = questions();
    /** Where each fact goes in a request for an assessment, to name it where the check of that request finds a fault. */
    private static final Map<String, String> PLACES = places();

    private final Map<String, JsonNode> given;
    private final Countries countries;

    /** Facts that fit the input schema, of a home in one of {@code countries}. */
    QuickFacts(Map<String, JsonNode> given, Countries countries) {
        this.given = given;
        this.countries = countries;
    }

    private static Map<String, String> questions() {
        Map<String, String> questions = new LinkedHashMap<>();
        questions.put("hardness", "What hardness does the water test or the water bill show?");
        questions.put("hardnessUnit", "In which unit is the hardness: grains per gallon (gpg), ppm or mg/L, German degrees (dH), French "
                + "degrees (fH) or mmol/L?");
        questions.put("people", "How many people live there?");
        questions.put("size", "How much resin does the softener hold, or how many grains does its name plate say?");
        questions.put("sizeUnit", "Is that size in cubic feet (ft3) or litres (L) of resin, or in grains of the name plate (gr)?");
        questions.put("control", "What starts a regeneration: a clock (clock), a meter that waits for the night (meteredDelayed), a meter "
                + "at once (meteredImmediate), or two tanks taking turns (twinAlternating)?");
        questions.put("everyDays", "Every how many days is the clock set to regenerate?");
        questions.put("saltPerRegeneration", "How much salt is one regeneration set to use?");
        questions.put("saltUnit", "Is that salt in pounds (lb) or kilograms (kg)?");
        return questions;
    }

    private static Map<String, String> places() {
        Map<String, String> places = new LinkedHashMap<>();
        places.put("/water/hardness", "hardness");
        places.put("/water/iron", "ironMgPerL");
        places.put("/water/supply", "supply");
        places.put("/household/people", "people");
        places.put("/household/country", "country");
        places.put("/softener/resinVolume", "size");
        places.put("/softener/nameplateCapacity", "size");
        places.put("/softener/control/everyDays", "everyDays");
        places.put("/softener/control", "control");
        places.put("/softener/saltPerRegeneration", "saltPerRegeneration");
        places.put("/softener/saltDose", "saltPerRegeneration");
        places.put("/softener", "size");
        places.put("/retrofit", "conversionCost");
        places.put("/prices", "country");
        return places;
    }

    boolean has(String fact) {
        return given.containsKey(fact);
    }

    String text(String fact) {
        return has(fact) ? given.get(fact).textValue() : null;
    }

    JsonNode value(String fact) {
        return given.get(fact);
    }

    /** The elements of {@code list}; none where it is not given. */
    List<String> texts(String list) {
        return Json.texts(given.get(list));
    }

    /** Whether {@code list} names {@code fact}. */
    boolean lists(String list, String fact) {
        return texts(list).contains(fact);
    }

    /** A fault for each fact that is given and called unknown too, and for money of another country: only one of both can be right. */
    List<Fault> contradictions() {
        Stream<Fault> unknown = given.keySet().stream().filter(fact -> lists("unknown", fact)).map(fact -> new Fault("/unknown",
                "contradictory", fact + " is given too: leave out one of both"));
        return Stream.concat(unknown, foreignMoney().stream()).toList();
    }

    private Optional<Fault> foreignMoney() {
        String money = currency();
        if (!has("currency") || text("currency").equals(money)) {
            return Optional.empty();
        }
        return Optional.of(new Fault("/currency", "contradictory", "the money of " + country() + (has("country") ? ""
                : ", which is assumed where country is not given,") + " is " + money + ". If the home is in another country, give "
                + "country. If not, use calculate assess with prices in the currency of the cost, or leave out conversionCost and "
                + "currency. Do not change the currency of an amount that the person said"));
    }

    /** Where the home is, or is assumed to be. */
    private String country() {
        return has("country") ? text("country") : countries.assumed();
    }

    /** The money there, its ISO 4217 code. */
    private String currency() {
        return countries.currency(country());
    }

    /** The facts to ask for, all at once, in the order to ask. */
    List<String> missing() {
        boolean clock = !has("control") || "clock".equals(text("control"));
        boolean payback = has("conversionCost") && clock && !lists("unknown", "saltPerRegeneration");
        return QUESTIONS.keySet().stream().filter(fact -> !has(fact)).filter(fact -> switch (fact) {
            case "everyDays" -> "clock".equals(text("control"));
            case "saltPerRegeneration" -> payback;
            case "saltUnit" -> has("saltPerRegeneration");
            default -> true;
        }).toList();
    }

    static String question(String fact) {
        return QUESTIONS.get(fact);
    }

    /** The form that asks for these facts: flat and plain fields only (revision 2026-07-28, "Elicitation"). */
    static Map<String, Object> form(List<String> facts, JsonNode schema) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (String fact : facts) {
            ObjectNode field = schema.get("properties").get(fact).deepCopy();
            field.remove("exclusiveMinimum");
            field.put("title", question(fact));
            fields.put(fact, field);
        }
        return Json.object("mode", "form", "message", facts.size() == 1 ? "One fact is needed before anything can be calculated."
                : facts.size() + " facts are needed before anything can be calculated.", "requestedSchema",
                Json.object("type", "object", "properties", fields, "required", facts));
    }

    /** The request for the whole assessment. */
    ObjectNode request() {
        ObjectNode request = Json.MAPPER.createObjectNode();
        ObjectNode water = request.putObject("water");
        put(water, "hardness", given.get("hardness"), text("hardnessUnit"));
        put(water, "iron", given.get("ironMgPerL"), "mg/L");
        copy("supply", water);
        ObjectNode household = request.putObject("household");
        copy("people", household);
        copy("country", household);
        ObjectNode softener = request.putObject("softener");
        put(softener, "gr".equals(text("sizeUnit")) ? "nameplateCapacity" : "resinVolume", given.get("size"), text("sizeUnit"));
        put(softener, "saltPerRegeneration", given.get("saltPerRegeneration"), text("saltUnit"));
        ObjectNode control = softener.putObject("control").put("kind", text("control"));
        copy("everyDays", control);
        if (has("conversionCost")) {
            put(request.putObject("retrofit"), "cost", given.get("conversionCost"), currency());
        }
        copy("units", request);
        return request;
    }

    private void copy(String fact, ObjectNode to) {
        if (has(fact)) {
            to.set(fact, given.get(fact));
        }
    }

    private static void put(ObjectNode to, String name, JsonNode value, String unit) {
        if (value != null) {
            to.putObject(name).put("unit", unit).set("value", value);
        }
    }

    /** The fault of a request at the fact that it came from. */
    static Fault named(Fault fault) {
        String place = PLACES.keySet().stream().filter(one -> fault.pointer().equals(one) || fault.pointer().startsWith(one + "/"))
                .findFirst().map(one -> "/" + PLACES.get(one)).orElse("");
        return new Fault(place, fault.code(), fault.said());
    }

    /** The facts that questions can be about. */
    static Set<String> asked() {
        return QUESTIONS.keySet();
    }

    /** Questions as lines. */
    static String lines(List<String> facts) {
        return facts.stream().map(fact -> fact + ": " + question(fact)).collect(Collectors.joining("\n"));
    }

    /** The members of an object, in their order. */
    static Map<String, JsonNode> members(JsonNode object) {
        Map<String, JsonNode> members = new LinkedHashMap<>();
        object.properties().forEach(one -> members.put(one.getKey(), one.getValue()));
        return members;
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.agent.AnswerText.Detail;
import dev.brinebook.api.Checker;
import dev.brinebook.api.Operation;
import dev.brinebook.text.Language;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The tool for the usual first question, from a dozen plain facts. They become a request for the whole assessment, which goes the way
 * of every request, so that equal questions get equal figures.
 */
final class QuickAssess {

    /** The usual doses of softeners, pounds a cubic foot [CP-NAMEPLATE]. */
    private static final int[] USUAL_DOSES = {6, 15};
    /** Below it a name plate is most likely in thousands of grains. */
    private static final int ASSUMED_LEAST_NAMEPLATE_GRAINS = 1_000;

    private final Operation<?, ?> assess;
    private final JsonNode schema;
    private final Countries countries;

    QuickAssess(Operation<?, ?> assess, JsonNode schema) {
        this.assess = assess;
        this.schema = schema;
        this.countries = new Countries(assess);
    }

    /**
     * The result of a call.
     *
     * @param responses what the person answered to a form, or null
     */
    Map<String, Object> call(Map<String, JsonNode> arguments, JsonNode responses, Caller caller) {
        Map<String, JsonNode> given = new LinkedHashMap<>(arguments);
        boolean filled = responses != null && accept(responses, given);
        List<Fault> faults = SchemaCheck.check(schema, given);
        if (!faults.isEmpty()) {
            return ToolResult.fault(FaultText.of(faults, Set.of()));
        }
        QuickFacts facts = new QuickFacts(given, countries);
        List<Fault> contrary = facts.contradictions();
        if (!contrary.isEmpty()) {
            return ToolResult.fault(FaultText.of(contrary, Set.of()));
        }
        List<String> missing = facts.missing();
        if (!missing.isEmpty()) {
            boolean form = caller.takesForms() && !caller.revision().isOpened() && (responses == null || filled);
            return form ? ToolResult.form(QuickFacts.form(missing, schema)) : ToolResult.fault(ask(missing));
        }
        if (thousands(facts)) {
            return UnlikelyUnit.ask("sizeUnit", "A name plate of " + Checker.echo(facts.value("size").decimalValue())
                    + " gr is unlikely. Is it in thousands of grains?");
        }
        return assess(facts, caller);
    }

    /** Takes over what a form brought; no is taken for an answer. */
    private static boolean accept(JsonNode responses, Map<String, JsonNode> given) {
        JsonNode facts = responses.path("facts");
        if (!facts.path("action").asText().equals("accept")) {
            return false;
        }
        QuickFacts.members(facts.path("content")).forEach((name, value) -> {
            if (QuickFacts.asked().contains(name)) {
                given.put(name, value);
            }
        });
        return true;
    }

    private static String ask(List<String> missing) {
        return "Nothing was calculated. Put " + (missing.size() == 1 ? "this question" : "these " + missing.size() + " questions")
                + " to the person in one message, then call again with all facts:\n" + QuickFacts.lines(missing)
                + "\nWhat the person does not know: unknown can name saltPerRegeneration.\n";
    }

    private static boolean thousands(QuickFacts facts) {
        return "gr".equals(facts.text("sizeUnit")) && facts.value("size").doubleValue() < ASSUMED_LEAST_NAMEPLATE_GRAINS
                && !facts.lists(UnlikelyUnit.CONFIRMED, "sizeUnit");
    }

    private Map<String, Object> assess(QuickFacts facts, Caller caller) {
        ObjectNode request = facts.request();
        Outcome outcome = calculate(request, caller);
        if (outcome.answer() == null) {
            return outcome.problem() != null ? Calculate.failed(outcome, Set.of()) : ToolResult.fault(FaultText.of(
                    outcome.violations().stream().map(Fault::of).map(QuickFacts::named).distinct().toList(), Set.of()));
        }
        return UnlikelyUnit.of(outcome.answer(), facts.texts(UnlikelyUnit.CONFIRMED)).orElseGet(() -> {
            List<String> extra = facts.lists("unknown", "saltPerRegeneration") && facts.has("conversionCost")
                    ? List.of(range(request, caller)) : List.of();
            return ToolResult.text(new AnswerText(assess, outcome.answer(), caller.calculation()).of(Detail.STANDARD, extra));
        });
    }

    private Outcome calculate(ObjectNode request, Caller caller) {
        // Not written out: a number of the caller may have any exponent.
        return caller.calculation().calculate(assess, request.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** The payback at the ends of the usual doses, where nobody knows the dose. */
    private String range(ObjectNode request, Caller caller) {
        ValueText words = new ValueText(Language.ENGLISH);
        List<String> ends = new ArrayList<>();
        for (int dose : USUAL_DOSES) {
            ObjectNode other = request.deepCopy();
            ((ObjectNode) other.get("softener")).putObject("saltDose").put("value", dose).put("unit", "lb/ft3");
            Record answer = calculate(other, caller).answer();
            String years = answer == null ? null : words.of(AnswerTree.at(answer, "/retrofit/payback/simplePaybackYears"),
                    "simplePaybackYears", ValueText.Rounding.FOR_PEOPLE);
            ends.add("at " + dose + " lb/ft3 " + (years == null ? "no payback" : years + " years"));
        }
        return "Salt per regeneration is assumed, nobody stated it. Payback compared with the present or the corrected settings, whichever "
                + "saves less: " + String.join(", ", ends) + ".";
    }
}

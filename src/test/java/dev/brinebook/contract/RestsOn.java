// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import dev.brinebook.api.From;
import dev.brinebook.api.Operation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Which inputs can move a result, from those that were seen to move it: also those of the results that it is calculated from, as
 * {@link From} says, and those of results chosen or simulated together with it. A grid of doses or a limit that does not bind hides
 * them in single cases.
 */
final class RestsOn {

    /** Results that share their inputs, and parts whose inputs they take besides; {@code !} is a result that shares nothing. */
    private static final String TOGETHER = """
            assess|/settings !/settings/hardness !/settings/regenerationHour !/settings/step|/tradeOff
            assess|/tradeOff|
            assess|/cycle/steps/*/minutes /cycle/steps/*/wholeMinutes /cycle/steps/*/tenthMinutes /cycle/steps/*/waterTaken|/tradeOff
            assess|/cycle/steps/*/waterToDrain /cycle/water /cycle/waterInWholeMinutes /cycle/drain|/tradeOff
            assess|/refill/minutes /refill/tenthMinutes /refill/wholeMinutes /refill/water|/tradeOff
            assess|/year/asFound|
            assess|/year/meteredAtFoundDose|
            assess|/year/metered|/tradeOff
            assess|/year/saltMetered|/year/metered
            assess|/year/saltAsFound|/year/asFound
            assess|/findings|/year/asFound
            assess|/questions|/year/asFound
            assess|/readings|/tradeOff
            assess|/retrofit|/tradeOff /year/asFound /year/metered /year/meteredAtFoundDose
            assess|/testUncertainty|/retrofit
            assess|/useUncertainty|/retrofit
            assess|/verdict|/retrofit
            sizeSoftener|/candidates|
            sizeSoftener|/tradeOff|/candidates
            sizeSoftener|/choice|/candidates
            sizeSoftener|/verdict|/candidates
            reviewSettings|/asFound|
            reviewSettings|/setRight|/asFound
            reviewSettings|/findings|/setRight
            reviewSettings|/questions|/asFound
            reviewSettings|/verdict|/setRight
            chooseReserve|/smallest|
            chooseReserve|/rules|
            chooseReserve|/learning|
            scheduleRegeneration|/policies|
            scheduleRegeneration|/comparisons|/policies
            scheduleRegeneration|/meterOverClockSetRight|
            estimatePayback|/asFound|
            estimatePayback|/converted|
            estimatePayback|/overClockSetRight|
            estimatePayback|/savingByChange|/asFound /converted
            estimatePayback|/payback|/asFound /converted
            estimatePayback|/verdict|/payback
            compareAlternatives|/alternatives|
            compareAlternatives|/cheapest|/alternatives
            compareAlternatives|/meterOverClockSetRight|
            compareAlternatives|/verdict|/alternatives /meterOverClockSetRight
            backtestSettings|/onTheseDays|
            backtestSettings|/predicted|
            backtestSettings|/usualHardDays|/predicted
            backtestSettings|/verdict|/onTheseDays /predicted
            """;

    private final Operation<?, ?> operation;
    private final Map<String, Set<String>> inputs = new TreeMap<>();

    private RestsOn(Operation<?, ?> operation, Map<String, Set<String>> moved) {
        this.operation = operation;
        moved.forEach((result, each) -> inputs.put(result, new TreeSet<>(each)));
    }

    /** Inputs by result. */
    static Map<String, Set<String>> of(Operation<?, ?> operation, Map<String, Set<String>> moved) {
        RestsOn all = new RestsOn(operation, moved);
        Map<List<String>, List<String>> taken = all.taken();
        boolean more = true;
        while (more) {
            more = taken.entrySet().stream().filter(each -> all.give(each.getValue(), each.getKey())).count() > 0;
        }
        return all.inputs;
    }

    /** Results whose inputs others take, by those others. */
    private Map<List<String>, List<String>> taken() {
        Map<List<String>, List<String>> taken = new LinkedHashMap<>();
        inputs.keySet().forEach(result -> taken.put(List.of(result), from(result)));
        TOGETHER.lines().map(line -> line.split("\\|", -1)).filter(cells -> cells[0].equals(operation.id())).forEach(cells -> {
            List<String> sharing = results(Arrays.asList(cells[1].split(" ")));
            List<String> sources = new ArrayList<>(sharing);
            sources.addAll(cells[2].isEmpty() ? List.of() : results(Arrays.asList(cells[2].split(" "))));
            taken.put(sharing, sources);
        });
        return taken;
    }

    /** The rows at and below places, but those that a place with {@code !} takes out. */
    private List<String> results(List<String> places) {
        return inputs.keySet().stream().filter(result -> places.stream().anyMatch(place -> within(result, place))
                && places.stream().noneMatch(place -> place.startsWith("!") && within(result, place.substring(1)))).toList();
    }

    /** Rows of the operands of a result, or of the nearest part around it that names any. */
    private List<String> from(String result) {
        List<String> operands = List.of();
        String[] names = result.substring(1).split("/");
        String at = "";
        for (String name : names) {
            String owner = at;
            at = owner + "/" + name;
            List<String> named = name.equals("*") ? List.of() : Assumed.find(operation.answerType(), at).stream()
                    .flatMap(component -> Stream.ofNullable(component.getAnnotation(From.class))).flatMap(from -> Stream.of(from.value()))
                    .map(from -> from.startsWith("/") ? from : owner + "/" + from).toList();
            operands = named.isEmpty() ? operands : named;
        }
        return results(operands);
    }

    private boolean give(List<String> from, List<String> to) {
        Set<String> given = new TreeSet<>();
        from.forEach(result -> given.addAll(inputs.get(result)));
        return to.stream().filter(result -> inputs.get(result).addAll(given)).count() > 0;
    }

    private static boolean within(String result, String place) {
        return result.equals(place) || result.startsWith(place + "/");
    }
}

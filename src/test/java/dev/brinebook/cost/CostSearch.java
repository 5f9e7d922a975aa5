// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cost;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.Main;
import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.WireNames;
import dev.brinebook.cost.Scales.Weighed;
import dev.brinebook.text.Language;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Looks for the dearest request below 64 KB, see {@code .ci/cost/run}: of each operation and form of answer some of the dearest
 * so far are kept, and changed at random in the hope of something dearer still. What passes the budget, and does so again, is
 * written down and makes it fail.
 */
public final class CostSearch {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path EXAMPLES = Path.of("openapi", "examples");
    private static final Map<String, Code> CODES = Arrays.stream(Code.values())
            .collect(Collectors.toMap(WireNames::of, Function.identity()));
    private static final int KEPT_OF_AN_AIM = 6;
    private static final int REPAIRS = 4;
    private static final int UNPROCESSABLE = 422;
    /** Against a collection or a compiler at the wrong time. */
    private static final int CONFIRMATIONS = 3;
    private static final double MILLION = 1e6;
    private static final int MILLION_BYTES = 1_000_000;

    private final Scales scales;
    private final Changes changes;
    private final Path folder;
    private final Map<String, Aim> aims = new LinkedHashMap<>();
    private double divisionNanos;

    /** The dearest first. */
    private static final class Aim {
        private final List<Scored> dearest = new ArrayList<>();
        private long nanos;
        private int tried;
        private int answered;
        private boolean broken;
    }

    /** A request and what it cost. */
    private record Scored(Trial trial, Cost cost, double share) {
    }

    private CostSearch(Scales scales, long seed, Path folder) {
        this.scales = scales;
        this.changes = new Changes(new Random(seed));
        this.folder = folder;
    }

    /** Searches for a number of seconds, by a seed, and writes its findings into a folder. */
    public static void main(String[] arguments) throws IOException {
        long seconds = Long.parseLong(arguments[0]);
        long seed = Long.parseLong(arguments[1]);
        try (Scales scales = new Scales()) {
            CostSearch search = new CostSearch(scales, seed, Path.of(arguments[2]));
            System.out.println("seed " + seed);
            boolean kept = search.run(TimeUnit.SECONDS.toNanos(seconds));
            System.exit(kept ? 0 : 1);
        } catch (RuntimeException | Error fault) { // the threads of the service would keep the process
            fault.printStackTrace();
            System.exit(1);
        }
    }

    private boolean run(long nanos) throws IOException {
        divisionNanos = Scales.divisionNanos();
        long end = System.nanoTime() + nanos;
        for (Trial seed : seeds()) {
            weigh(seed);
        }
        while (System.nanoTime() < end) {
            Aim least = aims.values().stream().filter(aim -> !aim.broken)
                    .min(Comparator.comparingLong(aim -> aim.nanos)).orElse(null);
            if (least == null) {
                break;
            }
            weigh(next(least));
        }
        report();
        return aims.values().stream().noneMatch(aim -> aim.broken);
    }

    private List<Trial> seeds() throws IOException {
        List<Trial> seeds = new ArrayList<>(Trial.kept());
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            List<String> accepted = new ArrayList<>();
            accepted.add(null);
            operation.forms().stream().map(AnswerForm::mediaType).forEach(accepted::add);
            for (String accept : accepted) {
                for (String example : operation.examples()) {
                    seeds.add(new Trial(operation, Route.POST, accept, "en",
                            JSON.readTree(EXAMPLES.resolve(operation.exampleFile(example, "request")).toFile())));
                }
            }
            if (!operation.query().isEmpty()) {
                seeds.add(new Trial(operation, Route.QUERY, null, "en", text(query(operation.query()))));
            }
            if (operation.textForm() != null) {
                seeds.add(new Trial(operation, Route.TEXT, null, "en",
                        text(query(operation.textForm().query()) + "\n" + operation.textForm().example())));
            }
        }
        Trial first = seeds.stream().filter(seed -> seed.route() == Route.POST).findFirst().orElseThrow();
        seeds.add(new Trial(first.operation(), Route.MESSAGE, null, "en", Route.call(first.operation(), first.body())));
        seeds.add(new Trial(first.operation(), Route.MESSAGE, null, "en", JSON.readTree(
                "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"tools/list\",\"params\":{\"cursor\":\"\",\"_meta\":{}}}")));
        seeds.add(new Trial(Main.OPERATIONS.stream().filter(one -> one.id().equals("compensateHardness")).findFirst().orElseThrow(),
                Route.TABLE, null, "en", text(Files.readString(EXAMPLES.resolve("calculateInBulk.water-tests.request.csv")))));
        return seeds;
    }

    private static String query(List<QueryParameter> parameters) {
        return parameters.stream().map(parameter -> parameter.name() + "="
                + URLEncoder.encode(parameter.example(), StandardCharsets.UTF_8)).collect(Collectors.joining("&"));
    }

    private static JsonNode text(String text) {
        return JsonNodeFactory.instance.textNode(text);
    }

    private Trial next(Aim aim) {
        Trial parent = changes.any(aim.dearest).trial();
        Trial other = changes.any(aim.dearest).trial();
        if (!parent.route().isRequest()) {
            return parent.with(parent.body().isTextual() ? text(changes.text(parent.body().textValue()))
                    : changes.wild(parent.body()));
        }
        Class<?> type = parent.operation().requestType();
        JsonNode body = changes.chance(12) ? changes.request(type) : parent.body();
        if (changes.chance(8) && body.isObject() && other.body().isObject()) {
            body = changes.crossed(body, other.body());
        }
        body = changes.chance(6) || !body.isObject() ? changes.wild(body) : changes.fitting(body, type);
        Route route = parent.accept() == null && changes.chance(4) ? changes.any(List.of(Route.POST, Route.LINE, Route.TOOL))
                : parent.route();
        String language = changes.chance(4) ? changes.any(Language.all()).tag() : parent.language();
        return new Trial(parent.operation(), route, parent.accept(), language, body);
    }

    /** Weighs a request, and after it those in which what was found at fault is put in order. */
    private void weigh(Trial first) {
        Trial trial = first;
        for (int i = 0; i <= REPAIRS && trial.isSmallEnough(); i++) {
            Aim aim = aims.computeIfAbsent(trial.aim(), name -> new Aim());
            Weighed weighed = answered(trial);
            if (weighed == null) {
                aim.broken = true;
                trial.write(folder.resolve(trial.aim() + ".no-answer.json"));
                System.out.println("NO ANSWER within a minute, twice: " + trial);
                return;
            }
            keep(aim, trial, weighed);
            JsonNode problem = problem(weighed);
            if (problem == null || !trial.route().isRequest() || !trial.body().isObject()) {
                return;
            }
            ObjectNode repaired = trial.body().deepCopy();
            if (!changes.repair(repaired, trial.operation().requestType(), problem, CODES)) {
                return;
            }
            trial = trial.with(repaired);
        }
    }

    /** Asked a second time where no answer came, since a minute of the clock may be seconds of a busy machine; then null. */
    private Weighed answered(Trial trial) {
        for (int i = 0; i < 2; i++) {
            try {
                return scales.weigh(trial);
            } catch (IllegalStateException none) {
                System.out.println("no answer within a minute: " + trial);
            }
        }
        return null;
    }

    private void keep(Aim aim, Trial trial, Weighed weighed) {
        aim.tried++;
        aim.nanos += weighed.cost().cpuNanos();
        aim.answered += weighed.reply().status() == 200 ? 1 : 0;
        Cost cost = weighed.cost();
        double share = Scales.share(cost, divisionNanos);
        if (aim.dearest.size() == KEPT_OF_AN_AIM && share <= aim.dearest.get(KEPT_OF_AN_AIM - 1).share()) {
            return;
        }
        // What is compiled or collected meanwhile would else stay on top for ever.
        Cost sure = cost.least(scales.again(trial, share > 1 ? CONFIRMATIONS : 1));
        double sureShare = Scales.share(sure, share > 1 ? Scales.divisionNanos() : divisionNanos);
        aim.nanos += sure.cpuNanos();
        aim.dearest.add(new Scored(trial, sure, sureShare));
        aim.dearest.sort(Comparator.comparingDouble(Scored::share).reversed());
        if (aim.dearest.size() > KEPT_OF_AN_AIM) {
            aim.dearest.remove(KEPT_OF_AN_AIM);
        }
        if (sureShare > 1) {
            aim.broken = true;
            System.out.println("ABOVE THE BUDGET: " + trial + ": " + sure);
        }
    }

    /** The faults of a request, in JSON, whatever they came in; null when it has none. */
    private static JsonNode problem(Weighed weighed) {
        try {
            if (weighed.reply().status() == UNPROCESSABLE) {
                return JSON.readTree(weighed.reply().body());
            }
            if (weighed.reply().status() != 200 || !weighed.reply().type().endsWith("json")) {
                return null;
            }
            JsonNode answer = JSON.readTree(weighed.reply().body());
            JsonNode problem = answer.has("problem") ? answer.get("problem") : answer.at("/result/structuredContent");
            if (answer.at("/result/isError").asBoolean()) {
                problem = JSON.readTree(answer.at("/result/content/0/text").asText());
            }
            return problem.has("errors") ? problem : null;
        } catch (IOException e) {
            return null;
        }
    }

    /** A line for each aim, dearest first, and a file of its dearest request. */
    private void report() {
        System.out.printf("a division takes %.1f ns; the budget is %.0f million of them, here %.0f ms, %d MB allocated, %d MB"
                + " answered%n", divisionNanos, Scales.MOST_DIVISIONS / MILLION, Scales.MOST_DIVISIONS * divisionNanos / MILLION,
                Scales.MOST_ALLOCATED_BYTES / MILLION_BYTES, Scales.MOST_ANSWER_BYTES / MILLION_BYTES);
        System.out.printf("%-34s %6s %8s %7s %9s %8s %8s %7s %s%n", "aim", "tried", "answered", "share", "ms", "MB", "MB out",
                "bytes", "route");
        aims.entrySet().stream().filter(entry -> !entry.getValue().dearest.isEmpty())
                .sorted(Comparator.comparingDouble(entry -> -entry.getValue().dearest.get(0).share()))
                .forEach(entry -> report(entry.getKey(), entry.getValue(), entry.getValue().dearest.get(0)));
    }

    private void report(String name, Aim aim, Scored dearest) {
        dearest.trial().write(folder.resolve(name + ".json"));
        Cost cost = dearest.cost();
        System.out.printf("%-34s %6d %8d %7.3f %9.1f %8.1f %8.2f %7d %s%n", name, aim.tried, aim.answered, dearest.share(),
                cost.cpuNanos() / MILLION, cost.allocatedBytes() / MILLION, cost.answerBytes() / MILLION, dearest.trial().bytes(),
                dearest.trial().route());
    }
}

// SPDX-License-Identifier: Apache-2.0
import client.ApiClient;
import client.ApiException;
import client.api.CalculationApi;
import client.api.ServiceApi;
import client.model.CompensatedHardnessRequest;
import client.model.ConcentrationQuantity;
import client.model.HardnessQuantity;
import client.model.Problem;
import client.model.WaterRequest;
import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Sends every committed example through the generated client and holds each answer, read into the generated classes and
 * written again, to the committed one. Use: CallEveryExample URL FOLDER, where the folder holds the contract.
 */
public final class CallEveryExample {

    private final ApiClient client = new ApiClient();
    private final CalculationApi calculation;
    private final ServiceApi service;
    private final Comparison comparison = new Comparison(client.getObjectMapper());
    private final Path contract;
    private final Set<String> called = new TreeSet<>();

    private CallEveryExample(String url, Path contract) {
        this.contract = contract;
        client.updateBaseUri(url);
        calculation = new CalculationApi(client);
        service = new ServiceApi(client);
    }

    public static void main(String[] arguments) throws Exception {
        CallEveryExample calls = new CallEveryExample(arguments[0], Path.of(arguments[1]));
        calls.sendExamples();
        calls.sendQueries();
        calls.sendFault();
        calls.askService();
        calls.assertNothingLeftOut();
        System.out.println("the generated Java client read back " + calls.comparison.count() + " requests and answers");
    }

    private void sendExamples() throws Exception {
        for (Map.Entry<String, List<Path>> operation : examples().entrySet()) {
            Method method = method(operation.getKey());
            StringBuilder lines = new StringBuilder();
            for (Path file : operation.getValue()) {
                JsonNode committed = comparison.read(file);
                Object request = client.getObjectMapper().readValue(file.toFile(), method.getParameterTypes()[0]);
                comparison.assertSame(file + "", committed, request);
                comparison.assertSame(file + " answered", comparison.read(answerTo(file)), call(method, request));
                lines.append(committed).append('\n');
            }
            sendInBulk(method, lines.toString(), operation.getValue());
        }
    }

    /** The generated call reads its answer as one JSON value, which NDJSON is not; so the JDK's client sends the lines. */
    private void sendInBulk(Method method, String lines, List<Path> files) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(client.getBaseUri() + "/v1/bulk/" + method.getName()))
                .header("Content-Type", "application/x-ndjson").POST(HttpRequest.BodyPublishers.ofString(lines)).build();
        List<String> answers = client.getHttpClient().send(request, HttpResponse.BodyHandlers.ofLines()).body().toList();
        comparison.assertTrue(answers.size() == files.size(), method.getName() + " in bulk: " + answers.size() + " lines");
        for (int i = 0; i < answers.size(); i++) {
            JsonNode answer = client.getObjectMapper().readTree(answers.get(i)).path("answer");
            comparison.assertSame(files.get(i) + " in bulk", comparison.read(answerTo(files.get(i))),
                    client.getObjectMapper().treeToValue(answer, method.getReturnType()));
        }
        called.add("calculateInBulk");
    }

    private void sendQueries() throws Exception {
        comparison.assertSame("convertHardnessByQuery",
                comparison.read(contract.resolve("examples/convertHardness.us.response.json")),
                calculation.convertHardnessByQuery(new BigDecimal("18.5"), "gpg", null, null, null));
        CompensatedHardnessRequest request = new CompensatedHardnessRequest().water(new WaterRequest()
                .hardness(new HardnessQuantity().value(new BigDecimal("25")).unit(HardnessQuantity.UnitEnum.GPG))
                .iron(milligramsPerLitre("2")).manganese(milligramsPerLitre("0.5")))
                .units(CompensatedHardnessRequest.UnitsEnum.METRIC);
        comparison.assertSame("compensateHardnessByQuery", comparison.tree(calculation.compensateHardness(request, null, null, null)),
                calculation.compensateHardnessByQuery(new BigDecimal("25"), "gpg", new BigDecimal("2"),
                        new BigDecimal("0.5"), null, "metric", null, null, null));
        comparison.assertSame("assessByQuery", comparison.read(contract.resolve("examples/assess.apartment.response.json")),
                calculation.assessByQuery(comparison.read(contract.resolve("examples/assess.apartment.request.json")).toString(), null, null,
                        null, null, null));
        comparison.assertSame("explainResult", comparison.read(contract.resolve("examples/explainResult.well-family.response.json")),
                calculation.explainResult("assess", List.of("/settings/reserve", "/hardness/compensated"),
                        comparison.read(contract.resolve("examples/assess.well-family.request.json")), null));
        called.addAll(List.of("convertHardnessByQuery", "compensateHardnessByQuery", "assessByQuery", "explainResult"));
    }

    private static ConcentrationQuantity milligramsPerLitre(String value) {
        return new ConcentrationQuantity().value(new BigDecimal(value)).unit(ConcentrationQuantity.UnitEnum.MG_L);
    }

    private void sendFault() throws Exception {
        try {
            calculation.compensateHardness(new CompensatedHardnessRequest(), null, null, null);
            comparison.assertTrue(false, "a request without water was answered");
        } catch (ApiException e) {
            Problem problem = client.getObjectMapper().readValue(e.getResponseBody(), Problem.class);
            comparison.assertSame("problem", comparison.read(e.getResponseBody()), problem);
            comparison.assertTrue(problem.getErrors().get(0).getPointer().equals("/water"), e.getResponseBody());
        }
    }

    /** All but what is a page or YAML, which the client reads as JSON. */
    private void askService() throws Exception {
        comparison.assertTrue(service.checkLive().getStatus() != null, "live");
        comparison.assertTrue(service.checkReady().getStatus() != null, "ready");
        comparison.assertTrue(service.readVersion().getModelVersion() != null, "version");
        comparison.assertTrue(service.readSources().getSources().size() > 50, "sources");
        comparison.assertSame("contract", comparison.read(contract.resolve("openapi.yaml")), service.readContractAsJson());
    }

    private void assertNothingLeftOut() {
        Set<String> left = new TreeSet<>();
        Stream.of(CalculationApi.class.getDeclaredMethods()).map(Method::getName)
                .filter(name -> name.endsWith("WithHttpInfo")).forEach(name -> left.add(name.replace("WithHttpInfo", "")));
        left.removeAll(called);
        left.remove("readBulkTemplate"); // The client accepts both of its forms alike, and reads either as JSON: it gets the table.
        comparison.assertTrue(left.isEmpty(), "nobody called " + left);
    }

    private Object call(Method method, Object request) throws Exception {
        Object[] arguments = new Object[method.getParameterCount()];
        arguments[0] = request;
        called.add(method.getName());
        try {
            return method.invoke(calculation, arguments);
        } catch (InvocationTargetException e) {
            throw (Exception) e.getCause();
        }
    }

    /** The call of an operation without headers of one's own. */
    private static Method method(String operation) {
        return Arrays.stream(CalculationApi.class.getMethods()).filter(method -> method.getName().equals(operation))
                .min(Comparator.comparingInt(Method::getParameterCount)).orElseThrow();
    }

    /** The requests of each operation, by its id. */
    private Map<String, List<Path>> examples() throws Exception {
        Map<String, List<Path>> examples = new TreeMap<>();
        try (Stream<Path> files = Files.list(contract.resolve("examples"))) {
            files.filter(file -> file.toString().endsWith(".request.json")).sorted().forEach(file -> examples
                    .computeIfAbsent(file.getFileName().toString().split("\\.")[0], id -> new ArrayList<>()).add(file));
        }
        return examples;
    }

    private static Path answerTo(Path request) {
        return Path.of(request.toString().replace(".request.json", ".response.json"));
    }
}

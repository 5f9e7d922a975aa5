// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.http.Settings;
import dev.brinebook.http.server.BrinebookServer;
import io.fabric8.kubernetes.api.model.Container;
import io.fabric8.kubernetes.api.model.EnvVar;
import io.fabric8.kubernetes.api.model.GenericKubernetesResource;
import io.fabric8.kubernetes.api.model.HasMetadata;
import io.fabric8.kubernetes.api.model.KubernetesResource;
import io.fabric8.kubernetes.api.model.PodSpec;
import io.fabric8.kubernetes.api.model.apps.Deployment;
import io.fabric8.kubernetes.api.model.batch.v1.Job;
import io.fabric8.kubernetes.api.model.networking.v1.NetworkPolicy;
import io.restassured.RestAssured;
import java.lang.reflect.Method;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The manifests say only what Kubernetes knows, and fit the service that they run. */
class ManifestsTest {

    /** Kinds of the Prometheus operator, which the models used here do not know; {@code .ci/cluster} checks them. */
    private static final Set<String> CUSTOM = Set.of("ServiceMonitor", "PrometheusRule");

    /** What a stop takes beside the times that are set, seconds. */
    private static final int SPARE_SECONDS = 5;

    @Test
    void noFieldIsUnknownOrOfAnotherType() throws ReflectiveOperationException {
        for (HasMetadata object : Manifests.all()) {
            if (object instanceof GenericKubernetesResource) {
                assertTrue(CUSTOM.contains(object.getKind()), object::getKind);
            } else {
                assertEquals(List.of(), unknown(object), () -> object.getKind() + " " + object.getMetadata().getName());
            }
        }
    }

    @Test
    void anUnknownFieldAndAWrongTypeAreSeen() throws ReflectiveOperationException {
        String misspelt = "apiVersion: apps/v1\nkind: Deployment\nspec:\n  replica: 2\n  template:\n    spec:\n"
                + "      containers:\n      - name: a\n        livenesProbe: {}\n";
        assertEquals(Set.of("replica", "livenesProbe"), Set.copyOf(unknown(Manifests.YAML.unmarshal(misspelt))));
        assertThrows(IllegalArgumentException.class, () -> Manifests.YAML.unmarshal(misspelt + "        ports: http\n"));
    }

    @Test
    void theClusterWaitsUntilAStopIsOver() {
        Map<String, Integer> settings = Pattern.compile("(DRAIN|STOP)_SECONDS=(\\d+)")
                .matcher(Manifests.read(Path.of("k8s/base/kustomization.yaml"))).results()
                .collect(Collectors.toMap(match -> match.group(1), match -> Integer.valueOf(match.group(2))));
        for (Deployment deployment : Manifests.ofKind(Deployment.class)) {
            PodSpec pod = deployment.getSpec().getTemplate().getSpec();
            long before = pod.getContainers().get(0).getLifecycle().getPreStop().getSleep().getSeconds();
            assertTrue(pod.getTerminationGracePeriodSeconds()
                    >= before + settings.get("DRAIN") + settings.get("STOP") + SPARE_SECONDS);
        }
    }

    @Test
    void probesCallPathsThatAreServed() {
        try (BrinebookServer server = start()) {
            for (Deployment deployment : Manifests.ofKind(Deployment.class)) {
                Container container = deployment.getSpec().getTemplate().getSpec().getContainers().get(0);
                Map<String, Integer> ports = container.getPorts().stream()
                        .collect(Collectors.toMap(port -> port.getName(), port -> port.getContainerPort()));
                Settings settings = Settings.from(Map.of());
                assertEquals(Map.of("http", settings.port(), "watching", settings.metricsPort()), ports);
                Stream.of(container.getStartupProbe(), container.getReadinessProbe(), container.getLivenessProbe()).forEach(probe -> {
                    assertEquals("watching", probe.getHttpGet().getPort().getStrVal());
                    RestAssured.get("http://127.0.0.1:" + server.metricsPort() + probe.getHttpGet().getPath()).then().statusCode(200);
                });
            }
        }
    }

    @Test
    void onlySettingsThatExistAreSet() {
        List<String> names = Stream.of("base", "overlays/small", "overlays/large")
                .map(folder -> Manifests.read(Path.of("k8s", folder, "kustomization.yaml")))
                .flatMap(text -> Pattern.compile("(?m)^ +- ([A-Z_]+)=").matcher(text).results()).map(match -> match.group(1)).toList();
        assertEquals(List.of("DRAIN_SECONDS", "STOP_SECONDS", "JDK_JAVA_OPTIONS", "JDK_JAVA_OPTIONS"), names);
        names.stream().filter(name -> !name.startsWith("JDK_")).forEach(name -> assertTrue(Settings.help().contains(" " + name + " ")));
    }

    @Test
    void asManyWorkersAsShards() {
        for (Job job : Manifests.ofKind(Job.class)) {
            String shards = job.getSpec().getTemplate().getSpec().getContainers().get(0).getEnv().stream()
                    .filter(variable -> variable.getName().equals("BULK_SHARDS")).map(EnvVar::getValue).findFirst().orElseThrow();
            assertEquals(shards, job.getSpec().getCompletions().toString());
        }
    }

    @Test
    void theServiceOpensNoConnections() {
        NetworkPolicy policy = Manifests.ofKind(NetworkPolicy.class).stream()
                .filter(object -> object.getMetadata().getName().equals("brinebook")).findFirst().orElseThrow();
        assertEquals(Set.of("Ingress", "Egress"), Set.copyOf(policy.getSpec().getPolicyTypes()));
        assertEquals(List.of(), policy.getSpec().getEgress());
    }

    static BrinebookServer start() {
        return Main.server(Settings.from(Map.of("PORT", "0", "METRICS_PORT", "0", "HOST", "127.0.0.1"))).start();
    }

    /** Names of the fields that a model did not know, or that were of another type, anywhere in it. */
    private static List<String> unknown(Object model) throws ReflectiveOperationException {
        List<String> found = new ArrayList<>();
        if (model instanceof Collection<?> several) {
            for (Object one : several) {
                found.addAll(unknown(one));
            }
        } else if (model instanceof KubernetesResource) {
            for (Method method : model.getClass().getMethods()) {
                if (method.getName().equals("getAdditionalProperties")) {
                    ((Map<?, ?>) method.invoke(model)).keySet().forEach(name -> found.add(name.toString()));
                } else if (method.getName().startsWith("get") && method.getParameterCount() == 0
                        && method.getDeclaringClass() == model.getClass()) {
                    found.addAll(unknown(method.invoke(model)));
                }
            }
        }
        return found;
    }
}

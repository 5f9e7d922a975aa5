// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Served;
import dev.brinebook.http.server.BrinebookServer;
import io.restassured.RestAssured;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Alert rules, dashboard and autoscaler ask for nothing that the service does not measure. */
class WatchingTest {

    private static final Pattern METRIC = Pattern.compile("\\b(http|jvm|cache|process|bulk|agent|brinebook)_[a-z_]+[a-z]\\b");

    /** Reported from the first garbage collection, call of an agent or line of a list on; MetricsTest makes the last two. */
    private static final Set<String> LATER = Set.of("jvm_gc_pause_seconds_sum", "agent_calls_total", "bulk_lines_total");

    @Test
    void everyWatchedMetricExists() {
        Set<String> watched = metrics(Stream.of("rules.yaml", "brinebook.json", "kustomization.yaml")
                .map(file -> Manifests.read(Path.of("k8s/watching", file))).collect(Collectors.joining("\n")));
        assertTrue(watched.size() > 8, watched::toString);
        try (BrinebookServer server = ManifestsTest.start()) {
            RestAssured.given().contentType("application/json").body("{\"hardness\":{\"value\":18,\"unit\":\"gpg\"}}")
                    .post("http://127.0.0.1:" + server.port() + "/v1/hardness-conversion").then().statusCode(200);
            watched.removeAll(metrics(Served.metrics(server, text -> text.contains("route=\"/v1/hardness-conversion\""))));
            watched.removeAll(LATER);
            assertEquals(Set.of(), watched, "watched, but not measured");
        }
    }

    private static Set<String> metrics(String text) {
        return METRIC.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cluster;

import io.fabric8.kubernetes.api.model.HasMetadata;
import io.fabric8.kubernetes.api.model.PodSpec;
import io.fabric8.kubernetes.api.model.apps.Deployment;
import io.fabric8.kubernetes.api.model.batch.v1.Job;
import io.fabric8.kubernetes.client.utils.KubernetesSerialization;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The objects of {@code k8s/}, or of the folder that {@code -Dmanifests} names, such as overlays already built. */
final class Manifests {

    static final KubernetesSerialization YAML = new KubernetesSerialization();

    private static final Path FOLDER = Path.of(System.getProperty("manifests", "k8s"));

    private Manifests() {
    }

    static List<HasMetadata> all() {
        return files().stream().flatMap(file -> Arrays.stream(read(file).split("(?m)^---$")))
                .map(text -> (HasMetadata) YAML.unmarshal(text)).toList();
    }

    static <T extends HasMetadata> List<T> ofKind(Class<T> kind) {
        return all().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** What runs: the service's and the worker's. */
    static List<PodSpec> pods() {
        return Stream.concat(ofKind(Deployment.class).stream().map(deployment -> deployment.getSpec().getTemplate()),
                ofKind(Job.class).stream().map(job -> job.getSpec().getTemplate())).map(template -> template.getSpec()).toList();
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files() {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .filter(file -> !file.endsWith("kustomization.yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

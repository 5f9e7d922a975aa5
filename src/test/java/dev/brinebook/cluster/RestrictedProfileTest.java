// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.fabric8.kubernetes.api.model.Capabilities;
import io.fabric8.kubernetes.api.model.Container;
import io.fabric8.kubernetes.api.model.ContainerBuilder;
import io.fabric8.kubernetes.api.model.ContainerPortBuilder;
import io.fabric8.kubernetes.api.model.HTTPGetAction;
import io.fabric8.kubernetes.api.model.PodSpec;
import io.fabric8.kubernetes.api.model.PodSpecBuilder;
import io.fabric8.kubernetes.api.model.ProbeBuilder;
import io.fabric8.kubernetes.api.model.SELinuxOptionsBuilder;
import io.fabric8.kubernetes.api.model.SecurityContext;
import io.fabric8.kubernetes.api.model.SysctlBuilder;
import io.fabric8.kubernetes.api.model.Volume;
import io.fabric8.kubernetes.api.model.VolumeBuilder;
import io.fabric8.kubernetes.api.model.WindowsSecurityContextOptionsBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every control of the restricted profile, in the order of "Pod Security Standards", kubernetes.io/docs/concepts/security,
 * Kubernetes 1.34 (from memory): each pod keeps it, and a pod that breaks it is seen to.
 */
class RestrictedProfileTest {

    static Stream<Arguments> rules() {
        return Stream.of(
                rule("host process", eachContext(context -> context.getWindowsOptions() == null
                        || isNot(true, context.getWindowsOptions().getHostProcess())),
                        context -> context.setWindowsOptions(new WindowsSecurityContextOptionsBuilder().withHostProcess(true).build())),
                podRule("host network", pod -> isNot(true, pod.getHostNetwork()), pod -> pod.setHostNetwork(true)),
                podRule("host processes", pod -> isNot(true, pod.getHostPID()), pod -> pod.setHostPID(true)),
                podRule("host inter-process communication", pod -> isNot(true, pod.getHostIPC()), pod -> pod.setHostIPC(true)),
                rule("privileged", eachContext(context -> isNot(true, context.getPrivileged())),
                        context -> context.setPrivileged(true)),
                rule("capabilities dropped", eachContext(context -> dropped(context).contains("ALL")),
                        context -> context.setCapabilities(new Capabilities(List.of(), List.of("KILL")))),
                rule("capabilities added", eachContext(context -> List.of("NET_BIND_SERVICE").containsAll(added(context))),
                        context -> context.setCapabilities(new Capabilities(List.of("NET_ADMIN"), List.of("ALL")))),
                podRule("volume types", pod -> pod.getVolumes().stream().allMatch(RestrictedProfileTest::isAllowed),
                        pod -> pod.setVolumes(List.of(new VolumeBuilder().withName("host").withNewHostPath("/", "").build()))),
                containerRule("host ports", container -> container.getPorts().stream().allMatch(port -> port.getHostPort() == null),
                        container -> container.setPorts(List.of(new ContainerPortBuilder().withHostPort(80).build()))),
                containerRule("host of probes", container -> probes(container).allMatch(probe -> probe.getHost() == null),
                        container -> container.setLivenessProbe(new ProbeBuilder().withNewHttpGet().withHost("10.0.0.1")
                                .endHttpGet().build())),
                rule("AppArmor", eachContext(context -> context.getAppArmorProfile() == null
                        || !context.getAppArmorProfile().getType().equals("Unconfined")),
                        context -> context.setAppArmorProfile(new io.fabric8.kubernetes.api.model.AppArmorProfile(null, "Unconfined"))),
                rule("SELinux", eachContext(context -> context.getSeLinuxOptions() == null),
                        context -> context.setSeLinuxOptions(new SELinuxOptionsBuilder().withType("spc_t").build())),
                rule("proc mount", eachContext(context -> context.getProcMount() == null),
                        context -> context.setProcMount("Unmasked")),
                podRule("sysctls", pod -> pod.getSecurityContext().getSysctls().isEmpty(), pod -> pod.getSecurityContext()
                        .setSysctls(List.of(new SysctlBuilder().withName("kernel.msgmax").withValue("1").build()))),
                rule("privilege escalation", eachContext(context -> Objects.equals(false, context.getAllowPrivilegeEscalation())),
                        context -> context.setAllowPrivilegeEscalation(null)),
                podRule("runs as non-root", pod -> Objects.equals(true, pod.getSecurityContext().getRunAsNonRoot())
                        && contexts(pod).allMatch(context -> isNot(false, context.getRunAsNonRoot())),
                        pod -> pod.getSecurityContext().setRunAsNonRoot(null)),
                podRule("user", pod -> isNot(0L, pod.getSecurityContext().getRunAsUser())
                        && contexts(pod).allMatch(context -> isNot(0L, context.getRunAsUser())),
                        pod -> pod.getContainers().get(0).getSecurityContext().setRunAsUser(0L)),
                podRule("seccomp", pod -> "RuntimeDefault".equals(pod.getSecurityContext().getSeccompProfile().getType())
                        && contexts(pod).allMatch(context -> context.getSeccompProfile() == null),
                        pod -> pod.getSecurityContext().getSeccompProfile().setType("Unconfined")));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void isKeptAndABreachIsSeen(Predicate<PodSpec> rule, Consumer<PodSpec> breach) {
        for (PodSpec pod : Manifests.pods()) {
            assertTrue(rule.test(pod), () -> Manifests.YAML.asYaml(pod));
            PodSpec broken = new PodSpecBuilder(pod).build();
            breach.accept(broken);
            assertFalse(rule.test(broken), () -> Manifests.YAML.asYaml(broken));
        }
    }

    /** Beyond the profile: nothing is written in the container, nobody signs in to the cluster. */
    @Test
    void rootIsReadOnlyAndNoTokenIsMounted() {
        for (PodSpec pod : Manifests.pods()) {
            assertTrue(contexts(pod).allMatch(context -> Objects.equals(true, context.getReadOnlyRootFilesystem())));
            assertEquals(false, pod.getAutomountServiceAccountToken());
        }
    }

    @Test
    void looksAtTheServiceAndTheWorker() {
        assertTrue(Manifests.pods().size() >= 2);
    }

    private static Arguments podRule(String name, Predicate<PodSpec> rule, Consumer<PodSpec> breach) {
        return Arguments.of(Named.of(name, rule), Named.of("breach", breach));
    }

    private static Arguments containerRule(String name, Predicate<Container> rule, Consumer<Container> breach) {
        return podRule(name, pod -> containers(pod).stream().allMatch(rule), pod -> {
            Container broken = new ContainerBuilder(pod.getContainers().get(0)).build();
            breach.accept(broken);
            pod.setContainers(List.of(broken));
        });
    }

    private static Arguments rule(String name, Predicate<PodSpec> rule, Consumer<SecurityContext> breach) {
        return podRule(name, rule, pod -> breach.accept(pod.getContainers().get(0).getSecurityContext()));
    }

    private static Predicate<PodSpec> eachContext(Predicate<SecurityContext> rule) {
        return pod -> contexts(pod).allMatch(rule);
    }

    private static Stream<SecurityContext> contexts(PodSpec pod) {
        return containers(pod).stream().map(Container::getSecurityContext);
    }

    private static List<Container> containers(PodSpec pod) {
        List<Container> containers = new ArrayList<>(pod.getContainers());
        containers.addAll(pod.getInitContainers());
        return containers;
    }

    private static Stream<HTTPGetAction> probes(Container container) {
        return Stream.of(container.getLivenessProbe(), container.getReadinessProbe(), container.getStartupProbe())
                .filter(Objects::nonNull).map(probe -> probe.getHttpGet()).filter(Objects::nonNull);
    }

    private static boolean isNot(Object refused, Object value) {
        return !refused.equals(value);
    }

    private static List<String> dropped(SecurityContext context) {
        return context.getCapabilities() == null ? List.of() : context.getCapabilities().getDrop();
    }

    private static List<String> added(SecurityContext context) {
        return context.getCapabilities() == null ? List.of() : context.getCapabilities().getAdd();
    }

    private static boolean isAllowed(Volume volume) {
        return Stream.of(volume.getConfigMap(), volume.getCsi(), volume.getDownwardAPI(), volume.getEmptyDir(), volume.getEphemeral(),
                volume.getPersistentVolumeClaim(), volume.getProjected(), volume.getSecret()).anyMatch(Objects::nonNull);
    }
}

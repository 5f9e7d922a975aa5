package dev.brinebook;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The map of the packages: arrows point up this list, never down, and the calculation knows nothing of the service. */
class ArchitectureTest {

    private static final String ROOT = "dev.brinebook";

    /** Each may use those before it. */
    private static final List<String> DOMAIN = List.of("wording", "guard", "source", "caution", "randomness", "quantity", "water",
            "household", "resin", "regeneration", "softener", "payback", "verdict", "assessment");

    /** Wire records and operations, each of which may use any domain package and those before it. */
    private static final List<String> FEATURE_EDGES = List.of("quantity.api", "water.api", "household.api",
            "prices.api", "verdict.api", "softener.api", "regeneration.api", "resin.api", "payback.api", "assessment.api");

    private static final List<String> EDGE = List.of("api", "sheet", "contract", "agent", "docs", "http", "log");

    private static final Set<String> INEXACT = Set.of("sin", "cos", "tan", "exp", "expm1", "log", "log10", "log1p", "pow",
            "cbrt", "sinh", "cosh", "tanh", "asin", "acos", "atan", "random");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages(ROOT);

    static Stream<String> domain() {
        return DOMAIN.stream().filter(ArchitectureTest::exists);
    }

    static Stream<String> featureEdges() {
        return FEATURE_EDGES.stream().filter(ArchitectureTest::exists);
    }

    @Test
    void knowsEveryPackageAndSeesClassesInIt() throws IOException {
        Set<String> known = new TreeSet<>(List.of(ROOT));
        Stream.of(DOMAIN, FEATURE_EDGES, EDGE).flatMap(List::stream).map(name -> ROOT + "." + name).forEach(known::add);
        Set<String> seen = CLASSES.stream().map(JavaClass::getPackageName).collect(Collectors.toCollection(TreeSet::new));
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            Set<String> written = files.filter(file -> file.toString().endsWith(".java"))
                    .map(file -> Path.of("src/main/java").relativize(file.getParent()).toString().replace('/', '.'))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(written, seen, "every package that is written is looked at");
        }
        seen.removeAll(known);
        assertEquals(Set.of(), seen, "packages that the map does not show");
    }

    @ParameterizedTest
    @MethodSource("domain")
    void calculationsUseOnlyWhatStandsBeforeThem(String name) {
        List<String> allowed = new ArrayList<>(List.of("java.lang..", "java.util..", "java.math", "java.time..",
                "java.text", "org.hipparchus.."));
        DOMAIN.subList(0, DOMAIN.indexOf(name) + 1).forEach(before -> allowed.add(ROOT + "." + before));
        if (name.equals("source")) {
            allowed.addAll(List.of("java.io", "java.nio.charset"));
        }
        // Templates are taken apart once for all threads; what is said stays the same.
        String concurrency = name.equals("wording") ? "java.util.concurrent.atomic" : "java.util.concurrent..";
        classes().that().resideInAPackage(ROOT + "." + name).should().onlyDependOnClassesThat(
                resideInAnyPackage(allowed.toArray(String[]::new)).or(describe("arrays of those", JavaClass::isArray))
                        .and(DescribedPredicate.not(resideInAnyPackage("java.util.logging..", concurrency,
                                "java.lang.reflect..", "java.lang.foreign.."))
                                .or(describe("method handles of records", javaClass -> javaClass.getName()
                                        .startsWith("java.lang.runtime.ObjectMethods"))))).check(CLASSES);
    }

    @Test
    void calculationsReadNoClockAndThrowNoDice() {
        DescribedPredicate<JavaAccess<?>> impure = describe("reads a clock, a random source or the system", access -> {
            AccessTarget target = access.getTarget();
            String owner = target.getOwner().getName();
            boolean clock = owner.startsWith("java.time.") && target.getName().equals("now") || owner.equals("java.time.Clock");
            boolean dice = owner.equals("java.util.Random") && access.getTarget().getFullName().endsWith("<init>()")
                    || owner.equals("java.util.UUID") || owner.equals("java.security.SecureRandom");
            boolean system = owner.equals("java.lang.System") && !target.getName().equals("arraycopy")
                    || owner.equals("java.lang.Thread") || owner.equals("java.util.Locale") && target.getName().equals("getDefault")
                    || owner.equals("java.time.ZoneId") && target.getName().equals("systemDefault");
            return clock || dice || system;
        });
        noClasses().that(inDomain()).should().accessTargetWhere(impure).check(CLASSES);
    }

    /** Only StrictMath promises the same last bit on every machine. */
    @Test
    void calculationsGiveTheSameBitsOnEveryMachine() {
        DescribedPredicate<JavaAccess<?>> inexact = describe("calls an inexact function of Math", access ->
                access.getTarget().getOwner().getName().equals("java.lang.Math")
                        && INEXACT.contains(access.getTarget().getName()));
        noClasses().that(inDomain()).should().accessTargetWhere(inexact).check(CLASSES);
    }

    /** Whoever asks for a calculation may end it; that alone goes past the arguments, and in one place. */
    @Test
    void onlyTheStopSignBelongsToAThread() {
        noClasses().that().doNotHaveFullyQualifiedName(ROOT + ".guard.StopSign").should()
                .dependOnClassesThat().areAssignableTo(ThreadLocal.class).check(CLASSES);
        noClasses().that(inDomain()).and().doNotHaveFullyQualifiedName(ROOT + ".guard.StopSign").should()
                .callMethodWhere(describe("looks at the sign without obeying", call -> call.getTarget().getName().equals("getAsBoolean")))
                .check(CLASSES);
    }

    @Test
    void nothingSharedInTheDomainChanges() {
        fields().that().areDeclaredInClassesThat(inDomain()).and().areStatic().should().beFinal().check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("featureEdges")
    void wireRecordsKnowNoServer(String name) {
        List<String> allowed = new ArrayList<>(List.of("java.lang..", "java.util..", "java.math", "java.time..", "java.text",
                "org.hipparchus..", ROOT + ".api"));
        if (name.equals("softener.api")) {
            allowed.add("com.github.benmanes.caffeine.cache");
        }
        if (name.equals("regeneration.api")) {
            allowed.addAll(List.of("net.fortuna.ical4j..", "de.siegmar.fastcsv..", "java.io", "java.nio..", "java.security"));
        }
        if (name.equals("assessment.api")) {
            allowed.addAll(List.of(ROOT + ".sheet", "java.nio.charset"));
        }
        if (name.equals("household.api")) {
            allowed.addAll(List.of("org.apache.commons.csv", "java.io"));
        }
        DOMAIN.forEach(domain -> allowed.add(ROOT + "." + domain));
        FEATURE_EDGES.subList(0, FEATURE_EDGES.indexOf(name) + 1).forEach(before -> allowed.add(ROOT + "." + before));
        classes().that().resideInAPackage(ROOT + "." + name).should()
                .onlyDependOnClassesThat(resideInAnyPackage(allowed.toArray(String[]::new))
                        .or(describe("arrays", JavaClass::isArray))).check(CLASSES);
    }

    @Test
    void theSeamKnowsNeitherServerNorJsonNorFeature() {
        classes().that().resideInAPackage(ROOT + ".api").should().onlyDependOnClassesThat(resideInAnyPackage("java.lang..",
                "java.util..", "java.math", ROOT + ".api", ROOT + ".source", ROOT + ".caution", ROOT + ".quantity",
                ROOT + ".guard", ROOT + ".wording", "java.text", "java.nio.charset").or(describe("arrays", JavaClass::isArray)))
                .check(CLASSES);
    }

    @Test
    void theContractAndTheDocsKnowNoServerAndTheServerNoFeature() {
        noClasses().that().resideInAnyPackage(ROOT + ".contract", ROOT + ".docs").should().dependOnClassesThat(
                resideInAnyPackage(ROOT + ".http", "io.javalin..", "org.eclipse.jetty..").or(feature())).check(CLASSES);
        noClasses().that().resideInAPackage(ROOT + ".http").should().dependOnClassesThat(feature()).check(CLASSES);
        noClasses().that().resideOutsideOfPackages(ROOT, ROOT + ".http").should()
                .dependOnClassesThat(resideInAPackage(ROOT + ".http")).check(CLASSES);
    }

    /** The protocol's library stands in one package, and the server that carries its messages knows nothing of it. */
    @Test
    void whatAgentsGetKnowsNoServerAndOnlyItKnowsTheirProtocol() {
        noClasses().that().resideInAPackage(ROOT + ".agent").should().dependOnClassesThat(
                resideInAnyPackage(ROOT + ".http", "io.javalin..", "org.eclipse.jetty..", "jakarta..").or(feature())).check(CLASSES);
        noClasses().that().resideOutsideOfPackage(ROOT + ".agent").should().dependOnClassesThat(
                resideInAnyPackage("io.modelcontextprotocol..", "reactor..")).check(CLASSES);
    }

    @Test
    void packagesFormNoCircle() {
        slices().matching(ROOT + ".(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @ParameterizedTest
    @ValueSource(strings = {"service", "impl", "dto", "util", "utils", "common", "manager", "helper", "misc"})
    void namesSayWhatAThingIsAbout(String vague) {
        noClasses().should().resideInAPackage(".." + vague + "..").check(CLASSES);
        noClasses().should().haveSimpleNameEndingWith(vague.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + vague.substring(1)).check(CLASSES);
    }

    private static DescribedPredicate<JavaClass> inDomain() {
        assertTrue(domain().count() > 5);
        return resideInAnyPackage(domain().map(name -> ROOT + "." + name).toArray(String[]::new));
    }

    private static DescribedPredicate<JavaClass> feature() {
        List<String> features = new ArrayList<>(DOMAIN.subList(DOMAIN.indexOf("water"), DOMAIN.size()));
        features.add("prices");
        return resideInAnyPackage(features.stream().map(name -> ROOT + "." + name + "..").toArray(String[]::new));
    }

    private static boolean exists(String name) {
        return CLASSES.stream().anyMatch(javaClass -> javaClass.getPackageName().equals(ROOT + "." + name));
    }
}

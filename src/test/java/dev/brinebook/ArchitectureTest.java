// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
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
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The map of the packages: arrows point down this list, never up, and the calculation knows nothing of the service. */
class ArchitectureTest {

    private static final String ROOT = "dev.brinebook";
    private static final String MAIN = "(root)";

    /** Top to bottom: a package may use those of the rows below its own. Packages of one row know nothing of each other. */
    private static final List<List<String>> ROWS = """
            tool
            (root)
            http.server
            http.bulk http.pages
            http.access
            http.trace
            http.exchange
            http.json
            http.limit
            http.problem
            http
            agent
            docs
            contract
            operation.assessment operation.payback operation.softener operation.regeneration operation.cycle operation.resin \
            operation.household operation.water operation.comparison operation.field operation.savings \
            operation.commissioning operation.upkeep operation.complaint
            sheet calendar
            answer.verdict
            answer.softener answer.payback answer.cycle
            answer.regeneration answer.resin answer.household answer.water
            request.field
            request.softener
            request.prices
            request.household request.water
            api.quantity
            api
            assessment
            verdict
            payback
            savings
            commissioning upkeep
            complaint
            field
            softener
            regeneration
            resin household
            water.report
            water.chemistry
            measurement
            water randomness
            model
            caution quantity source
            guard
            text
            log
            """.lines().map(row -> List.of(row.split(" "))).toList();

    private static final List<String> PACKAGES = ROWS.stream().flatMap(List::stream).toList();

    /** The calculation, which is the same whoever asks for it. */
    private static final List<String> DOMAIN = PACKAGES.subList(PACKAGES.indexOf("assessment"), PACKAGES.indexOf("log"));

    /** What is read and written: records and operations. */
    private static final List<String> WIRE = PACKAGES.stream().filter(name -> name.matches("(operation|answer|request|api)\\..*"))
            .toList();

    private static final List<String> LANGUAGE = List.of("java.lang..", "java.util..", "java.math", "java.time..", "java.text",
            "org.hipparchus..");

    /** What some packages of the wire may use beside {@link #LANGUAGE}. */
    private static final Map<String, List<String>> LIBRARIES = Map.of(
            "request.softener", List.of("com.github.benmanes.caffeine.cache"),
            "operation.household", List.of("org.apache.commons.csv", "java.io"),
            "operation.water", List.of("org.apache.commons.csv", "java.io"),
            "operation.regeneration", List.of("de.siegmar.fastcsv..", "java.io", "java.nio.."),
            "operation.assessment", List.of("java.nio.charset"),
            "operation.commissioning", List.of("java.nio.charset"),
            "operation.upkeep", List.of("java.nio.charset"));

    private static final Set<String> INEXACT = Set.of("sin", "cos", "tan", "exp", "expm1", "log", "log10", "log1p", "pow",
            "cbrt", "sinh", "cosh", "tanh", "asin", "acos", "atan", "random");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages(ROOT);

    static Stream<String> packages() {
        return PACKAGES.stream();
    }

    static Stream<String> domain() {
        return DOMAIN.stream();
    }

    static Stream<String> wire() {
        return WIRE.stream();
    }

    @Test
    void knowsEveryPackageAndSeesClassesInIt() throws IOException {
        Set<String> known = PACKAGES.stream().map(ArchitectureTest::full).collect(Collectors.toCollection(TreeSet::new));
        Set<String> seen = CLASSES.stream().map(JavaClass::getPackageName).collect(Collectors.toCollection(TreeSet::new));
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            Set<String> written = files.filter(file -> file.toString().endsWith(".java"))
                    .map(file -> Path.of("src/main/java").relativize(file.getParent()).toString().replace('/', '.'))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(written, seen, "every package that is written is looked at");
        }
        assertEquals(seen, known, "the packages of the map");
        assertEquals(PACKAGES.size(), known.size(), "each is in one row");
    }

    @ParameterizedTest
    @MethodSource("packages")
    void arrowsPointDown(String name) {
        List<String> allowed = new ArrayList<>(List.of(full(name)));
        int row = 0;
        while (!ROWS.get(row).contains(name)) {
            row++;
        }
        ROWS.subList(row + 1, ROWS.size()).forEach(below -> below.forEach(other -> allowed.add(full(other))));
        noClasses().that().resideInAPackage(full(name)).should().dependOnClassesThat(resideInAPackage(ROOT + "..")
                .and(DescribedPredicate.not(resideInAnyPackage(allowed.toArray(String[]::new))))).check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("packages")
    void everyPackageHasADescription(String name) throws IOException {
        String info = Files.readString(Path.of("src/main/java", full(name).replace('.', '/'), "package-info.java"));
        assertTrue(info.contains("\n/**") && info.endsWith("package " + full(name) + ";\n"), info);
    }

    @ParameterizedTest
    @MethodSource("domain")
    void calculationsUseTheLanguageAlone(String name) {
        List<String> allowed = new ArrayList<>(LANGUAGE);
        allowed.add(ROOT + "..");
        if (name.equals("source")) {
            allowed.addAll(List.of("java.io", "java.nio.charset"));
        }
        if (name.equals("text")) {
            allowed.addAll(List.of("java.io", "java.nio.charset", "com.ibm.icu.text"));
        }
        // Texts are taken apart once for all threads; what is said stays the same.
        String concurrency = name.equals("text") ? "java.util.concurrent.atomic" : "java.util.concurrent..";
        classes().that().resideInAPackage(full(name)).should().onlyDependOnClassesThat(
                resideInAnyPackage(allowed.toArray(String[]::new)).or(describe("arrays of those", JavaClass::isArray))
                        .and(DescribedPredicate.not(resideInAnyPackage("java.util.logging..", concurrency,
                                "java.lang.reflect..", "java.lang.foreign.."))
                                .or(describe("method handles of records", javaClass -> javaClass.getName()
                                        .startsWith("java.lang.runtime.ObjectMethods")))))
                .check(CLASSES);
        noClasses().that().resideInAPackage(full(name)).should().dependOnClassesThat().resideInAPackage(full("log")).check(CLASSES);
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

    /** Whoever asks for a calculation may end it, and lends it a memory; that alone goes past the arguments, each in one place. */
    @Test
    void onlyTheCancellationTokenAndTheWorkingMemoryBelongToAThread() {
        noClasses().that().doNotHaveFullyQualifiedName(ROOT + ".guard.CancellationToken").and()
                .doNotHaveFullyQualifiedName(ROOT + ".guard.WorkingMemory").should()
                .dependOnClassesThat().areAssignableTo(ThreadLocal.class).check(CLASSES);
        noClasses().that(inDomain()).and().doNotHaveFullyQualifiedName(ROOT + ".guard.CancellationToken").should()
                .callMethodWhere(describe("looks at the sign without obeying", call -> call.getTarget().getName().equals("getAsBoolean")))
                .check(CLASSES);
    }

    @Test
    void nothingSharedInTheDomainChanges() {
        fields().that().areDeclaredInClassesThat(inDomain()).and().areStatic().should().beFinal().check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("wire")
    void wireRecordsKnowNoServer(String name) {
        List<String> allowed = new ArrayList<>(LANGUAGE);
        allowed.add(ROOT + "..");
        allowed.addAll(LIBRARIES.getOrDefault(name, List.of()));
        classes().that().resideInAPackage(full(name)).should()
                .onlyDependOnClassesThat(resideInAnyPackage(allowed.toArray(String[]::new))
                        .or(describe("arrays", JavaClass::isArray))).check(CLASSES);
        noClasses().that().resideInAPackage(full(name)).should().dependOnClassesThat().resideInAPackage(full("log")).check(CLASSES);
    }

    @Test
    void theSeamKnowsNeitherServerNorJsonNorFeature() {
        classes().that().resideInAPackage(ROOT + ".api").should().onlyDependOnClassesThat(resideInAnyPackage("java.lang..",
                "java.util..", "java.math", ROOT + ".api", ROOT + ".source", ROOT + ".caution", ROOT + ".quantity",
                ROOT + ".guard", ROOT + ".model", ROOT + ".text", "java.text", "java.nio.charset")
                .or(describe("arrays", JavaClass::isArray))).check(CLASSES);
    }

    @Test
    void theServerAndTheGeneratorsDependOnNoFeature() {
        noClasses().that().resideInAnyPackage(ROOT + ".http..", ROOT + ".agent", ROOT + ".contract", ROOT + ".docs").should()
                .dependOnClassesThat(feature()).check(CLASSES);
        noClasses().that().resideInAnyPackage(ROOT + ".agent", ROOT + ".contract", ROOT + ".docs").should()
                .dependOnClassesThat(resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..")).check(CLASSES);
    }

    @Test
    void onlyOnePackageKnowsTheProtocolOfAgents() {
        noClasses().that().resideInAPackage(ROOT + ".agent").should().dependOnClassesThat(resideInAPackage("jakarta..")).check(CLASSES);
        noClasses().that().resideOutsideOfPackage(ROOT + ".agent").should().dependOnClassesThat(
                resideInAnyPackage("io.modelcontextprotocol..", "reactor..")).check(CLASSES);
    }

    @ParameterizedTest
    @ValueSource(strings = {"service", "impl", "dto", "util", "utils", "common", "manager", "helper", "misc"})
    void namesSayWhatAThingIsAbout(String vague) {
        noClasses().should().resideInAPackage(".." + vague + "..").check(CLASSES);
        noClasses().should().haveSimpleNameEndingWith(vague.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + vague.substring(1)).check(CLASSES);
    }

    private static DescribedPredicate<JavaClass> inDomain() {
        assertTrue(DOMAIN.size() > 5);
        return resideInAnyPackage(DOMAIN.stream().map(ArchitectureTest::full).toArray(String[]::new));
    }

    /** What softeners, households and waters are about: the domain but for its tools, and what is read and written of it. */
    private static DescribedPredicate<JavaClass> feature() {
        List<String> features = new ArrayList<>(DOMAIN.subList(0, DOMAIN.indexOf("randomness")));
        features.addAll(WIRE);
        return resideInAnyPackage(features.stream().map(ArchitectureTest::full).toArray(String[]::new));
    }

    private static String full(String name) {
        return name.equals(MAIN) ? ROOT : ROOT + "." + name;
    }
}

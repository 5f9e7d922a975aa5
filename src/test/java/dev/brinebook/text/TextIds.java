// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.brinebook.api.Basis;
import dev.brinebook.source.Source;
import dev.brinebook.source.Sources;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Every id of a text that the service, its pages and its scripts use. */
final class TextIds {

    private static final Path SOURCE = Path.of("src/main/java");
    private static final Path SCRIPTS = Path.of("src/main/resources/dev/brinebook/http/screen");

    /** Where an id is no constant text, and what it is there: gathered from what it comes from. */
    private static final Set<String> FROM_ELSEWHERE = Set.of("Message", "ProblemType");
    private static final List<String> PARTS_OF_PROBLEMS = List.of("title", "detail", "remedy");

    private static final Pattern ASKED = Pattern.compile("words\\.(\\w+)");
    private static final Map<String, String> PREFIXES = Map.of("element.js", "element.", "element-answer.js", "elementAnswer.");
    /** An id written whole, and one that is put together. */
    private static final Pattern WRITTEN = Pattern.compile("'((?:screen|result|visit)\\.[\\w.]+)'");
    private static final Pattern TOGETHER = Pattern.compile("`((?:screen|result|visit)\\.[^`]*\\$\\{[^`]*)`");
    private static final Pattern WORD = Pattern.compile("\\w+");

    private TextIds() {
    }

    static Set<String> used() throws IOException {
        Set<String> used = ofCalls(new ArrayList<>());
        used.addAll(ofConstants());
        used.addAll(ofScripts());
        Sources.all().values().stream().filter(Source::isInOurWords).map(Source::textId).forEach(used::add);
        return used;
    }

    /** Ids written in calls; those that are no constant text are named in {@code unknown}. */
    static Set<String> ofCalls(List<String> unknown) throws IOException {
        Set<String> found = new TreeSet<>();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (Stream<Path> files = Files.walk(SOURCE);
                StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).toList();
            JavacTask task = (JavacTask) compiler.getTask(null, manager, null, List.of("-proc:none"), null,
                    manager.getJavaFileObjectsFromPaths(sources));
            for (Tree unit : task.parse()) {
                unit.accept(new Calls(found, unknown), null);
            }
        }
        return found;
    }

    /** The texts of constants of closed lists. */
    static Set<String> ofConstants() {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("dev.brinebook")) {
            if (type.isAssignableTo(Localizable.class) && type.isEnum()) {
                List<String> parts = type.getSimpleName().equals("ProblemType") ? PARTS_OF_PROBLEMS : List.of();
                Arrays.stream(type.reflect().getEnumConstants()).map(constant -> ((Localizable) constant).textId())
                        .forEach(id -> found.addAll(parts.isEmpty() ? List.of(id)
                                : parts.stream().map(part -> id + "." + part).toList()));
            }
        }
        return found;
    }

    /**
     * Texts of the screens: the ids that their scripts write, those that fit an id which a script puts together, and those of the
     * element, whose key it writes.
     */
    static Set<String> ofScripts() throws IOException {
        Set<String> found = new TreeSet<>();
        Set<String> held = Language.ENGLISH.texts().keySet();
        try (Stream<Path> files = Files.walk(SCRIPTS)) {
            for (Path file : files.filter(file -> file.toString().endsWith(".js")).toList()) {
                String script = Files.readString(file);
                String prefix = PREFIXES.get(file.getFileName().toString());
                if (prefix != null) {
                    found.addAll(ofElement(script, prefix, held));
                    continue;
                }
                WRITTEN.matcher(script).results().map(use -> use.group(1)).forEach(found::add);
                TOGETHER.matcher(script).results().map(use -> use.group(1).replace(".", "\\.").replaceAll("\\$\\{[^}]*}", "[\\\\w-]+"))
                        .map(Pattern::compile).forEach(ids -> held.stream().filter(id -> ids.matcher(id).matches()).forEach(found::add));
            }
        }
        return found;
    }

    private static Set<String> ofElement(String script, String prefix, Set<String> held) {
        Set<String> found = new TreeSet<>();
        ASKED.matcher(script).results().map(use -> prefix + use.group(1)).forEach(found::add);
        Set<String> words = WORD.matcher(script).results().map(MatchResult::group).collect(Collectors.toSet());
        held.stream().filter(id -> id.startsWith(prefix) && words.contains(id.substring(prefix.length()))).forEach(found::add);
        return found;
    }

    /** Finds {@code Message.of("id", ...)}. */
    private static final class Calls extends TreeScanner<Void, Void> {

        private final Set<String> found;
        private final List<String> unknown;
        private String type = "";

        Calls(Set<String> found, List<String> unknown) {
            this.found = found;
            this.unknown = unknown;
        }

        /** The formula of an entry of the basis; one without is as given. */
        @Override
        public Void visitAnnotation(AnnotationTree tree, Void nothing) {
            if (tree.getAnnotationType().toString().equals("Basis")) {
                found.add(tree.getArguments().stream().map(AssignmentTree.class::cast)
                        .filter(each -> each.getVariable().toString().equals("formula"))
                        .map(each -> ((LiteralTree) each.getExpression()).getValue().toString()).findFirst().orElse(Basis.AS_GIVEN));
            }
            return super.visitAnnotation(tree, nothing);
        }

        @Override
        public Void visitClass(ClassTree tree, Void nothing) {
            String outer = type;
            type = outer.isEmpty() ? tree.getSimpleName().toString() : outer;
            super.visitClass(tree, nothing);
            type = outer;
            return null;
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
            if (call.getMethodSelect() instanceof MemberSelectTree method && method.getIdentifier().contentEquals("of")
                    && method.getExpression() instanceof IdentifierTree owner && owner.getName().contentEquals("Message")) {
                ExpressionTree id = call.getArguments().get(0);
                if (id instanceof LiteralTree literal && literal.getValue() instanceof String text) {
                    found.add(text);
                } else if (call.getArguments().size() > 1 && !FROM_ELSEWHERE.contains(type)) {
                    unknown.add(type + ": " + call);
                }
            }
            return super.visitMethodInvocation(call, nothing);
        }
    }
}

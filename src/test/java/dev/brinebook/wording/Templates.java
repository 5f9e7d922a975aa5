package dev.brinebook.wording;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Property;
import dev.brinebook.http.problem.ProblemType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Every template of the code, read from its source by the Java compiler's own parser. */
final class Templates {

    private static final Path SOURCE = Path.of("src/main/java");

    /** Where a template is no constant text, and what it is there: gathered from what it comes from. */
    private static final Set<String> FROM_ELSEWHERE = Set.of("Message", "Checker", "QueryReader", "ProblemType", "AnswerUnits");

    private Templates() {
    }

    /** All templates that hold words. */
    static Set<String> all() throws IOException {
        Set<String> all = new TreeSet<>();
        Stream.of(ofCalls(new ArrayList<>()), ofWorded(), ofRecords(), ofQueries(), ofProblems()).forEach(all::addAll);
        all.removeIf(Message::isWordless);
        return all;
    }

    /** Templates written in calls; those that are no constant text are named in {@code unknown}. */
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

    /** What constants of closed lists say. */
    static Set<String> ofWorded() {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("dev.brinebook")) {
            if (type.isAssignableTo(Worded.class) && type.isEnum()) {
                Arrays.stream(type.reflect().getEnumConstants()).map(Worded.class::cast)
                        .forEach(worded -> found.addAll(List.of(worded.words(), worded.metricWords())));
            }
        }
        return found;
    }

    /** What requests need, which is told when it is missing, and the words of units of plain numbers. */
    static Set<String> ofRecords() {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("dev.brinebook")) {
            if (type.isRecord() && type.getSimpleName().matches(".*(Request|Quantity|Money|Price|Bag|Block)")) {
                Arrays.stream(type.reflect().getRecordComponents()).map(part -> part.getAnnotation(Property.class))
                        .filter(property -> property != null).forEach(property -> {
                            if (property.required()) {
                                found.add(firstSentence(property.value()));
                            }
                            if (property.unit().matches(".*[a-z]{4}.*")) {
                                found.add(property.unit());
                            }
                        });
            }
        }
        return found;
    }

    /** What the required parameters of GET forms are. */
    static Set<String> ofQueries() {
        Set<String> found = new TreeSet<>();
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            Stream.concat(operation.query().stream(), operation.textForm() == null ? Stream.empty()
                    : operation.textForm().query().stream()).filter(QueryParameter::required)
                    .map(QueryParameter::description).forEach(found::add);
        }
        return found;
    }

    static Set<String> ofProblems() {
        return Arrays.stream(ProblemType.values()).flatMap(type -> Stream.of(type.title(), type.explanation(), type.mend()))
                .map(Message::toString).collect(Collectors.toCollection(TreeSet::new));
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". ");
        String sentence = end < 0 ? text : text.substring(0, end + 1);
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }

    /** Finds {@code Message.of("...", ...)} and {@code Message.counted("...", "...", ...)}. */
    private static final class Calls extends TreeScanner<Void, Void> {

        private final Set<String> found;
        private final List<String> unknown;
        private String type = "";

        Calls(Set<String> found, List<String> unknown) {
            this.found = found;
            this.unknown = unknown;
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
            if (call.getMethodSelect() instanceof MemberSelectTree method
                    && method.getExpression() instanceof IdentifierTree owner && owner.getName().contentEquals("Message")) {
                int templates = method.getIdentifier().contentEquals("of") ? 1
                        : method.getIdentifier().contentEquals("counted") ? 2 : 0;
                call.getArguments().subList(0, templates).forEach(template -> add(template, call));
            }
            return super.visitMethodInvocation(call, nothing);
        }

        private void add(ExpressionTree template, MethodInvocationTree call) {
            String constant = constant(template);
            if (constant != null) {
                found.add(constant);
            } else if (!FROM_ELSEWHERE.contains(type)) {
                unknown.add(type + ": " + call);
            }
        }

        private static String constant(Tree tree) {
            if (tree instanceof LiteralTree literal && literal.getValue() instanceof String text) {
                return text;
            }
            if (tree instanceof ParenthesizedTree inner) {
                return constant(inner.getExpression());
            }
            if (tree instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
                String left = constant(sum.getLeftOperand());
                String right = constant(sum.getRightOperand());
                return left == null || right == null ? null : left + right;
            }
            return null;
        }
    }
}

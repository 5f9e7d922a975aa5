// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Operation;
import dev.brinebook.api.Property;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds operations for a question by the words that they share (BM25: Robertson and Zaragoza, The Probabilistic Relevance Framework, 2009,
 * section 3.4), over name, summary, description and synonyms.
 */
final class OperationSearch {

    private static final int MOST_FOUND = 3;
    /** The usual choices of that publication. */
    private static final double K1 = 1.2;
    private static final double B = 0.75;
    private static final int SYNONYM_WEIGHT = 3;
    private static final Pattern OF_HEALTH = Pattern.compile("\\b(health\\w*|medical|doctor|bab(y|ies)|infant\\w*|"
            + "pregnan\\w*|diets?|dietary|lead|kidneys?|blood|hypertension|safe to drink|eczema|skin|allerg\\w*|poison\\w*|toxic\\w*)\\b");
    private static final String HEALTH = "Health questions are outside: no operation answers them. Ask a doctor about people, the water "
            + "supplier or a laboratory about the water.\n";
    private static final Set<String> IDLE = Set.of("a", "an", "the", "is", "are", "it", "its", "to", "of", "in", "on", "for", "and", "or",
            "my", "our", "i", "we", "do", "does", "did", "be", "with", "what", "which", "how", "this", "that", "can", "at", "have", "has",
            "you", "your", "from", "by", "when", "choose", "instead", "me", "should", "would", "will", "was", "there", "they", "them");

    private final Map<Operation<?, ?>, Map<String, Integer>> words = new LinkedHashMap<>();
    private final double meanLength;

    OperationSearch(List<Operation<?, ?>> operations) {
        Map<String, String> synonyms = Json.lines("synonyms.txt").stream().map(line -> line.split(": ", 2))
                .collect(Collectors.toMap(line -> line[0], line -> line[1]));
        for (Operation<?, ?> operation : operations) {
            String said = (synonyms.getOrDefault(operation.id(), "") + ' ').repeat(SYNONYM_WEIGHT);
            String name = operation.id().replaceAll("([A-Z])", " $1");
            words.put(operation, counts(name + ' ' + operation.summary() + ' ' + firstSentences(operation) + ' ' + said));
        }
        this.meanLength = words.values().stream().mapToInt(OperationSearch::length).average().orElse(1);
    }

    private static Map<String, Integer> counts(String text) {
        Map<String, Integer> counts = new HashMap<>();
        stems(text).forEach(word -> counts.merge(word, 1, Integer::sum));
        return counts;
    }

    /** The words of a text, without their usual endings. */
    private static List<String> stems(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z0-9/]+")).filter(word -> word.length() > 1 && !IDLE.contains(word))
                .map(word -> word.length() > 4 ? word.replaceAll("(ings?|ions?|es|s|ed|e)$", "") : word).toList();
    }

    private static int length(Map<String, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Up to three operations, the best first; none when no word is shared. */
    List<Operation<?, ?>> find(String question) {
        List<String> asked = stems(question).stream().distinct().toList();
        Map<Operation<?, ?>, Double> scores = new LinkedHashMap<>();
        words.forEach((operation, counts) -> {
            double score = asked.stream().mapToDouble(word -> score(word, counts)).sum();
            if (score > 0) {
                scores.put(operation, score);
            }
        });
        return scores.entrySet().stream().sorted(Comparator.comparingDouble(entry -> -entry.getValue())).limit(MOST_FOUND)
                .<Operation<?, ?>>map(Map.Entry::getKey).toList();
    }

    private double score(String word, Map<String, Integer> counts) {
        double frequency = counts.getOrDefault(word, 0);
        long having = words.values().stream().filter(one -> one.containsKey(word)).count();
        double rarity = Math.log(1 + (words.size() - having + 0.5) / (having + 0.5));
        return rarity * frequency * (K1 + 1) / (frequency + K1 * (1 - B + B * length(counts) / meanLength));
    }

    /** What was found, in few words. */
    String answer(String question) {
        StringBuilder text = new StringBuilder(OF_HEALTH.matcher(question.toLowerCase(Locale.ROOT)).find() ? HEALTH : "");
        for (Operation<?, ?> operation : find(question)) {
            text.append(operation.id()).append(": ").append(operation.description()).append(" Needs: ").append(needs(operation))
                    .append(".\n");
        }
        if (find(question).isEmpty()) {
            text.append("No operation shares a word with the question. All: ").append(words.keySet().stream().map(Operation::id)
                    .collect(Collectors.joining(", "))).append(".\n");
        }
        List<String> asked = stems(question);
        Glossary.terms().entrySet().stream().filter(term -> asked.containsAll(stems(term.getKey()))).limit(2)
                .forEach(term -> text.append("Term ").append(term.getKey()).append(": ").append(term.getValue()).append('\n'));
        return text.append("Next: describe_operation with the one that fits.\n").toString();
    }

    private static String firstSentences(Operation<?, ?> operation) {
        // Sentences that send to another operation would find this one by the words of the other.
        return Arrays.stream(operation.description().split("(?<=\\.) ")).filter(sentence -> !sentence.contains("instead")
                && !sentence.matches("(For|If) .*choose .*")).collect(Collectors.joining(" "));
    }

    private static String needs(Operation<?, ?> operation) {
        String required = Arrays.stream(operation.requestType().getRecordComponents())
                .filter(component -> component.getAnnotation(Property.class).required()).map(component -> component.getName() + " ("
                + component.getAnnotation(Property.class).value().replaceAll("\\..*$", "") + ")").collect(Collectors.joining(", "));
        return required.isEmpty() ? "see describe_operation" : required;
    }
}

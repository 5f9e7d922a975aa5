// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * A tag may be another image tomorrow, a digest never (OCI image specification, Content Descriptors, Digests). Every base image
 * can be given by its digest, and the recipe of a release gives each so.
 */
class BaseImagesTest {

    private static final Pattern STAGE = Pattern.compile("(?m)^FROM (\\S+)(?: AS (\\S+))?$");
    private static final Pattern ARGUMENT = Pattern.compile("(?m)^ARG (\\w+)=\\S+$");
    private static final Pattern PINNED = Pattern.compile("--build-arg\\s+(\\w+)=\\S+@sha256:");

    @Test
    void everyBaseImageIsAnArgumentThatAReleaseGivesByDigest() throws IOException {
        String dockerfile = Files.readString(Path.of("Dockerfile"));
        Set<String> arguments = new TreeSet<>(all(ARGUMENT, dockerfile.substring(0, dockerfile.indexOf("\nFROM "))));
        Set<String> bases = new TreeSet<>(all(STAGE, dockerfile));
        bases.removeAll(STAGE.matcher(dockerfile).results().map(stage -> stage.group(2)).collect(Collectors.toSet()));
        assertTrue(arguments.size() > 1, dockerfile);
        assertEquals(arguments.stream().map(name -> "${" + name + "}").collect(Collectors.toSet()), bases);
        assertEquals(arguments, new TreeSet<>(all(PINNED, Files.readString(Path.of("DEVELOPERS.md")))));
    }

    private static List<String> all(Pattern pattern, String text) {
        return pattern.matcher(text).results().map((MatchResult found) -> found.group(1)).toList();
    }
}

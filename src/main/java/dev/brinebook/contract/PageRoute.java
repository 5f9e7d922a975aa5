// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A route beside the operations: health, version, the contract itself, pages.
 *
 * @param id operationId of the contract
 * @param path path, with parameters in braces
 * @param summary one line
 * @param description what it answers
 * @param mediaTypes media types of the answer, the one of no preference first
 * @param answerType record of a JSON answer, or null
 * @param example an example of a JSON answer, or null
 * @param parameter name of the parameter in the path, or null
 * @param values allowed values of the parameter
 * @param cached whether it may be kept and asked for again by its ETag
 * @param whenStopping what the same answer says with 503 when the service stops, or null where it says a problem
 * @param english whether its header says that it is in English, whatever language was asked for
 */
public record PageRoute(String id, String path, String summary, String description, List<String> mediaTypes,
        Class<? extends Record> answerType, Supplier<byte[]> example, String parameter, List<String> values, boolean cached,
        String whenStopping, boolean english) {

    public PageRoute {
        mediaTypes = List.copyOf(mediaTypes);
        values = List.copyOf(values);
    }

    /** Whether it is a page for people alone, which the contract, for programs, does not describe. */
    boolean isForPeople() {
        return mediaTypes.equals(List.of("text/html"));
    }

    /** A route that answers a text, and may be kept. */
    public PageRoute(String id, String path, String summary, String description, String mediaType) {
        this(id, path, summary, description, List.of(mediaType), null, null, null, List.of(), true, null, false);
    }

    /** The same route, answering a record, of which {@code shown} gives an example or is null. */
    public PageRoute answering(Class<? extends Record> type, Supplier<byte[]> shown) {
        return new PageRoute(id, path, summary, description, mediaTypes, type, shown, parameter, values, cached, whenStopping, english);
    }

    /** The same route, with a parameter in its path. */
    public PageRoute choosing(String name, List<String> among) {
        return new PageRoute(id, path, summary, description, mediaTypes, answerType, example, name, among, cached, whenStopping, english);
    }

    /** The same route, answering in other media types too. */
    public PageRoute also(List<String> others) {
        return new PageRoute(id, path, summary, description, Stream.concat(mediaTypes.stream(), others.stream()).distinct().toList(),
                answerType, example, parameter, values, cached, whenStopping, english);
    }

    /** The same route, whose answer is never kept; {@code stopping} as above. */
    public PageRoute neverKept(String stopping) {
        return new PageRoute(id, path, summary, description, mediaTypes, answerType, example, parameter, values, false, stopping,
                english);
    }

    /** The same route, whose header says that it is in English. */
    public PageRoute inEnglish() {
        return new PageRoute(id, path, summary, description, mediaTypes, answerType, example, parameter, values, cached, whenStopping,
                true);
    }
}

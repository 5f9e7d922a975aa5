// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Request headers that hold a list, which may span several lines (RFC 9110, section 5.3). */
final class ListHeader {

    private ListHeader() {
    }

    /** All elements, stripped; none when the header is missing or blank. */
    static List<String> of(Context context, String name) {
        return Collections.list(context.req().getHeaders(name)).stream().flatMap(line -> Arrays.stream(line.split(",")))
                .map(String::strip).filter(element -> !element.isEmpty()).toList();
    }

    /** The value before any parameter, in lower case. */
    static String value(String element) {
        return element.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    }

    /** The weight that the caller gives the element, 0 to 1; 1 when it gives none that can be read. */
    static double weight(String element) {
        return Arrays.stream(element.split(";")).skip(1).map(String::strip)
                .filter(parameter -> parameter.matches("(?i)q=(0(\\.\\d{0,3})?|1(\\.0{0,3})?)"))
                .mapToDouble(parameter -> Double.parseDouble(parameter.substring(2))).findFirst().orElse(1);
    }

    /** Whether the caller gives the element the weight zero, which refuses it. */
    static boolean refused(String element) {
        return weight(element) == 0;
    }
}

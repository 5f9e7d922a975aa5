// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;

/** Request headers that hold a list, which may span several lines (RFC 9110, section 5.3). */
final class ListHeader {

    private ListHeader() {
    }

    /** All elements, stripped; none when the header is missing or blank. */
    static List<String> of(Context context, String name) {
        List<String> elements = new ArrayList<>();
        for (Enumeration<String> lines = context.req().getHeaders(name); lines.hasMoreElements();) {
            for (String element : lines.nextElement().split(",")) {
                if (!element.isBlank()) {
                    elements.add(element.strip());
                }
            }
        }
        return elements;
    }

    /** The value before any parameter, in lower case. */
    static String value(String element) {
        int parameters = element.indexOf(';');
        return (parameters < 0 ? element : element.substring(0, parameters)).strip().toLowerCase(Locale.ROOT);
    }

    /** The weight that the caller gives the element, 0 to 1; 1 when it gives none that can be read. */
    static double weight(String element) {
        return element.indexOf(';') < 0 ? 1 : Arrays.stream(element.split(";")).skip(1).map(String::strip)
                .filter(parameter -> parameter.matches("(?i)q=(0(\\.\\d{0,3})?|1(\\.0{0,3})?)"))
                .mapToDouble(parameter -> Double.parseDouble(parameter.substring(2))).findFirst().orElse(1);
    }

    /** Whether the caller gives the element the weight zero, which refuses it. */
    static boolean refused(String element) {
        return weight(element) == 0;
    }
}

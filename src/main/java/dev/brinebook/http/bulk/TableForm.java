// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * How a table is written.
 *
 * @param separator sign between its cells
 * @param numbers form of its numbers
 */
record TableForm(char separator, NumberForm numbers) {

    /** As RFC 4180 and JSON have it. */
    static final TableForm USUAL = new TableForm(Separator.COMMA.sign, NumberForm.AS_JSON);

    /** Signs between cells. */
    enum Separator {
        COMMA(','), SEMICOLON(';'), TAB('\t');

        private final char sign;

        Separator(char sign) {
            this.sign = sign;
        }

        char sign() {
            return sign;
        }

        /** All signs. */
        static String all() {
            return Arrays.stream(values()).map(one -> String.valueOf(one.sign)).collect(Collectors.joining());
        }

        static Separator of(char sign) {
            for (Separator one : values()) {
                if (one.sign == sign) {
                    return one;
                }
            }
            throw new IllegalArgumentException("no separator");
        }
    }
}

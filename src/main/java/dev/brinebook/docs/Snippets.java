// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import java.util.List;

/**
 * A call in every way that it is shown.
 *
 * @param curl as one types it into a shell
 * @param programs in other languages
 */
record Snippets(String curl, List<Program> programs) {

    /** The call of the shell as the content of an element. */
    String html() {
        return Templates.escaped(curl);
    }

    static Snippets of(Call call) {
        return new Snippets(call.curl(), Program.of(call));
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Operation;
import java.util.List;

/**
 * A call as a whole program that needs nothing but its language: it prints the answer, or writes it into the file of the call.
 *
 * @param language as tools name it, such as {@code python}
 * @param title as people name it
 * @param text the program
 */
record Program(String language, String title, String text) {

    /** The program as the content of an element. */
    String html() {
        return Templates.escaped(text);
    }

    /** What the templates of programs ask for: {@code body} and {@code json} are empty where there is no such body. */
    private record Parts(String address, boolean sends, String type, String accept, String file, String body, String json) {
    }

    /** The call in each language but the shell's. */
    static List<Program> of(Call call) {
        return List.of(new Program("python", "Python", text("python", call, call.body())),
                new Program("javascript", "JavaScript", text("javascript", call,
                        call.body().replace("\\", "\\\\").replace("`", "\\`").replace("${", "\\${"))),
                new Program("java", "Java", text("java", call,
                        call.body().replace("\\", "\\\\").replace("\"\"\"", "\\\"\"\"").indent(12).stripTrailing())));
    }

    private static String text(String language, Call call, String quotedBody) {
        return Templates.program(language, new Parts(call.address(), !call.isGet(), call.type(), call.accept(), call.file(),
                quotedBody, call.type().equals(Operation.JSON) ? call.body() : ""));
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import java.nio.charset.StandardCharsets;

/** How the answers of a stream are written, each from the JSON that a single call gets. */
public interface AnswerLines {

    /** The text before the first answer. */
    byte[] start();

    /** The answer to a line. */
    byte[] answer(long line, byte[] answer);

    /** Error of a line. */
    byte[] problem(long line, int status, byte[] problem);

    /** An object for each line, with the whole answer in it. */
    final class Ndjson implements AnswerLines {

        static final String MEDIA_TYPE = "application/x-ndjson";

        private static final byte[] END = "}\n".getBytes(StandardCharsets.US_ASCII);

        @Override
        public byte[] start() {
            return new byte[0];
        }

        @Override
        public byte[] answer(long line, byte[] answer) {
            return object(line, 200, "answer", answer);
        }

        @Override
        public byte[] problem(long line, int status, byte[] problem) {
            return object(line, status, "problem", problem);
        }

        private static byte[] object(long line, int status, String name, byte[] json) {
            byte[] start = ("{\"line\":" + line + ",\"status\":" + status + ",\"" + name + "\":")
                    .getBytes(StandardCharsets.US_ASCII);
            byte[] whole = new byte[start.length + json.length + END.length];
            System.arraycopy(start, 0, whole, 0, start.length);
            System.arraycopy(json, 0, whole, start.length, json.length);
            System.arraycopy(END, 0, whole, start.length + json.length, END.length);
            return whole;
        }
    }
}

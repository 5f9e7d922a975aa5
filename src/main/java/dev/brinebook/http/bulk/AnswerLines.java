// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

/** How the answers of a stream are written, each from the JSON that a single call gets. */
interface AnswerLines {

    /** The text before the first answer. */
    byte[] start();

    /** The answer to a line. */
    byte[] answer(SentLine line, byte[] answer);

    /** Error of a line. */
    byte[] problem(SentLine line, int status, byte[] problem);

    /** What a dry run found. */
    byte[] summary(CheckSummary.Totals totals);
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

/**
 * A kind of problem that an answer can report.
 *
 * @param slug last part of the path of its page
 * @param title it in words
 * @param status HTTP status
 * @param explanation when it comes
 * @param fix how to correct it
 */
public record ProblemKind(String slug, String title, int status, String explanation, String fix) {
}

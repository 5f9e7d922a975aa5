// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

/**
 * The result of a tool call.
 *
 * @param json the answer, or the problem document with the errors of the arguments
 * @param faulty whether it is the latter
 */
public record ToolAnswer(byte[] json, boolean faulty) {
}

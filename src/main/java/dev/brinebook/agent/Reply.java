// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

/**
 * The reply to one message.
 *
 * @param status HTTP status
 * @param json a response of JSON-RPC 2.0, or null where a notification only is taken note of
 */
public record Reply(int status, byte[] json) {
}

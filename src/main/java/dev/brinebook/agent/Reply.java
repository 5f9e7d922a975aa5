package dev.brinebook.agent;

/**
 * What goes back for one message.
 *
 * @param status HTTP status
 * @param json a response of JSON-RPC 2.0, or null where a notification only is taken note of
 */
public record Reply(int status, byte[] json) {
}

package dev.brinebook.agent;

/**
 * What a call of a tool gives.
 *
 * @param json the answer, or the problem document that tells the faults of the arguments
 * @param faulty whether it is the latter
 */
public record ToolAnswer(byte[] json, boolean faulty) {
}

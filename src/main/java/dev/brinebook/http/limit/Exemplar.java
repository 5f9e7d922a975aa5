// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

/**
 * A trace that somebody keeps, as an example of what was measured (OpenMetrics 1.0, Exemplars).
 *
 * @param traceId id of the trace, 32 hexadecimal digits
 * @param spanId id of the span in it, 16 hexadecimal digits
 */
public record Exemplar(String traceId, String spanId) {
}

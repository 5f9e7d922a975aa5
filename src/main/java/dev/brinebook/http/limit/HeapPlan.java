// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import dev.brinebook.http.Settings;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Limits that fit the heap: derived once from its size, and then kept by admission, so that no number of callers ends the
 * process.
 *
 * @param connections most connections at once
 * @param arrivingBytes bodies that may be received at once
 * @param calculatingBytes what calculations that run at once may hold, beside those of bulk lines
 */
public record HeapPlan(int connections, long arrivingBytes, long calculatingBytes) {

    /** Most bytes of one line of a bulk stream. */
    public static final int MAX_LINE_BYTES = 65_536;

    private static final Logger LOG = LoggerFactory.getLogger(HeapPlan.class);
    private static final long MIB = 1L << 20;

    /** Live after all operations, pages and sheets were asked for, the caches full. */
    static final long IDLE_BYTES = 40 * MIB;
    /** An active keep-alive connection. */
    private static final long CONNECTION_BYTES = 12_288;
    /** A bulk stream: its longest line, buffers and the answer at hand. */
    private static final long STREAM_BYTES = 262_144;
    /** Held for each byte of a body: its text, the values read, their place in the answer and the errors found in it. */
    private static final long BYTES_FOR_EACH_OF_BODY = 16;
    private static final long JSON_ANSWER_BYTES = MIB;
    private static final long AGENT_ANSWER_BYTES = 4 * MIB;
    private static final String PDF = "application/pdf";
    private static final long PDF_BYTES = 6 * MIB;

    /** Share of the rest, after connections and streams, for bodies being received. */
    private static final int ARRIVING_PART = 4;

    /**
     * The plan for a heap of {@code heapBytes}: with fewer connections than the settings ask for, if more would not fit.
     *
     * @throws IllegalArgumentException when the largest body does not fit, however few the connections
     */
    public static HeapPlan of(Settings settings, long heapBytes) {
        long free = heapBytes - IDLE_BYTES - StreamSlots.MOST_AT_ONCE * STREAM_BYTES
                - ConcurrencyLimiter.AT_ONCE_IN_BULK * ofJson(MAX_LINE_BYTES);
        long largest = Math.max(PDF_BYTES, ofAgent(settings.maxBodyBytes()));
        long forRequests = largest * ARRIVING_PART / (ARRIVING_PART - 1);
        int connections = (int) Math.min(settings.maxConnections(), (free - forRequests) / CONNECTION_BYTES);
        if (connections < Settings.FEWEST_CONNECTIONS) {
            throw new IllegalArgumentException("a heap of " + heapBytes / MIB + " MiB has no room for MAX_BODY_BYTES="
                    + settings.maxBodyBytes() + ": increase it to " + (heapBytes - free + forRequests
                    + Settings.FEWEST_CONNECTIONS * CONNECTION_BYTES + MIB - 1) / MIB + " MiB (-Xmx), or lower MAX_BODY_BYTES");
        }
        if (connections < settings.maxConnections()) {
            LOG.warn("MAX_CONNECTIONS lowered from {} to {}: a heap of {} MiB has no room for more", settings.maxConnections(),
                    connections, heapBytes / MIB);
        }
        long left = free - connections * CONNECTION_BYTES;
        HeapPlan plan = new HeapPlan(connections, left / ARRIVING_PART, left - left / ARRIVING_PART);
        LOG.info("of {} MiB heap: {} connections, {} MiB for request bodies, {} MiB for calculations", heapBytes / MIB,
                connections, plan.arrivingBytes / MIB, plan.calculatingBytes / MIB);
        return plan;
    }

    /** Memory that answering in JSON may use, for a body of the given bytes. */
    public static long ofJson(long bodyBytes) {
        return JSON_ANSWER_BYTES + BYTES_FOR_EACH_OF_BODY * bodyBytes;
    }

    /** Memory that answering an agent may use: the message, its arguments, and the answer twice, as text and as structure. */
    public static long ofAgent(long bodyBytes) {
        return AGENT_ANSWER_BYTES + 2 * BYTES_FOR_EACH_OF_BODY * bodyBytes;
    }

    /** Memory that answering in a form may use. */
    public static long of(String mediaType, long bodyBytes) {
        return mediaType.equals(PDF) ? PDF_BYTES + BYTES_FOR_EACH_OF_BODY * bodyBytes : ofJson(bodyBytes);
    }
}

package dev.brinebook.http.limit;

/** Why a request, or a line of a stream, was turned away, as the metrics name it. */
public enum Rejection {
    /** As many requests were inside as the threads can hold. */
    REQUESTS,
    /** The head of a request did not come in time. */
    HEAD,
    /** Bodies that were on their way held as many bytes as they may. */
    BYTES,
    /** No permit to calculate was free in time. */
    PERMITS,
    /** Its calculation took longer than one may. */
    TIME,
    /** As many streams ran as may. */
    STREAMS,
    /** The caller asked more often than its rate. */
    RATE,
    /** The caller is not one of those that have a key. */
    KEY
}

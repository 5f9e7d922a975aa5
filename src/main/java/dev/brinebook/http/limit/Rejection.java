// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

/** Why a request, or a line of a stream, was turned away, as the metrics name it. */
public enum Rejection {
    /** The requests inside have reached the limit of the threads. */
    REQUESTS,
    /** The head of a request did not come in time. */
    HEAD,
    /** Bodies being received have reached their limit of bytes. */
    BYTES,
    /** No permit to calculate was free in time. */
    PERMITS,
    /** Its calculation took longer than one may. */
    TIME,
    /** The running streams have reached their limit. */
    STREAMS,
    /** The caller asked more often than its rate. */
    RATE,
    /** The caller is not one of those that have a key. */
    KEY
}

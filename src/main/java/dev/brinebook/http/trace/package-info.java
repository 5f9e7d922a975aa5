// SPDX-License-Identifier: Apache-2.0
/** Spans of requests, for whoever collects traces; off unless a receiver is named. */
package dev.brinebook.http.trace;

// SPDX-License-Identifier: Apache-2.0
/** Limits of concurrency, time and heap, and their metrics. */
package dev.brinebook.http.limit;

// SPDX-License-Identifier: Apache-2.0
/** Readings and their uncertainty: by instrument, propagated, simulated, and combined where several answer one question. */
package dev.brinebook.measurement;

// SPDX-License-Identifier: Apache-2.0
/** Programs that are not the service: one share of a bulk job, and the run that a JVM learns to start from. */
package dev.brinebook.tool;

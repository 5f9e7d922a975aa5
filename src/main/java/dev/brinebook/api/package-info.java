// SPDX-License-Identifier: Apache-2.0
/**
 * The seam between operations and what serves them: an operation, the descriptions of its records, errors, and the basis of numbers. It
 * knows no server, no JSON and no feature.
 */
package dev.brinebook.api;

// SPDX-License-Identifier: Apache-2.0
/** Numbers with their units as they are read and written. Every number of an answer is rounded here, once. */
package dev.brinebook.api.quantity;

// SPDX-License-Identifier: Apache-2.0
/** The operations that schedule regenerations, choose a reserve and replay past days; their calendars and tables. */
package dev.brinebook.operation.regeneration;

// SPDX-License-Identifier: Apache-2.0
/** Readings taken at a softener, and the check of an installation. */
package dev.brinebook.operation.field;

// SPDX-License-Identifier: Apache-2.0
/** Readings taken at a softener, as requests have them, and what they are in the domain. */
package dev.brinebook.request.field;

// SPDX-License-Identifier: Apache-2.0
/** Calculations line by line: streams in and out, tables, and their templates. */
package dev.brinebook.http.bulk;

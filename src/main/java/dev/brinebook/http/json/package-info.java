// SPDX-License-Identifier: Apache-2.0
/** JSON read strictly, collecting all errors of form, and written. */
package dev.brinebook.http.json;

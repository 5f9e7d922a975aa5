// SPDX-License-Identifier: Apache-2.0
/** Who may have something calculated, and how often: keys and rates. */
package dev.brinebook.http.access;

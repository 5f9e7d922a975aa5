// SPDX-License-Identifier: Apache-2.0
/** Problem details as RFC 9457 has them, and their kinds. */
package dev.brinebook.http.problem;

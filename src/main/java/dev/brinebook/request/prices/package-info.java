// SPDX-License-Identifier: Apache-2.0
/** Parts of requests: prices of salt and water. */
package dev.brinebook.request.prices;

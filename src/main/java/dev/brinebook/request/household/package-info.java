// SPDX-License-Identifier: Apache-2.0
/** Parts of requests: people, days, seasons, fixtures, and the use of water that follows from them. */
package dev.brinebook.request.household;

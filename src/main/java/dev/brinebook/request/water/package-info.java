// SPDX-License-Identifier: Apache-2.0
/** Parts of requests: the water test, and how hardness is compensated. */
package dev.brinebook.request.water;

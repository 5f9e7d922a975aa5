// SPDX-License-Identifier: Apache-2.0
/** Random numbers by seed, stream and place; quantities that are not known exactly. */
package dev.brinebook.randomness;

// SPDX-License-Identifier: Apache-2.0
/** Bed, capacity by table and by equilibrium stages, pressure drop, backwash, service flow. */
package dev.brinebook.resin;

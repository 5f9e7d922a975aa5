// SPDX-License-Identifier: Apache-2.0
/** Hardness, compensation, sodium, density and viscosity. */
package dev.brinebook.water;

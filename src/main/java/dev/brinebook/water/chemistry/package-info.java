// SPDX-License-Identifier: Apache-2.0
/** Chemistry of dissolved salts: ions, charge balance, conductivity, dissolved solids, the carbonate system and saturation. */
package dev.brinebook.water.chemistry;

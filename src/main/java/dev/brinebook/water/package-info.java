/** Hardness, compensation, sodium, density and viscosity. */
package dev.brinebook.water;

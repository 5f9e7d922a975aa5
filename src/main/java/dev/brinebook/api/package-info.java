/**
 * The seam between operations and what serves them: an operation, what its records say of themselves, faults, and what
 * explains a number. It knows no server, no JSON and no feature.
 */
package dev.brinebook.api;

// SPDX-License-Identifier: Apache-2.0
/** The whole job, composed of what the other packages calculate. */
package dev.brinebook.assessment;

// SPDX-License-Identifier: Apache-2.0
/** Every line of the log as JSON, of libraries too. */
package dev.brinebook.log;

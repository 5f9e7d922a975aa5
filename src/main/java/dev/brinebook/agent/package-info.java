// SPDX-License-Identifier: Apache-2.0
/**
 * What language models get: the Model Context Protocol with four tools that reach every operation, answers as text that fits a small
 * context, pages to look things up, and the page that explains the service. Fixed texts for models are in English.
 */
package dev.brinebook.agent;

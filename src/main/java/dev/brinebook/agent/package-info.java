// SPDX-License-Identifier: Apache-2.0
/** What language models get: the operations as tools of the Model Context Protocol, and the page that explains them. */
package dev.brinebook.agent;

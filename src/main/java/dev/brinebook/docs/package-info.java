// SPDX-License-Identifier: Apache-2.0
/** Pages for people who call the service, made from operations, committed examples and sources. */
package dev.brinebook.docs;

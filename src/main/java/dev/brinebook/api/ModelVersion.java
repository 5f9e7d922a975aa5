// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

/**
 * Current version of the formulas and data: a number that changes for an equal request is a new one. {@link Operation#answer} writes
 * the version that was asked for into the answer.
 */
public final class ModelVersion {

    public static final String CURRENT = "2.3.0";

    private ModelVersion() {
    }
}

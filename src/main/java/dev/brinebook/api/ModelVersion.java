// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

/** Version of the formulas and data: a number that changes for an equal request is a new one. */
public final class ModelVersion {

    public static final String CURRENT = "2.2.0";

    private ModelVersion() {
    }
}

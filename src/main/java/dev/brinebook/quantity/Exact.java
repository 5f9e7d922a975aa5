// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/**
 * Exact sizes of the customary units, from which every factor is computed.
 *
 * <p>Source: [NIST-SP811] appendix B; [UK-WMA] schedule 1 for the imperial gallon.
 */
public final class Exact {

    /** Milligrams in a grain. */
    public static final double GRAIN_MILLIGRAMS = 64.79891;
    /** Kilograms in a pound of 7,000 grains. */
    public static final double POUND_KILOGRAMS = 0.45359237;
    /** Metres in an inch. */
    public static final double INCH_METRES = 0.0254;
    /** Litres in a cubic foot. */
    public static final double CUBIC_FOOT_LITRES = 28.316846592;
    /** Litres in a US gallon of 231 cubic inches. */
    public static final double US_GALLON_LITRES = 3.785411784;
    /** Litres in an imperial gallon. */
    public static final double IMPERIAL_GALLON_LITRES = 4.54609;
    /** Standard acceleration of gravity, m/s². */
    public static final double STANDARD_GRAVITY = 9.80665;
    /** Pascals in a pound-force per square inch, 6,894.757…. */
    public static final double PSI_PASCALS = POUND_KILOGRAMS * STANDARD_GRAVITY / (INCH_METRES * INCH_METRES);

    private Exact() {
    }
}

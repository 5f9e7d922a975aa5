// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.source.Table;
import dev.brinebook.text.ListedOnce;
import dev.brinebook.text.Localizable;
import dev.brinebook.water.chemistry.Ion;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a water report can state. Each is calculated with in one unit, mg/L of the substance itself where nothing else is said.
 *
 * <p>Usual and highest values are those of the table, from [HEM-2254] and [CP-WATER-TESTS].
 */
@ListedOnce("What a water report states.")
public enum Parameter implements Localizable {
    /** mg/L as CaCO3, as are both alkalinities. */
    HARDNESS,
    CALCIUM(Ion.CALCIUM),
    MAGNESIUM(Ion.MAGNESIUM),
    SODIUM(Ion.SODIUM),
    POTASSIUM(Ion.POTASSIUM),
    AMMONIUM(Ion.AMMONIUM),
    STRONTIUM(Ion.STRONTIUM),
    BARIUM(Ion.BARIUM),
    ALKALINITY,
    /** The titration to pH 8.3, also named P or phenolphthalein alkalinity. */
    ALKALINITY_TO_PH_8,
    BICARBONATE(Ion.BICARBONATE),
    CARBONATE(Ion.CARBONATE),
    HYDROXIDE(Ion.HYDROXIDE),
    CHLORIDE(Ion.CHLORIDE),
    SULFATE(Ion.SULFATE),
    NITRATE(Ion.NITRATE),
    NITRITE(Ion.NITRITE),
    FLUORIDE(Ion.FLUORIDE),
    PHOSPHATE(Ion.PHOSPHATE),
    BROMIDE(Ion.BROMIDE),
    SILICA,
    /** All iron, of a sample that was acidified and not filtered. */
    IRON,
    IRON_DISSOLVED,
    MANGANESE,
    MANGANESE_DISSOLVED,
    PH,
    /** µS/cm at 25 °C. */
    CONDUCTIVITY,
    DISSOLVED_SOLIDS,
    CARBON_DIOXIDE,
    OXYGEN,
    FREE_CHLORINE,
    HYDROGEN_SULFIDE,
    /** NTU. */
    TURBIDITY,
    /** Platinum-cobalt units. */
    COLOUR,
    TANNIN,
    ORGANIC_CARBON,
    LEAD,
    COPPER,
    ARSENIC,
    URANIUM,
    ALUMINIUM,
    ZINC,
    SILVER,
    /** In 100 mL, as are E. coli. */
    COLIFORM,
    E_COLI,
    /** °C. */
    TEMPERATURE;

    private static final String TABLE = "/water/report-parameters.csv";
    private static final int COLUMNS = 5;

    private final Ion ion;

    Parameter(Ion ion) {
        this.ion = ion;
    }

    Parameter() {
        this(null);
    }

    /** A row of the table. */
    private record Row(ReportUnit unit, double usualLow, double usualHigh, double highest) {
    }

    /** Read when first needed: the constants must exist before they can be named. */
    private static final class Rows {

        static final Map<Parameter, Row> BY_PARAMETER = read();

        private static Map<Parameter, Row> read() {
            Map<Parameter, Row> rows = new EnumMap<>(Parameter.class);
            for (String[] row : Table.read(TABLE, ',', COLUMNS)) {
                ReportUnit unit = Arrays.stream(ReportUnit.values()).filter(known -> known.symbol().equals(row[1])).findFirst()
                        .orElseThrow();
                rows.put(named(row[0]), new Row(unit, Double.parseDouble(row[2]), Double.parseDouble(row[3]), Double.parseDouble(row[4])));
            }
            if (rows.size() != values().length) {
                throw new IllegalStateException(TABLE + " must have every parameter once");
            }
            return rows;
        }
    }

    /** The parameter of a name of the tables, such as {@code ironDissolved}. */
    static Parameter named(String name) {
        return valueOf(constant(name));
    }

    /** The constant of a name in camel case, whose digits are words of their own. */
    static String constant(String name) {
        return name.replaceAll("([A-Z]|(?<=[a-z])[0-9])", "_$1").toUpperCase(Locale.ROOT);
    }

    /** Whether its least is none at all, as of everything that is dissolved; not of a pH or a temperature, whose scales only end. */
    boolean startsAtZero() {
        return this != PH && this != TEMPERATURE;
    }

    /** Whether it is of bacteria, which are found or not found. */
    boolean isOfBacteria() {
        return this == COLIFORM || this == E_COLI;
    }

    /** The ion that it is, where it is one whose amount is stated whole. */
    public Optional<Ion> ion() {
        return Optional.ofNullable(ion);
    }

    /** The unit that it is calculated with. */
    public ReportUnit unit() {
        return row().unit();
    }

    /** The range that natural and treated waters keep to. */
    public double usualLow() {
        return row().usualLow();
    }

    public double usualHigh() {
        return row().usualHigh();
    }

    /** A value above this is of no water that anybody would soften: its unit or its digits are wrong. */
    public double highest() {
        return row().highest();
    }

    private Row row() {
        return Rows.BY_PARAMETER.get(this);
    }

    @Override
    public String textId() {
        return Localizable.idOf("waterParameter", this);
    }
}

// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import dev.brinebook.quantity.MolarMass;
import dev.brinebook.source.Table;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** One row of the published analyses, read for the tests. */
public record PublishedAnalysis(String id, Map<String, String> cells) {

    public static final String GOOD = "/water/chemistry/published-analyses.csv";
    public static final String DOUBTFUL = "/water/chemistry/published-doubtful-analyses.csv";

    public static Map<String, PublishedAnalysis> all(String... resources) throws java.io.IOException {
        Map<String, PublishedAnalysis> rows = new java.util.LinkedHashMap<>();
        for (String resource : resources) {
            try (var reader = new java.io.InputStreamReader(Table.class.getResourceAsStream(resource),
                    java.nio.charset.StandardCharsets.UTF_8)) {
                for (CSVRecord row : CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get()
                        .parse(reader)) {
                    rows.put(row.get("id"), new PublishedAnalysis(row.get("id"), new HashMap<>(row.toMap())));
                }
            }
        }
        return rows;
    }

    /** The number of a cell; 0 where it is below its limit, none where it is blank. */
    public OptionalDouble number(String column) {
        String cell = cells.get(column);
        return cell.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(cell.startsWith("<") ? 0 : Double.parseDouble(cell));
    }

    public Composition composition() {
        Map<Ion, Double> ions = new EnumMap<>(Ion.class);
        for (Ion ion : List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM, Ion.IRON, Ion.MANGANESE, Ion.CARBONATE, Ion.CHLORIDE,
                Ion.SULFATE, Ion.FLUORIDE)) {
            number(ion.name().toLowerCase(java.util.Locale.ROOT)).ifPresent(value -> ions.put(ion, value));
        }
        number("nitrateAsN").ifPresent(value -> ions.put(Ion.NITRATE, value * MolarMass.grams("NO3") / MolarMass.grams("N")));
        double toBicarbonate = cells.get("alkalinityForm").equals("asHCO3") ? 1
                : MolarMass.grams("2HCO3") / MolarMass.grams("CaCO3");
        number("alkalinity").ifPresent(value -> ions.put(Ion.BICARBONATE, value * toBicarbonate));
        return new Composition(ions);
    }
}

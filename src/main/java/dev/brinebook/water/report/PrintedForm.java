// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.quantity.MolarMass;
import dev.brinebook.source.Table;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One form in which one parameter is printed, and what turns it into the form that is calculated with.
 *
 * <p>A factor is written as what it stands for, {@code NO3/N}, and computed from the atomic weights [CIAAW]. The names of some acid
 * capacities are those of [DIN38409-7]; the factor of a conductivity at 20 °C is that between the limits of [EU-2020-2184] and
 * [TRINKWV]. The scales of pocket meters are [CP-WATER-TESTS].
 *
 * @param parameter what is printed
 * @param form the form
 * @param expression the factor as it is written in the table
 * @param becomes what the value is then: another parameter for a pocket meter, which measures no solids
 * @param equivalents charges of the printed substance as the expression counts it; none where charges mean nothing
 */
public record PrintedForm(Parameter parameter, ReportForm form, String expression, Parameter becomes, OptionalDouble equivalents) {

    private static final int COLUMNS = 6;
    /** Printed as another substance in books of ion exchange alone, or with a name that says it. */
    private static final Set<Parameter> NAMED_BY_THEMSELVES = EnumSet.of(Parameter.HARDNESS, Parameter.SODIUM, Parameter.POTASSIUM,
            Parameter.BICARBONATE, Parameter.CARBONATE, Parameter.HYDROXIDE, Parameter.CARBON_DIOXIDE);
    private static final Map<Parameter, List<PrintedForm>> ALL = read("/water/report-forms.csv");

    private static Map<Parameter, List<PrintedForm>> read(String table) {
        Map<Parameter, List<PrintedForm>> forms = new EnumMap<>(Parameter.class);
        for (String[] row : Table.read(table, '|', COLUMNS)) {
            Parameter parameter = Parameter.named(row[0]);
            PrintedForm form = new PrintedForm(parameter, ReportForm.valueOf(Parameter.constant(row[1])), row[2],
                    row[4].isEmpty() ? parameter : Parameter.named(row[4]),
                    row[3].isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(row[3])));
            form.factor();
            forms.computeIfAbsent(parameter, key -> new ArrayList<>()).add(form);
        }
        forms.replaceAll((parameter, list) -> List.copyOf(list));
        return Collections.unmodifiableMap(forms);
    }

    /** Every form of a parameter, the one that is calculated with first. */
    public static List<PrintedForm> of(Parameter parameter) {
        return ALL.get(parameter);
    }

    /** The form of a parameter in a unit; where none is named, the one that the unit itself or the use of laboratories means. */
    public static Optional<PrintedForm> of(Parameter parameter, ReportForm named, ReportUnit unit) {
        List<PrintedForm> forms = of(parameter);
        return named == null ? forms.stream().filter(form -> form.isMeantBy(unit)).findFirst().or(() -> forms.stream().findFirst()
                .filter(form -> form.takes(unit)))
                : forms.stream().filter(form -> form.form() == named && form.takes(unit)).findFirst();
    }

    /** A degree and a grain are counted as calcium carbonate; millimoles of alkalinity are those of the acid. */
    private boolean isMeantBy(ReportUnit unit) {
        return unit.kind() == ReportUnit.Kind.CALCIUM_CARBONATE && form == ReportForm.AS_CALCIUM_CARBONATE
                || unit.kind() == ReportUnit.Kind.AMOUNT && form == ReportForm.ACID_CAPACITY;
    }

    /** Whether a value of this form can be in a unit. */
    public boolean takes(ReportUnit unit) {
        return switch (unit.kind()) {
            case MASS -> parameter.unit().kind() == ReportUnit.Kind.MASS && form != ReportForm.ACID_CAPACITY;
            case AMOUNT -> isSubstance();
            case CHARGE -> equivalents.isPresent();
            case CALCIUM_CARBONATE -> form == ReportForm.AS_CALCIUM_CARBONATE;
            default -> unit.kind() == parameter.unit().kind();
        };
    }

    /** Whether more than one form is usual in print, so that a value without a label may mean either. */
    public static boolean isAmbiguous(Parameter parameter, ReportUnit unit) {
        return unit.kind() == ReportUnit.Kind.MASS && of(parameter).stream().filter(form -> form.takes(unit)).count() > 1
                && !NAMED_BY_THEMSELVES.contains(parameter);
    }

    /** A printed value in the unit and form that is calculated with. */
    public double normalised(double value, ReportUnit unit) {
        double base = unit.toBase(value);
        return switch (unit.kind()) {
            case AMOUNT -> base * MolarMass.grams(printed()) / MolarMass.moles(printed()) * factor();
            case CHARGE -> base * MolarMass.grams(printed()) / equivalents.orElseThrow() * factor();
            default -> base * factor();
        };
    }

    /** By what a mass of the printed substance is multiplied. */
    public double factor() {
        String[] parts = expression.split("/", -1);
        return parts.length == 1 ? Double.parseDouble(expression)
                : isSubstance() ? MolarMass.grams(parts[0]) / MolarMass.grams(parts[1])
                : Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
    }

    private boolean isSubstance() {
        return expression.chars().anyMatch(Character::isLetter);
    }

    private String printed() {
        return expression.substring(expression.indexOf('/') + 1);
    }
}

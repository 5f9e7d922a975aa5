// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A line chart as SVG text, to be read on light and on dark pages. Curves are labelled at their right ends.
 *
 * @param title what it shows
 * @param x the axis across
 * @param y the axis up
 * @param curves the curves, each with a label of its own
 * @param crossMeaning what a cross at the foot of the chart means
 */
record LineChart(String title, Axis x, Axis y, List<Curve> curves, String crossMeaning) {

    private static final int WIDTH = 860;
    private static final int HEIGHT = 480;
    private static final int LEFT = 64;
    private static final int RIGHT = 620;
    private static final int TOP = 48;
    private static final int BOTTOM = 410;
    private static final int LABEL_GAP = 20;
    private static final int CROSS_GAP = 14;

    /** An axis from one number to another, with a tick each step. */
    record Axis(String label, double from, double to, double step) {

        double share(double value) {
            return (value - from) / (to - from);
        }
    }

    /**
     * A curve.
     *
     * @param dashes the SVG dash pattern, or none for a full line
     * @param points pairs of x and y, from left to right
     * @param crosses places along x that have no point, to be marked
     */
    record Curve(String label, String colour, String dashes, List<double[]> points, List<Double> crosses) {
    }

    String svg() {
        StringBuilder out = new StringBuilder();
        line(out, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\" role=\"img\""
                + " font-family=\"sans-serif\" font-size=\"13\" fill=\"#222222\">", WIDTH, HEIGHT, WIDTH, HEIGHT);
        line(out, "<title>%s</title>", title);
        line(out, "<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>", WIDTH, HEIGHT);
        line(out, "<text x=\"%d\" y=\"26\" font-size=\"16\" font-weight=\"bold\">%s</text>", LEFT, title);
        axes(out);
        curves.forEach(curve -> curve(out, curve));
        labels(out);
        crosses(out);
        return out.append("</svg>\n").toString();
    }

    private void axes(StringBuilder out) {
        for (double tick = x.from(); tick <= x.to(); tick += x.step()) {
            line(out, "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%.0f</text>", across(tick), BOTTOM + 20, tick);
            line(out, "<path d=\"M%.1f %d V%d\" stroke=\"#222222\"/>", across(tick), BOTTOM, BOTTOM + 5);
        }
        for (double tick = y.from(); tick <= y.to(); tick += y.step()) {
            line(out, "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%.0f</text>", LEFT - 10, up(tick) + 4, tick);
            line(out, "<path d=\"M%d %.1f H%d\" stroke=\"#dddddd\"/>", LEFT, up(tick), RIGHT);
        }
        line(out, "<path d=\"M%d %d V%d H%d\" fill=\"none\" stroke=\"#222222\"/>", LEFT, TOP, BOTTOM, RIGHT);
        line(out, "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">%s</text>", (LEFT + RIGHT) / 2, BOTTOM + 46, x.label());
        line(out, "<text transform=\"translate(20 %d) rotate(-90)\" text-anchor=\"middle\">%s</text>", (TOP + BOTTOM) / 2,
                y.label());
    }

    private void curve(StringBuilder out, Curve curve) {
        line(out, "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2.2\" stroke-dasharray=\"%s\"/>",
                curve.points().stream().map(point -> String.format(Locale.ROOT, "%.1f,%.1f", across(point[0]), up(point[1])))
                        .collect(Collectors.joining(" ")), curve.colour(), curve.dashes());
    }

    /** Beside the ends of the curves, pushed down where two would overlap. */
    private void labels(StringBuilder out) {
        List<Curve> fromTop = new ArrayList<>(curves);
        fromTop.sort(Comparator.comparingDouble(curve -> up(last(curve)[1])));
        double free = TOP;
        for (Curve curve : fromTop) {
            double end = up(last(curve)[1]);
            double at = Math.max(end, free);
            line(out, "<path d=\"M%.1f %.1f L%d %.1f\" stroke=\"%s\"/>", across(last(curve)[0]) + 2, end, RIGHT + 18, at,
                    curve.colour());
            line(out, "<text x=\"%d\" y=\"%.1f\" fill=\"%s\">%s</text>", RIGHT + 22, at + 4, curve.colour(), curve.label());
            free = at + LABEL_GAP;
        }
    }

    private void crosses(StringBuilder out) {
        List<Curve> marked = curves.stream().filter(curve -> !curve.crosses().isEmpty()).toList();
        for (int row = 0; row < marked.size(); row++) {
            int height = BOTTOM - 10 - CROSS_GAP * row;
            for (double place : marked.get(row).crosses()) {
                line(out, "<path d=\"M%.1f %d l8 8 m0 -8 l-8 8\" stroke=\"%s\" stroke-width=\"1.8\"/>", across(place) - 4,
                        height - 4, marked.get(row).colour());
            }
        }
        if (!marked.isEmpty()) {
            double right = marked.stream().flatMap(curve -> curve.crosses().stream()).mapToDouble(this::across).max()
                    .orElseThrow();
            line(out, "<text x=\"%.1f\" y=\"%d\">%s</text>", right + 14, BOTTOM - 10 - CROSS_GAP * (marked.size() - 1) / 2
                    + 4, crossMeaning);
        }
    }

    private static double[] last(Curve curve) {
        return curve.points().get(curve.points().size() - 1);
    }

    private double across(double value) {
        return LEFT + x.share(value) * (RIGHT - LEFT);
    }

    private double up(double value) {
        return BOTTOM - y.share(value) * (BOTTOM - TOP);
    }

    private static void line(StringBuilder out, String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}

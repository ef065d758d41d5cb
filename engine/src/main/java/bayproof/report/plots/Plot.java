package bayproof.report.plots;

import bayproof.facts.Curve;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.knowm.xchart.VectorGraphicsEncoder;
import org.knowm.xchart.VectorGraphicsEncoder.VectorGraphicsFormat;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler.LegendPosition;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * A curve as SVG: black on white, lines told apart by the marks on them and by their names, never by color. The library draws a line
 * piece by piece, which leaves nothing of dashes; so a line is drawn whole, and its marks as a series of their own.
 */
public final class Plot {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 520;
    private static final int MARK = 8;
    private static final int MARKS_ON_A_LINE = 14;
    private static final double FEW_DECADES = 1.8;
    private static final Color GRID = new Color(0xCC, 0xCC, 0xCC);
    private static final List<Marker> MARKS = List.of(SeriesMarkers.CIRCLE, SeriesMarkers.SQUARE, SeriesMarkers.TRIANGLE_UP, SeriesMarkers.CROSS,
            SeriesMarkers.DIAMOND);
    private static final BasicStroke THIN = new BasicStroke(1.4f);
    private static final BasicStroke THICK = new BasicStroke(2.8f);

    private Plot() {
    }

    /** Curves as texts by their file names. */
    public static Map<String, String> files(List<Curve> curves) {
        // Nothing is ever shown on a screen.
        System.setProperty("java.awt.headless", "true");
        Map<String, String> files = new LinkedHashMap<>();
        curves.forEach(curve -> files.put(curve.name() + ".svg", svg(curve)));
        return files;
    }

    private static String svg(Curve curve) {
        XYChart chart = new XYChartBuilder().width(WIDTH).height(HEIGHT).title(curve.title()).xAxisTitle(curve.across()).yAxisTitle(curve.up()).build();
        style(chart.getStyler(), curve);
        for (int i = 0; i < curve.lines().size(); i++) {
            Curve.Line line = curve.lines().get(i);
            if (line.x().isEmpty()) {
                continue;
            }
            XYSeries whole = chart.addSeries(line.name(), line.x(), line.y());
            whole.setMarker(SeriesMarkers.NONE).setLineColor(Color.BLACK).setLineStyle(line.total() ? THICK : THIN);
            if (!line.total()) {
                whole.setShowInLegend(false);
                marks(chart, curve, i);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            VectorGraphicsEncoder.saveVectorGraphic(chart, bytes, VectorGraphicsFormat.SVG);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    /** Marks at centers of third octaves, each line from the center after the one before; over anything but frequency at every point. */
    private static void marks(XYChart chart, Curve curve, int number) {
        Curve.Line line = curve.lines().get(number);
        List<Integer> at = IntStream.range(0, line.x().size()).filter(i -> !curve.logarithmic() || line.marked().contains(line.x().get(i))).boxed().toList();
        int step = curve.logarithmic() ? Math.max(1, (int) Math.round((double) at.size() / MARKS_ON_A_LINE)) : 1;
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (int i = number % step; i < at.size(); i += step) {
            x.add(line.x().get(at.get(i)));
            y.add(line.y().get(at.get(i)));
        }
        // A name of its own: the line has the plain one.
        XYSeries marks = chart.addSeries(line.name() + " ", x, y);
        marks.setMarker(MARKS.get(number % MARKS.size())).setMarkerColor(Color.BLACK).setLineStyle(SeriesLines.NONE);
    }

    private static double decades(Curve curve) {
        double low = curve.lines().stream().flatMap(line -> line.x().stream()).mapToDouble(Double::doubleValue).min().orElse(1);
        double high = curve.lines().stream().flatMap(line -> line.x().stream()).mapToDouble(Double::doubleValue).max().orElse(1);
        return Math.log10(high / low);
    }

    private static void style(XYStyler styler, Curve curve) {
        Font plain = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
        styler.setChartBackgroundColor(Color.WHITE);
        styler.setPlotBackgroundColor(Color.WHITE);
        styler.setPlotBorderColor(Color.BLACK);
        styler.setLegendPosition(LegendPosition.OutsideS);
        styler.setLegendBorderColor(Color.WHITE);
        styler.setLegendFont(plain);
        styler.setLegendSeriesLineLength(48);
        styler.setChartTitleBoxVisible(false);
        styler.setChartTitleFont(plain.deriveFont(Font.BOLD, 15f));
        styler.setPlotGridLinesColor(GRID);
        styler.setPlotGridLinesStroke(new BasicStroke(0.6f));
        styler.setAxisTitleFont(plain);
        styler.setAxisTickLabelsFont(plain);
        styler.setXAxisLogarithmic(curve.logarithmic());
        if (curve.logarithmic()) {
            // Over many decades the figures between them would run into each other.
            styler.setXAxisLogarithmicDecadeOnly(decades(curve) > FEW_DECADES);
            styler.setXAxisDecimalPattern("0");
        }
        styler.setXAxisTickMarkSpacingHint(60);
        styler.setYAxisTickMarkSpacingHint(40);
        styler.setMarkerSize(MARK);
        if (!Double.isNaN(curve.least())) {
            styler.setYAxisMin(curve.least());
        }
    }
}

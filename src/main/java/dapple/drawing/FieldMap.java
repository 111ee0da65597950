package dapple.drawing;

import dapple.drawing.Levels.At;
import dapple.light.zone.ZoneTarget;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The light on a plane: light is light and shade is dark, in bands of one path each, every band lying on those before it;
 * lines at the target's limits; what is shade and what lies over the ceiling, for patterns. Tones go from 0, darkest, to
 * 15, and mean the same zone on every map of a target: to 4 shade, 5 to 9 gradient, 10 and 11 basking, 12 and 13 above the
 * target, 14 and 15 over the ceiling. Without a target they change at round amounts, two to a level.
 *
 * @param bands from the darkest, which is the whole map
 * @param shade what is shade; empty where nothing is
 * @param over what lies over the ceiling; empty where nothing does
 */
public record FieldMap(List<Band> bands, Optional<String> shade, Optional<String> over, List<Line> lines) {
    /** Amounts of neighbouring tones in shade, and over the ceiling: settings of ours, no source. */
    private static final double DARKER = 1.8;

    private static final double BRIGHTER = 1.5;

    public FieldMap {
        bands = List.copyOf(bands);
        lines = List.copyOf(lines);
    }

    /**
     * Where at least so much falls.
     *
     * @param from least amount, in the quantity's unit; 0 of the first
     * @param path closed, even-odd
     */
    public record Band(int tone, double from, String path) {}

    /** Which limit a line is drawn at, or a round level among dark or light tones. */
    public enum Limit {
        SHADE,
        LOW,
        HIGH,
        CEILING,
        DIM,
        BRIGHT
    }

    /**
     * Where a limit is reached.
     *
     * @param words that stand at the line; may be empty
     * @param spots the lines, in units of the drawing
     */
    public record Line(Limit limit, double amount, String words, List<List<Spot>> spots) {
        public Line {
            spots = List.copyOf(spots);
        }

        public String path() {
            return PathText.open(spots);
        }
    }

    static FieldMap of(LightFigure light, Frame frame) {
        Drawn drawn = new Drawn(light.plane(), frame);
        return light.levels() instanceof Levels.OfTarget target
                ? drawn.map(target)
                : drawn.map((Levels.Round) light.levels());
    }

    /** What must be reached for each tone, 0 to 15; what a target has no room for is NaN. */
    static double[] levels(ZoneTarget target) {
        double[] levels = new double[16];
        double low = target.basking().low();
        double high = target.basking().high();
        for (int tone = 1; tone <= 5; tone++) {
            levels[tone] = target.shadeHigh() * Math.pow(DARKER, tone - 5.0);
        }
        double start = target.shadeHigh() > 0 ? target.shadeHigh() : low * Math.pow(DARKER, -5);
        for (int tone = 6; tone <= 10; tone++) {
            levels[tone] = start * Math.pow(low / start, (tone - 5) / 5.0);
        }
        levels[10] = low;
        levels[11] = Math.sqrt(low * high);
        levels[12] = high;
        levels[13] = Math.sqrt(high * target.ceiling());
        levels[14] = target.ceiling();
        levels[15] = target.ceiling() * BRIGHTER;
        return rising(levels);
    }

    /** What must be reached for each tone: round levels from tone 2 on, and the geometric means between them. */
    static double[] levels(Levels.Round round) {
        double[] levels = new double[16];
        Arrays.fill(levels, Double.NaN);
        int first = levels.length - 2 * round.rounds().size();
        for (int index = 0; index < round.rounds().size(); index++) {
            levels[first + 2 * index] = round.rounds().get(index).amount();
        }
        for (int tone = first + 1; tone + 1 < levels.length; tone += 2) {
            levels[tone] = Math.sqrt(levels[tone - 1] * levels[tone + 1]);
        }
        if (first < levels.length) {
            levels[first - 1] = levels[first] / BRIGHTER;
            levels[15] = levels[14] * BRIGHTER;
        }
        return levels;
    }

    /** Of equal levels the brightest tone stays, so that a limit always has the tone of the zone that begins there. */
    private static double[] rising(double[] levels) {
        double next = Double.POSITIVE_INFINITY;
        for (int tone = levels.length - 1; tone > 0; tone--) {
            if (!(levels[tone] > 0 && levels[tone] < next)) {
                levels[tone] = Double.NaN;
            } else {
                next = levels[tone];
            }
        }
        return levels;
    }

    private static final class Drawn {
        private final LitPlane plane;
        private final Frame frame;
        private final Contours contours;

        Drawn(LitPlane plane, Frame frame) {
            this.plane = plane;
            this.frame = frame;
            this.contours = plane.contours();
        }

        FieldMap map(Levels.OfTarget of) {
            ZoneTarget target = of.target();
            return plane.isKnown()
                    ? new FieldMap(
                            bands(levels(target)), shade(target), over(target.ceiling()), lines(target, of.words()))
                    : unknown();
        }

        FieldMap map(Levels.Round round) {
            if (!plane.isKnown()) {
                return unknown();
            }
            return new FieldMap(
                    bands(levels(round)),
                    Optional.empty(),
                    round.ceiling().flatMap(most -> over(most.amount())),
                    lines(round));
        }

        private static FieldMap unknown() {
            return new FieldMap(List.of(), Optional.empty(), Optional.empty(), List.of());
        }

        private List<Band> bands(double[] levels) {
            List<Band> bands = new ArrayList<>();
            bands.add(new Band(0, 0, PathText.closed(List.of(border()))));
            for (int tone = 1; tone < levels.length; tone++) {
                List<List<Spot>> outlines = Double.isNaN(levels[tone]) ? List.of() : outlines(levels[tone]);
                if (!outlines.isEmpty()) {
                    bands.add(new Band(tone, levels[tone], PathText.closed(outlines)));
                }
            }
            return bands;
        }

        /** The map without what is more than the limit of shade. */
        private Optional<String> shade(ZoneTarget target) {
            List<List<Spot>> lit = outlines(Math.nextUp(target.shadeHigh()));
            boolean isLitEverywhere =
                    contours.linesAt(Math.nextUp(target.shadeHigh())).isEmpty() && !lit.isEmpty();
            if (isLitEverywhere) {
                return Optional.empty();
            }
            List<List<Spot>> outlines = new ArrayList<>(lit);
            outlines.add(border());
            return Optional.of(PathText.closed(outlines));
        }

        private Optional<String> over(double ceiling) {
            return Optional.of(outlines(Math.nextUp(ceiling)))
                    .filter(outlines -> !outlines.isEmpty())
                    .map(PathText::closed);
        }

        private List<Line> lines(ZoneTarget target, Map<Limit, String> words) {
            double low = target.basking().low();
            double high = target.basking().high();
            Map<Limit, Double> limits = new EnumMap<>(Limit.class);
            if (target.shadeHigh() < low) {
                limits.put(Limit.SHADE, target.shadeHigh());
            }
            limits.put(Limit.LOW, low);
            if (high > low && high < target.ceiling()) {
                limits.put(Limit.HIGH, high);
            }
            limits.put(Limit.CEILING, target.ceiling());
            return limits.entrySet().stream()
                    .map(limit ->
                            line(limit.getKey(), new At(limit.getValue(), words.getOrDefault(limit.getKey(), ""))))
                    .filter(line -> !line.spots().isEmpty())
                    .toList();
        }

        /** Light lines on the darker half of the levels, dark ones on the lighter. */
        private List<Line> lines(Levels.Round round) {
            List<Line> lines = new ArrayList<>();
            int count = round.rounds().size();
            for (int index = 0; index < count; index++) {
                boolean isDim = 2 * (count - index) > Levels.Round.MOST + 1;
                lines.add(line(isDim ? Limit.DIM : Limit.BRIGHT, round.rounds().get(index)));
            }
            round.ceiling().ifPresent(most -> lines.add(line(Limit.CEILING, most)));
            return lines.stream().filter(line -> !line.spots().isEmpty()).toList();
        }

        private Line line(Limit limit, At at) {
            List<List<Spot>> spots = at.amount() > 0 ? spots(contours.linesAt(at.amount())) : List.of();
            return new Line(limit, at.amount(), at.words(), spots);
        }

        private List<List<Spot>> outlines(double level) {
            return spots(contours.at(level));
        }

        private List<List<Spot>> spots(List<List<Contours.Point>> lines) {
            return lines.stream()
                    .map(line -> line.stream()
                            .map(point -> frame.spot(plane.grid().place(point.column(), point.row())))
                            .toList())
                    .toList();
        }

        private List<Spot> border() {
            LitPlane.Grid grid = plane.grid();
            double right = grid.columns() - 1.0;
            double top = grid.rows() - 1.0;
            return List.of(
                    frame.spot(grid.place(0, 0)),
                    frame.spot(grid.place(right, 0)),
                    frame.spot(grid.place(right, top)),
                    frame.spot(grid.place(0, top)));
        }
    }
}

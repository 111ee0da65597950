package dapple.drawing;

import dapple.drawing.Grips.Shape;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An enclosure with its light, as data of SVG paths in units of 640 across. It carries its words twice: small ones for a
 * wide page, large ones for a phone, each placed so that none lies on another.
 *
 * @param isPlan whether it is seen from above, lamps on top of everything
 * @param words title and finding, for those who do not see the drawing
 * @param beside outlines of what stands before, behind, above or below the plane
 * @param cut what the plane cuts
 */
public record Drawing(
        double height,
        boolean isPlan,
        Words words,
        Optional<FieldMap> map,
        String walls,
        List<String> lids,
        List<Shape> lamps,
        List<Shape> beside,
        List<Shape> cut,
        List<String> restingPlaces,
        Layer wide,
        Layer narrow,
        Scale scale) {
    /** On 600 px and more, 12 px at least. */
    private static final double SMALL = 13;

    /** On a phone of 390 px the drawing is 358 px wide: 12 px are 21.5 units. */
    private static final double LARGE = 22;

    /** What the drawing is, and what it shows. */
    public record Words(String title, String finding) {}

    /**
     * From units to metres.
     *
     * @param left where the enclosure's left is, units
     * @param bottom where its floor is in a section, its front in a plan, units
     * @param offMetres of a section its distance from the front, of a plan its height
     */
    public record Scale(double left, double bottom, double unitsPerMetre, double offMetres) {}

    public static Drawing of(EnclosureFigure figure, CutPlane plane, Optional<LightFigure> light, Words words) {
        return of(figure, plane, light, words, Grips.NONE);
    }

    /** With parts that can be taken hold of. */
    public static Drawing of(
            EnclosureFigure figure, CutPlane plane, Optional<LightFigure> light, Words words, Grips grips) {
        Sketch sketch = new Sketch(figure, plane, light, grips);
        Lettering.Lettered wide = new Lettering(sketch, SMALL).lettered();
        Lettering.Lettered narrow = new Lettering(sketch, LARGE).lettered();
        double bottom = Math.max(sketch.height(), Math.max(wide.bottom(), narrow.bottom()) + 3);
        return new Drawing(
                bottom,
                sketch.isPlan(),
                words,
                sketch.map(),
                sketch.walls(),
                sketch.lids(),
                sketch.lampShapes(),
                sketch.beside(),
                sketch.cut(),
                sketch.restingPlaces(),
                wide.layer(),
                narrow.layer(),
                sketch.scale());
    }

    public String viewBox() {
        return String.format(Locale.ROOT, "0 0 %.0f %.0f", Frame.WIDTH, Math.ceil(height));
    }

    /** What a page calls the plane. */
    public String plane() {
        return isPlan ? "plan" : "section";
    }

    /** Whether anything can be taken hold of. */
    public boolean isHeld() {
        return Stream.of(lamps, beside, cut)
                        .flatMap(List::stream)
                        .anyMatch(shape -> shape.grip().isPresent())
                || wide.points().stream().anyMatch(dot -> dot.grip().isPresent());
    }

    public List<Layer> layers() {
        return List.of(wide, narrow);
    }
}

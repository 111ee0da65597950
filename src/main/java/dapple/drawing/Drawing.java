package dapple.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

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
        List<String> lamps,
        List<String> beside,
        List<String> cut,
        List<String> restingPlaces,
        Layer wide,
        Layer narrow) {
    /** On 600 px and more, 12 px at least. */
    private static final double SMALL = 13;

    /** On a phone of 390 px the drawing is 358 px wide: 12 px are 21.5 units. */
    private static final double LARGE = 22;

    /** What the drawing is, and what it shows. */
    public record Words(String title, String finding) {}

    public static Drawing of(EnclosureFigure figure, CutPlane plane, Optional<LightFigure> light, Words words) {
        Sketch sketch = new Sketch(figure, plane, light);
        Lettering.Lettered wide = new Lettering(sketch, SMALL).lettered(light);
        Lettering.Lettered narrow = new Lettering(sketch, LARGE).lettered(light);
        double bottom = Math.max(sketch.height(), Math.max(wide.bottom(), narrow.bottom()) + 3);
        return new Drawing(
                bottom,
                sketch.isPlan(),
                words,
                sketch.map(),
                sketch.walls(),
                sketch.lids(),
                sketch.lampPaths(),
                sketch.beside(),
                sketch.cut(),
                sketch.restingPlaces(),
                wide.layer(),
                narrow.layer());
    }

    public String viewBox() {
        return String.format(Locale.ROOT, "0 0 %.0f %.0f", Frame.WIDTH, Math.ceil(height));
    }

    public List<Layer> layers() {
        return List.of(wide, narrow);
    }
}

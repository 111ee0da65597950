package dapple.desk;

import dapple.drawing.CutPlane;
import dapple.drawing.Drawing;
import dapple.drawing.EnclosureFigure;
import dapple.drawing.EnclosureFigure.Known;
import dapple.drawing.FieldMap.Limit;
import dapple.drawing.LightFigure;
import dapple.drawing.LitPlane;
import dapple.drawing.Plan;
import dapple.drawing.Section;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.light.cover.Filter.Rectangle;
import dapple.light.geometry.Vec;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.light.zone.ZoneTarget;
import dapple.prediction.EnclosureScene;
import dapple.prediction.Lately;
import dapple.prediction.LightInside;
import dapple.prediction.LightInside.Planes;
import dapple.prediction.Predicted;
import dapple.prediction.SpeciesNeed;
import dapple.reading.JudgedReading;
import dapple.rig.Cover;
import dapple.rig.FurnitureFacts;
import dapple.site.Formats;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Draws enclosures with their light, and remembers the drawings as long as nothing on them changes. */
@Component
public class LightDrawings {
    private static final int MOST = 200;

    private final Lately<Sheet, Drawn> lately = new Lately<>(MOST);
    private final Formats formats;
    private final MessageSource messages;

    LightDrawings(Formats formats, MessageSource messages) {
        this.formats = formats;
        this.messages = messages;
    }

    /** A section from the front and a plan. */
    public record Drawn(Drawing section, Drawing plan) {}

    /**
     * All that drawings follow from.
     *
     * @param planes one and the same as long as the light is
     */
    private record Sheet(
            EnclosureFigure figure, EnclosureScene.Cut cut, Quantity quantity, Optional<Planes> planes, Optional<ZoneTarget> target) {
        Drawn drawn(LightDrawings by) {
            return new Drawn(
                    by.drawing(this, new Section(cut.depthMetres()), planes.map(Planes::section)),
                    by.drawing(this, new Plan(cut.heightMetres()), planes.map(Planes::plan)));
        }
    }

    /** The UV index; empty without the enclosure's size. */
    public Optional<Drawn> of(EnclosureScene scene, LightInside light, Newest newest) {
        return of(scene, new Shown(Quantity.UV_INDEX, light, light.planes()), newest);
    }

    /** One quantity; empty without the enclosure's size. */
    Optional<Drawn> of(EnclosureScene scene, Shown shown, Newest newest) {
        return scene.size().map(size -> {
            Sheet sheet = new Sheet(
                    figure(scene, size, shown, newest),
                    scene.cut(size),
                    shown.quantity(),
                    shown.planes(),
                    scene.shown().flatMap(need -> need.zones(shown.quantity())));
            return lately.get(sheet, () -> sheet.drawn(this));
        });
    }

    /**
     * The quantity that is drawn.
     *
     * @param planes it on the planes that are drawn; empty: not predicted
     */
    record Shown(Quantity quantity, LightInside light, Optional<Planes> planes) {
        Optional<Predicted> at(PointFacts point) {
            return light.at(point, quantity);
        }
    }

    private EnclosureFigure figure(EnclosureScene scene, InnerSize size, Shown shown, Newest newest) {
        Rectangle whole = new Rectangle(0, 0, size.widthMetres(), size.depthMetres());
        return new EnclosureFigure(
                new Vec(size.widthMetres(), size.depthMetres(), size.heightMetres()),
                scene.rig().rig().covers().stream()
                        .flatMap(facts -> lid(facts.cover(), whole).stream())
                        .toList(),
                scene.rig().scene().lamps().stream()
                        .map(lamp -> new EnclosureFigure.Lamp(lamp.id(), lamp.centre(), lamp.aim(), lamp.source()))
                        .toList(),
                scene.rig().rig().furniture().stream()
                        .map(FurnitureFacts::furniture)
                        .map(item -> item.shape().solid())
                        .toList(),
                scene.rig().restingSurfaces(size),
                scene.points().stream()
                        .filter(point -> point.role() != PointRole.KEEPER)
                        .flatMap(point -> mark(point, shown, newest).stream())
                        .toList());
    }

    private static Optional<EnclosureFigure.Lid> lid(Cover cover, Rectangle whole) {
        return cover.heightMetres()
                .map(height -> new EnclosureFigure.Lid(height, cover.over().orElse(whole)));
    }

    private Optional<EnclosureFigure.Point> mark(PointFacts point, Shown shown, Newest newest) {
        return point.position()
                .map(at -> new Vec(at.xMetres(), at.yMetres(), at.zMetres()))
                .map(place -> newest.at(point, shown.quantity())
                        .map(reading -> measured(point, place, reading))
                        .or(() ->
                                shown.at(point).map(predicted -> predicted(point, place, shown.quantity(), predicted)))
                        .orElseGet(() ->
                                new EnclosureFigure.Point(point.code(), place, Known.UNKNOWN, "?", Optional.empty())));
    }

    private EnclosureFigure.Point measured(PointFacts point, Vec place, JudgedReading reading) {
        return new EnclosureFigure.Point(
                point.code(), place, Known.MEASURED, formats.amount(reading.quantity(), reading.amount()), reading.state());
    }

    private EnclosureFigure.Point predicted(
            PointFacts point, Vec place, Quantity quantity, Predicted predicted) {
        return new EnclosureFigure.Point(
                point.code(), place, Known.PREDICTED, formats.predicted(quantity, predicted.amount()), Optional.empty());
    }

    private Drawing drawing(Sheet sheet, CutPlane plane, Optional<LitPlane> lit) {
        Optional<LightFigure> light =
                lit.flatMap(field -> sheet.target().map(target -> new LightFigure(field, target, labels(sheet.quantity(), target))));
        String kind = plane instanceof Plan ? "plan" : "section";
        double metres =
                plane instanceof Plan ? sheet.cut().heightMetres() : sheet.cut().depthMetres();
        Drawing.Words words = new Drawing.Words(
                say("light." + kind, formats.metres(metres)),
                say(
                        words(sheet.quantity(), light.isPresent()),
                        say("quantity." + sheet.quantity())));
        return Drawing.of(sheet.figure(), plane, light, words);
    }

    private static String words(Quantity quantity, boolean isLit) {
        if (!isLit) {
            return "light.drawn.unlit";
        }
        return quantity == Quantity.UV_INDEX ? "light.drawn" : "light.drawn.quantity";
    }

    private Map<Limit, String> labels(Quantity quantity, ZoneTarget target) {
        return Map.of(
                Limit.SHADE, formats.limit(quantity, target.shadeHigh()),
                Limit.LOW, formats.limit(quantity, target.basking().low()),
                Limit.HIGH, formats.limit(quantity, target.basking().high()),
                Limit.CEILING, say("gauge.ceiling", formats.limit(quantity, target.ceiling())));
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }
}

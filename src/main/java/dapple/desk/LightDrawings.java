package dapple.desk;

import dapple.drawing.CutPlane;
import dapple.drawing.Drawing;
import dapple.drawing.EnclosureFigure;
import dapple.drawing.EnclosureFigure.Known;
import dapple.drawing.FieldMap.Limit;
import dapple.drawing.Grips;
import dapple.drawing.Levels;
import dapple.drawing.LightFigure;
import dapple.drawing.LitPlane;
import dapple.drawing.Plan;
import dapple.drawing.Section;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.light.cover.Filter.Rectangle;
import dapple.light.geometry.Vec;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.zone.ZoneTarget;
import dapple.prediction.EnclosureScene;
import dapple.prediction.Lately;
import dapple.prediction.LightInside;
import dapple.prediction.LightInside.Planes;
import dapple.prediction.Predicted;
import dapple.reading.JudgedReading;
import dapple.rig.Cover;
import dapple.rig.FurnitureFacts;
import dapple.site.Formats;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Draws enclosures with their light, and remembers the drawings as long as nothing on them changes. */
@Component
public class LightDrawings {
    private static final int MOST = 200;

    /** A ratio from 0.8 to 1.25 counts as about the same: it is within what a hand-held meter can tell (ours, no source). */
    private static final ZoneTarget RATIO = new ZoneTarget(new Interval(0.8, 1.25), 0.5, 2);

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
            EnclosureFigure figure,
            EnclosureScene.Cut cut,
            Quantity quantity,
            Optional<Planes> planes,
            Optional<ZoneTarget> target,
            Optional<Double> ceiling,
            Grips grips) {
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
    public Optional<Drawn> of(EnclosureScene scene, Shown shown, Newest newest) {
        return sheet(scene, shown, newest, Grips.NONE).map(sheet -> lately.get(sheet, () -> sheet.drawn(this)));
    }

    /** The same with parts that can be taken hold of. It is not remembered: they are moved all the time. */
    Optional<Drawn> held(EnclosureScene scene, Shown shown, Newest newest, Grips grips) {
        return sheet(scene, shown, newest, grips).map(sheet -> sheet.drawn(this));
    }

    private Optional<Sheet> sheet(EnclosureScene scene, Shown shown, Newest newest, Grips grips) {
        Quantity quantity = shown.quantity();
        return scene.size()
                .map(size -> new Sheet(
                        figure(scene, size, shown, newest),
                        scene.cut(size),
                        quantity,
                        shown.planes(),
                        scene.shown().flatMap(need -> need.zones(quantity)),
                        scene.shown()
                                .flatMap(need -> need.limits(quantity))
                                .filter(Limits::hasCeiling)
                                .map(Limits::ceiling),
                        grips));
    }

    /**
     * The quantity that is drawn.
     *
     * @param planes it on the planes that are drawn; empty: not predicted
     */
    public record Shown(Quantity quantity, LightInside light, Optional<Planes> planes) {
        Optional<Predicted> at(PointFacts point) {
            return light.at(point, quantity);
        }
    }

    /**
     * What another rig gives, over what a first one does, on the section: below a half, about the same, above the double.
     * The words at the lines say it; shares and limits are settings of ours, no source.
     */
    Optional<Drawing> difference(EnclosureScene scene, Planes after, Planes before, Quantity quantity) {
        Shown unlit =
                new Shown(quantity, new LightInside(Map.of(), Optional.empty(), Optional.empty()), Optional.empty());
        return scene.size()
                .filter(size -> after.cut().equals(before.cut()))
                .map(size -> Drawing.of(
                        figure(scene, size, unlit, new Newest(List.of())).withoutPoints(),
                        new Section(after.cut().depthMetres()),
                        Optional.of(new LightFigure(
                                after.section().over(before.section(), least(quantity)), RATIO, ratioLabels())),
                        new Drawing.Words(say("desk.difference"), say("desk.difference.drawn"))));
    }

    /** Below it both count as dark: a meter shows no more (ours). */
    private static double least(Quantity quantity) {
        return quantity == Quantity.UV_INDEX ? 0.05 : 1;
    }

    private Map<Limit, String> ratioLabels() {
        return Map.of(
                Limit.SHADE, say("desk.ratio.half"),
                Limit.LOW, say("desk.ratio.less"),
                Limit.HIGH, say("desk.ratio.more"),
                Limit.CEILING, say("desk.ratio.double"));
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
                point.code(),
                place,
                Known.MEASURED,
                formats.amount(reading.quantity(), reading.amount()),
                reading.state());
    }

    private EnclosureFigure.Point predicted(PointFacts point, Vec place, Quantity quantity, Predicted predicted) {
        return new EnclosureFigure.Point(
                point.code(),
                place,
                Known.PREDICTED,
                formats.predicted(quantity, predicted.amount()),
                Optional.empty());
    }

    private Drawing drawing(Sheet sheet, CutPlane plane, Optional<LitPlane> lit) {
        Optional<LightFigure> light = lit.map(field -> new LightFigure(field, levels(sheet, field)));
        String kind = plane instanceof Plan ? "plan" : "section";
        double metres =
                plane instanceof Plan ? sheet.cut().heightMetres() : sheet.cut().depthMetres();
        Drawing.Words words =
                new Drawing.Words(say("light." + kind, formats.metres(metres)), finding(sheet, light.isPresent()));
        return Drawing.of(sheet.figure(), plane, light, words, sheet.grips());
    }

    private String finding(Sheet sheet, boolean isLit) {
        if (!isLit) {
            return say("light.drawn.unlit");
        }
        if (sheet.quantity() == Quantity.UV_INDEX && sheet.target().isPresent()) {
            return say("light.drawn");
        }
        String quantity = say("quantity." + sheet.quantity());
        return sheet.target().isPresent()
                ? say("light.drawn.quantity", quantity)
                : say("light.drawn.round", quantity, sheet.quantity().unit());
    }

    private Levels levels(Sheet sheet, LitPlane field) {
        Quantity quantity = sheet.quantity();
        return sheet.target()
                .<Levels>map(target -> new Levels.OfTarget(target, labels(quantity, target)))
                .orElseGet(() -> Levels.Round.on(field, sheet.ceiling(), formats::round));
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

package dapple.overview;

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
class LightDrawings {
    private static final int MOST = 200;

    private final Lately<Sheet, Drawn> lately = new Lately<>(MOST);
    private final Formats formats;
    private final MessageSource messages;

    LightDrawings(Formats formats, MessageSource messages) {
        this.formats = formats;
        this.messages = messages;
    }

    /** A section from the front and a plan. */
    record Drawn(Drawing section, Drawing plan) {}

    /**
     * All that drawings follow from.
     *
     * @param planes one and the same as long as the light is
     */
    private record Sheet(
            EnclosureFigure figure, EnclosureScene.Cut cut, Optional<Planes> planes, Optional<ZoneTarget> target) {
        Drawn drawn(LightDrawings by) {
            return new Drawn(
                    by.drawing(this, new Section(cut.depthMetres()), planes.map(Planes::section)),
                    by.drawing(this, new Plan(cut.heightMetres()), planes.map(Planes::plan)));
        }
    }

    /** Empty without the enclosure's size. */
    Optional<Drawn> of(EnclosureScene scene, LightInside light, Newest newest) {
        return scene.size().map(size -> {
            Sheet sheet = new Sheet(
                    figure(scene, size, light, newest),
                    scene.cut(size),
                    light.planes(),
                    scene.shown().flatMap(SpeciesNeed::zones));
            return lately.get(sheet, () -> sheet.drawn(this));
        });
    }

    private EnclosureFigure figure(EnclosureScene scene, InnerSize size, LightInside light, Newest newest) {
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
                        .flatMap(point -> mark(point, light, newest).stream())
                        .toList());
    }

    private static Optional<EnclosureFigure.Lid> lid(Cover cover, Rectangle whole) {
        return cover.heightMetres()
                .map(height -> new EnclosureFigure.Lid(height, cover.over().orElse(whole)));
    }

    private Optional<EnclosureFigure.Point> mark(PointFacts point, LightInside light, Newest newest) {
        return point.position()
                .map(at -> new Vec(at.xMetres(), at.yMetres(), at.zMetres()))
                .map(place -> newest.at(point, Quantity.UV_INDEX)
                        .map(reading -> measured(point, place, reading))
                        .or(() ->
                                light.at(point, Quantity.UV_INDEX).map(predicted -> predicted(point, place, predicted)))
                        .orElseGet(() ->
                                new EnclosureFigure.Point(point.code(), place, Known.UNKNOWN, "?", Optional.empty())));
    }

    private EnclosureFigure.Point measured(PointFacts point, Vec place, JudgedReading reading) {
        return new EnclosureFigure.Point(
                point.code(), place, Known.MEASURED, formats.uvi(reading.amount()), reading.state());
    }

    private EnclosureFigure.Point predicted(PointFacts point, Vec place, Predicted predicted) {
        return new EnclosureFigure.Point(
                point.code(), place, Known.PREDICTED, formats.uvi(predicted.amount()), Optional.empty());
    }

    private Drawing drawing(Sheet sheet, CutPlane plane, Optional<LitPlane> lit) {
        Optional<LightFigure> light =
                lit.flatMap(field -> sheet.target().map(target -> new LightFigure(field, target, labels(target))));
        String kind = plane instanceof Plan ? "plan" : "section";
        double metres =
                plane instanceof Plan ? sheet.cut().heightMetres() : sheet.cut().depthMetres();
        Drawing.Words words = new Drawing.Words(
                say("light." + kind, formats.metres(metres)),
                say(light.isPresent() ? "light.drawn" : "light.drawn.unlit"));
        return Drawing.of(sheet.figure(), plane, light, words);
    }

    private Map<Limit, String> labels(ZoneTarget target) {
        return Map.of(
                Limit.SHADE, formats.limit(target.shadeHigh()),
                Limit.LOW, formats.limit(target.basking().low()),
                Limit.HIGH, formats.limit(target.basking().high()),
                Limit.CEILING, say("gauge.ceiling", formats.limit(target.ceiling())));
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }
}

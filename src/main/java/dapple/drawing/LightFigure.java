package dapple.drawing;

import dapple.light.zone.ZoneTarget;
import java.util.Map;

/** The light that fills a drawing. */
public record LightFigure(LitPlane plane, Levels levels) {
    /**
     * With lines at the limits of a target.
     *
     * @param labels what stands at the line of each limit
     */
    public LightFigure(LitPlane plane, ZoneTarget target, Map<FieldMap.Limit, String> labels) {
        this(plane, new Levels.OfTarget(target, labels));
    }
}

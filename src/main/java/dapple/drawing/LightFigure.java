package dapple.drawing;

import dapple.light.zone.ZoneTarget;
import java.util.Map;

/**
 * The light that fills a drawing.
 *
 * @param labels what stands at the line of each limit
 */
public record LightFigure(LitPlane plane, ZoneTarget target, Map<FieldMap.Limit, String> labels) {
    public LightFigure {
        labels = Map.copyOf(labels);
    }
}

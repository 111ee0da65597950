package dapple.desk;

import dapple.drawing.Drawing;
import java.util.List;
import java.util.Optional;

/**
 * Two or three rigs of one enclosure side by side.
 *
 * @param points each with what every rig gives there, in the order of the rigs
 */
public record Comparison(List<Side> sides, List<PointRow> points) {
    /**
     * One rig.
     *
     * @param name of the draft; empty: what hangs now
     * @param draftId empty: what hangs now
     * @param difference against the first rig, on the section; empty for the first itself, or where one is not predicted
     */
    public record Side(
            Optional<String> name, Optional<Long> draftId, Look look, TargetLine line, Optional<Drawing> difference) {}

    /** One point under each rig. */
    public record PointRow(AtPoint first, List<AtPoint> each) {}
}

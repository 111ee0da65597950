package dapple.overview;

import dapple.drawing.StripHistory;
import dapple.rig.RigChangeFacts;
import java.util.List;

/**
 * How the UV index at a point went.
 *
 * @param changes of the rig in that time, newest first
 */
record Course(StripHistory history, List<RigChangeFacts> changes) {
    Course {
        changes = List.copyOf(changes);
    }
}

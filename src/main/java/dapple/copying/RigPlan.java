package dapple.copying;

import dapple.rig.Hanging;
import java.util.List;
import java.util.Set;

/**
 * What hangs and stands in each copy.
 *
 * @param lamps where lamps hang and of which model
 * @param tags of lamps that are taken, in small letters; grows with those that are made
 */
record RigPlan(CopyEntry entry, CopyPlan plan, Original original, List<Place> lamps, Set<String> tags) {
    /** Where a lamp of a model hangs. */
    record Place(long modelId, Hanging hanging) {}
}

package dapple.prediction;

import dapple.enclosure.EnclosureFacts;
import dapple.people.SignedIn;
import dapple.rig.Rig;

/**
 * Whose rig a form is about, and who asks.
 *
 * @param lastRecorded the change that was recorded last, 0 if there is none
 */
record RigPlace(SignedIn me, EnclosureFacts enclosure, Rig rig, long lastRecorded) {}

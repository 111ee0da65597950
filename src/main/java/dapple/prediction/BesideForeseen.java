package dapple.prediction;

import dapple.people.SignedIn;
import dapple.rig.Rig;
import java.util.Map;

/** What a later feature says of a change of a rig, beside its light, before it is made. */
public interface BesideForeseen {
    /**
     * What it says, by the names under which the page knows it.
     *
     * @param then the rig as it would be
     */
    Map<String, Object> say(SignedIn me, long enclosureId, Rig then);
}

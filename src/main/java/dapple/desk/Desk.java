package dapple.desk;

import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.Stock;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.rig.RigScene;
import java.time.Instant;

/**
 * One enclosure on the desk.
 *
 * @param installed with what hangs there now
 */
record Desk(SignedIn me, EnclosureScene installed, Stock stock, Instant now) {
    long enclosureId() {
        return installed.enclosure().id();
    }

    DraftPlace place() {
        return new DraftPlace(me.siteId(), enclosureId());
    }

    /** The same enclosure under a draft. */
    EnclosureScene under(DraftRig rig) {
        return installed.under(RigScene.of(rig.rig(enclosureId(), stock, now)));
    }
}

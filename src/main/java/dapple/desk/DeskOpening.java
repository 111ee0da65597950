package dapple.desk;

import dapple.draft.Drafts;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScenes;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Lays an enclosure on the desk. */
@Component
class DeskOpening {
    private final EnclosureScenes scenes;
    private final Drafts drafts;
    private final Clock clock;

    DeskOpening(EnclosureScenes scenes, Drafts drafts, Clock clock) {
        this.scenes = scenes;
        this.drafts = drafts;
        this.clock = clock;
    }

    Desk of(SignedIn me, long enclosureId) {
        Instant now = clock.instant();
        return new Desk(
                me,
                scenes.at(me.siteId(), enclosureId, now, Optional.empty(), Optional.empty()),
                drafts.stock(me.siteId()),
                now);
    }
}

package dapple.desk;

import dapple.draft.DraftPlace;
import dapple.draft.Drafts;
import dapple.draft.Stock;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScenes;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Lays an enclosure on the desk. */
@Component
class DeskOpening {
    private static final Duration FRESH = Duration.ofSeconds(2);
    private static final int KEPT = 30;

    private final EnclosureScenes scenes;
    private final Drafts drafts;
    private final Clock clock;

    private final Map<DraftPlace, Desk> lately = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<DraftPlace, Desk> eldest) {
            return size() > KEPT;
        }
    };

    DeskOpening(EnclosureScenes scenes, Drafts drafts, Clock clock) {
        this.scenes = scenes;
        this.drafts = drafts;
        this.clock = clock;
    }

    Desk of(SignedIn me, long enclosureId) {
        Instant now = clock.instant();
        Stock stock = drafts.stock(me.siteId());
        Desk desk = new Desk(me, scenes.at(me.siteId(), enclosureId, now, stock.lamps()), stock, now);
        synchronized (lately) {
            lately.put(desk.place(), desk);
        }
        return desk;
    }

    /**
     * The same as it was at most two seconds ago, while somebody drags something: enclosure, animals and stock are not read
     * anew for each look, of which nothing is stored.
     */
    Desk lately(SignedIn me, long enclosureId) {
        Optional<Desk> kept;
        synchronized (lately) {
            kept = Optional.ofNullable(lately.get(new DraftPlace(me.siteId(), enclosureId)));
        }
        Instant now = clock.instant();
        return kept.filter(desk -> Duration.between(desk.now(), now).compareTo(FRESH) < 0)
                .map(desk -> new Desk(me, desk.installed(), desk.stock(), desk.now()))
                .orElseGet(() -> of(me, enclosureId));
    }
}

package dapple.animal;

import dapple.enclosure.EnclosureLeavesUse;
import dapple.enclosure.LivedInException;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Keeps enclosures in use while animals live in them: none is lost from Today and Review. */
@Component
class LivedIn {
    private final StayRepository stays;

    LivedIn(StayRepository stays) {
        this.stays = stays;
    }

    @EventListener
    void refuse(EnclosureLeavesUse leaving) {
        if (!stays.inEnclosureAt(leaving.siteId(), leaving.enclosureId(), leaving.at())
                .isEmpty()) {
            throw new LivedInException();
        }
    }
}

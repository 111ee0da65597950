package dapple.rig;

import dapple.site.NotFoundException;
import org.springframework.stereotype.Component;

/** Puts, moves and removes furniture, within the transaction of a change. */
@Component
class FurnitureChanges {
    private final FurnitureItemRepository furniture;

    FurnitureChanges(FurnitureItemRepository furniture) {
        this.furniture = furniture;
    }

    void make(RigChange change, FurnitureStep step) {
        if (step instanceof FurnitureStep.Put put) {
            begin(change, put.furniture());
        } else if (step instanceof FurnitureStep.Move move) {
            end(change, move.furnitureId());
            begin(change, move.furniture());
        } else if (step instanceof FurnitureStep.Remove remove) {
            end(change, remove.furnitureId());
        }
    }

    void begin(RigChange change, Furniture item) {
        furniture.save(new FurnitureItem(change, item));
    }

    private void end(RigChange change, long furnitureId) {
        furniture
                .find(change.siteId(), change.enclosureId(), furnitureId)
                .orElseThrow(NotFoundException::new)
                .end(change);
    }
}

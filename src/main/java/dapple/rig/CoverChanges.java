package dapple.rig;

import dapple.site.NotFoundException;
import org.springframework.stereotype.Component;

/** Puts, replaces and takes off cover, within the transaction of a change. */
@Component
class CoverChanges {
    private final CoverItemRepository covers;

    CoverChanges(CoverItemRepository covers) {
        this.covers = covers;
    }

    void make(RigChange change, CoverStep step) {
        if (step instanceof CoverStep.Put put) {
            begin(change, put.cover());
        } else if (step instanceof CoverStep.Replace replace) {
            ended(change, replace.coverId());
            begin(change, replace.cover());
        } else if (step instanceof CoverStep.SetLayers layered) {
            CoverItem before = ended(change, layered.coverId());
            begin(change, before.cover().withLayers(layered.layers()));
        } else if (step instanceof CoverStep.TakeOff takeOff) {
            ended(change, takeOff.coverId());
        }
    }

    void begin(RigChange change, Cover cover) {
        covers.save(new CoverItem(change, cover));
    }

    private CoverItem ended(RigChange change, long coverId) {
        CoverItem cover =
                covers.find(change.siteId(), change.enclosureId(), coverId).orElseThrow(NotFoundException::new);
        cover.end(change);
        return cover;
    }
}

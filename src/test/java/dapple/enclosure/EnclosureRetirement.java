package dapple.enclosure;

import org.springframework.boot.test.context.TestComponent;

/** Lets tests of other features take enclosures out of use. */
@TestComponent
public class EnclosureRetirement {
    private final EnclosureArranging enclosures;

    EnclosureRetirement(EnclosureArranging enclosures) {
        this.enclosures = enclosures;
    }

    public void retire(long siteId, long enclosureId) {
        enclosures.retire(siteId, enclosureId);
    }
}

package dapple.commissioning;

import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What was accepted, by whom and why. */
@Service
public class Accepted {
    private final CommissioningRepository commissionings;

    Accepted(CommissioningRepository commissionings) {
        this.commissionings = commissionings;
    }

    /** That the rig which a change made is accepted, if it is. */
    @Transactional(readOnly = true)
    public Optional<CommissioningFacts> ofChange(long siteId, long changeId) {
        return commissionings.ofChange(siteId, changeId).map(ByName::facts);
    }

    /** The same with the readings that it was accepted on. */
    @Transactional(readOnly = true)
    public Optional<AcceptanceOnRecord> onRecord(long siteId, long changeId) {
        return commissionings
                .ofChange(siteId, changeId)
                .map(found -> found.onRecord(
                        commissionings.readingsOf(found.commissioning().id())));
    }

    /** The enclosure that an entry was made for, if it was. */
    @Transactional(readOnly = true)
    Optional<Long> enclosureOf(long siteId, UUID key) {
        return commissionings.enclosureOf(siteId, key);
    }
}

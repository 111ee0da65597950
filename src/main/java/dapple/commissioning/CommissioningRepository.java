package dapple.commissioning;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** What was accepted is added, never changed. */
interface CommissioningRepository extends Repository<Commissioning, Long> {
    Commissioning saveAndFlush(Commissioning commissioning);

    @Query("select c.enclosureId from Commissioning c where c.siteId = :siteId and c.entryKey = :key")
    Optional<Long> enclosureOf(long siteId, UUID key);

    /** Of the rig that a change made, whether it was read or came of the acceptance. */
    @Query("select c from Commissioning c left join fetch c.factors where c.siteId = :siteId "
            + "and (c.rigChangeId = :changeId or c.resultChangeId = :changeId)")
    Optional<Commissioning> ofChange(long siteId, long changeId);
}

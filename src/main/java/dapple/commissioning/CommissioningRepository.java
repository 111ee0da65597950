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

    /** Whether the rig that a change made is accepted. */
    boolean existsBySiteIdAndRigChangeId(long siteId, long rigChangeId);

    /** Of the rig that a change made, whether it was read or came of the acceptance. */
    @Query(
            "select new dapple.commissioning.ByName(c, p.name) from Commissioning c join Person p on p.id = c.acceptedBy "
                    + "where c.siteId = :siteId "
                    + "and (c.rigChangeId = :changeId or c.resultChangeId = :changeId)")
    Optional<ByName> ofChange(long siteId, long changeId);
}

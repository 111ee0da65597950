package dapple.commissioning;

import java.util.List;
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

    /** What somebody had read before accepting, by point and as it was taken. */
    @Query("""
            select new dapple.commissioning.AcceptanceOnRecord$OnReading(r.id, p.code, r.quantity, r.amount, r.takenAt, m.code)
            from Commissioning c join c.readings i join Reading r on r.id = i join MeasuringPoint p on p.id = r.pointId
            join Meter m on m.id = r.meterId where c.id = :id order by p.code, r.takenAt, r.id""")
    List<AcceptanceOnRecord.OnReading> readingsOf(long id);
}

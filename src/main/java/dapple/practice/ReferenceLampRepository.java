package dapple.practice;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ReferenceLampRepository extends Repository<ReferenceLamp, Long> {
    ReferenceLamp saveAndFlush(ReferenceLamp lamp);

    boolean existsByEntryKey(UUID entryKey);

    @Query("select l from ReferenceLamp l where l.siteId = :siteId and l.openMeterId = :meterId")
    Optional<ReferenceLamp> inUse(long siteId, long meterId);
}

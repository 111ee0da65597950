package dapple.photo;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface PhotoRepository extends Repository<Photo, Long> {
    Photo saveAndFlush(Photo photo);

    Optional<Photo> findByEntryKey(UUID key);

    @Query("select count(p) from Photo p where p.visitId = :visitId and p.removedAt is null")
    long countOf(long visitId);

    @Query("select p from Photo p where p.siteId = :siteId and p.visitId = :visitId order by p.id")
    List<Photo> ofVisit(long siteId, long visitId, Limit limit);

    @Query("""
            select p from Photo p where p.siteId = :siteId and p.enclosureId = :enclosureId and p.removedAt is null
            order by p.id desc""")
    List<Photo> newest(long siteId, long enclosureId, Limit limit);

    @Query("select p from Photo p where p.siteId = :siteId and p.id = :id")
    Optional<Photo> findAtSite(long siteId, long id);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select p from Photo p where p.siteId = :siteId and p.id = :id")
    Optional<Photo> lockAtSite(long siteId, long id);
}

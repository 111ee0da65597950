package dapple.reading;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface VisitNoteRepository extends Repository<VisitNote, Long> {
    VisitNote saveAndFlush(VisitNote note);

    Optional<VisitNote> findByEntryKey(UUID key);

    @Query("""
            select n from VisitNote n join Visit v on v.id = n.visitId
            where n.siteId = :siteId and v.entryKey = :visitKey order by n.id""")
    List<VisitNote> ofVisit(long siteId, UUID visitKey, Limit limit);
}

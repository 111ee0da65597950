package dapple.reading;

import jakarta.persistence.LockModeType;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface VisitRepository extends Repository<Visit, Long> {
    Visit saveAndFlush(Visit visit);

    /** The visit, locked until the end of the transaction: its readings are judged together, one writer at a time. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select v from Visit v where v.entryKey = :key")
    Optional<Visit> lockByKey(UUID key);
}

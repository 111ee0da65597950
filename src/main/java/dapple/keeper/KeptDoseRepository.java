package dapple.keeper;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface KeptDoseRepository extends Repository<KeptDose, Long> {
    KeptDose saveAndFlush(KeptDose dose);

    boolean existsByEntryKey(UUID entryKey);

    @Query("select d from KeptDose d where d.personId = :personId and d.takenAt >= :from order by d.takenAt, d.id")
    List<KeptDose> ofPerson(long personId, Instant from);

    @Modifying
    @Query("delete from KeptDose d where d.personId = :personId")
    int eraseOf(long personId);
}

package dapple.animal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface AnimalEventRepository extends JpaRepository<AnimalEvent, Long> {
    @Query("""
            select e from AnimalEvent e where e.siteId = :siteId and e.animalId in :animalIds
            order by e.at, e.id""")
    List<AnimalEvent> of(long siteId, Collection<Long> animalIds);

    Optional<AnimalEvent> findByEntryKey(UUID entryKey);

    boolean existsByEntryKey(UUID entryKey);
}

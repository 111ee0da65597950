package dapple.target;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface SpeciesRepository extends JpaRepository<Species, Long> {
    @Query("select s from Species s where s.siteId = :siteId")
    List<Species> all(long siteId);

    @Query("select s from Species s where s.siteId = :siteId and s.id = :id")
    Optional<Species> findAtSite(long siteId, long id);
}

package dapple.lamp;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface OwnOutputRepository extends JpaRepository<OwnOutput, Long> {
    @Query("select o from OwnOutput o where o.siteId = :siteId and o.standingLampId is not null order by o.id")
    List<OwnOutput> standing(long siteId);

    @Query("select o from OwnOutput o where o.siteId = :siteId and o.standingLampId = :lampId order by o.id")
    List<OwnOutput> standing(long siteId, long lampId);

    @Query(
            "select o from OwnOutput o where o.siteId = :siteId and o.lampId = :lampId order by o.measuredAt desc, o.id desc")
    List<OwnOutput> newestFirst(long siteId, long lampId);

    @Query("select o from OwnOutput o where o.siteId = :siteId and o.lampId = :lampId and o.id = :id")
    Optional<OwnOutput> find(long siteId, long lampId, long id);
}

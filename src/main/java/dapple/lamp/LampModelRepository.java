package dapple.lamp;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface LampModelRepository extends JpaRepository<LampModel, Long> {
    @Query("select m from LampModel m where m.siteId = :siteId and m.id = :id")
    Optional<LampModel> findAtSite(long siteId, long id);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select m from LampModel m where m.siteId = :siteId and m.id = :id")
    Optional<LampModel> lockAtSite(long siteId, long id);

    /** Each as often as its outputs. */
    @Query("select new dapple.lamp.StatedModel(m, o, s.id, s.source, s.recordedAt, s.recordedBy, s.figures) "
            + "from LampModel m left join LampModelOutput o on o.lampModelId = m.id "
            + "left join FiledSpectrum s on s.id = m.spectrumId where m.siteId = :siteId order by m.id, o.id")
    List<StatedModel> all(long siteId);

    @Query(
            "select count(m) > 0 from LampModel m where m.siteId = :siteId and lower(m.name) = lower(:name) and m.id <> :except")
    boolean isTaken(long siteId, String name, long except);
}

package dapple.lamp;

import dapple.lamp.StatedModel.OwnedLamp;
import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface LampRepository extends JpaRepository<Lamp, Long> {
    @Query("select l from Lamp l where l.siteId = :siteId and l.id = :id")
    Optional<Lamp> findAtSite(long siteId, long id);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select l from Lamp l where l.siteId = :siteId and l.id = :id")
    Optional<Lamp> lockAtSite(long siteId, long id);

    /** Each as often as its own outputs. */
    @Query("select new dapple.lamp.StatedModel$OwnedLamp(l, u) from Lamp l "
            + "left join OwnOutput u on u.standingLampId = l.id where l.siteId = :siteId order by l.id, u.id")
    List<OwnedLamp> all(long siteId);

    /** Each as often as its model's outputs times its own. */
    @Query("select new dapple.lamp.HungLamp("
            + "l, m, o, u, s.id, s.source, s.recordedAt, s.recordedBy, s.figures) "
            + "from Lamp l join LampModel m on m.id = l.lampModelId "
            + "left join LampModelOutput o on o.lampModelId = m.id left join OwnOutput u on u.standingLampId = l.id "
            + "left join FiledSpectrum s on s.id = m.spectrumId "
            + "where l.siteId = :siteId and l.id in :ids order by l.id, o.id, u.id")
    List<HungLamp> some(long siteId, Collection<Long> ids);

    @Query("select l from Lamp l where l.siteId = :siteId and l.lampModelId = :modelId order by l.id")
    List<Lamp> ofModel(long siteId, long modelId);

    @Query(
            "select count(l) > 0 from Lamp l where l.siteId = :siteId and lower(l.tag) = lower(:tag) and l.id <> :except")
    boolean isTaken(long siteId, String tag, long except);
}

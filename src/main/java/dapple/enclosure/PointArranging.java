package dapple.enclosure;

import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.time.Clock;
import java.util.List;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Enters the measuring points of an enclosure, changes them, retires them and takes them back. */
@Service
class PointArranging {
    private static final long NONE = 0;

    private final EnclosureRepository enclosures;
    private final MeasuringPointRepository points;
    private final Clock clock;

    PointArranging(EnclosureRepository enclosures, MeasuringPointRepository points, Clock clock) {
        this.enclosures = enclosures;
        this.points = points;
        this.clock = clock;
    }

    /** The points that an enclosure has or had, in the order of a visit. */
    @Transactional(readOnly = true)
    public List<PointDetails> all(long siteId, long enclosureId) {
        return points.ofEnclosure(siteId, enclosureId).stream()
                .map(MeasuringPoint::details)
                .toList();
    }

    @Transactional(readOnly = true)
    public PointDetails get(long siteId, long enclosureId, long pointId) {
        return find(siteId, enclosureId, pointId).details();
    }

    /**
     * Enters a point.
     *
     * @throws TakenException if the enclosure has a point with this code, in use or retired
     */
    @Transactional
    public void add(long siteId, long enclosureId, PointChange added) {
        if (enclosures.findFacts(siteId, enclosureId).isEmpty()) {
            throw new NotFoundException();
        }
        checkIsFree(enclosureId, added.point().code(), NONE);
        store(new MeasuringPoint(siteId, enclosureId, added.point(), added.walkingOrder()));
    }

    /**
     * Changes what is said of a point.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the point since
     * @throws TakenException if the enclosure has another point with this code
     */
    @Transactional
    public void change(long siteId, PointFacts at, long version, PointChange change) {
        MeasuringPoint point = find(siteId, at.enclosureId(), at.id());
        if (point.details().version() != version) {
            throw new ObjectOptimisticLockingFailureException(MeasuringPoint.class, at.id());
        }
        checkIsFree(at.enclosureId(), change.point().code(), at.id());
        point.describe(change.point(), change.walkingOrder());
        store(point);
    }

    /** No visit asks for it any more; what was read there stays. */
    @Transactional
    public void retire(long siteId, long enclosureId, long pointId) {
        find(siteId, enclosureId, pointId).retire(clock.instant());
    }

    @Transactional
    public void returnToUse(long siteId, long enclosureId, long pointId) {
        find(siteId, enclosureId, pointId).returnToUse();
    }

    private MeasuringPoint find(long siteId, long enclosureId, long pointId) {
        return points.findInEnclosure(siteId, enclosureId, pointId).orElseThrow(NotFoundException::new);
    }

    private void checkIsFree(long enclosureId, String code, long except) {
        if (points.isTaken(enclosureId, code, except)) {
            throw new TakenException("the enclosure has a point with this code");
        }
    }

    /** Of two who enter one code in the same moment, the constraint of the database stops the second. */
    private void store(MeasuringPoint point) {
        try {
            points.saveAndFlush(point);
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the enclosure has a point with this code by now");
        }
    }
}

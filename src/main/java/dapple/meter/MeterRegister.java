package dapple.meter;

import dapple.light.quantity.Quantity;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Enters the meters of a site, changes them, takes them out of use and back into it. */
@Service
public class MeterRegister {
    private static final long NONE = 0;
    private static final Comparator<MeterDetails> IN_USE_FIRST = Comparator.comparing(MeterDetails::isInUse)
            .reversed()
            .thenComparing(meter -> meter.facts().code(), String.CASE_INSENSITIVE_ORDER);

    private final MeterRepository meters;
    private final Clock clock;

    MeterRegister(MeterRepository meters, Clock clock) {
        this.meters = meters;
        this.clock = clock;
    }

    /** All meters that a site has or had, those in use first, by their codes. */
    @Transactional(readOnly = true)
    public List<MeterDetails> all(long siteId) {
        return meters.all(siteId).stream()
                .map(Meter::details)
                .sorted(IN_USE_FIRST)
                .toList();
    }

    @Transactional(readOnly = true)
    public MeterDetails get(long siteId, long meterId) {
        return find(siteId, meterId).details();
    }

    /**
     * Enters a meter.
     *
     * @return its id
     * @throws TakenException if the site has a meter with this code, in use or not
     */
    @Transactional
    public long add(long siteId, Quantity quantity, MeterChange added) {
        checkIsFree(siteId, added.code(), NONE);
        return store(new Meter(siteId, quantity, added));
    }

    /**
     * Changes what is said of a meter.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the meter since
     * @throws TakenException if the site has another meter with this code
     */
    @Transactional
    public void change(long siteId, long meterId, long version, MeterChange change) {
        Meter meter = find(siteId, meterId);
        if (meter.details().version() != version) {
            throw new ObjectOptimisticLockingFailureException(Meter.class, meterId);
        }
        checkIsFree(siteId, change.code(), meterId);
        meter.become(change);
        store(meter);
    }

    /** No visit offers it any more; what was read with it stays. */
    @Transactional
    public void retire(long siteId, long meterId) {
        find(siteId, meterId).retire(clock.instant());
    }

    @Transactional
    public void returnToUse(long siteId, long meterId) {
        find(siteId, meterId).returnToUse();
    }

    private Meter find(long siteId, long meterId) {
        return meters.findAtSite(siteId, meterId).orElseThrow(NotFoundException::new);
    }

    private void checkIsFree(long siteId, String code, long except) {
        if (meters.isTaken(siteId, code, except)) {
            throw new TakenException("the site has a meter with this code");
        }
    }

    /** Of two who enter one code in the same moment, the constraint of the database stops the second. */
    private long store(Meter meter) {
        try {
            return meters.saveAndFlush(meter).id();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has a meter with this code by now");
        }
    }
}

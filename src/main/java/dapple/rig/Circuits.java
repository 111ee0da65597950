package dapple.rig;

import dapple.enclosure.Enclosures;
import dapple.rig.CircuitRepository.Load;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The circuits of a site. */
@Service
public class Circuits {
    private static final long NONE = 0;

    private final CircuitRepository circuits;
    private final Enclosures enclosures;

    Circuits(CircuitRepository circuits, Enclosures enclosures) {
        this.circuits = circuits;
        this.enclosures = enclosures;
    }

    /**
     * Enters a circuit.
     *
     * @param roomId the room that it serves; empty for the whole site
     * @throws TakenException if the site has a circuit of this name
     */
    @Transactional
    public CircuitFacts add(long siteId, Optional<Long> roomId, String name) {
        check(siteId, roomId, name, NONE);
        return store(new Circuit(siteId, roomId, name));
    }

    /**
     * Renames a circuit or says which room it serves.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the circuit since
     * @throws TakenException if the site has another circuit of this name
     */
    @Transactional
    void change(long siteId, long circuitId, long version, CircuitChange change) {
        Circuit circuit = find(siteId, circuitId);
        if (circuit.details().version() != version) {
            throw new ObjectOptimisticLockingFailureException(Circuit.class, circuitId);
        }
        check(siteId, change.roomId(), change.name(), circuitId);
        circuit.become(change.roomId(), change.name());
        store(circuit);
    }

    private void check(long siteId, Optional<Long> roomId, String name, long except) {
        roomId.ifPresent(room -> enclosures.room(siteId, room));
        if (circuits.isTaken(siteId, name, except)) {
            throw new TakenException("the site has a circuit of this name");
        }
    }

    /** Of two who enter one name in the same moment, the constraint of the database stops the second. */
    private CircuitFacts store(Circuit circuit) {
        try {
            return circuits.saveAndFlush(circuit).facts();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has a circuit of this name by now");
        }
    }

    @Transactional(readOnly = true)
    public List<CircuitFacts> all(long siteId) {
        return circuits.all(siteId).stream().map(Circuit::facts).toList();
    }

    /** How many lamps hang on each circuit now; one that feeds none is missing. */
    @Transactional(readOnly = true)
    public Map<Long, Long> lampsOn(long siteId) {
        return circuits.loads(siteId).stream().collect(Collectors.toMap(Load::circuitId, Load::lamps));
    }

    @Transactional(readOnly = true)
    CircuitDetails get(long siteId, long circuitId) {
        return find(siteId, circuitId).details();
    }

    private Circuit find(long siteId, long circuitId) {
        return circuits.findAtSite(siteId, circuitId).orElseThrow(NotFoundException::new);
    }
}

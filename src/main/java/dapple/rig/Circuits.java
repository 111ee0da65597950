package dapple.rig;

import dapple.enclosure.Enclosures;
import dapple.site.TakenException;
import java.util.List;
import java.util.Optional;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The circuits of a site. */
@Service
public class Circuits {
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
        roomId.ifPresent(room -> enclosures.room(siteId, room));
        if (circuits.isTaken(siteId, name)) {
            throw new TakenException("the site has a circuit of this name");
        }
        try {
            return circuits.saveAndFlush(new Circuit(siteId, roomId, name)).facts();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has a circuit of this name by now");
        }
    }

    @Transactional(readOnly = true)
    public List<CircuitFacts> all(long siteId) {
        return circuits.all(siteId).stream().map(Circuit::facts).toList();
    }
}

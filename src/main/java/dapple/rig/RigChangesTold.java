package dapple.rig;

import dapple.enclosure.EnclosureFacts;
import dapple.site.CsvColumns;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What was done to the rigs of a site, for whatever file it leaves in. */
@Service
public class RigChangesTold {
    private final Rigs rigs;
    private final RigLog log;

    RigChangesTold(Rigs rigs, RigLog log) {
        this.rigs = rigs;
        this.log = log;
    }

    /** Over [from, to), oldest first. */
    @Transactional(readOnly = true)
    public List<RigChangeTold> between(long siteId, Collection<Long> enclosureIds, Instant from, Instant to) {
        List<RigChangeFacts> changes = rigs.changes(siteId, enclosureIds, from, to);
        PartsTouched parts = log.parts(siteId, changes);
        return changes.stream().map(change -> RigChangeTold.of(change, parts)).toList();
    }

    /**
     * The columns of changes.
     *
     * @param places enclosures by id
     * @param names of people, by id
     */
    public static CsvColumns<RigChangeTold> columns(Map<Long, EnclosureFacts> places, Map<Long, String> names) {
        return CsvColumns.<RigChangeTold>none()
                .with("room", told -> place(told, places).map(EnclosureFacts::room))
                .with("enclosure", told -> place(told, places).map(EnclosureFacts::code))
                .with("at", told -> told.change().at())
                .word("what", "rig-change.", told -> told.change().kind())
                .with("came", RigChangeTold::came)
                .with("went", RigChangeTold::went)
                .with("changed", RigChangeTold::changed)
                .with("note", told -> told.change().note())
                .with("recorded-at", told -> told.change().recordedAt())
                .with(
                        "recorded-by",
                        told -> Optional.ofNullable(names.get(told.change().recordedBy())));
    }

    private static Optional<EnclosureFacts> place(RigChangeTold told, Map<Long, EnclosureFacts> places) {
        return Optional.ofNullable(places.get(told.change().enclosureId()));
    }
}

package dapple.rig;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.site.Given;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What hung and stood in the enclosures of a site, at any instant, and how that changed. */
@Service
public class Rigs {
    /** Rows on one page of changes. */
    public static final int PAGE = 20;

    private final RigChangeRepository changes;
    private final FittingRepository fittings;
    private final CoverItemRepository covers;
    private final FurnitureItemRepository furniture;
    private final Lamps lamps;
    private final Enclosures enclosures;
    private final Clock clock;

    Rigs(
            RigChangeRepository changes,
            FittingRepository fittings,
            CoverItemRepository covers,
            FurnitureItemRepository furniture,
            Lamps lamps,
            Enclosures enclosures,
            Clock clock) {
        this.changes = changes;
        this.fittings = fittings;
        this.covers = covers;
        this.furniture = furniture;
        this.lamps = lamps;
        this.enclosures = enclosures;
        this.clock = clock;
    }

    /** The rig of an enclosure at an instant, as it is known now. */
    @Transactional(readOnly = true)
    public Rig at(long siteId, long enclosureId, Instant at) {
        return in(siteId, enclosures.get(siteId, enclosureId), at);
    }

    /** The same of an enclosure of the site that is at hand. */
    @Transactional(readOnly = true)
    public Rig in(long siteId, EnclosureFacts enclosure, Instant at) {
        List<Fitting> hanging = fittings.inEnclosure(siteId, enclosure.id(), at);
        return rig(
                siteId,
                enclosure.id(),
                at,
                hanging,
                lamps.byId(siteId, hanging.stream().map(Fitting::lampId).toList()));
    }

    /** The same, where all lamps of the site are at hand. */
    @Transactional(readOnly = true)
    public Rig in(long siteId, EnclosureFacts enclosure, Instant at, Map<Long, LampFacts> byId) {
        return rig(siteId, enclosure.id(), at, fittings.inEnclosure(siteId, enclosure.id(), at), byId);
    }

    private Rig rig(long siteId, long enclosureId, Instant at, List<Fitting> hanging, Map<Long, LampFacts> byId) {
        List<RigChangeFacts> newest = changes.newestUntil(siteId, enclosureId, at).stream()
                .map(RigChange::facts)
                .toList();
        return new Rig(
                enclosureId,
                newest.stream().findFirst(),
                newest.stream().filter(RigChangeFacts::isOfLight).findFirst(),
                hanging.stream().map(fitting -> facts(fitting, byId)).toList(),
                covers.inEnclosure(siteId, enclosureId, at).stream()
                        .map(CoverItem::facts)
                        .toList(),
                furniture.inEnclosure(siteId, enclosureId, at).stream()
                        .map(FurnitureItem::facts)
                        .toList());
    }

    /** The present rigs of all enclosures that have or had one, by enclosure. */
    @Transactional(readOnly = true)
    public Map<Long, Rig> nowAtSite(long siteId) {
        Instant now = clock.instant();
        Map<Long, LampFacts> byId = lamps.byId(siteId);
        Map<Long, RigChangeFacts> newest = lastChanges(siteId);
        Map<Long, List<FittingFacts>> hanging = fittings.atSite(siteId, now).stream()
                .map(fitting -> facts(fitting, byId))
                .collect(Collectors.groupingBy(FittingFacts::enclosureId));
        Map<Long, List<CoverFacts>> covering = covers.atSite(siteId, now).stream()
                .map(CoverItem::facts)
                .collect(Collectors.groupingBy(CoverFacts::enclosureId));
        Map<Long, List<FurnitureFacts>> standing = furniture.atSite(siteId, now).stream()
                .map(FurnitureItem::facts)
                .collect(Collectors.groupingBy(FurnitureFacts::enclosureId));
        return newest.keySet().stream()
                .collect(Collectors.toMap(
                        Function.identity(),
                        enclosure -> new Rig(
                                enclosure,
                                Optional.ofNullable(newest.get(enclosure)),
                                hanging.getOrDefault(enclosure, List.of()),
                                covering.getOrDefault(enclosure, List.of()),
                                standing.getOrDefault(enclosure, List.of()))));
    }

    private static FittingFacts facts(Fitting fitting, Map<Long, LampFacts> lamps) {
        return fitting.facts(Given.of(lamps.get(fitting.lampId())));
    }

    /**
     * The changes of an enclosure, newest first.
     *
     * @param page from 0, each of {@link #PAGE} rows
     */
    @Transactional(readOnly = true)
    public List<RigChangeFacts> changes(long siteId, long enclosureId, int page) {
        return changes.newestFirst(siteId, enclosureId, PageRequest.of(page, PAGE)).stream()
                .map(RigChange::facts)
                .toList();
    }

    /** The changes of some enclosures over [from, to), oldest first. */
    @Transactional(readOnly = true)
    public List<RigChangeFacts> changes(long siteId, Collection<Long> enclosureIds, Instant from, Instant to) {
        return enclosureIds.isEmpty()
                ? List.of()
                : changes.ofEnclosures(siteId, enclosureIds, from, to).stream()
                        .map(RigChange::facts)
                        .toList();
    }

    /** The lamps that hung in some enclosures at any time in [from, to), oldest first. */
    @Transactional(readOnly = true)
    public List<FittedLamp> lamps(long siteId, Collection<Long> enclosureIds, Instant from, Instant to) {
        return enclosureIds.isEmpty() ? List.of() : fittings.ofEnclosures(siteId, enclosureIds, from, to);
    }

    @Transactional(readOnly = true)
    public long changeCount(long siteId, long enclosureId) {
        return changes.count(siteId, enclosureId);
    }

    /** The rig of an enclosure at an instant, by its newest change then; none before the first was recorded. */
    @Transactional(readOnly = true)
    public Optional<Long> idAt(long siteId, long enclosureId, Instant at) {
        return changes.until(siteId, enclosureId, at, Limit.of(1)).stream()
                .findFirst()
                .map(change -> change.facts().id());
    }

    /** When a rig changed. */
    @Transactional(readOnly = true)
    public List<Instant> turns(long siteId, long enclosureId) {
        return changes.turns(siteId, enclosureId);
    }

    /** The newest change of an enclosure that a reading can tell: of a timer alone it cannot. */
    @Transactional(readOnly = true)
    public Optional<RigChangeFacts> lastLightChange(long siteId, long enclosureId) {
        return changes.ofLight(siteId, enclosureId, Limit.of(1)).stream()
                .findFirst()
                .map(RigChange::facts);
    }

    /** The same of a present rig that is at hand: asked for only where it does not know it. */
    @Transactional(readOnly = true)
    public Optional<RigChangeFacts> lastLightChange(long siteId, Rig rig) {
        return rig.newestOfLight().or(() -> rig.newest().flatMap(timer -> lastLightChange(siteId, rig.enclosureId())));
    }

    /** The same of each enclosure that has any. */
    @Transactional(readOnly = true)
    public Map<Long, RigChangeFacts> lastLightChanges(long siteId) {
        return byEnclosure(changes.newestOfLightAtSite(siteId));
    }

    /** The newest change of each enclosure that has any. */
    @Transactional(readOnly = true)
    public Map<Long, RigChangeFacts> lastChanges(long siteId) {
        return byEnclosure(changes.newestAtSite(siteId));
    }

    private static Map<Long, RigChangeFacts> byEnclosure(List<RigChange> newest) {
        return newest.stream()
                .map(RigChange::facts)
                .collect(Collectors.toMap(RigChangeFacts::enclosureId, Function.identity()));
    }

    /** The change of an enclosure that was recorded last, whenever it happened; 0 if there is none. For forms. */
    @Transactional(readOnly = true)
    public long lastRecorded(long siteId, long enclosureId) {
        return changes.lastRecorded(siteId, enclosureId).orElse(0L);
    }

    /** The enclosure that each lamp hangs in now, by lamp; a lamp in store is not there. */
    @Transactional(readOnly = true)
    public Map<Long, Long> whereLampsHang(long siteId) {
        return fittings.openAtSite(siteId).stream().collect(Collectors.toMap(Fitting::lampId, Fitting::enclosureId));
    }
}

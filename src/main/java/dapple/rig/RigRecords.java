package dapple.rig;

import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.site.Given;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What hung and stood in an enclosure at an instant, with who said so and when. */
@Service
public class RigRecords {
    private final RigChangeRepository changes;
    private final FittingRepository fittings;
    private final CoverItemRepository covers;
    private final FurnitureItemRepository furniture;
    private final Lamps lamps;

    RigRecords(
            RigChangeRepository changes,
            FittingRepository fittings,
            CoverItemRepository covers,
            FurnitureItemRepository furniture,
            Lamps lamps) {
        this.changes = changes;
        this.fittings = fittings;
        this.covers = covers;
        this.furniture = furniture;
        this.lamps = lamps;
    }

    @Transactional(readOnly = true)
    public RigOnRecord at(long siteId, long enclosureId, Instant at) {
        Parts parts = new Parts(
                fittings.onRecord(siteId, enclosureId, at),
                covers.onRecord(siteId, enclosureId, at),
                furniture.onRecord(siteId, enclosureId, at));
        Map<Long, LampFacts> byId = lamps.byId(siteId);
        Optional<RigChangeFacts> newest = changes.until(siteId, enclosureId, at, Limit.of(1)).stream()
                .map(RigChange::facts)
                .findFirst();
        return new RigOnRecord(
                rig(enclosureId, newest, parts.only(part -> part.span().holds(at)), byId),
                rig(enclosureId, Optional.empty(), parts.only(part -> wasSaidToHold(part.span(), at)), byId),
                parts.changes());
    }

    /** The newest change at or before an instant that a reading can tell: the id of it names the rig that could be read. */
    @Transactional(readOnly = true)
    public Optional<RigChangeFacts> lastLightChange(long siteId, long enclosureId, Instant at) {
        return changes.ofLightUntil(siteId, enclosureId, at, Limit.of(1)).stream()
                .findFirst()
                .map(RigChange::facts);
    }

    private static boolean wasSaidToHold(Span span, Instant at) {
        return !span.holds(at) && !span.begunRecordedAt().isAfter(at);
    }

    private static Rig rig(
            long enclosureId, Optional<RigChangeFacts> newest, Parts parts, Map<Long, LampFacts> lampsById) {
        return new Rig(
                enclosureId,
                newest,
                parts.fittings().stream()
                        .map(fitting -> fitting.facts(Given.of(lampsById.get(fitting.lampId()))))
                        .toList(),
                parts.covers().stream().map(CoverItem::facts).toList(),
                parts.furniture().stream().map(FurnitureItem::facts).toList());
    }

    private record Parts(List<Fitting> fittings, List<CoverItem> covers, List<FurnitureItem> furniture) {
        Parts only(Predicate<DatedPart> wanted) {
            return new Parts(
                    fittings.stream().filter(wanted).toList(),
                    covers.stream().filter(wanted).toList(),
                    furniture.stream().filter(wanted).toList());
        }

        Map<Long, RigChangeFacts> changes() {
            return Stream.of(fittings, covers, furniture)
                    .flatMap(List::stream)
                    .flatMap(DatedPart::changes)
                    .distinct()
                    .map(RigChange::facts)
                    .collect(Collectors.toMap(RigChangeFacts::id, Function.identity()));
        }
    }
}

package dapple.site;

import dapple.site.HistoryEntry.Kind;
import jakarta.persistence.EntityManager;
import jakarta.persistence.ManyToOne;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hibernate.envers.AuditReaderFactory;
import org.hibernate.envers.query.AuditEntity;
import org.hibernate.envers.query.AuditQuery;
import org.hibernate.envers.query.criteria.AuditCriterion;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who changed an audited thing, when, and what: one statement for the thing and one for each kind of part or set. */
@Service
public class History {
    /** Changes on a page. */
    static final int PAGE_SIZE = 50;

    private static final int LAST_PAGE = 1_000_000;

    private final EntityManager entities;
    private final SetHistory sets;

    History(EntityManager entities, SetHistory sets) {
        this.entities = entities;
        this.sets = sets;
    }

    /**
     * A page of a thing's history; nothing secret is in it, as nothing secret is audited.
     *
     * @param page from 1
     */
    @Transactional(readOnly = true)
    public HistoryPage of(AuditedThing thing, int page) {
        int number = Math.min(Math.max(page, 1), LAST_PAGE);
        int until = number * PAGE_SIZE;
        List<List<Told>> revisions = revisions(thing, ofThing(thing).setMaxResults(until + 1));
        Stream<List<Told>> shown =
                revisions.stream().skip((long) until - PAGE_SIZE).limit(PAGE_SIZE);
        return new HistoryPage(entries(thing, shown), number, revisions.size() > until);
    }

    /** All of a thing's history, newest first. */
    @Transactional(readOnly = true)
    public List<HistoryEntry> all(AuditedThing thing) {
        return entries(thing, revisions(thing, ofThing(thing)).stream());
    }

    private List<List<Told>> revisions(AuditedThing thing, AuditQuery ofThing) {
        return byRevision(Stream.concat(
                told(states(ofThing)),
                thing.parts().stream()
                        .flatMap(part -> told(states(ofPart(thing, part))).map(told -> told.without(part.owner())))));
    }

    private List<HistoryEntry> entries(AuditedThing thing, Stream<List<Told>> revisions) {
        Map<Long, List<FieldChange>> ofSets = sets.of(thing);
        return revisions
                .map(told -> entry(thing, told, ofSets))
                .filter(entry -> !entry.changes().isEmpty())
                .toList();
    }

    private AuditQuery ofThing(AuditedThing thing) {
        return revisionsOf(thing.entity())
                .add(AuditEntity.id().eq(thing.id()))
                .addOrder(AuditEntity.revisionNumber().desc());
    }

    private AuditQuery ofPart(AuditedThing thing, AuditedPart part) {
        return revisionsOf(part.entity())
                .add(owned(thing, part))
                .add(AuditEntity.property("siteId").eq(part.siteId()))
                .addOrder(AuditEntity.id().asc())
                .addOrder(AuditEntity.revisionNumber().desc());
    }

    /** A part names its owner as another thing, or by its id. */
    private static AuditCriterion owned(AuditedThing thing, AuditedPart part) {
        boolean named = Arrays.stream(part.entity().getDeclaredFields())
                .filter(field -> field.getName().equals(part.owner()))
                .anyMatch(field -> field.isAnnotationPresent(ManyToOne.class));
        return named
                ? AuditEntity.relatedId(part.owner()).eq(thing.id())
                : AuditEntity.property(part.owner()).eq(thing.id());
    }

    private AuditQuery revisionsOf(Class<?> entity) {
        return AuditReaderFactory.get(entities).createQuery().forRevisionsOfEntity(entity, false, true);
    }

    private List<Snapshot> states(AuditQuery query) {
        List<Snapshot> states = new ArrayList<>();
        for (Object row : query.getResultList()) {
            states.add(Snapshot.of(
                    (Object[]) row, entities.getEntityManagerFactory().getPersistenceUnitUtil()));
        }
        return states;
    }

    /** Each state with what it changed; the next older state of the same thing follows it. */
    private static Stream<Told> told(List<Snapshot> states) {
        List<Told> told = new ArrayList<>();
        for (int at = 0; at < states.size(); at++) {
            Snapshot state = states.get(at);
            Optional<Snapshot> older = states.stream().skip(at + 1L).findFirst().filter(state::isSameThing);
            told.add(new Told(state, state.changesSince(older)));
        }
        return told.stream();
    }

    private static List<List<Told>> byRevision(Stream<Told> all) {
        Map<Long, List<Told>> byRevision = new TreeMap<>(Comparator.reverseOrder());
        all.forEach(told -> byRevision
                .computeIfAbsent(told.state().revision().id(), id -> new ArrayList<>())
                .add(told));
        return List.copyOf(byRevision.values());
    }

    private static HistoryEntry entry(AuditedThing thing, List<Told> told, Map<Long, List<FieldChange>> ofSets) {
        Snapshot first = told.get(0).state();
        Kind kind = first.type().equals(thing.entity()) ? first.kind() : Kind.CHANGED;
        Stream<FieldChange> changes = told.stream().flatMap(one -> one.changes().stream());
        Stream<FieldChange> inSets = ofSets.getOrDefault(first.revision().id(), List.of()).stream()
                .map(change -> kind == Kind.ENTERED ? change.fromNothing() : change);
        return new HistoryEntry(
                first.revision().at(),
                first.revision().personId(),
                kind,
                Stream.concat(changes, inSets).distinct().toList());
    }

    private record Told(Snapshot state, List<FieldChange> changes) {
        Told without(String field) {
            return new Told(
                    state,
                    changes.stream()
                            .filter(change -> !change.field().equals(field))
                            .toList());
        }
    }
}

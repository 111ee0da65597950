package dapple.site;

import jakarta.persistence.EntityManager;
import java.beans.Introspector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernate.envers.RevisionType;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** What the sets of an audited thing held before and after each revision that changed them: one statement a set. */
@Component
class SetHistory {
    private final EntityManager entities;

    SetHistory(EntityManager entities) {
        this.entities = entities;
    }

    /** The changes by revision, field by field in the order of the thing. */
    @Transactional(propagation = Propagation.MANDATORY)
    public Map<Long, List<FieldChange>> of(AuditedThing thing) {
        Map<Long, List<FieldChange>> byRevision = new HashMap<>();
        thing.sets().stream()
                .map(AuditedSet::field)
                .distinct()
                .forEach(field -> byRevision(thing, field)
                        .forEach((revision, change) -> byRevision
                                .computeIfAbsent(revision, id -> new ArrayList<>())
                                .add(change)));
        return byRevision;
    }

    private Map<Long, FieldChange> byRevision(AuditedThing thing, String field) {
        Map<Long, List<Step>> steps = thing.sets().stream()
                .filter(set -> set.field().equals(field))
                .flatMap(set -> steps(set, thing.id()))
                .collect(Collectors.groupingBy(Step::revisionId, TreeMap::new, Collectors.toList()));
        String entity = Introspector.decapitalize(thing.entity().getSimpleName());
        Map<Long, FieldChange> changes = new HashMap<>();
        Set<HeldSet.Element> held = new HashSet<>();
        steps.forEach((revision, together) -> {
            HeldSet before = new HeldSet(held);
            together.stream().sorted(Comparator.comparing(Step::comes)).forEach(step -> step.on(held));
            changes.put(revision, new FieldChange(entity, field, Optional.of(before), Optional.of(new HeldSet(held))));
        });
        return changes;
    }

    private Stream<Step> steps(AuditedSet set, long id) {
        String rows = "select h.revision_id, h." + set.column() + ", h.revision_kind from " + set.table()
                + " h where h." + set.owner() + " = :id";
        List<?> found = entities.createNativeQuery(rows, Object[].class)
                .setParameter("id", id)
                .getResultList();
        return found.stream().map(row -> Step.of(set, (Object[]) row));
    }

    private record Step(long revisionId, HeldSet.Element element, boolean comes) {
        static Step of(AuditedSet set, Object[] row) {
            int done = ((Number) row[2]).intValue();
            return new Step(
                    ((Number) row[0]).longValue(),
                    new HeldSet.Element(set.elements(), row[1]),
                    done != RevisionType.DEL.getRepresentation());
        }

        void on(Set<HeldSet.Element> held) {
            if (comes) {
                held.add(element);
            } else {
                held.remove(element);
            }
        }
    }
}

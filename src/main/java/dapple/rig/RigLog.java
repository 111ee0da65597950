package dapple.rig;

import jakarta.persistence.EntityManager;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Which parts of a rig its changes began, changed and ended: one statement. */
@Component
class RigLog {
    private static final String OF_CHANGES =
            " p.site_id = :siteId and (p.begun_by in (:changeIds) or p.ended_by in (:changeIds)) ";
    private static final String PARTS =
            "select 'LAMP' as part, l.tag as named, 0 as layers, p.begun_by, p.ended_by, p.id"
                    + " from fitting p join lamp l on l.id = p.lamp_id where" + OF_CHANGES
                    + "union all select 'COVER', p.name, case when p.kind = 'SHEET' then 0 else p.layers end,"
                    + " p.begun_by, p.ended_by, p.id from cover_item p where" + OF_CHANGES
                    + "union all select 'FURNITURE', p.name, 0, p.begun_by, p.ended_by, p.id from furniture_item p where"
                    + OF_CHANGES + "order by 1 desc, 2, 6";

    private final EntityManager entities;

    RigLog(EntityManager entities) {
        this.entities = entities;
    }

    @Transactional(readOnly = true)
    public PartsTouched parts(long siteId, List<RigChangeFacts> changes) {
        List<Long> ids = changes.stream().map(RigChangeFacts::id).toList();
        if (ids.isEmpty()) {
            return new PartsTouched(List.of());
        }
        List<?> rows = entities.createNativeQuery(PARTS, Object[].class)
                .setParameter("siteId", siteId)
                .setParameter("changeIds", ids)
                .getResultList();
        return new PartsTouched(
                rows.stream().map(row -> PartTouched.of((Object[]) row)).toList());
    }
}

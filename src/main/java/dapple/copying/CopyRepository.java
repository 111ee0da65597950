package dapple.copying;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface CopyRepository extends JpaRepository<EnclosureCopy, Long> {
    /** What one form has made, in its order. */
    @Query("select c from EnclosureCopy c where c.siteId = :siteId and c.entryKey = :key order by c.id")
    List<EnclosureCopy> madeBy(long siteId, UUID key);
}

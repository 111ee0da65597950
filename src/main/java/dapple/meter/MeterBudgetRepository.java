package dapple.meter;

import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface MeterBudgetRepository extends Repository<MeterBudget, Long> {
    MeterBudget saveAndFlush(MeterBudget budget);

    @Query("select b from MeterBudget b where b.siteId = :siteId and b.openMeterId = :meterId")
    Optional<MeterBudget> standing(long siteId, long meterId);
}

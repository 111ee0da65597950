package dapple.meter;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface MeterBudgetRepository extends Repository<MeterBudget, Long> {
    MeterBudget saveAndFlush(MeterBudget budget);

    @Query("select b from MeterBudget b where b.siteId = :siteId and b.openMeterId = :meterId")
    Optional<MeterBudget> standing(long siteId, long meterId);

    @Query(
            "select distinct b from MeterBudget b left join fetch b.parts where b.siteId = :siteId and b.openMeterId is not null")
    List<MeterBudget> standing(long siteId);
}

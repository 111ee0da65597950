package dapple.reading;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RejudgingDueRepository extends JpaRepository<RejudgingDue, Long> {
    @Query("select d from RejudgingDue d where d.finishedAt is null order by d.id")
    List<RejudgingDue> unfinished();
}

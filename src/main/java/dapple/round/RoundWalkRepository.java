package dapple.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RoundWalkRepository extends JpaRepository<RoundWalk, Long> {
    Optional<RoundWalk> findByPlanIdAndDueOn(long planId, LocalDate dueOn);

    @Query("select w from RoundWalk w where w.planId = :planId and w.dueOn between :from and :to order by w.dueOn")
    List<RoundWalk> between(long planId, LocalDate from, LocalDate to);
}

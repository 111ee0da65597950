package dapple.lamp;

import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface LampModelOutputRepository extends JpaRepository<LampModelOutput, Long> {
    @Query("select o from LampModelOutput o where o.siteId = :siteId and o.lampModelId = :modelId order by o.id")
    List<LampModelOutput> ofModel(long siteId, long modelId);

    @Query(
            "select o from LampModelOutput o where o.siteId = :siteId and o.lampModelId = :modelId and o.output.quantity = :quantity")
    Optional<LampModelOutput> find(long siteId, long modelId, Quantity quantity);
}

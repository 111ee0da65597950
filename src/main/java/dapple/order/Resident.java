package dapple.order;

import dapple.animal.Housed;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Who lives where, and the order of a vet that is in force for it, if there is one. */
public record Resident(Housed housed, Optional<OrderFacts> order) {
    /** Of what the query names. */
    Resident(Housed housed, @Nullable VetOrder order) {
        this(housed, Optional.ofNullable(order).map(VetOrder::facts));
    }

    /** Each once, with the newest of its orders, which comes last. */
    static List<Resident> each(List<Resident> found) {
        Map<Long, Resident> byAnimal = new LinkedHashMap<>();
        found.forEach(one -> byAnimal.put(one.housed().animal().id(), one));
        return List.copyOf(byAnimal.values());
    }
}

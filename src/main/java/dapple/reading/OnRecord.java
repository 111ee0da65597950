package dapple.reading;

import dapple.light.quantity.Quantity;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** What is on record of the visits of a sheet, as far as it has been imported before. */
class OnRecord {
    private final Map<UUID, Long> visits = new HashMap<>();
    private final Map<UUID, Double> amounts = new HashMap<>();
    private final Map<Long, Set<Quantity>> quantities = new HashMap<>();

    void addVisit(UUID key, long id) {
        visits.put(key, id);
    }

    void addReading(long visitId, UUID key, Quantity quantity, double amount) {
        amounts.put(key, amount);
        quantities
                .computeIfAbsent(visitId, id -> EnumSet.noneOf(Quantity.class))
                .add(quantity);
    }

    /** Notes a reading that is about to be stored, so that it is stored once. */
    void addAmount(UUID key, double amount) {
        amounts.put(key, amount);
    }

    Optional<Long> visit(UUID key) {
        return Optional.ofNullable(visits.get(key));
    }

    Optional<Double> amount(UUID key) {
        return Optional.ofNullable(amounts.get(key));
    }

    /** Whether a quantity was read in a visit before: then what is read now is judged together with it. */
    boolean wasRead(long visitId, Quantity quantity) {
        return quantities.getOrDefault(visitId, Set.of()).contains(quantity);
    }
}

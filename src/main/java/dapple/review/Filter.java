package dapple.review;

import dapple.round.PlanNow;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which enclosures of a site are looked at; what is not named does not restrict. */
public record Filter(
        @Nullable Long room,
        @Nullable Urgency kind,
        @Nullable Long species,
        @Nullable Long person) {

    public static final Filter NONE = new Filter(null, null, null, null);

    public boolean isSet() {
        return !equals(NONE);
    }

    boolean covers(Standing standing) {
        return covers(room, standing.enclosure().roomId())
                && (species == null || standing.species().stream().anyMatch(kindOf -> kindOf.id() == species));
    }

    boolean covers(Finding finding) {
        return (kind == null || finding.urgency() == kind)
                && (person == null
                        || finding.given().flatMap(DecisionFacts::givenTo).equals(Optional.of(person)));
    }

    /** No round belongs to a species. */
    boolean covers(PlanNow round) {
        return species == null
                && (kind == null || kind == Urgency.ROUND_OVERDUE)
                && (person == null || round.givenTo().ofPerson().equals(Optional.of(person)))
                && (room == null
                        || round.walk().stream()
                                .flatMap(walk -> walk.stops().stream())
                                .anyMatch(stop -> stop.place().roomId() == room));
    }

    private static boolean covers(@Nullable Long wanted, long found) {
        return wanted == null || wanted == found;
    }
}

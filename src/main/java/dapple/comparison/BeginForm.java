package dapple.comparison;

import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.SignedIn;
import dapple.site.Given;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** Which meters are compared, and where. */
record BeginForm(
        @NotNull @Nullable UUID key,
        @Nullable List<Long> meters,
        @Nullable List<Long> points) {
    /** Fewer give no median (ours). */
    static final int LEAST_POINTS = 3;

    /** More are not read in one go (ours). */
    static final int MOST_POINTS = 40;

    static BeginForm proposed(List<MeterFacts> atHand, List<Candidate> places) {
        return new BeginForm(
                UUID.randomUUID(),
                atHand.stream().map(MeterFacts::id).toList(),
                proposal(atHand, places).stream()
                        .map(place -> place.point().id())
                        .toList());
    }

    /** The points that are proposed, whatever is ticked. */
    static List<Candidate> proposal(List<MeterFacts> meters, List<Candidate> places) {
        return Choice.of(places, coarsest(meters));
    }

    private static double coarsest(List<MeterFacts> meters) {
        return meters.stream()
                .mapToDouble(meter -> meter.uncertainty().resolution())
                .max()
                .orElse(0);
    }

    void check(List<MeterFacts> fitting, List<Candidate> places, Errors errors) {
        List<Long> known = fitting.stream().map(MeterFacts::id).toList();
        List<Long> named = chosen(meters);
        if (named.size() < 2 || !known.containsAll(named)) {
            errors.rejectValue("meters", "comparison.meters.wrong");
        }
        List<Long> where = chosen(points);
        List<Long> there = places.stream().map(place -> place.point().id()).toList();
        if (where.size() < LEAST_POINTS || where.size() > MOST_POINTS || !there.containsAll(where)) {
            errors.rejectValue("points", "comparison.points.wrong");
        }
    }

    /** In walking order, whatever the order in which they were sent. */
    NewComparison begun(SignedIn me, Quantity quantity, List<Candidate> places) {
        List<Long> where = chosen(points);
        return new NewComparison(
                me.siteId(),
                me.personId(),
                Given.of(key),
                quantity,
                chosen(meters),
                places.stream()
                        .map(place -> place.point().id())
                        .filter(where::contains)
                        .toList());
    }

    private static List<Long> chosen(@Nullable List<Long> ticked) {
        return ticked == null ? List.of() : ticked.stream().distinct().toList();
    }
}

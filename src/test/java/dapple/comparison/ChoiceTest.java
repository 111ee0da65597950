package dapple.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Facing;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ChoiceTest {
    /** Forty enclosures in four rooms, three points each: strong, middling, weak. */
    private static final List<Candidate> HOUSE = house();

    private static final double STEP = 0.01;

    @Test
    void tenPointsAreProposed() {
        assertThat(Choice.of(HOUSE, STEP)).hasSize(10);
    }

    @Test
    void eachIsInAnotherEnclosure() {
        assertThat(Choice.of(HOUSE, STEP).stream().map(Candidate::enclosureId).distinct())
                .hasSize(10);
    }

    /** Ten over four rooms: two or three in each. */
    @Test
    void theyAreSpreadOverTheRooms() {
        assertThat(Choice.of(HOUSE, STEP).stream()
                        .collect(Collectors.groupingBy(Candidate::roomId, Collectors.counting()))
                        .values())
                .hasSize(4)
                .allMatch(count -> count == 2 || count == 3);
    }

    /** One of each tenth from the weakest to the strongest light: three or four of forty weak points, as many strong ones. */
    @Test
    void weakAndStrongLightAreAmongThem() {
        List<Double> amounts = Choice.of(HOUSE, STEP).stream()
                .map(candidate -> candidate.amount().orElseThrow())
                .toList();
        assertThat(amounts.stream().filter(amount -> amount < 0.5)).hasSizeBetween(3, 4);
        assertThat(amounts.stream().filter(amount -> amount > 2)).hasSizeBetween(3, 4);
    }

    @Test
    void theSameHouseGivesTheSameProposalInWhateverOrderItIsListed() {
        List<Candidate> mixed = new ArrayList<>(HOUSE);
        Collections.shuffle(mixed, new Random(5));
        assertThat(Choice.of(mixed, STEP)).containsExactlyInAnyOrderElementsOf(Choice.of(HOUSE, STEP));
    }

    @Test
    void ofFewPointsAllAreProposed() {
        List<Candidate> few = HOUSE.subList(0, 7);
        assertThat(Choice.of(few, STEP)).containsExactlyElementsOf(few);
    }

    @Test
    void whereNothingWasReadItIsProposedLast() {
        List<Candidate> some = new ArrayList<>(HOUSE.subList(0, 9));
        some.add(candidate(900, 90, 9, Optional.empty()));
        some.addAll(HOUSE.subList(9, 12));
        assertThat(Choice.of(some, STEP))
                .noneMatch(candidate -> candidate.amount().isEmpty());
    }

    /** Of 120 points 40 show less than five steps of 0.1. */
    @Test
    void whereTheDisplayIsTooCoarseItIsProposedLast() {
        assertThat(Choice.of(HOUSE, 0.1))
                .allMatch(candidate -> candidate.amount().orElseThrow() >= 0.5);
    }

    @Test
    void whereTooFewWereReadOthersAreProposedToo() {
        List<Candidate> some = new ArrayList<>(HOUSE.subList(0, 3));
        some.add(candidate(900, 90, 9, Optional.empty()));
        assertThat(Choice.of(some, STEP)).hasSize(4);
    }

    @Test
    void nothingIsProposedOfNothing() {
        assertThat(Choice.of(List.of(), STEP)).isEmpty();
    }

    private static List<Candidate> house() {
        List<Candidate> all = new ArrayList<>();
        for (int enclosure = 0; enclosure < 40; enclosure++) {
            for (int point = 0; point < 3; point++) {
                double amount = List.of(3.0, 1.0, 0.2).get(point) * (1 + enclosure / 100.0);
                all.add(candidate(10L * enclosure + point, enclosure, enclosure / 10, Optional.of(amount)));
            }
        }
        return List.copyOf(all);
    }

    private static Candidate candidate(long id, long enclosure, long room, Optional<Double> amount) {
        PointFacts point = new PointFacts(
                id,
                enclosure,
                "P" + id,
                "a place",
                PointRole.BASKING,
                Facing.STRONGEST,
                Optional.empty(),
                List.of(Quantity.UV_INDEX),
                Set.of());
        EnclosureFacts home = new EnclosureFacts(
                enclosure, "E" + enclosure, room, "Room " + room, Optional.empty(), Optional.empty());
        return new Candidate(home, point, amount);
    }
}

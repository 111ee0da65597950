package dapple.round;

import dapple.site.CsvColumns;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The columns of walks, for whatever file they leave in. */
public final class WalkColumns {
    private WalkColumns() {}

    /**
     * All that is known of each walk.
     *
     * @param names of people, by id
     */
    public static CsvColumns<WalkFacts> of(Map<Long, String> names) {
        return CsvColumns.<WalkFacts>none()
                .with("round", walk -> walk.plan().title())
                .with("due-on", WalkFacts::dueOn)
                .word("walk-state", "round.state.", WalkFacts::state)
                .with("given-to-person", walk -> walk.givenTo().ofPerson().map(names::get))
                .word("given-to-role", "role.", walk -> walk.givenTo().ofRole())
                .with("begun-at", walk -> walk.said().begun().map(Begun::at))
                .with("begun-by", walk -> walk.said().begun().map(begun -> names.getOrDefault(begun.by(), "")))
                .with("enclosures-done", WalkFacts::doorsDone)
                .with("enclosures-to-do", WalkFacts::doors)
                .with("steps-done", WalkFacts::done)
                .with("steps-to-do", WalkFacts::all)
                .with("enclosures-left", WalkColumns::left)
                .word(
                        "not-walked-because",
                        "round.excuse.",
                        walk -> excuse(walk).map(Excuse::reason))
                .with("in-words", walk -> excuse(walk).map(Excuse::text))
                .with("said-by", walk -> excuse(walk).map(said -> names.getOrDefault(said.by(), "")))
                .with("said-at", walk -> excuse(walk).map(Excuse::at));
    }

    private static List<String> left(WalkFacts walk) {
        return walk.stops().stream()
                .filter(stop -> stop.isWalked() && !stop.isDone())
                .map(stop -> stop.place().code())
                .toList();
    }

    private static Optional<Excuse> excuse(WalkFacts walk) {
        return walk.said().excuse();
    }
}

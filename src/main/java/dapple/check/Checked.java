package dapple.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A check with what came of it.
 *
 * @param said which of its sentences says so
 * @param words what is filled into the sentence
 * @param figure the number that decided, in the unit that {@code docs/checks.md} names; empty where none did
 * @param besides the message that says what its figure supposes; empty where that goes without saying
 */
public record Checked(
        TradeCheck check,
        Outcome outcome,
        String said,
        List<String> words,
        Optional<Double> figure,
        Optional<String> besides) {
    /** What fails first, then what cannot be said; among these the graver one. */
    public static final Comparator<Checked> GRAVEST_FIRST =
            Comparator.comparing(Checked::outcome).thenComparing(Checked::check);

    public Checked {
        words = List.copyOf(words);
    }

    /** Which supposes nothing that must be said. */
    Checked(TradeCheck check, Outcome outcome, String said, List<String> words, Optional<Double> figure) {
        this(check, outcome, said, words, figure, Optional.empty());
    }

    static Checked holds(TradeCheck check, String said, String... words) {
        return new Checked(check, Outcome.HOLDS, said, List.of(words), Optional.empty());
    }

    static Checked fails(TradeCheck check, String said, String... words) {
        return new Checked(check, Outcome.FAILS, said, List.of(words), Optional.empty());
    }

    static Checked unknown(TradeCheck check, String said, String... words) {
        return new Checked(check, Outcome.UNKNOWN, said, List.of(words), Optional.empty());
    }

    /** The same, decided by a number. */
    Checked by(double number) {
        return new Checked(check, outcome, said, words, Optional.of(number), besides);
    }

    /** The same, with what it supposes. */
    Checked supposing(String message) {
        return new Checked(check, outcome, said, words, figure, Optional.of(message));
    }

    /** The message that says it. */
    public String key() {
        return "check.said." + check + "." + said;
    }

    /** What the message is filled with. */
    public Object[] arguments() {
        return words.toArray();
    }
}

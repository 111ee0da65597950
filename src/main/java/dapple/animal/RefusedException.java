package dapple.animal;

import dapple.site.ConflictException;

/** What was asked of an animal contradicts its record; nothing was stored. */
public class RefusedException extends ConflictException {
    private static final long serialVersionUID = 1;

    private final Refusal refusal;
    private final String who;
    private final int count;

    private RefusedException(Refusal refusal, String who, int count) {
        super(who + ": " + refusal);
        this.refusal = refusal;
        this.who = who;
        this.count = count;
    }

    public static RefusedException of(Refusal refusal, AnimalFacts animal) {
        return new RefusedException(refusal, animal.name(), 0);
    }

    static RefusedException ofCount(AnimalFacts animal, int countThen) {
        return new RefusedException(Refusal.COUNT, animal.name(), countThen);
    }

    public Refusal refusal() {
        return refusal;
    }

    /** The key of the sentence that says so to people. */
    public String message() {
        return "refused." + refusal;
    }

    /** What the sentence names: the animal, and how many there were. */
    public Object[] arguments() {
        return new Object[] {who, count};
    }
}

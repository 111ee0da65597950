package dapple.round;

/**
 * Why a walk is not walked, to record.
 *
 * @param text in words; may be empty unless the reason is another
 */
public record NotWalked(Excuse.Reason reason, String text) {
    boolean isSaidBy(Excuse excuse) {
        return excuse.reason() == reason && excuse.text().equals(text);
    }
}

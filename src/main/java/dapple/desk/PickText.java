package dapple.desk;

import dapple.draft.LampPick;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which lamp is meant, as the value of a field. */
final class PickText {
    private static final Pattern PICK = Pattern.compile("(lamp|model):([0-9]{1,18})");

    private PickText() {}

    static String of(LampPick pick) {
        return pick instanceof LampPick.Stock stock
                ? "lamp:" + stock.lampId()
                : "model:" + ((LampPick.Model) pick).modelId();
    }

    static Optional<LampPick> read(String text) {
        Matcher pick = PICK.matcher(text);
        if (!pick.matches()) {
            return Optional.empty();
        }
        long id = Long.parseLong(pick.group(2));
        return Optional.of(pick.group(1).equals("lamp") ? new LampPick.Stock(id) : new LampPick.Model(id));
    }
}

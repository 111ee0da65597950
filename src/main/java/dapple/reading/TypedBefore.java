package dapple.reading;

import dapple.light.metrology.RepeatsTaken;
import dapple.light.quantity.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a page of a visit carries of the repeats before this one; what no page writes is as if nothing had been typed. */
record TypedBefore(List<BigDecimal> amounts) {
    TypedBefore {
        amounts = List.copyOf(amounts);
    }

    static TypedBefore of(List<String> carried, Quantity quantity) {
        List<BigDecimal> amounts = carried.stream()
                .flatMap(text -> amount(text, quantity).stream())
                .toList();
        boolean whole = amounts.size() == carried.size() && amounts.size() < RepeatsTaken.MOST;
        return new TypedBefore(whole ? amounts : List.of());
    }

    private static Optional<BigDecimal> amount(String text, Quantity quantity) {
        try {
            return Optional.of(new BigDecimal(text))
                    .filter(amount -> amount.signum() >= 0 && TypedAmount.isShown(amount, quantity));
        } catch (NumberFormatException noNumber) {
            return Optional.empty();
        }
    }

    RepeatsTaken and(BigDecimal amount) {
        return new RepeatsTaken(Stream.concat(amounts.stream(), Stream.of(amount))
                .map(BigDecimal::doubleValue)
                .toList());
    }

    /** As the page carries them on. */
    List<String> texts() {
        return amounts.stream().map(BigDecimal::toPlainString).toList();
    }

    List<String> textsWith(BigDecimal amount) {
        List<String> texts = new ArrayList<>(texts());
        texts.add(amount.toPlainString());
        return texts;
    }
}

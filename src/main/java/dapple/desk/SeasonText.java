package dapple.desk;

import dapple.rig.DailyTimer;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampTimer;
import dapple.rig.MonthlyTimer;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A timer that changes over the year as one word-by-word text, so that a form which shows no such times still carries it. */
final class SeasonText {
    private static final String MONTHLY = "MONTHLY";
    private static final String HOME_DAY = "HOME_DAY";
    private static final String OFF = "off";
    private static final int WORDS_OF_A_HOME_DAY = 7;

    private SeasonText() {}

    /** None for a timer that has the same times every day. */
    static Optional<String> of(LampTimer timer) {
        if (timer instanceof MonthlyTimer monthly) {
            return Optional.of(MONTHLY + " "
                    + monthly.months().stream()
                            .map(month -> month.map(times -> times.on() + "-" + times.off())
                                    .orElse(OFF))
                            .collect(Collectors.joining(" ")));
        }
        return timer instanceof HomeDayTimer home
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "%s %s %s %s %d %d %d",
                        HOME_DAY,
                        home.latitudeDegrees(),
                        home.isShifted(),
                        home.middle(),
                        home.plusMinutes(),
                        home.shortestMinutes(),
                        home.longestMinutes()))
                : Optional.empty();
    }

    /** None if the text is no such timer. */
    static Optional<LampTimer> read(String text) {
        List<String> words = List.of(text.strip().split(" ", -1));
        try {
            if (words.get(0).equals(MONTHLY)) {
                return Optional.of(new MonthlyTimer(
                        words.stream().skip(1).map(SeasonText::month).toList()));
            }
            return words.get(0).equals(HOME_DAY) && words.size() == WORDS_OF_A_HOME_DAY
                    ? Optional.of(homeDay(words))
                    : Optional.empty();
        } catch (DateTimeException | IllegalArgumentException notWrittenHere) {
            return Optional.empty();
        }
    }

    private static Optional<DailyTimer> month(String word) {
        if (word.equals(OFF)) {
            return Optional.empty();
        }
        List<LocalTime> times =
                Arrays.stream(word.split("-", 2)).map(LocalTime::parse).toList();
        return Optional.of(new DailyTimer(times.get(0), times.get(times.size() - 1)));
    }

    private static LampTimer homeDay(List<String> words) {
        return new HomeDayTimer(
                Double.parseDouble(words.get(1)),
                Boolean.parseBoolean(words.get(2)),
                LocalTime.parse(words.get(3)),
                Integer.parseInt(words.get(4)),
                Integer.parseInt(words.get(5)),
                Integer.parseInt(words.get(6)));
    }
}

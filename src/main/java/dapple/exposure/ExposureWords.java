package dapple.exposure;

import dapple.light.dose.DayJudgement;
import dapple.light.dose.DayOfLight;
import dapple.light.dose.DayPart;
import dapple.light.dose.DoseRange;
import dapple.light.dose.UvIndexOfDay;
import dapple.light.quantity.ErythemalDose;
import dapple.rig.FittedLamp;
import dapple.rig.LampTimer;
import dapple.rig.TimerWords;
import dapple.site.Formats;
import dapple.target.Target;
import java.time.Duration;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Says in words what light was there, how it is known, and what is not. */
@Component
public class ExposureWords {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.UK);
    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.UK);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMM", Locale.UK);
    private static final double SECONDS_PER_HOUR = 3600;

    private final MessageSource messages;
    private final Formats formats;
    private final TimerWords timers;

    ExposureWords(MessageSource messages, Formats formats, TimerWords timers) {
        this.messages = messages;
        this.formats = formats;
        this.timers = timers;
    }

    /** A dose as hours at UV index 1, without its unit. */
    public String uviHours(ErythemalDose dose) {
        return digits(dose.uviHours());
    }

    /** A dose in standard erythema doses, without its unit. */
    public String sed(ErythemalDose dose) {
        return digits(dose.sed());
    }

    /** A dose in J/m², without its unit. */
    public String joules(ErythemalDose dose) {
        return digits(dose.joulesPerSquareMetre());
    }

    /** With as many decimals as an estimate can stand for. */
    private static String digits(double amount) {
        if (amount >= 100) {
            return String.format(Locale.ROOT, "%,.0f", amount);
        }
        return String.format(Locale.ROOT, amount >= 1 || amount == 0 ? "%.1f" : "%.2f", amount);
    }

    public String hours(Duration time) {
        return String.format(Locale.ROOT, "%.1f", time.toSeconds() / SECONDS_PER_HOUR);
    }

    /** How long lamps were on, a day. */
    public String lit(StayLight stay) {
        return stay.shortestLit()
                .flatMap(least -> stay.longestLit().map(most -> lit(least, most)))
                .orElseGet(() -> say("exposure.unknown"));
    }

    private String lit(Duration least, Duration most) {
        return hours(least).equals(hours(most))
                ? say("exposure.hours", hours(least))
                : say("exposure.hours.range", hours(least), hours(most));
    }

    public String lit(DayOfLight day) {
        return day.lit().map(time -> say("exposure.hours", hours(time))).orElseGet(() -> say("exposure.unknown"));
    }

    /** Lowest, best and highest of a day, or that it is unknown. */
    public String dose(DayOfLight day, String part) {
        return day.dose()
                .known()
                .map(range -> uviHours(part(part).apply(range)))
                .orElseGet(() -> say("exposure.unknown"));
    }

    private static Function<DoseRange, ErythemalDose> part(String name) {
        return switch (name) {
            case "lowest" -> DoseRange::lowest;
            case "best" -> DoseRange::best;
            default -> DoseRange::highest;
        };
    }

    public String basking(DayOfLight day) {
        return index(day, DayPart::basking);
    }

    public String shade(DayOfLight day) {
        return index(day, DayPart::shade);
    }

    /** Where something changed that day, each part in turn. */
    private String index(DayOfLight day, Function<DayPart, UvIndexOfDay> place) {
        return day.parts().stream()
                .map(part -> index(part, place.apply(part)))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private String index(DayPart part, UvIndexOfDay index) {
        return switch (part.circumstance()) {
            case PLANNED_OFF -> say("exposure.off");
            case NOWHERE -> say("exposure.nowhere");
            case UNDER_LAMPS -> index(index);
        };
    }

    private String index(UvIndexOfDay index) {
        if (index instanceof UvIndexOfDay.Measured measured) {
            return say("exposure.measured", formats.uvi(measured.median().amount()), measured.readings());
        }
        if (index instanceof UvIndexOfDay.Carried carried) {
            return say(
                    "exposure.carried",
                    formats.uvi(carried.between().amount()),
                    DAY_OF_YEAR.format(carried.before()),
                    DAY_OF_YEAR.format(carried.after()));
        }
        return say("exposure.unknown");
    }

    /** The middle of a stay's readings at the points of a role. */
    public String median(StayLight stay, String role) {
        return stay.median(role).map(formats::uvi).orElseGet(() -> say("exposure.not-read"));
    }

    /** When the ultraviolet lamps of a day burn. */
    public String timers(List<FittedLamp> lamps) {
        return lamps.isEmpty()
                ? say("exposure.no-lamp")
                : lamps.stream()
                        .map(lamp -> say("exposure.timer", lamp.tag(), timer(lamp.timer())))
                        .collect(Collectors.joining("; "));
    }

    public String timer(Optional<LampTimer> timer) {
        return timer.map(timers::of).orElseGet(() -> say("exposure.timer.unknown"));
    }

    /** The lamps of a change: tag, class, place, timer. */
    public String lamps(List<FittedLamp> lamps) {
        return lamps.stream()
                .map(lamp -> say(
                        "exposure.lamp",
                        lamp.tag(),
                        say("lamp-class." + lamp.lampClass().name()),
                        lamp.place(),
                        timer(lamp.timer())))
                .collect(Collectors.joining("; "));
    }

    /** One day, or the first and the last. */
    public String days(Period period) {
        return period.days() == 1 ? formats.day(period.from()) : say("exposure.days", from(period), to(period));
    }

    private String from(Period period) {
        return period.from().getYear() == period.to().getYear()
                ? DAY_OF_YEAR.format(period.from())
                : formats.day(period.from());
    }

    private String to(Period period) {
        return formats.day(period.to());
    }

    /** Why the dose of some days is not known. */
    public String why(Gap gap, int carryDays) {
        return say("exposure.missing." + gap.missing().name(), gap.days().days(), carryDays);
    }

    String version(Target target, ZoneId zone) {
        String counts = target.isForEarlierReadings() ? "sheet.target.earlier" : "sheet.target";
        return say(counts, target.number(), formats.day(target.approvedAt(), zone));
    }

    public String month(YearMonth month) {
        return MONTH.format(month);
    }

    public String weekday(LocalDate day) {
        return SHORT_DAY.format(day);
    }

    public String judged(DayJudgement judgement) {
        return say("day-found." + judgement.name());
    }

    /** Address of the mark of what a day was found to be; none for what is unknown. */
    public Optional<String> mark(DayJudgement judgement) {
        return switch (judgement) {
            case STRONG -> Optional.of("#too-strong");
            case WEAK -> Optional.of("#too-weak");
            case BORDERLINE -> Optional.of("#borderline");
            case ON_TARGET -> Optional.of("#on-target");
            case PLANNED_OFF -> Optional.of("#planned-off");
            case UNKNOWN -> Optional.empty();
        };
    }

    public String colour(DayJudgement judgement) {
        return switch (judgement) {
            case STRONG -> "strong";
            case WEAK -> "weak";
            case UNKNOWN, PLANNED_OFF -> "calm";
            case BORDERLINE, ON_TARGET -> "";
        };
    }

    String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }
}

package dapple.site;

import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** How numbers and times are written on every page. */
@Component
public class Formats {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);
    private static final DateTimeFormatter LONG_DAY = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.UK);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);
    private static final DateTimeFormatter DAY_AND_TIME = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.UK);

    /** A UV index, with one decimal. */
    public String uvi(double index) {
        return String.format(Locale.ROOT, "%.1f", index);
    }

    /** A limit, with as many decimals as it has, at least one and at most two. */
    public String limit(double limit) {
        boolean oneDecimal = Math.abs(limit * 10 - Math.rint(limit * 10)) < 1e-9;
        return String.format(Locale.ROOT, oneDecimal ? "%.1f" : "%.2f", limit);
    }

    /** A number with as many decimals as it was entered with. */
    public String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** A round amount of any size, without its unit. */
    public String round(double amount) {
        return amount >= 1 ? String.format(Locale.ROOT, "%,.0f", amount) : plain(amount);
    }

    /** A share as percent, with as many decimals as it was entered with. */
    public String plainPercent(double share) {
        return BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros().toPlainString() + "\u00a0%";
    }

    public String interval(Interval interval) {
        return uvi(interval.low()) + " to " + uvi(interval.high());
    }

    /** Several amounts as they were typed, without unit. */
    public String all(List<Double> amounts) {
        return amounts.stream().map(this::plain).collect(Collectors.joining(", "));
    }

    /** A number of a quantity, without its unit. */
    public String amount(Quantity quantity, double amount) {
        return switch (quantity) {
            case UV_INDEX -> uvi(amount);
            case ILLUMINANCE, UVA, IR_A, IR_B, IRRADIANCE, UVB_IRRADIANCE ->
                String.format(Locale.ROOT, "%,d", Math.round(amount));
            case SURFACE_TEMPERATURE, AIR_TEMPERATURE -> celsius(amount);
        };
    }

    /** An amount as far as it is shown. */
    public double shown(Quantity quantity, double amount) {
        return Double.parseDouble(amount(quantity, amount).replace(",", ""));
    }

    /** With one decimal; what rounds to zero has no sign. */
    private static String celsius(double amount) {
        String text = String.format(Locale.ROOT, "%.1f", amount);
        return text.equals("-0.0") ? "0.0" : text;
    }

    /** A number of a quantity with its unit, never on two lines; a UV index has none. */
    public String withUnit(Quantity quantity, double amount) {
        return limit(quantity, amount) + unit(quantity);
    }

    /** A limit of a quantity, without its unit. */
    public String limit(Quantity quantity, double limit) {
        return quantity == Quantity.UV_INDEX ? limit(limit) : amount(quantity, limit);
    }

    /** The values that an amount may have, with their unit. */
    public String interval(Quantity quantity, Interval interval) {
        return amount(quantity, interval.low()) + " to " + amount(quantity, interval.high()) + unit(quantity);
    }

    private static String unit(Quantity quantity) {
        return quantity == Quantity.UV_INDEX ? "" : "\u00a0" + quantity.unit();
    }

    /** A predicted number of a quantity, without its unit: no more digits than a prediction can stand for. */
    public String predicted(Quantity quantity, double amount) {
        if (quantity == Quantity.UV_INDEX) {
            return uvi(amount);
        }
        double step = Math.pow(10, Math.max(-1, Math.floor(Math.log10(Math.max(amount, 1))) - 2));
        return String.format(Locale.ROOT, step < 1 ? "%.1f" : "%,.0f", Math.round(amount / step) * step);
    }

    /** What a predicted number may be, likewise. */
    public String predicted(Quantity quantity, Interval interval) {
        return predicted(quantity, interval.low()) + " to " + predicted(quantity, interval.high());
    }

    /** One number over another. */
    public String ratio(double ratio) {
        return String.format(Locale.ROOT, "× %.2f", ratio);
    }

    /** A small length. */
    public String millimetres(double metres) {
        return String.format(Locale.ROOT, "%.2f\u00a0mm", metres * 1000);
    }

    /** A length to the centimetre. */
    public String metres(double metres) {
        return String.format(Locale.ROOT, "%.2f\u00a0m", metres);
    }

    /** A small area. */
    public String squareCentimetres(double squareMetres) {
        return String.format(Locale.ROOT, "%,.0f\u00a0cm²", squareMetres * 10_000);
    }

    /** Hours, without their unit. */
    public String hours(double hours) {
        return String.format(Locale.ROOT, "%,.0f", hours);
    }

    /** Inner width, depth and height. */
    public String size(double widthMetres, double depthMetres, double heightMetres) {
        return String.format(Locale.ROOT, "%.2f × %.2f × %.2f m", widthMetres, depthMetres, heightMetres);
    }

    /** A share as whole percent, halves upwards, the number and its sign never on two lines. */
    public String percent(double share) {
        return String.format(Locale.ROOT, "%.0f\u00a0%%", Math.rint(share * 1e10) / 1e8);
    }

    /** A computed number with three digits that count, written out. */
    public String threeDigits(double number) {
        return BigDecimal.valueOf(number).round(new MathContext(3)).toPlainString();
    }

    /** A number as it was entered. */
    public String asEntered(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** The size of a file, of 1000 bytes a kilobyte. */
    public String fileSize(long bytes) {
        return bytes < 1_000_000
                ? String.format(Locale.ROOT, "%.1f\u00a0kB", bytes / 1e3)
                : String.format(Locale.ROOT, "%,.1f\u00a0MB", bytes / 1e6);
    }

    /** How long work took, with its unit. */
    public String seconds(long millis) {
        return String.format(Locale.ROOT, "%.1f\u00a0s", millis / 1e3);
    }

    public String day(LocalDate day) {
        return DAY.format(day);
    }

    public String day(Instant at, ZoneId zone) {
        return DAY.format(at.atZone(zone));
    }

    public String longDay(Instant at, ZoneId zone) {
        return LONG_DAY.format(at.atZone(zone));
    }

    public String time(Instant at, ZoneId zone) {
        return TIME.format(at.atZone(zone));
    }

    public String dayAndTime(Instant at, ZoneId zone) {
        return DAY_AND_TIME.format(at.atZone(zone));
    }

    /** How long ago, in words: today, 1 day, 14 days; by days of the calendar. */
    public String age(Instant since, Instant now, ZoneId zone) {
        long days = now.atZone(zone).toLocalDate().toEpochDay()
                - since.atZone(zone).toLocalDate().toEpochDay();
        if (days <= 0) {
            return "today";
        }
        return days == 1 ? "1 day" : days + " days";
    }

    /** When it was, in words: today, 1 day ago, 14 days ago. */
    public String ago(Instant at, Instant now, ZoneId zone) {
        String age = age(at, now, zone);
        return age.equals("today") ? age : age + " ago";
    }
}

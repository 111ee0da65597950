package dapple.approval;

import dapple.light.sun.HomeDays;
import dapple.site.DecimalText;
import dapple.site.LatitudeText;
import dapple.site.SourceMark;
import dapple.target.Photoperiod;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Year;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;

/** Proposes hours of light by month: those of the days at the latitude that a species is from. */
@Component
class HoursFromTheSun {
    private static final BigDecimal POLE = BigDecimal.valueOf(90);
    private static final int PLACES_OF_A_LATITUDE = 4;

    private final MessageSource messages;
    private final Clock clock;

    HoursFromTheSun(MessageSource messages, Clock clock) {
        this.messages = messages;
        this.clock = clock;
    }

    /** The form with the hours filled in; none, with a message, if its latitude is none. */
    Optional<TargetForm> fillIn(TargetForm form, Errors errors) {
        Optional<Double> latitude = DecimalText.read(form.homeLatitude())
                .filter(degrees -> degrees.abs().compareTo(POLE) <= 0 && degrees.scale() <= PLACES_OF_A_LATITUDE)
                .map(BigDecimal::doubleValue);
        if (latitude.isEmpty()) {
            errors.rejectValue("homeLatitude", "timer.latitude.needed");
        }
        return latitude.map(degrees -> form.lit(photoperiod(degrees, form.isShifted())));
    }

    private Photoperiod photoperiod(double latitudeDegrees, boolean isShifted) {
        HomeDays home = new HomeDays(isShifted ? -latitudeDegrees : latitudeDegrees);
        List<Double> hours = home.hoursByMonth(Year.now(clock)).stream()
                .map(HoursFromTheSun::inTenths)
                .toList();
        String where = LatitudeText.of(latitudeDegrees) + (isShifted ? say("timer.shifted") : "");
        return new Photoperiod(hours, SourceMark.COMPUTED, say("target.sun.source", where));
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }

    /** Six minutes: nearer than any animal's day follows its latitude. */
    private static double inTenths(double hours) {
        return BigDecimal.valueOf(hours).setScale(1, RoundingMode.HALF_UP).doubleValue();
    }
}

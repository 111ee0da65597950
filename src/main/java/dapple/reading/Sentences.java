package dapple.reading;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.site.Formats;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Says in words what a reading was found to be, against which limit, and by how much it is off. */
@Component
public class Sentences {
    private final MessageSource messages;
    private final Formats formats;

    Sentences(MessageSource messages, Formats formats) {
        this.messages = messages;
        this.formats = formats;
    }

    /** The code of a meter, and whether it is another's. */
    public String meter(MeterFacts meter) {
        return meter.borrowed() ? say("meter.named-borrowed", meter.code()) : meter.code();
    }

    /** One sentence on the verdict. */
    public String judged(ReadingView view) {
        return view.state()
                .map(state -> view.limits()
                        .map(limits -> judged(view, state, limits))
                        .orElseGet(() -> say(state == State.PLANNED_OFF ? "judged.planned-off" : "judged.no-target")))
                .orElseGet(() -> notJudged(view));
    }

    private String notJudged(ReadingView view) {
        if (!view.reading().heldAsAsked()) {
            return say("judged.context");
        }
        if (view.point().role() == PointRole.KEEPER) {
            return say("judged.keeper");
        }
        if (view.reading().speciesId().isEmpty()) {
            return say(view.point().served().isAll() ? "judged.nobody" : "judged.nobody-served");
        }
        if (view.limits().isEmpty()) {
            return say("judged.not-asked");
        }
        return say(view.quantity() == Quantity.UV_INDEX ? "judged.gradient-open" : "judged.no-limit-here");
    }

    private String judged(ReadingView view, State state, Limits limits) {
        return switch (state) {
            case OVER_CEILING -> say("judged.over-ceiling", unit(view, limits.ceiling()), over(view, limits.ceiling()));
            case NO_SHADE -> noShade(view, limits);
            case BORDERLINE -> borderline(view, limits);
            case TOO_WEAK, TOO_STRONG -> off(view, state);
            case ON_TARGET -> onTarget(view, limits);
            case PLANNED_OFF -> say("judged.planned-off");
            case NO_TARGET, STALE -> say("judged.no-target");
        };
    }

    private String noShade(ReadingView view, Limits limits) {
        if (view.reading().judgement().noGradient()) {
            return say("judged.no-gradient");
        }
        return say("judged.no-shade", unit(view, limits.shadeHigh()), over(view, limits.shadeHigh()));
    }

    private String borderline(ReadingView view, Limits limits) {
        return switch (bound(view, limits)) {
            case BAND -> basking(view);
            case AT_MOST -> say("judged.borderline-shade", unit(view, limits.shadeHigh()));
            case CEILING, BETWEEN -> say("judged.borderline-ceiling", unit(view, limits.ceiling()));
        };
    }

    private String basking(ReadingView view) {
        boolean lower = view.reading().interval().low() < view.band().low();
        return say(lower ? "judged.borderline-low" : "judged.borderline-high", low(view), high(view));
    }

    private String off(ReadingView view, State state) {
        String side = state == State.TOO_WEAK ? "weak" : "strong";
        if (bound(view, view.limits().orElseThrow()) == Bound.BETWEEN) {
            return say("judged.gradient-" + side);
        }
        Band band = view.band();
        double limit = state == State.TOO_WEAK ? band.low() : band.high();
        return say("judged.too-" + side, low(view), high(view), over(view, limit));
    }

    private String onTarget(ReadingView view, Limits limits) {
        return switch (bound(view, limits)) {
            case BAND -> say("judged.on-target", low(view), high(view));
            case AT_MOST -> say("judged.shade", unit(view, limits.shadeHigh()));
            case BETWEEN -> say("judged.gradient");
            case CEILING -> say("judged.under-ceiling", unit(view, limits.ceiling()));
        };
    }

    /** What bounds a reading at its point. */
    private static Bound bound(ReadingView view, Limits limits) {
        PointRole role = view.point().role();
        if (role == PointRole.GRADIENT && view.quantity() == Quantity.UV_INDEX) {
            return Bound.BETWEEN;
        }
        if (role == PointRole.BASKING && !limits.basking().isOpen()) {
            return Bound.BAND;
        }
        if (role == PointRole.SHADE && !limits.shade().isOpen()) {
            return limits.shade().hasLow() ? Bound.BAND : Bound.AT_MOST;
        }
        return Bound.CEILING;
    }

    /** What the gauge shows, for who does not see it. */
    public String gauge(ReadingView view) {
        return say("gauge.says", formats.amount(view.quantity(), view.reading().amount()), limitAt(view));
    }

    /** The limit that counts at a point. */
    public String limitAt(ReadingView view) {
        return view.limits().map(limits -> limitAt(view, limits)).orElse("–");
    }

    private String limitAt(ReadingView view, Limits limits) {
        if (view.point().role() == PointRole.KEEPER || view.band().isOpen()) {
            return "–";
        }
        return switch (bound(view, limits)) {
            case BAND -> range(view.quantity(), view.band());
            case AT_MOST -> say("limit.at-most", unit(view, limits.shadeHigh()));
            case CEILING, BETWEEN -> say("limit.below", unit(view, limits.ceiling()));
        };
    }

    /** One cell of a target. */
    public String limit(SourcedLimit limit) {
        if (limit.place() == LimitPlace.BASKING) {
            return range(limit.quantity(), limit.band());
        }
        String key = limit.place() == LimitPlace.SHADE ? "limit.at-most" : "limit.below";
        return say(key, formats.withUnit(limit.quantity(), limit.band().high()));
    }

    /** A quantity by its name, with its unit. */
    public String quantity(Quantity quantity) {
        return say("quantity." + quantity.name());
    }

    /** A range, with its unit; a low end of 0 is no limit. */
    public String range(Quantity quantity, Band band) {
        if (!band.hasLow()) {
            return say("limit.at-most", formats.withUnit(quantity, band.high()));
        }
        return say("limit.range", formats.limit(quantity, band.low()), formats.withUnit(quantity, band.high()));
    }

    private String low(ReadingView view) {
        return formats.limit(view.quantity(), view.band().low());
    }

    private String high(ReadingView view) {
        return unit(view, view.band().high());
    }

    private String unit(ReadingView view, double amount) {
        return formats.withUnit(view.quantity(), amount);
    }

    /** A share of a temperature would say nothing: its zero is arbitrary. */
    private String over(ReadingView view, double limit) {
        double by = apart(formats.shown(view.quantity(), view.reading().amount()), limit)
                .orElseGet(() -> Math.abs(view.reading().amount() - limit));
        return view.quantity().isTemperature()
                ? unit(view, by)
                : say("judged.by", unit(view, by), formats.percent(by / limit));
    }

    /** By the amount that is shown, so that all figures of a sentence agree; none if it is shown as the limit itself. */
    private static Optional<Double> apart(double shown, double limit) {
        double by = BigDecimal.valueOf(shown)
                .subtract(BigDecimal.valueOf(limit))
                .abs()
                .doubleValue();
        return Optional.of(by).filter(found -> found > 0);
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }

    private enum Bound {
        BAND,
        AT_MOST,
        BETWEEN,
        CEILING
    }
}

package dapple.reading;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.meter.MeterFacts;
import dapple.site.Formats;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import java.util.Locale;
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
                        .orElseGet(() -> say("judged.no-target")))
                .orElseGet(() -> notJudged(view));
    }

    private String notJudged(ReadingView view) {
        if (view.point().role() == PointRole.KEEPER) {
            return say("judged.keeper");
        }
        return say(view.reading().speciesId().isEmpty() ? "judged.nobody" : "judged.gradient-open");
    }

    private String judged(ReadingView view, State state, Limits limits) {
        double amount = view.reading().amount();
        return switch (state) {
            case OVER_CEILING ->
                say("judged.over-ceiling", formats.limit(limits.ceiling()), over(amount, limits.ceiling()));
            case NO_SHADE -> noShade(view, limits);
            case BORDERLINE -> borderline(view, limits);
            case TOO_WEAK, TOO_STRONG -> off(view, state, limits.basking());
            case ON_TARGET -> onTarget(view, limits);
            case NO_TARGET, STALE, PLANNED_OFF -> say("judged.no-target");
        };
    }

    private String noShade(ReadingView view, Limits limits) {
        if (view.reading().judgement().noGradient()) {
            return say("judged.no-gradient");
        }
        return say(
                "judged.no-shade",
                formats.limit(limits.shadeHigh()),
                over(view.reading().amount(), limits.shadeHigh()));
    }

    private String borderline(ReadingView view, Limits limits) {
        return switch (view.point().role()) {
            case BASKING -> basking(view.reading(), limits.basking());
            case SHADE -> say("judged.borderline-shade", formats.limit(limits.shadeHigh()));
            case GRADIENT, NEAREST_REACHABLE, KEEPER ->
                say("judged.borderline-ceiling", formats.limit(limits.ceiling()));
        };
    }

    private String basking(JudgedReading reading, Band band) {
        boolean lower = reading.interval().low() < band.low();
        String side = lower ? "judged.borderline-low" : "judged.borderline-high";
        return say(side, formats.limit(band.low()), formats.limit(band.high()));
    }

    private String off(ReadingView view, State state, Band band) {
        String side = state == State.TOO_WEAK ? "weak" : "strong";
        if (view.point().role() == PointRole.GRADIENT) {
            return say("judged.gradient-" + side);
        }
        double limit = state == State.TOO_WEAK ? band.low() : band.high();
        return say(
                "judged.too-" + side,
                formats.limit(band.low()),
                formats.limit(band.high()),
                over(view.reading().amount(), limit));
    }

    private String onTarget(ReadingView view, Limits limits) {
        return switch (view.point().role()) {
            case BASKING ->
                say(
                        "judged.on-target",
                        formats.limit(limits.basking().low()),
                        formats.limit(limits.basking().high()));
            case SHADE -> say("judged.shade", formats.limit(limits.shadeHigh()));
            case GRADIENT -> say("judged.gradient");
            case NEAREST_REACHABLE, KEEPER -> say("judged.under-ceiling", formats.limit(limits.ceiling()));
        };
    }

    /** What the gauge shows, for who does not see it. */
    public String gauge(ReadingView view) {
        return say("gauge.says", formats.uvi(view.reading().amount()), limitAt(view));
    }

    /** The limit that counts at a point. */
    public String limitAt(ReadingView view) {
        return view.limits().map(limits -> limitAt(view.point().role(), limits)).orElse("–");
    }

    private String limitAt(PointRole role, Limits limits) {
        return switch (role) {
            case BASKING -> range(limits.basking());
            case SHADE -> say("limit.at-most", formats.limit(limits.shadeHigh()));
            case GRADIENT, NEAREST_REACHABLE -> say("limit.below", formats.limit(limits.ceiling()));
            case KEEPER -> "–";
        };
    }

    /** One cell of a target. */
    public String limit(SourcedLimit limit) {
        if (limit.place() == LimitPlace.BASKING) {
            return range(limit.band());
        }
        String key = limit.place() == LimitPlace.SHADE ? "limit.at-most" : "limit.below";
        return say(key, formats.limit(limit.band().high()));
    }

    private String range(Band band) {
        return say("limit.range", formats.limit(band.low()), formats.limit(band.high()));
    }

    private String over(double amount, double limit) {
        double by = Math.abs(amount - limit);
        return say("judged.by", formats.limit(by), formats.percent(by / limit));
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }
}

package dapple.desk;

import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.LampPick;
import dapple.draft.Stock;
import dapple.lamp.LampClass;
import dapple.lamp.LampModelFacts;
import dapple.prediction.SpeciesNeed;
import dapple.rig.DailyTimer;
import dapple.rig.FittingFacts;
import dapple.rig.Hanging;
import dapple.rig.LampTimer;
import dapple.rig.TimerWords;
import dapple.site.Given;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Proposes when a lamp that is new to a rig burns: with others of its kind there, else as long as a target asks for. */
@Component
class NewTimers {
    private static final int MINUTES_OF_A_DAY = 24 * 60;
    private static final double MINUTES_PER_HOUR = 60;

    private final TimerWords words;
    private final MessageSource messages;

    NewTimers(TimerWords words, MessageSource messages) {
        this.words = words;
        this.messages = messages;
    }

    /**
     * A timer that nobody has chosen yet.
     *
     * @param why whose it is, in words
     */
    record Proposed(LampTimer timer, String why) {}

    /**
     * A rig whose new lamps have timers.
     *
     * @param told what each of them has, and whose that is
     */
    record Timed(DraftRig rig, List<String> told) {}

    /** The rig with a timer for each lamp that comes and has none, as far as there is one to propose. */
    Timed of(Desk desk, DraftRig rig) {
        List<DraftLamp> lamps = new ArrayList<>();
        List<String> told = new ArrayList<>();
        for (FittingFacts fitting : desk.under(rig).rig().rig().fittings()) {
            DraftLamp lamp = rig.lamps().get(lamps.size());
            Optional<Proposed> proposed =
                    lamp.fittingId().isPresent() || lamp.hanging().timer().isPresent()
                            ? Optional.empty()
                            : of(fitting.lamp().model(), desk, rig);
            lamps.add(proposed.map(timer -> timed(lamp, timer.timer())).orElse(lamp));
            proposed.ifPresent(timer -> told.add(say("of", fitting.lamp().tag(), timer.why())));
        }
        return new Timed(new DraftRig(lamps, rig.covers(), rig.furniture()), told);
    }

    private static DraftLamp timed(DraftLamp lamp, LampTimer timer) {
        Hanging before = lamp.hanging();
        Hanging hanging =
                new Hanging(before.place(), before.mount(), Optional.of(timer), before.circuitId(), before.gear());
        return new DraftLamp(lamp.fittingId(), lamp.lamp(), hanging);
    }

    /** For a lamp that is chosen by its field; none where neither another lamp nor a target says when light is wanted. */
    Optional<Proposed> of(String pick, Desk desk, DraftRig rig) {
        return PickText.read(pick)
                .filter(desk.stock()::has)
                .flatMap(chosen -> of(model(desk.stock(), chosen), desk, rig));
    }

    private static LampModelFacts model(Stock stock, LampPick pick) {
        return pick instanceof LampPick.Stock lamp
                ? Given.of(stock.lamps().get(lamp.lampId())).model()
                : Given.of(stock.models().get(((LampPick.Model) pick).modelId()));
    }

    private Optional<Proposed> of(LampModelFacts model, Desk desk, DraftRig rig) {
        List<FittingFacts> timed = Stream.of(desk.under(rig), desk.installed())
                .flatMap(scene -> scene.rig().rig().fittings().stream())
                .filter(fitting -> fitting.hanging().timer().isPresent())
                .toList();
        LampClass lampClass = model.lampClass();
        return first(timed, fitting -> classOf(fitting) == lampClass)
                .or(() -> first(timed, fitting -> isAlike(classOf(fitting), lampClass)))
                .or(() -> asAsked(desk, timed));
    }

    private Optional<Proposed> first(List<FittingFacts> timed, Predicate<FittingFacts> isOfItsKind) {
        return timed.stream()
                .filter(isOfItsKind)
                .findFirst()
                .flatMap(fitting -> fitting.hanging()
                        .timer()
                        .map(timer -> new Proposed(
                                timer,
                                say(
                                        "as-lamp",
                                        fitting.lamp().tag(),
                                        fitting.hanging().place(),
                                        words.of(timer)))));
    }

    private static LampClass classOf(FittingFacts fitting) {
        return fitting.lamp().model().lampClass();
    }

    /** Heat, light to see by and ultraviolet are what timers tell apart. */
    private static boolean isAlike(LampClass one, LampClass other) {
        return one.isHot() == other.isHot()
                && one.givesLight() == other.givesLight()
                && one.emitsUltraviolet() == other.emitsUltraviolet();
    }

    /** Around the middle of the day of the other lamps; noon where no other has a timer. */
    private Optional<Proposed> asAsked(Desk desk, List<FittingFacts> timed) {
        LocalDate today = LocalDate.ofInstant(desk.now(), desk.me().zone());
        LocalTime middle = timed.stream()
                .flatMap(fitting -> fitting.hanging().timer().stream())
                .flatMap(timer -> timer.timesOf(today).stream())
                .map(times -> times.on().plusMinutes(times.litMinutes() / 2))
                .findFirst()
                .orElse(LocalTime.NOON);
        return desk.installed().needs().stream()
                .flatMap(need -> asked(need, middle, today).stream())
                .findFirst();
    }

    private Optional<Proposed> asked(SpeciesNeed need, LocalTime middle, LocalDate today) {
        return need.light()
                .map(light -> (int) Math.round(MINUTES_PER_HOUR * light.hours()))
                .filter(minutes -> minutes > 0)
                .map(minutes -> around(middle, minutes))
                .map(timer -> new Proposed(
                        timer,
                        say("as-asked", need.scientificName(), words.month(today.getMonthValue()), words.of(timer))));
    }

    private static LampTimer around(LocalTime middle, int minutes) {
        LocalTime on = minutes >= MINUTES_OF_A_DAY ? LocalTime.MIDNIGHT : middle.minusMinutes(minutes / 2);
        return new DailyTimer(on, on.plusMinutes(minutes));
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage("desk.timer." + key, arguments, Locale.UK);
    }
}

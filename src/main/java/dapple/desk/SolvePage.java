package dapple.desk;

import dapple.desk.Solving.On;
import dapple.desk.Solving.Spot;
import dapple.draft.DraftFacts;
import dapple.light.judging.Band;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.prediction.EnclosureScene;
import dapple.rig.RigScene;
import dapple.site.Caution;
import dapple.site.FormReading;
import dapple.site.Given;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;

/** Shows the questions that a draft can be asked, and the answers. */
@Component
class SolvePage {
    static final String VIEW = "desk/solve";

    private final FormReading reading;
    private final Solving solving;
    private final Swapping swapping;

    SolvePage(FormReading reading, Solving solving, Swapping swapping) {
        this.reading = reading;
        this.solving = solving;
        this.swapping = swapping;
    }

    /** What is asked: each question has a form of its own. */
    public enum Ask {
        HEIGHT(HeightAsked.class),
        LAYERS(LayersAsked.class),
        SWAP(SwapAsked.class);

        private final Class<?> form;

        Ask(Class<?> form) {
            this.form = form;
        }

        static Ask of(String name) {
            return List.of(values()).stream()
                    .filter(one -> one.name().equalsIgnoreCase(name))
                    .findFirst()
                    .orElse(HEIGHT);
        }
    }

    /**
     * The page with one question; answered where it was asked.
     *
     * @param sent what was typed; nothing: a form to begin with
     */
    String show(Desk desk, DraftFacts draft, Map<String, String> sent, Model model) {
        Ask ask = Ask.of(sent.getOrDefault("ask", ""));
        EnclosureScene scene = desk.under(draft.rig());
        boolean isAsked = sent.containsKey("lamp") || sent.containsKey("cover");
        Map<String, String> typed = new LinkedHashMap<>(isAsked ? sent : beginning(scene));
        typed.keySet()
                .retainAll(Set.of(
                        "lamp",
                        "cover",
                        "point",
                        "xMetres",
                        "yMetres",
                        "zMetres",
                        "quantity",
                        "wanted",
                        "low",
                        "high"));
        BindingResult form = reading.read(ask.form, typed);
        model.addAttribute("draft", draft);
        model.addAttribute("enclosure", desk.installed().enclosure());
        model.addAttribute("ask", ask);
        model.addAttribute("asks", Ask.values());
        model.addAttribute("form", form.getTarget());
        model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", form);
        model.addAttribute("lamps", scene.rig().rig().fittings());
        model.addAttribute("covers", draft.rig().covers());
        model.addAttribute(
                "points",
                scene.points().stream()
                        .filter(point -> point.position().isPresent())
                        .toList());
        model.addAttribute("quantities", RigScene.LIGHT);
        model.addAttribute("cautions", cautions(scene));
        model.addAttribute("changes", desk.me().may(Action.CHANGE_RIGS) && draft.isOpen());
        if (isAsked) {
            answer(new On(desk, draft.rig()), form).ifPresent(answer -> model.addAttribute("answer", answer));
        }
        return VIEW;
    }

    /** Of what the draft hangs; whoever hangs a lamp elsewhere works at it. */
    private static Set<Caution> cautions(EnclosureScene scene) {
        Set<Caution> cautions = new TreeSet<>(Set.of(Caution.ULTRAVIOLET, Caution.HEAT, Caution.MAINS));
        scene.rig()
                .rig()
                .fittings()
                .forEach(fitting -> cautions.addAll(fitting.lamp().model().cautions()));
        return cautions;
    }

    /** The first lamp, the basking point, and the middle of what is needed there. */
    private static Map<String, String> beginning(EnclosureScene scene) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("lamp", "0");
        typed.put("cover", "0");
        typed.put("quantity", Quantity.UV_INDEX.name());
        scene.baskingPoint().ifPresent(point -> typed.put("point", String.valueOf(point.id())));
        scene.shown()
                .flatMap(need -> need.limits(Quantity.UV_INDEX))
                .map(limits -> limits.at(PointRole.BASKING))
                .filter(band -> !band.isOpen())
                .ifPresent(band -> {
                    typed.put("low", number(band.low()));
                    typed.put("high", number(band.high()));
                    typed.put("wanted", number(band.hasLow() ? Math.sqrt(band.low() * band.high()) : band.high() / 2));
                });
        return typed;
    }

    private static String number(double amount) {
        return String.format(Locale.ROOT, "%.2f", amount);
    }

    private Optional<Answered> answer(On on, BindingResult form) {
        Object asked = form.getTarget();
        if (asked == null || form.hasErrors()) {
            return Optional.empty();
        }
        if (asked instanceof HeightAsked height) {
            return height(on, height, form);
        }
        return asked instanceof LayersAsked layers ? layers(on, layers, form) : swap(on, (SwapAsked) asked, form);
    }

    private Optional<Answered> height(On on, HeightAsked asked, BindingResult form) {
        int lamp = Given.of(asked.lamp());
        requirePart(lamp, on.rig().lamps(), "lamp", form);
        Quantity quantity = Given.of(asked.quantity());
        return new SpotField(asked.point(), asked.xMetres(), asked.yMetres(), asked.zMetres())
                .receiver(on.scene(), form)
                .map(place -> solving.height(on, lamp, new Spot(place, quantity), Given.number(asked.wanted())));
    }

    private Optional<Answered> layers(On on, LayersAsked asked, BindingResult form) {
        int cover = Given.of(asked.cover());
        double low = Given.number(asked.low());
        double high = Given.number(asked.high());
        if (requirePart(cover, on.rig().covers(), "cover", form)
                && on.rig().covers().get(cover).cover().heightMetres().isEmpty()) {
            form.rejectValue("cover", "desk.solve.cover.height");
        }
        if (high < low) {
            form.rejectValue("high", "desk.solve.band");
        }
        Quantity quantity = Given.of(asked.quantity());
        return new SpotField(asked.point(), asked.xMetres(), asked.yMetres(), asked.zMetres())
                .receiver(on.scene(), form)
                .map(place -> solving.layers(on, cover, new Spot(place, quantity), new Band(low, high)));
    }

    private Optional<Answered> swap(On on, SwapAsked asked, BindingResult form) {
        int lamp = Given.of(asked.lamp());
        return requirePart(lamp, on.rig().lamps(), "lamp", form)
                ? Optional.of(swapping.swap(on, lamp))
                : Optional.empty();
    }

    private static boolean requirePart(int number, List<?> parts, String field, BindingResult form) {
        boolean isThere = number >= 0 && number < parts.size();
        if (!isThere) {
            form.rejectValue(field, "desk.solve.part");
        }
        return isThere;
    }
}

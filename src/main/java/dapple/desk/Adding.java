package dapple.desk;

import dapple.draft.DraftRig;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Position;
import dapple.prediction.EnclosureScene;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Parts that come to a draft: fields to begin with, over the basking point or in the middle. */
@Component
class Adding {
    /** Of a new box, cylinder or branch, m (ours: something to see and to change). */
    private static final Map<String, Map<String, String>> SIZES = Map.of(
            "BOX", Map.of("widthMetres", "0.20", "depthMetres", "0.20", "heightMetres", "0.10"),
            "CYLINDER", Map.of("heightMetres", "0.20", "radiusMetres", "0.05"),
            "CAPSULE", Map.of("radiusMetres", "0.02"));

    private static final double BRANCH_METRES = 0.3;

    private final NewTimers timers;
    private final MessageSource messages;

    Adding(NewTimers timers, MessageSource messages) {
        this.timers = timers;
        this.messages = messages;
    }

    /** With a timer, if there is one to propose, whose times may be changed. */
    DeskForm lamp(DeskForm form, Desk desk, DraftRig draft) {
        EnclosureScene scene = desk.installed();
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("pick", form.field("newLamp"));
        typed.put("fresh", "true");
        typed.put("place", say("desk.place.new"));
        middle(scene).ifPresent(at -> {
            put(typed, "xMetres", at.xMetres());
            put(typed, "yMetres", at.yMetres());
            put(typed, "zMetres", scene.size().map(InnerSize::heightMetres).orElse(at.zMetres()));
            typed.put("lean", "0.00");
            typed.put("lengthTo", "0.00");
        });
        timers.of(form.field("newLamp"), desk, draft).ifPresent(proposed -> {
            DeskFields.putTimer(typed, proposed.timer());
            typed.put("timerSaid", proposed.why());
        });
        return form.plusLamp(typed);
    }

    DeskForm cover(DeskForm form, EnclosureScene scene) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("kind", form.field("newCover"));
        typed.put("fresh", "true");
        typed.put("name", say("desk.cover.new"));
        typed.put("layers", "1");
        scene.size().ifPresent(size -> put(typed, "heightMetres", size.heightMetres()));
        return form.plusCover(typed);
    }

    DeskForm furniture(DeskForm form, EnclosureScene scene) {
        String kind = form.field("newFurniture");
        Map<String, String> typed = new LinkedHashMap<>(SIZES.getOrDefault(kind, Map.of()));
        typed.put("kind", kind);
        typed.put("fresh", "true");
        typed.put("name", say("desk.furniture.new"));
        middle(scene).ifPresent(at -> {
            put(typed, "xMetres", at.xMetres());
            put(typed, "yMetres", at.yMetres());
            put(typed, "zMetres", 0);
            if (kind.equals("CAPSULE")) {
                put(typed, "endXMetres", at.xMetres() + BRANCH_METRES);
                put(typed, "endYMetres", at.yMetres());
                put(typed, "endZMetres", BRANCH_METRES);
            }
        });
        return form.plusFurniture(typed);
    }

    private static Optional<Position> middle(EnclosureScene scene) {
        return scene.baskingPoint()
                .flatMap(PointFacts::position)
                .or(() -> scene.size().map(size -> new Position(size.widthMetres() / 2, size.depthMetres() / 2, 0)));
    }

    private static void put(Map<String, String> typed, String field, double metres) {
        typed.put(
                field,
                BigDecimal.valueOf(metres).setScale(2, RoundingMode.HALF_EVEN).toPlainString());
    }

    private String say(String key) {
        return messages.getMessage(key, new Object[0], Locale.UK);
    }
}

package dapple.desk;

import dapple.draft.Deed;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Position;
import dapple.light.geometry.Vec;
import dapple.light.judging.PointRole;
import dapple.prediction.PartFields;
import dapple.rig.DailyTimer;
import dapple.rig.Furniture;
import dapple.rig.FurnitureShape;
import dapple.rig.Gear;
import dapple.rig.GearWords;
import dapple.rig.Hanging;
import dapple.rig.LampTimer;
import dapple.rig.Mount;
import dapple.rig.TimerWords;
import dapple.site.Formats;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Says in words for hands what must be done so that a draft hangs. */
@Component
class Instructions {
    /** Farther aside from a lamp a point is not under it, m (ours: so that a height can be checked with a rule). */
    private static final double UNDER_METRES = 0.3;

    private final MessageSource messages;
    private final Formats formats;
    private final TimerWords timers;
    private final GearWords gears;

    Instructions(MessageSource messages, Formats formats, TimerWords timers, GearWords gears) {
        this.messages = messages;
        this.formats = formats;
        this.timers = timers;
        this.gears = gears;
    }

    List<String> of(List<Deed> deeds, List<PointFacts> points) {
        return deeds.stream().map(deed -> of(deed, points)).toList();
    }

    private String of(Deed deed, List<PointFacts> points) {
        if (deed instanceof Deed.TakeOut out) {
            return say(
                    "take-out",
                    out.fitting().lamp().tag(),
                    out.fitting().hanging().place());
        }
        if (deed instanceof Deed.Buy buy) {
            return say("buy", buy.lamp().model().name(), buy.hanging().place(), where(buy.hanging(), points));
        }
        if (deed instanceof Deed.Hang hang) {
            String timer = timer(hang.hanging()) + gearIfKnown(hang.hanging().gear());
            return say("hang", hang.lamp().tag(), hang.lamp().model().name(), where(hang.hanging(), points), timer);
        }
        if (deed instanceof Deed.Rehang moved) {
            return say("rehang", moved.before().lamp().tag(), where(moved.after(), points));
        }
        if (deed instanceof Deed.Retime timed) {
            return say("retime", timed.before().lamp().tag(), timer(timed.after()));
        }
        if (deed instanceof Deed.Regear fed) {
            return say("regear", fed.before().lamp().tag(), gear(fed.after().gear()));
        }
        return ofOthers(deed);
    }

    private String ofOthers(Deed deed) {
        if (deed instanceof Deed.TakeOff off) {
            return say("take-off", off.cover().name());
        }
        if (deed instanceof Deed.Put put) {
            return say(
                    "put",
                    put.cover().name(),
                    put.cover().layers(),
                    height(put.cover().heightMetres()));
        }
        if (deed instanceof Deed.Layer layer) {
            return say(
                    "layer",
                    layer.before().name(),
                    layer.layers(),
                    layer.before().layers());
        }
        if (deed instanceof Deed.Exchange exchange) {
            return say(
                    "exchange",
                    exchange.before().name(),
                    exchange.after().name(),
                    exchange.after().layers(),
                    height(exchange.after().heightMetres()));
        }
        if (deed instanceof Deed.Clear clear) {
            return say("clear", clear.item().name());
        }
        if (deed instanceof Deed.Place place) {
            return say("place", place.item().name(), where(place.item()));
        }
        Deed.Shift shift = (Deed.Shift) deed;
        return say("shift", shift.before().name(), where(shift.after()));
    }

    private String height(Optional<Double> heightMetres) {
        return heightMetres.map(metres -> say("height", formats.metres(metres))).orElse("");
    }

    private String where(Hanging hanging, List<PointFacts> points) {
        return hanging.place()
                + hanging.mount()
                        .map(mount -> say("at", at(mount.centre())) + over(mount, points) + turned(hanging))
                        .orElseGet(() -> say("nowhere"));
    }

    private String at(Vec place) {
        return say("coordinates", formats.metres(place.x()), formats.metres(place.y()), formats.metres(place.z()));
    }

    /** How far above the point that lies under it, so that it can be measured there. */
    private String over(Mount mount, List<PointFacts> points) {
        return points.stream()
                .filter(point -> point.role() != PointRole.KEEPER)
                .filter(point -> point.position()
                        .filter(at -> isUnder(at, mount.centre()))
                        .isPresent())
                .min(Comparator.comparingDouble(point ->
                        point.position().map(at -> aside(at, mount.centre())).orElse(UNDER_METRES)))
                .flatMap(point -> point.position()
                        .map(at -> say(
                                "over",
                                formats.metres(mount.centre().z() - at.zMetres()),
                                point.code(),
                                point.place())))
                .orElse("");
    }

    private static boolean isUnder(Position at, Vec lamp) {
        return at.zMetres() < lamp.z() && aside(at, lamp) < UNDER_METRES;
    }

    private static double aside(Position at, Vec lamp) {
        return Math.hypot(at.xMetres() - lamp.x(), at.yMetres() - lamp.y());
    }

    private String turned(Hanging hanging) {
        Map<String, String> typed = PartFields.typed(hanging);
        String lean = typed.containsKey("leanTo") ? say("lean", degrees(typed, "lean"), degrees(typed, "leanTo")) : "";
        return lean + (typed.containsKey("lengthTo") ? say("length", degrees(typed, "lengthTo")) : "");
    }

    private String degrees(Map<String, String> typed, String field) {
        return formats.plain(Double.parseDouble(typed.getOrDefault(field, "0")));
    }

    private String timer(Hanging hanging) {
        return hanging.timer().map(this::timer).orElseGet(() -> say("timer.unknown"));
    }

    private String timer(LampTimer timer) {
        if (timer instanceof DailyTimer daily) {
            return daily.isAlwaysOn()
                    ? say("timer.always")
                    : say("timer", daily.on().toString(), daily.off().toString());
        }
        return say("timer.season", timers.of(timer));
    }

    private String gearIfKnown(Gear gear) {
        return gear.equals(Gear.UNKNOWN) ? "" : " " + gear(gear);
    }

    private String gear(Gear gear) {
        return say("gear", gears.of(gear));
    }

    private String where(Furniture item) {
        FurnitureShape shape = item.shape();
        if (shape instanceof FurnitureShape.Block block) {
            Vec size = block.greatest().minus(block.least());
            return say("box", formats.size(size.x(), size.y(), size.z()), at(block.least()))
                    + (block.yawDegrees() == 0 ? "" : say("yaw", formats.plain(block.yawDegrees())));
        }
        if (shape instanceof FurnitureShape.Post post) {
            return say(
                    "post", formats.metres(post.heightMetres()), formats.metres(post.radiusMetres()), at(post.base()));
        }
        FurnitureShape.Branch branch = (FurnitureShape.Branch) shape;
        return say("branch", formats.metres(branch.radiusMetres()), at(branch.from()), at(branch.to()));
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage("desk.do." + key, arguments, Locale.UK);
    }
}

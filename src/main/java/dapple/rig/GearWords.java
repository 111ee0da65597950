package dapple.rig;

import dapple.site.Formats;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Says in words what feeds a lamp. */
@Component
public class GearWords {
    private final MessageSource messages;
    private final Formats formats;

    GearWords(MessageSource messages, Formats formats) {
        this.messages = messages;
        this.formats = formats;
    }

    /** What is known of it. */
    public String of(Gear gear) {
        String known = Stream.of(
                        gear.ballast().map(ballast -> say("ballast." + ballast)),
                        gear.control().map(control -> control(gear, control)))
                .flatMap(part -> part.stream())
                .collect(Collectors.joining(", "));
        return known.isEmpty() ? say("gear.unknown") : known;
    }

    private String control(Gear gear, LampControl control) {
        if (control != LampControl.DIMMED) {
            return say("lamp-control." + control);
        }
        return gear.voltageRatio()
                .map(ratio -> say("gear.dimmed", formats.percent(ratio)))
                .orElseGet(() -> say("gear.dimmed.unknown"));
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }
}

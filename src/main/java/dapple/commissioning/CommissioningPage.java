package dapple.commissioning;

import dapple.commissioning.Trials.Opened;
import dapple.desk.LightDrawings;
import dapple.desk.LightDrawings.Drawn;
import dapple.desk.LightDrawings.Shown;
import dapple.desk.Newest;
import dapple.light.quantity.Quantity;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import dapple.prediction.Outlook;
import dapple.site.Caution;
import dapple.site.Formats;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Puts together what the pages of a commissioning show. */
@Component
class CommissioningPage {
    /** Who reads from a sheet does not know what is expected. */
    private static final Shown UNLIT = new Shown(
            Quantity.UV_INDEX, new LightInside(Map.of(), Optional.empty(), Optional.empty()), Optional.empty());

    private final Outlook outlook;
    private final LightDrawings drawings;
    private final Formats formats;
    private final MessageSource messages;

    CommissioningPage(Outlook outlook, LightDrawings drawings, Formats formats, MessageSource messages) {
        this.outlook = outlook;
        this.drawings = drawings;
        this.formats = formats;
        this.messages = messages;
    }

    String show(SignedIn me, Opened opened, String quantity, Model model) {
        model.addAttribute("enclosure", opened.scene().enclosure());
        opened.trial().ifPresent(trial -> {
            Quantity shown = shown(trial, quantity);
            model.addAttribute("trial", trial);
            model.addAttribute("quantity", shown);
            model.addAttribute("against", Accepting.against(me, trial));
            model.addAttribute("cautions", cautions(trial));
            model.addAttribute("warmUp", me.settings().warmUpMinutes());
            model.addAttribute("settings", me.settings());
        });
        return "commissioning/commissioning";
    }

    String map(SignedIn me, Opened opened, String quantity, Model model) {
        model.addAttribute("enclosure", opened.scene().enclosure());
        opened.trial().ifPresent(trial -> {
            Quantity shown = shown(trial, quantity);
            model.addAttribute("trial", trial);
            model.addAttribute("quantity", shown);
            model.addAttribute("before", drawn(trial.scene(), trial, shown));
            model.addAttribute("after", after(me, trial, shown));
        });
        return "commissioning/map";
    }

    String sheet(SignedIn me, Opened opened, Model model) {
        model.addAttribute("enclosure", opened.scene().enclosure());
        model.addAttribute("warmUp", me.settings().warmUpMinutes());
        opened.trial().ifPresent(trial -> {
            model.addAttribute("trial", trial);
            model.addAttribute("before", drawings.of(trial.scene(), UNLIT, new Newest(List.of())));
            model.addAttribute("cautions", cautions(trial));
        });
        return "commissioning/sheet";
    }

    private static Quantity shown(Trial trial, String asked) {
        List<Quantity> read =
                trial.fits().stream().map(FittedQuantity::quantity).toList();
        return read.stream()
                .filter(quantity -> quantity.name().equals(asked))
                .findFirst()
                .or(() -> read.stream().findFirst())
                .orElse(Quantity.UV_INDEX);
    }

    private Optional<Drawn> drawn(EnclosureScene scene, Trial trial, Quantity quantity) {
        LightInside light = outlook.withoutZones(scene, quantity);
        Newest read = new Newest(trial.taken().stream().map(Taken::reading).toList());
        return drawings.of(scene, new Shown(quantity, light, light.planes()), read);
    }

    /** With what was measured; empty where that changes nothing any more, or is not known. */
    private Optional<Drawn> after(SignedIn me, Trial trial, Quantity quantity) {
        MeasuredRig measured = MeasuredRig.of(trial, source(me, trial));
        boolean isKnown =
                trial.accepted().isEmpty() && (measured.lamps().findAny().isPresent() || measured.hasCover());
        return isKnown ? drawn(measured.in(trial.scene()), trial, quantity) : Optional.empty();
    }

    /** Where what was measured of a cover comes from. */
    String source(SignedIn me, Trial trial) {
        String day = RigFitting.newest(trial.taken())
                .map(at -> formats.day(at, me.zone()))
                .orElse("");
        return messages.getMessage(
                "commissioning.source.cover",
                new Object[] {trial.scene().enclosure().code(), trial.taken().size(), day},
                Locale.UK);
    }

    /** Of the lamps that hang there; who stands before them reads with the doors open, and guards are hot above any lamp. */
    private static Set<Caution> cautions(Trial trial) {
        Set<Caution> cautions = EnumSet.of(Caution.ULTRAVIOLET, Caution.HEAT);
        trial.scene()
                .rig()
                .rig()
                .fittings()
                .forEach(fitting -> cautions.addAll(fitting.lamp().model().cautions()));
        return cautions;
    }
}

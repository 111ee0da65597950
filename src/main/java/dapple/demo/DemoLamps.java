package dapple.demo;

import dapple.demo.DemoRigRows.Bulb;
import dapple.demo.DemoRigRows.Model;
import dapple.lamp.LampOutput;
import dapple.lamp.Lamps;
import dapple.lamp.NewLamp;
import dapple.lamp.NewSpectrum;
import dapple.lamp.SpectrumFiling;
import dapple.light.quantity.Quantity;
import dapple.site.Given;
import dapple.site.SourceMark;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.annotation.Profile;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;

/** The demo's invented lamps. */
@Component
@Profile("demo")
class DemoLamps {
    private static final double DISTANCE_METRES = 0.3;
    private static final String INVENTED = "invented for the demo";

    private static final long FIRST_VERSION = 0;

    /** The one model of which the spectrum is on file. */
    private static final String WITH_SPECTRUM = "UV tube 24 W";

    /** Lamps that were measured on the bench, and the UV index that they gave there. */
    private static final Map<String, Double> ON_THE_BENCH = Map.of("L01", 3.1, "L25", 2.5);

    private final Lamps lamps;
    private final SpectrumFiling spectra;

    DemoLamps(Lamps lamps, SpectrumFiling spectra) {
        this.lamps = lamps;
        this.spectra = spectra;
    }

    /** Enters the models and the lamps, each when it was bought; gives the ids of the lamps by their tags. */
    Map<String, Long> stock(DemoStory story) {
        DemoTeam.Members members = story.members();
        Map<String, Long> models = new HashMap<>();
        DemoRigRows rows = story.tables().rigRows();
        rows.models().forEach(model -> models.put(model.change().name(), enter(members.siteId(), model)));
        spectra.fileSpectrum(members.siteId(), Given.of(models.get(WITH_SPECTRUM)), FIRST_VERSION, spectrum(members));
        Map<String, Long> tags = new HashMap<>();
        for (Bulb bulb : rows.lamps()) {
            long model = Given.of(models.get(bulb.model()));
            lamps(story, bulb, model).forEach(lamp -> tags.put(lamp.tag(), lamps.add(members.siteId(), lamp)));
        }
        ON_THE_BENCH.forEach((tag, uvIndex) -> lamps.measure(
                members.siteId(),
                Given.of(tags.get(tag)),
                output(Quantity.UV_INDEX, uvIndex, SourceMark.MEASURED, "meter M1, on the bench"),
                story.told(),
                members.supervisor()));
        return tags;
    }

    /** One of the table and those that hung in its place before it. */
    private static List<NewLamp> lamps(DemoStory story, Bulb bulb, long model) {
        return story.past()
                .life(bulb.tag())
                .map(life -> life.turns().stream()
                        .map(turn -> lamp(turn.tag(), bulb, model, turn.hoursThen(), life.boughtAt(turn)))
                        .toList())
                .orElseGet(() -> List.of(lamp(bulb.tag(), bulb, model, bulb.burnHours(), story.told())));
    }

    private static NewLamp lamp(String tag, Bulb bulb, long model, double hours, Instant boughtAt) {
        return new NewLamp(
                tag,
                model,
                Optional.of(hours),
                Optional.of(LocalDate.ofInstant(boughtAt, ZoneOffset.UTC)),
                bulb.storePlace());
    }

    private long enter(long site, Model model) {
        long id = lamps.addModel(site, model.change());
        model.uvIndex().ifPresent(reading -> state(site, id, Quantity.UV_INDEX, reading));
        model.lux().ifPresent(reading -> state(site, id, Quantity.ILLUMINANCE, reading));
        return id;
    }

    private void state(long site, long model, Quantity quantity, double reading) {
        lamps.stateOutput(site, model, output(quantity, reading, SourceMark.FROM_MEMORY, INVENTED));
    }

    private static LampOutput output(Quantity quantity, double reading, SourceMark mark, String source) {
        return new LampOutput(quantity, reading, DISTANCE_METRES, 0.1, mark, source);
    }

    private static NewSpectrum spectrum(DemoTeam.Members members) {
        try {
            String content =
                    new ClassPathResource("demo/uv-tube-spectrum.csv").getContentAsString(StandardCharsets.UTF_8);
            return NewSpectrum.of(INVENTED, content, members.supervisor());
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read the spectrum", cause);
        }
    }
}

package dapple.demo;

import dapple.lamp.LampClass;
import dapple.lamp.LampModelChange;
import dapple.lamp.LampOutput;
import dapple.lamp.LampShape;
import dapple.lamp.Lamps;
import dapple.lamp.NewLamp;
import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The demo's invented lamps. */
@Component
@Profile("demo")
class DemoLamps {
    private final Lamps lamps;

    DemoLamps(Lamps lamps) {
        this.lamps = lamps;
    }

    void stock(DemoTeam.Members members, Instant begin) {
        long site = members.siteId();
        long tube =
                model(site, "UV tube 24 W", LampClass.TUBE_T5, 24, new LampShape.Line(0.549, Optional.of(1.5), 0.05));
        long spot = model(
                site, "Halogen spot 75 W", LampClass.TUNGSTEN_HALOGEN, 75, new LampShape.Spot(30, Optional.empty()));
        lamps.stateOutput(site, tube, output(Quantity.UV_INDEX, 3.4, SourceMark.FROM_MEMORY, "invented for the demo"));
        lamps.stateOutput(
                site, spot, output(Quantity.ILLUMINANCE, 21_000, SourceMark.FROM_MEMORY, "invented for the demo"));
        Optional<LocalDate> bought = Optional.of(LocalDate.ofInstant(begin, ZoneOffset.UTC));
        long first = lamps.add(site, new NewLamp("L01", tube, 100, bought, "store, shelf 1"));
        lamps.add(site, new NewLamp("L02", tube, 0, bought, "store, shelf 1"));
        lamps.add(site, new NewLamp("L03", spot, 0, bought, "store, shelf 2"));
        LampOutput measured = output(Quantity.UV_INDEX, 3.1, SourceMark.MEASURED, "meter M1, on the bench");
        lamps.measure(site, first, measured, begin, members.supervisor());
    }

    private long model(long site, String name, LampClass lampClass, double watts, LampShape shape) {
        return lamps.addModel(site, new LampModelChange(name, lampClass, Optional.of(watts), Optional.of(shape)));
    }

    private static LampOutput output(Quantity quantity, double reading, SourceMark mark, String source) {
        return new LampOutput(quantity, reading, 0.3, 0.1, mark, source);
    }
}

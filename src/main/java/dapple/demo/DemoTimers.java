package dapple.demo;

import dapple.rig.Ballast;
import dapple.rig.DailyTimer;
import dapple.rig.Gear;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampControl;
import dapple.rig.LampTimer;
import dapple.rig.MonthlyTimer;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The timers and the gear of the demo's invented lamps. */
final class DemoTimers {
    private static final int SHORTEST_MINUTES = 600;
    private static final int LONGEST_MINUTES = 840;
    private static final LocalTime MIDDLE = LocalTime.of(13, 0);

    private DemoTimers() {}

    /** Of the season if there is one: "home", latitude and plus, or the times of twelve months; else the same every day. */
    static LampTimer timer(NamedCsvRecord row) {
        List<String> season = Arrays.asList(row.getField("season").split(" ", -1));
        if (season.size() == MonthlyTimer.MONTHS) {
            return new MonthlyTimer(season.stream().map(DemoTimers::month).toList());
        }
        if (season.get(0).equals("home")) {
            double latitude = Double.parseDouble(season.get(1));
            int plus = Integer.parseInt(season.get(2));
            return new HomeDayTimer(latitude, latitude < 0, MIDDLE, plus, SHORTEST_MINUTES, LONGEST_MINUTES);
        }
        return times(row.getField("on"), row.getField("off"));
    }

    private static Optional<DailyTimer> month(String text) {
        return text.equals("off")
                ? Optional.empty()
                : Optional.of(times(text.substring(0, text.indexOf('-')), text.substring(text.indexOf('-') + 1)));
    }

    private static DailyTimer times(String on, String off) {
        return new DailyTimer(LocalTime.parse(on), LocalTime.parse(off));
    }

    static Gear gear(NamedCsvRecord row) {
        String text = row.getField("gear");
        return switch (text) {
            case "" -> Gear.UNKNOWN;
            case "there" -> Gear.on(Ballast.THERE);
            case "built-in" -> Gear.on(Ballast.BUILT_IN);
            case "switched" -> Gear.by(LampControl.SWITCHED);
            default -> Gear.dimmedTo(Double.parseDouble(text.substring(text.indexOf(' ') + 1)));
        };
    }
}

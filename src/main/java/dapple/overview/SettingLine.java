package dapple.overview;

import dapple.site.Formats;
import dapple.site.Settings;
import java.util.List;

/**
 * One setting as the page shows it.
 *
 * @param field its name in the form and in the messages
 * @param mark how far its usual value is known, as a key of the messages
 */
record SettingLine(String field, String amount, String mark) {
    private static final String COMMON = "settings.common";
    private static final String ASSUMED = "settings.assumed";

    static List<SettingLine> of(Settings settings, Formats formats) {
        return List.of(
                line("overdueAfterDays", settings.overdueAfterDays()),
                line("staleAfterDays", settings.staleAfterDays()),
                line("weakAfterDays", settings.weakAfterDays()),
                line("weakAfterDaysInZone1", settings.weakAfterDaysInZone1()),
                line("warmUpMinutes", settings.warmUpMinutes()),
                new SettingLine("lowestRatio", formats.plain(settings.lowestRatio()), COMMON),
                new SettingLine("highestRatio", formats.plain(settings.highestRatio()), COMMON),
                line("carryDays", settings.carryDays()),
                new SettingLine("baskingHours", formats.plain(settings.baskingHours()), ASSUMED),
                new SettingLine("namesKeptMonths", months(settings), "settings.ours"));
    }

    /**
     * A setting that is on or off.
     *
     * @param mark how far its usual value is known, as a key of the messages
     */
    record Switch(String field, boolean isOn, String mark) {}

    static List<Switch> switches(Settings settings) {
        return List.of(
                new Switch("onePerson", settings.onePerson(), COMMON),
                new Switch("keepsDoses", settings.keepsDoses(), "settings.ours"),
                new Switch("blindRepeats", settings.blindRepeats(), COMMON));
    }

    private static String months(Settings settings) {
        return settings.namesKept()
                .map(kept -> String.valueOf(kept.toTotalMonths()))
                .orElse("–");
    }

    private static SettingLine line(String field, int amount) {
        return new SettingLine(field, String.valueOf(amount), COMMON);
    }
}

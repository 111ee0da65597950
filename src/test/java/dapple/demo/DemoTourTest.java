package dapple.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import dapple.people.Role;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.context.support.ResourceBundleMessageSource;

class DemoTourTest {
    private final List<DemoTourRow> rows = DemoTourRow.read();

    @ParameterizedTest
    @EnumSource(names = {"KEEPER", "SUPERVISOR", "VET", "INSPECTOR", "ADMINISTRATOR"})
    void aRoleOfTheDemoHasFiveOrSixStops(Role role) {
        assertThat(rows.stream().filter(row -> row.role() == role)).hasSizeBetween(5, 6);
    }

    @Test
    void somethingIsSaidOfEachStop() {
        ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
        messages.setBasename("messages");
        Set<String> keys = rows.stream().map(DemoTourRow::stop).collect(Collectors.toSet());

        assertThat(keys)
                .allSatisfy(key -> assertThatCode(() -> {
                            messages.getMessage("tour.at." + key, null, Locale.ROOT);
                            messages.getMessage("tour.look." + key, null, Locale.ROOT);
                        })
                        .doesNotThrowAnyException());
    }

    @Test
    void theLastStopLeadsNowhere() {
        DemoStop one = new DemoStop("today", "/");
        DemoStop other = new DemoStop("review", "/review");

        assertThat(new DemoTourPlace(List.of(one, other), 1).next()).hasValue(other);
        assertThat(new DemoTourPlace(List.of(one, other), 2).next()).isEmpty();
    }

    @Test
    void aStopBeyondTheLastIsNone() {
        assertThat(new DemoTourPlace(List.of(new DemoStop("today", "/")), 9).here())
                .isEmpty();
    }
}

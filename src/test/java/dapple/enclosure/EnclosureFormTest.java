package dapple.enclosure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;

class EnclosureFormTest {
    private static final BigDecimal METRE = BigDecimal.ONE;

    @Test
    void withoutASizeIsMeasuredOnly() {
        assertThat(form(null, null, null).change().size()).isEmpty();
    }

    @Test
    void keepsAWholeSize() {
        assertThat(form(METRE, METRE, METRE).change().size()).contains(new InnerSize(1, 1, 1));
    }

    @Test
    void asksForWhatIsMissingOfASize() {
        BindingResult errors = checked(form(METRE, null, METRE));
        assertThat(errors.getFieldErrors())
                .singleElement()
                .satisfies(error -> assertThat(error.getField()).isEqualTo("depthMetres"));
    }

    @Test
    void takesAWholeSize() {
        assertThat(checked(form(METRE, METRE, METRE)).hasErrors()).isFalse();
    }

    @Test
    void takesNoSize() {
        assertThat(checked(form(null, null, null)).hasErrors()).isFalse();
    }

    @Test
    void leavesOutSpacesAroundACode() {
        assertThat(form(null, null, null).change().code()).isEqualTo("E1");
    }

    @Test
    void showsAnEnclosureAsItIs() {
        EnclosureChange state = new EnclosureChange(
                7,
                "E1",
                3,
                Optional.of(new InnerSize(1.2, 0.6, 0.5)),
                Optional.of(FrontKind.MESH),
                Optional.of(new StatedReach(ReachKind.GROUND, Optional.of(0.25))));
        EnclosureDetails enclosure = new EnclosureDetails(1, 4, state, "Dry room", Optional.empty());
        assertThat(EnclosureForm.of(enclosure).change()).isEqualTo(state);
    }

    @Test
    void isNotReadBeforeItsRulesAreChecked() {
        EnclosureForm form = new EnclosureForm(0L, null, "E1", 1, null, null, null, null, null, null);
        assertThatThrownBy(form::change).isInstanceOf(IllegalStateException.class);
    }

    @ParameterizedTest
    @CsvSource({
        ",        ,    ",
        ",        0.3, reach",
        "GROUND,  ,    reachMetres",
        "GROUND,  0.3, ",
        "JUMPS,   ,    ",
        "JUMPS,   0.3, ",
        "CLIMBS,  ,    ",
        "CLIMBS,  0.3, reachMetres"
    })
    void asksForAHeightWhereOneIsNeeded(
            @Nullable ReachKind kind, @Nullable BigDecimal metres, @Nullable String wrongField) {
        EnclosureForm form = new EnclosureForm(0L, 1L, "E1", 1, null, null, null, null, kind, metres);
        List<String> wrong = wrongField == null ? List.of() : List.of(wrongField);
        assertThat(checked(form).getFieldErrors())
                .extracting(error -> error.getField())
                .isEqualTo(wrong);
    }

    private static BindingResult checked(EnclosureForm form) {
        BindingResult errors = new BeanPropertyBindingResult(form, "form");
        form.check(errors);
        return errors;
    }

    private static EnclosureForm form(
            @Nullable BigDecimal width, @Nullable BigDecimal depth, @Nullable BigDecimal height) {
        return new EnclosureForm(0L, 1L, " E1 ", 1, width, depth, height, null, null, null);
    }
}

package dapple.enclosure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
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
        EnclosureChange state = new EnclosureChange(7, "E1", 3, Optional.of(new InnerSize(1.2, 0.6, 0.5)));
        EnclosureDetails enclosure = new EnclosureDetails(1, 4, state, "Dry room", Optional.empty());
        assertThat(EnclosureForm.of(enclosure).change()).isEqualTo(state);
    }

    @Test
    void isNotReadBeforeItsRulesAreChecked() {
        EnclosureForm form = new EnclosureForm(0L, null, "E1", 1, null, null, null);
        assertThatThrownBy(form::change).isInstanceOf(IllegalStateException.class);
    }

    private static BindingResult checked(EnclosureForm form) {
        BindingResult errors = new BeanPropertyBindingResult(form, "form");
        EnclosureForm.SIZE.check(errors);
        return errors;
    }

    private static EnclosureForm form(
            @Nullable BigDecimal width, @Nullable BigDecimal depth, @Nullable BigDecimal height) {
        return new EnclosureForm(0L, 1L, " E1 ", 1, width, depth, height);
    }
}

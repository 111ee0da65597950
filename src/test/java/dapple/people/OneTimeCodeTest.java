package dapple.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OneTimeCodeTest {
    @Test
    void isTwelveCharactersInThreeGroups() {
        assertThat(OneTimeCode.random().text()).matches("([0-9A-HJKMNP-TV-Z]{4}-){2}[0-9A-HJKMNP-TV-Z]{4}");
    }

    @Test
    void isNeverTheSameTwice() {
        assertThat(OneTimeCode.random()).isNotEqualTo(OneTimeCode.random());
    }

    @Test
    void matchesInAnyCaseWithoutHyphens() {
        assertThat(new OneTimeCode("AB12-CD34-EF56").matches(" ab12cd34 ef56")).isTrue();
    }

    @Test
    void matchesNoOther() {
        assertThat(new OneTimeCode("AB12-CD34-EF56").matches("AB12-CD34-EF57")).isFalse();
    }

    @Test
    void matchesNotTheEmptyText() {
        assertThat(new OneTimeCode("AB12-CD34-EF56").matches("")).isFalse();
    }
}

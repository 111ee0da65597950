package dapple.demo;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DemoPasswordsTest {
    private final DemoPasswords passwords = new DemoPasswords();

    @Test
    void hashesTheKnownPasswordOnce() {
        assertThat(passwords.encode("dapple")).isEqualTo(passwords.encode("dapple"));
        assertThat(passwords.matches("dapple", passwords.encode("dapple"))).isTrue();
        assertThat(passwords.matches("dapples", passwords.encode("dapple"))).isFalse();
    }

    @Test
    void saltsEveryOtherPassword() {
        assertThat(passwords.encode("viel Licht")).isNotEqualTo(passwords.encode("viel Licht"));
    }
}

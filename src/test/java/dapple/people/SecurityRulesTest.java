package dapple.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.password.PasswordEncoder;

class SecurityRulesTest {
    /** OWASP, Password Storage Cheat Sheet: bcrypt with a work factor of 10 or more. */
    @Test
    void passwordsAreHashedSlowlyEnough() {
        PasswordEncoder encoder = new SecurityRules().passwordEncoder();
        String hash = encoder.encode("four plain words here");
        assertThat(hash).matches("\\{bcrypt\\}\\$2[aby]\\$1\\d\\$.{53}");
        assertThat(encoder.matches("four plain words here", hash)).isTrue();
        assertThat(encoder.matches("four plain words hers", hash)).isFalse();
    }
}
